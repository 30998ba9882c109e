package quoin.car;

import java.util.OptionalDouble;

/** Range checks shared by the records of this package. */
final class Checks {

    private Checks() {
    }

    static void positive(OptionalDouble value, String name) {
        if (value.isPresent()) {
            positive(value.getAsDouble(), name);
        }
    }

    static void positive(double value, String name) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be a number greater than 0, not " + value);
        }
    }
}
