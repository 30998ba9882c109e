package quoin.quantities;

/** A value that cannot be taken, in words for the person it came from, who typed it or whose file holds it. */
public class NotTakenException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Phrase words;

    /** @param words what is wrong and what would be right, without a full stop */
    public NotTakenException(Phrase words) {
        this(words, null);
    }

    /** @param words what is wrong and what would be right, without a full stop */
    public NotTakenException(Phrase words, Throwable cause) {
        super(cause);
        this.words = words;
    }

    /** The words in English. */
    @Override
    public final String getMessage() {
        return words.english();
    }

    /** The words in the language of the program. */
    @Override
    public final String getLocalizedMessage() {
        return words.toString();
    }
}
