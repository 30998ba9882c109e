package quoin.logbook.file;

import quoin.quantities.Phrase;

/** A text that is not what its format says; the message names the field. */
public final class FormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient Phrase words;

    public FormatException(Phrase words) {
        this.words = words;
    }

    public FormatException(Phrase words, Throwable cause) {
        super(cause);
        this.words = words;
    }

    /** The words in English. */
    @Override
    public String getMessage() {
        return words.english();
    }

    /** The words in the language of the program. */
    @Override
    public String getLocalizedMessage() {
        return words.toString();
    }
}
