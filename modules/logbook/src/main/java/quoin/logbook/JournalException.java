package quoin.logbook;

import java.nio.file.Path;

/** A day or a car could not be read or written; the message names the file and what to do. */
public final class JournalException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Path file;

    JournalException(Path file, String words, Throwable cause) {
        super(file + ": " + words, cause);
        this.file = file;
    }

    JournalException(Path file, String words) {
        this(file, words, null);
    }

    /** The file it is about. */
    public Path file() {
        return file;
    }
}
