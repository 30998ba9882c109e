package quoin.exchange;

import quoin.logbook.Brief;

/** A shared file that cannot be made or taken in; the message says why and what to do. */
public final class ShareException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ShareException(String message) {
        super(Brief.of(message));
    }

    ShareException(String message, Throwable cause) {
        super(Brief.of(message), cause);
    }
}
