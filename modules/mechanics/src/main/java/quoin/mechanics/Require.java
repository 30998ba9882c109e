package quoin.mechanics;

import quoin.quantities.Texts;

/** Refusals by name, shared by the input records. */
final class Require {
    private static final Texts TEXTS = Texts.of(Require.class);
    private Require() {
    }

    static double finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw new InvalidInputException(field, TEXTS.phrase("mustBeAFinite"));
        }
        return value;
    }

    static double positive(String field, double value) {
        if (!(finite(field, value) > 0)) {
            throw InvalidInputException.notPositive(field, value);
        }
        return value;
    }

    static double notNegative(String field, double value) {
        if (!(finite(field, value) >= 0)) {
            throw new InvalidInputException(field, TEXTS.phrase("mustNotBeNegativeIs", value));
        }
        return value;
    }

    static <T> T present(String field, T value) {
        if (value == null) {
            throw InvalidInputException.missing(field);
        }
        return value;
    }
}
