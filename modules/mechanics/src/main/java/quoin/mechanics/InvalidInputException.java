package quoin.mechanics;

/**
 * An input that no car can have: missing, not finite, or outside the physically possible. The field is a path in the
 * spelling of the calculator's request files, for example {@code corners.LF.springRate_N_per_mm}.
 */
public final class InvalidInputException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String field;

    /** @param field path of the field; @param message what is wrong and what would be right, in plain words */
    public InvalidInputException(String field, String message) {
        super(message);
        this.field = field;
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
