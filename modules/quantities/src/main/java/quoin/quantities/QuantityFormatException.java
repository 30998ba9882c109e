package quoin.quantities;

/**
 * A typed figure that cannot be taken, in words for the person who typed it. Carries no stack trace: it is an answer to
 * the user, not a fault of the program, and is made on every key stroke of a half-typed figure.
 */
public final class QuantityFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Phrase problem;
    private final transient Phrase remedy;
    private final int position;

    QuantityFormatException(Phrase problem, Phrase remedy, int position) {
        this.problem = problem;
        this.remedy = remedy;
        this.position = position;
    }

    /** What is wrong, without a full stop. */
    public String problem() {
        return problem.toString();
    }

    /** How to type it, without a full stop. */
    public String remedy() {
        return remedy.toString();
    }

    /** Index of the first offending character in the typed text; its length if something is missing at the end. */
    public int position() {
        return position;
    }

    /** Problem and remedy in English. */
    @Override
    public String getMessage() {
        return problem.english() + "; " + remedy.english();
    }

    /** Problem and remedy in the language of the program. */
    @Override
    public String getLocalizedMessage() {
        return problem() + "; " + remedy();
    }

    @Override
    public synchronized Throwable fillInStackTrace() {
        return this;
    }
}
