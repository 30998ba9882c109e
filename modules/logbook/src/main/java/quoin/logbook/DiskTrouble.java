package quoin.logbook;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/** What went wrong with a file, in words. */
public final class DiskTrouble {

    private static final Texts TEXTS = Texts.of(DiskTrouble.class);

    private DiskTrouble() {
    }

    /** What the system says, where it says only a file's name the kind of trouble instead. */
    public static Phrase of(Exception e) {
        if (e instanceof AccessDeniedException) {
            return TEXTS.phrase("noPermission");
        }
        if (e instanceof ReadOnlyFileSystemException) {
            return TEXTS.phrase("readOnly");
        }
        if (e instanceof NoSuchFileException) {
            return TEXTS.phrase("notFound");
        }
        return e instanceof FileAlreadyExistsException ? TEXTS.phrase("inTheWay") : TEXTS.phrase("said", e);
    }
}
