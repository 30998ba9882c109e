package quoin.logbook.file;

import java.io.IOException;
import quoin.quantities.Phrase;

/** A file that cannot be read or written for a reason the system does not tell by itself. */
public final class DiskException extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient Phrase words;

    public DiskException(Phrase words) {
        this.words = words;
    }

    public DiskException(Phrase words, Throwable cause) {
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
