package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day on a small disk of its own, a tmpfs, which the system lets its administrator make; skipped where it does not. */
class RealDiskTest {

    @TempDir
    Path folder;

    private Path disk;
    private Path second;
    private boolean mounted;

    @BeforeEach
    void makeDisk() throws IOException {
        disk = Files.createDirectory(folder.resolve("disk"));
        second = folder.resolve("second");
        mounted = system("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk.toString());
        assumeTrue(mounted, "this user may not mount a small file system");
    }

    @AfterEach
    void takeDiskAway() {
        if (mounted) {
            system("umount", "-l", disk.toString());
        }
    }

    private static boolean system(String... command) {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private Journal begin() {
        Journal.create(disk.resolve("day"), Samples.bareCar(), "").close();
        Journal journal = Journal.open(disk.resolve("day"));
        journal.waitIn(second, () -> { }, Duration.ofMinutes(1));
        return journal;
    }

    private List<String> words() {
        try (Journal journal = Journal.openReadOnly(disk.resolve("day"))) {
            assertEquals(List.of(), journal.findings());
            return journal.entries().stream().filter(Entry.Note.class::isInstance).map(e -> ((Entry.Note) e).words()).toList();
        }
    }

    @Test
    void dayGoesOnWhileTheDiskIsFullAndIsWholeAfterwards() throws IOException {
        List<String> recorded = new ArrayList<>();
        Path ballast = disk.resolve("ballast");
        Files.write(ballast, new byte[24 << 10]);
        try (Journal journal = begin()) {
            for (int n = 0; journal.waiting().isEmpty(); n++) {
                assertTrue(n < 2000, "the disk never filled");
                recorded.add("entry of some length number " + n);
                journal.append(Samples.note(recorded.get(n)));
            }
            assertTrue(recorded.size() > 20, "too small a disk: " + recorded.size());
            assertTrue(journal.waiting().orElseThrow().why().contains("space"), journal.waiting().orElseThrow().why());
            recorded.add("typed while the disk is full");
            journal.append(Samples.note("typed while the disk is full"));
            assertEquals(recorded.subList(0, recorded.size() - 2), words(), "the file ends well while entries wait");
            Files.delete(ballast);
            recorded.add("after room was made");
            journal.append(Samples.note("after room was made"));
        }
        assertEquals(recorded, words());
    }

    @Test
    void dayOfADiskMadeReadOnlyWaitsAndIsOfferedToLookAt() {
        try (Journal journal = begin()) {
            journal.append(Samples.note("before"));
            // open files keep a disk from becoming read-only; the day is open, so the system refuses, and nothing changes
            assertFalse(system("mount", "-o", "remount,ro", disk.toString()), "a disk with an open day was made read-only");
        }
        assertTrue(system("mount", "-o", "remount,ro", disk.toString()));
        JournalException e = assertThrows(JournalException.class, () -> Journal.open(disk.resolve("day")));
        assertTrue(e.isReadable(), "it can be looked at");
        assertTrue(e.getMessage().contains("open it to look at only"), e.getMessage());
        assertEquals(List.of("before"), words());
        JournalException begun = assertThrows(JournalException.class,
                () -> Journal.create(disk.resolve("other"), Samples.bareCar(), ""));
        assertTrue(begun.getMessage().contains("read-only") || begun.getMessage().contains("Read-only"), begun.getMessage());
    }

    @Test
    void dayOfADiskPulledOutWaitsElsewhere() throws IOException {
        try (Journal journal = begin()) {
            journal.append(Samples.note("before"));
            assertTrue(system("umount", "-l", disk.toString()));
            mounted = false;
            journal.append(Samples.note("after the stick was pulled"));
            Waiting waiting = journal.waiting().orElseThrow();
            assertEquals("not found", waiting.why());
            assertTrue(Files.readString(waiting.place()).contains("after the stick was pulled"));
        }
    }
}
