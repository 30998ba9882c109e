package quoin.exchange;

/** A shared file that cannot be made or taken in; the message says why and what to do. */
public final class ShareException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ShareException(String message) {
        super(message);
    }

    ShareException(String message, Throwable cause) {
        super(message, cause);
    }
}
