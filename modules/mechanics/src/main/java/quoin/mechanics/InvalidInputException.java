package quoin.mechanics;

import quoin.quantities.NotTakenException;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/**
 * An input that no car can have: missing, not finite, or outside the physically possible. The field is a path in the
 * spelling of the calculator's request files, for example {@code corners.LF.springRate_N_per_mm}.
 */
public final class InvalidInputException extends NotTakenException {
    private static final long serialVersionUID = 1L;

    private static final Texts TEXTS = Texts.of(InvalidInputException.class);

    private final String field;

    /**
     * @param field path of the field
     * @param words what is wrong and what would be right; said after the field, without a full stop
     */
    public InvalidInputException(String field, Phrase words) {
        super(words);
        this.field = field;
    }

    /**
     * For a module from outside that speaks one language.
     *
     * @param field path of the field
     * @param words what is wrong and what would be right; said after the field, without a full stop
     */
    public InvalidInputException(String field, String words) {
        this(field, Phrase.same(words));
    }

    /** Refusal of a figure that had to be greater than zero. */
    public static InvalidInputException notPositive(String field, double value) {
        return new InvalidInputException(field, TEXTS.phrase("mustBeGreaterThanZero", value));
    }

    /** Refusal of a field that had to be there. */
    public static InvalidInputException missing(String field) {
        return new InvalidInputException(field, TEXTS.phrase("isMissing"));
    }

    /** Path of the refused field. */
    public String field() {
        return field;
    }

    @Override
    public String toString() {
        return field + ": " + getMessage();
    }
}
