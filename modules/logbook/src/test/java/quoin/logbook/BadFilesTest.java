package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.logbook.file.LineContents;

/**
 * Damaged files: no crash, no hang, memory bounded; each is opened with findings or refused with words that say where, and the
 * good entries around a damaged line are kept. {@code -Dquoin.mutations} asks for more of them.
 */
class BadFilesTest {

    private static final int USUAL = 2500;
    /** A long run can be done in parts: the number of the first damage. */
    private static final long SEED = 20260307 + Integer.getInteger("quoin.mutations.first", 0);
    private static final long LONGEST_MS = 1000;
    private static final int MOST_WORDS = 1200;

    @TempDir
    Path folder;

    private byte[] day;
    private int opened;
    private int withFindings;
    private int refused;
    private final Spent spent = new Spent();

    @BeforeEach
    void record() throws IOException {
        Path original = folder.resolve("original");
        try (Journal journal = Journal.create(original, Samples.fullCar(), "Damaged later", Samples.CLOCK)) {
            Samples.everyKind().stream().filter(e -> !(e instanceof Entry.Correction)).forEach(journal::append);
            journal.append(new Entry.Correction(Header.draft(""), 3, Optional.empty(), "undo"));
        }
        day = Files.readAllBytes(original.resolve(Journal.FILE));
    }

    /** Time of this thread alone, so that other work on the machine does not count. */
    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static int mutations() {
        return Integer.getInteger("quoin.mutations", USUAL * 2) / 2;
    }

    @Test
    void damagedDaysOpenWithFindingsOrAreRefusedWithWords() throws IOException {
        Path damaged = Files.createDirectories(folder.resolve("damaged"));
        for (int n = 0; n < mutations(); n++) {
            byte[] bytes = new Mutator(SEED + n).damage(day);
            Files.write(damaged.resolve(Journal.FILE), bytes);
            spent.begin();
            openDay(damaged, bytes, n);
            spent.end();
        }
        tell("days", mutations());
    }

    private void openDay(Path damaged, byte[] bytes, int n) {
        try (Journal journal = Journal.openReadOnly(damaged)) {
            opened++;
            withFindings += journal.findings().isEmpty() ? 0 : 1;
            long lines = LineContents.of(bytes).lines().size() - 1L;
            long unreadable = journal.findings().stream().filter(f -> f.kind() == FileFinding.Kind.DAMAGED_LINE).count();
            assertEquals(lines, journal.entries().size() + unreadable, "damage " + n + ": a line is neither an entry nor a finding");
            journal.findings().forEach(f -> assertTrue(!f.words().isBlank() && f.words().length() < MOST_WORDS));
            if (journal.findings().stream().noneMatch(f -> f.kind() == FileFinding.Kind.NO_CAR)) {
                Day computed = journal.day();
                assertEquals(journal.entries().size(), computed.written().size());
            }
        } catch (JournalException e) {
            refused++;
            assertTrue(e.getMessage().contains(Journal.FILE) && e.getMessage().length() < MOST_WORDS, "damage " + n + ": " + e.getMessage());
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            throw new AssertionError("damage " + n + " of the day", e);
        }
    }

    @Test
    void damagedCarsAreReadOrRefusedWithTheField() throws IOException {
        Path file = folder.resolve("car.json");
        byte[] car = CarFile.toText(Samples.fullCar()).getBytes(StandardCharsets.UTF_8);
        for (int n = 0; n < mutations(); n++) {
            Files.write(file, new Mutator(SEED + n).damage(car));
            spent.begin();
            try {
                CarFile.read(file);
                opened++;
            } catch (JournalException e) {
                refused++;
                assertTrue(e.getMessage().contains("car.json") && e.getMessage().length() < MOST_WORDS, "damage " + n + ": " + e.getMessage());
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                throw new AssertionError("damage " + n + " of the car", e);
            }
            spent.end();
        }
        tell("cars", mutations());
    }

    private void tell(String what, int number) {
        spent.tell(number + " damaged " + what + ": " + opened + " opened (" + withFindings + " with findings), " + refused + " refused");
        assertTrue(opened > number / 100 && refused > number / 100, "the damage is too light or too heavy to mean anything");
    }

    /** One line damaged in a day leaves every other entry as it was. */
    @Test
    void goodEntriesAroundADamagedLineAreKept() throws IOException {
        Path damaged = Files.createDirectories(folder.resolve("line"));
        Path file = damaged.resolve(Journal.FILE);
        Files.write(file, day);
        List<Entry> all;
        try (Journal journal = Journal.openReadOnly(damaged)) {
            all = journal.entries();
        }
        List<byte[]> lines = LineContents.of(day).lines();
        for (int n = 0; n < 300; n++) {
            int hit = 1 + n % (lines.size() - 1);
            byte[] bad = new Mutator(SEED + n).damage(lines.get(hit));
            for (int i = 0; i < bad.length; i++) {
                bad[i] = bad[i] == '\n' ? (byte) ' ' : bad[i];
            }
            try (OutputStream out = Files.newOutputStream(file)) {
                for (int i = 0; i < lines.size(); i++) {
                    out.write(i == hit ? bad : lines.get(i));
                    out.write('\n');
                }
            }
            List<Entry> others = new ArrayList<>(all);
            others.remove(hit - 1);
            try (Journal journal = Journal.openReadOnly(damaged)) {
                List<Entry> kept = new ArrayList<>(journal.entries());
                kept.retainAll(others);
                assertEquals(others, kept, "damage " + n + " in line " + (hit + 1));
            }
        }
    }

    @Test
    void fileThatClaimsToBeHugeIsRefusedAtOnce() throws IOException {
        Path huge = Files.createDirectories(folder.resolve("huge"));
        for (String name : List.of(Journal.FILE, "car.json")) {
            try (FileChannel channel = FileChannel.open(huge.resolve(name), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
                channel.write(ByteBuffer.wrap(new byte[] {'{'}), (1L << 30) - 1);
            }
        }
        long begun = cpuNanos();
        JournalException day = assertThrows(JournalException.class, () -> Journal.openReadOnly(huge));
        assertTrue(day.getMessage().contains("larger than"), day.getMessage());
        JournalException car = assertThrows(JournalException.class, () -> CarFile.read(huge.resolve("car.json")));
        assertTrue(car.getMessage().contains("too large"), car.getMessage());
        assertTrue(TimeUnit.NANOSECONDS.toMillis(cpuNanos() - begun) < LONGEST_MS);
    }

    @Test
    void longLineCostsNoMoreThanItsLength() throws IOException {
        Path line = Files.createDirectories(folder.resolve("long-line"));
        byte[] long20 = new byte[20 << 20];
        Arrays.fill(long20, (byte) '[');
        Files.write(line.resolve(Journal.FILE), day);
        Files.write(line.resolve(Journal.FILE), long20, StandardOpenOption.APPEND);
        Files.write(line.resolve(Journal.FILE), new byte[] {'\n'}, StandardOpenOption.APPEND);
        long begun = cpuNanos();
        try (Journal journal = Journal.openReadOnly(line)) {
            assertEquals(LineContents.of(day).lines().size() - 1, journal.entries().size());
            assertTrue(journal.findings().stream().anyMatch(f -> f.words().contains("longer than")), journal.findings().toString());
        }
        assertTrue(TimeUnit.NANOSECONDS.toMillis(cpuNanos() - begun) < LONGEST_MS);
    }
}
