package quoin.logbook;

import java.nio.file.Path;

/** A day or a car could not be read or written; the message names the file and what to do. */
public final class JournalException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final boolean readable;

    JournalException(Path file, String words, Throwable cause) {
        this(file, words, cause, false);
    }

    JournalException(Path file, String words, Throwable cause, boolean readable) {
        super(file + ": " + Brief.of(words), cause);
        this.file = file;
        this.readable = readable;
    }

    JournalException(Path file, String words) {
        this(file, words, null);
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
