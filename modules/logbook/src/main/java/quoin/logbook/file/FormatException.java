package quoin.logbook.file;

/** A text that is not what its format says; the message names the field. */
public final class FormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public FormatException(String message) {
        super(message);
    }

    public FormatException(String message, Throwable cause) {
        super(message, cause);
    }
}
