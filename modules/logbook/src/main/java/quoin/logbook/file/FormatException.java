package quoin.logbook.file;

import quoin.quantities.NotTakenException;
import quoin.quantities.Phrase;

/** A text that is not what its format says; the message names the field. */
public final class FormatException extends NotTakenException {

    private static final long serialVersionUID = 1L;

    public FormatException(Phrase words) {
        super(words);
    }

    public FormatException(Phrase words, Throwable cause) {
        super(words, cause);
    }
}
