package quoin.commandline;

/** A request file that is not of the agreed form; the message says where and why, in one line. */
final class RequestFormException extends Exception {
    private static final long serialVersionUID = 1L;

    RequestFormException(String message) {
        super(message);
    }
}
