package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalDiskTest {

    @TempDir
    Path folder;

    private final SickDisk disk = new SickDisk();

    private Journal open() {
        Path day = folder.resolve("day");
        if (!Files.exists(day)) {
            Journal.create(day, Samples.bareCar(), "", Samples.CLOCK).close();
        }
        return Journal.open(day, Samples.CLOCK, disk);
    }

    private byte[] file() throws IOException {
        return Files.readAllBytes(folder.resolve("day/day.jsonl"));
    }

    @Test
    void fullDiskRecordsNothingAndSaysSo() throws IOException {
        try (Journal journal = open()) {
            byte[] before = file();
            for (int room = 0; room < 80; room += 7) {
                disk.room = room;
                JournalException e = assertThrows(JournalException.class, () -> journal.append(Samples.note("twelve words")));
                assertTrue(e.getMessage().contains("day.jsonl") && e.getMessage().contains("No space left on device")
                        && e.getMessage().contains("make room on the disk"), e.getMessage());
                assertArrayEquals(before, file());
                assertEquals(1, journal.entries().size());
            }
            disk.room = Long.MAX_VALUE;
            assertEquals(2, journal.append(Samples.note("room again")).number());
        }
        try (Journal journal = open()) {
            assertEquals(List.of(), journal.findings());
            assertEquals(2, journal.entries().size());
        }
    }

    @Test
    void entryThatIsNotForcedDoesNotCount() throws IOException {
        try (Journal journal = open()) {
            byte[] before = file();
            disk.forceFails = true;
            assertThrows(JournalException.class, () -> journal.append(Samples.note("lost")));
            disk.forceFails = false;
            assertArrayEquals(before, file());
            assertEquals(2, journal.append(Samples.note("kept")).number());
        }
    }

    @Test
    void halfLineThatCannotBeCutOffIsCutOffBeforeTheNextEntry() {
        try (Journal journal = open()) {
            disk.room = 20;
            disk.truncateFails = true;
            JournalException e = assertThrows(JournalException.class, () -> journal.append(Samples.note("half")));
            assertEquals(1, e.getCause().getSuppressed().length);
            disk.room = Long.MAX_VALUE;
            assertThrows(JournalException.class, () -> journal.append(Samples.note("still not")));
            disk.truncateFails = false;
            assertEquals(2, journal.append(Samples.note("whole")).number());
        }
        try (Journal journal = open()) {
            assertEquals(List.of(), journal.findings());
        }
    }

    @Test
    void halfLineOfABrokenDiskIsFoundOnReopening() {
        try (Journal journal = open()) {
            disk.room = 20;
            disk.truncateFails = true;
            assertThrows(JournalException.class, () -> journal.append(Samples.note("half")));
        }
        disk.truncateFails = false;
        disk.room = Long.MAX_VALUE;
        try (Journal journal = open()) {
            assertEquals(List.of(FileFinding.Kind.TORN_END), journal.findings().stream().map(FileFinding::kind).toList());
            assertEquals(1, journal.entries().size());
        }
    }

    @Test
    void everyEntryIsForcedToTheDisk() {
        try (Journal journal = open()) {
            for (int n = 1; n <= 5; n++) {
                journal.append(Samples.note("x"));
                assertEquals(n, disk.forced);
            }
        }
    }

    @Test
    void interruptDoesNotLoseAnEntry() {
        try (Journal journal = open()) {
            Thread.currentThread().interrupt();
            assertEquals(2, journal.append(Samples.note("interrupted")).number());
            assertTrue(Thread.interrupted(), "the interrupt is passed on");
            assertEquals(3, journal.append(Samples.note("after")).number());
        }
    }

    @Test
    void linesOfAnotherProgramAreNotOverwritten() throws IOException {
        try (Journal journal = open()) {
            Files.writeString(folder.resolve("day/day.jsonl"), "{}\n", StandardOpenOption.APPEND);
            byte[] before = file();
            JournalException e = assertThrows(JournalException.class, () -> journal.append(Samples.note("x")));
            assertTrue(e.getMessage().contains("changed by another program"), e.getMessage());
            assertArrayEquals(before, file());
        }
    }

    @Test
    void lockThatCannotBeTakenLeavesTheDayToLookAt() throws IOException {
        open().close();
        Files.delete(folder.resolve("day/day.lock"));
        Files.createDirectory(folder.resolve("day/day.lock"));
        JournalException e = assertThrows(JournalException.class, this::open);
        assertTrue(e.getMessage().contains("cannot be written") && e.getMessage().contains("open it to look at only"), e.getMessage());
        try (Journal journal = Journal.openReadOnly(folder.resolve("day"))) {
            assertEquals(1, journal.entries().size());
        }
    }

    @Test
    void folderWithoutPermissionSaysWhatToDo() throws IOException {
        assumeFalse(System.getProperty("os.name").startsWith("Windows"), "folders there have other permissions");
        assumeFalse("root".equals(System.getProperty("user.name")), "the administrator may write everywhere");
        open().close();
        Files.delete(folder.resolve("day/day.lock"));
        Files.setPosixFilePermissions(folder.resolve("day"), PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            JournalException e = assertThrows(JournalException.class, this::open);
            assertTrue(e.getMessage().contains("no permission"), e.getMessage());
            JournalException begun = assertThrows(JournalException.class,
                    () -> Journal.create(folder.resolve("day/inner"), Samples.bareCar(), ""));
            assertTrue(begun.getMessage().contains("choose a folder you may write to"), begun.getMessage());
        } finally {
            Files.setPosixFilePermissions(folder.resolve("day"), PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    void fileInTheWayOfAFolderSaysWhatToDo() throws IOException {
        Files.writeString(folder.resolve("way"), "");
        JournalException e = assertThrows(JournalException.class,
                () -> Journal.create(folder.resolve("way/day"), Samples.bareCar(), ""));
        assertTrue(e.getMessage().contains("choose a folder you may write to"), e.getMessage());
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(1, left.count());
        }
    }
}
