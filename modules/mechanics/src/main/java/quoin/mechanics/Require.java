package quoin.mechanics;

/** Refusals by name, shared by the input records. */
final class Require {
    private Require() {
    }

    static double finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw new InvalidInputException(field, "must be a finite number");
        }
        return value;
    }

    static double positive(String field, double value) {
        if (!(finite(field, value) > 0)) {
            throw new InvalidInputException(field, "must be greater than zero, is " + value);
        }
        return value;
    }

    static double notNegative(String field, double value) {
        if (!(finite(field, value) >= 0)) {
            throw new InvalidInputException(field, "must not be negative, is " + value);
        }
        return value;
    }

    static <T> T present(String field, T value) {
        if (value == null) {
            throw new InvalidInputException(field, "is missing");
        }
        return value;
    }
}
