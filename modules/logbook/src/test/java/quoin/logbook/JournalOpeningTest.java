package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day that could not be opened is left so that it can be once its trouble is mended. */
class JournalOpeningTest {

    @TempDir
    Path folder;

    private Path file;
    private String whole;

    @BeforeEach
    void aDay() throws IOException {
        Journal.create(folder.resolve("day"), Samples.bareCar(), "Track day", Samples.CLOCK).close();
        file = folder.resolve("day").resolve(Journal.FILE);
        whole = Files.readString(file);
    }

    private Journal open() {
        return Journal.open(file.getParent(), Samples.CLOCK);
    }

    @Test
    void aDamagedDayIsNotLocked() throws IOException {
        Files.writeString(file, "rubbish\n");
        assertThrows(JournalException.class, this::open);
        Files.writeString(file, whole);
        open().close();
    }

    @Test
    void aDayOfANewerFormatIsNotLocked() throws IOException {
        Files.writeString(file, whole.replaceFirst("\"format\":1", "\"format\":2"));
        try (Journal newer = open(); Journal again = open()) {
            assertTrue(newer.isReadOnly() && again.isReadOnly());
            assertEquals(List.of(FileFinding.Kind.NEWER_FORMAT), again.findings().stream().map(FileFinding::kind).toList());
        }
    }

    @Test
    void aFileThatIsNoFileIsNoDay() throws IOException {
        Files.delete(file);
        Files.createDirectory(file);
        assertTrue(assertThrows(JournalException.class, this::open).getMessage().contains("there is no day here"));
        assertThrows(JournalException.class, () -> Journal.openReadOnly(file.getParent()));
    }

    @Test
    void aDayIsListedByItsFirstLineAlone() throws IOException {
        assertEquals("Track day", JournalOpening.firstLine(file).title());
        Files.writeString(file, whole.lines().findFirst().orElseThrow());
        assertEquals("Track day", JournalOpening.firstLine(file).title(), "also where its end is missing");
        Files.delete(file);
        assertTrue(assertThrows(JournalException.class, () -> JournalOpening.firstLine(file)).getMessage().contains("not found"));
    }

    @Test
    void aDayIsNotBegunWhereNothingCanBeWritten() throws IOException {
        Files.writeString(folder.resolve("way"), "");
        Path inTheWay = folder.resolve("way").resolve("day");
        assertTrue(assertThrows(JournalException.class, () -> Journal.create(inTheWay, Samples.bareCar(), "")).getMessage().contains("day.jsonl"));
        Path missing = folder.resolve("a/b/day");
        Journal.create(missing, Samples.bareCar(), "").close();
        assertTrue(Files.isRegularFile(missing.resolve(Journal.FILE)), "folders are made");
    }

    /** What the system says of a file is often its name only: the racer is told the kind of trouble. */
    @Test
    void troubleIsToldInWords() {
        String name = "/media/stick/day.jsonl";
        List<String> words = List.of(new AccessDeniedException(name), new ReadOnlyFileSystemException(), new NoSuchFileException(name),
                new FileAlreadyExistsException(name), new IOException("No space left on device")).stream()
                .map(e -> DiskTrouble.of(e).toString()).toList();
        assertEquals("no permission", words.get(0));
        assertTrue(words.get(1).contains("read"), words.get(1));
        assertEquals("not found", words.get(2));
        assertTrue(words.get(3).contains("in the way"), words.get(3));
        assertEquals("No space left on device", words.get(4));
    }
}
