package quoin.car;

import java.util.OptionalDouble;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/** Range checks shared by the records of this package. */
final class Checks {
    private static final Texts TEXTS = Texts.of(Checks.class);

    private Checks() {
    }

    /** @param key of what the figure is, in the texts of this package */
    static void positive(OptionalDouble value, String key) {
        if (value.isPresent()) {
            positive(value.getAsDouble(), key);
        }
    }

    static void positive(double value, String key) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new NotTakenException(TEXTS.phrase("mustBeANumber", TEXTS.phrase(key), value));
        }
    }
}
