package quoin.mechanics;

import quoin.quantities.Phrase;

/** The car cannot stand: no state of rest exists, or none that is stable. The message says what to look at. */
public final class NoEquilibriumException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Phrase words;

    NoEquilibriumException(Phrase words) {
        this.words = words;
    }

    NoEquilibriumException(Phrase words, Throwable cause) {
        super(cause);
        this.words = words;
    }

    /** What to look at, in English. */
    @Override
    public String getMessage() {
        return words.english();
    }

    /** What to look at, in the language of the program. */
    @Override
    public String getLocalizedMessage() {
        return words.toString();
    }
}
