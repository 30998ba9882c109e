package quoin.logbook;

import java.nio.file.Path;
import quoin.quantities.Phrase;

/** A day or a car could not be read or written; the message names the file and what to do. */
public final class JournalException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final transient Phrase words;
    private final boolean readable;

    JournalException(Path file, Phrase words, Throwable cause) {
        this(file, words, cause, false);
    }

    JournalException(Path file, Phrase words, Throwable cause, boolean readable) {
        super(cause);
        this.words = words;
        this.file = file;
        this.readable = readable;
    }

    JournalException(Path file, Phrase words) {
        this(file, words, null);
    }

    /** File and words in English. */
    @Override
    public String getMessage() {
        return file + ": " + Brief.of(words.english());
    }

    /** The same in the language of the program. */
    @Override
    public String getLocalizedMessage() {
        return file + ": " + Brief.of(words.toString());
    }

    /** The file it is about. */
    public Path file() {
        return file;
    }

    /** True where the day could not be opened to write but can be opened to look at. */
    public boolean isReadable() {
        return readable;
    }
}
