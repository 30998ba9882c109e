package quoin.setupsheet;

/** There is no earlier day of the car to compare with; the message says so in words. */
public final class NoLastTimeException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    NoLastTimeException(String words) {
        super(words);
    }
}
