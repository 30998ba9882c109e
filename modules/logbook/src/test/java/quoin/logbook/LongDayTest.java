package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.file.StrictJson;

/** A day far longer than any real one opens while the racer waits, and is folded without his noticing. */
class LongDayTest {

    private static final int ENTRIES = 10_000;

    @TempDir
    Path folder;

    @Test
    void tenThousandEntriesOpenWithinASecond() throws IOException {
        Path day = folder.resolve("day");
        Journal.create(day, Samples.fullCar(), "").close();
        List<Entry> entries = entries();
        try (OutputStream out = Files.newOutputStream(day.resolve("day.jsonl"), java.nio.file.StandardOpenOption.APPEND)) {
            for (Entry entry : entries.subList(1, ENTRIES)) {
                out.write(StrictJson.line(EntryJson.write(entry)));
                out.write('\n');
            }
        }
        double seconds = best(3, () -> {
            try (Journal journal = Journal.open(day)) {
                return journal.entries().size();
            }
        });
        assertTrue(seconds < 1, "opening took " + seconds + " s");
    }

    @Test
    void tenThousandEntriesFoldWithinATenthOfASecond() {
        List<Entry> entries = entries();
        double seconds = best(5, () -> Day.of(entries).written().size());
        assertTrue(seconds < 0.1, "the fold took " + seconds + " s");
    }

    /** Least processor time of this thread in seconds; what else the machine is doing does not count. */
    private static double best(int runs, Supplier<Integer> work) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double best = Double.MAX_VALUE;
        for (int i = 0; i < runs; i++) {
            long start = threads.getCurrentThreadCpuTime();
            assertEquals(ENTRIES, work.get());
            best = Math.min(best, (threads.getCurrentThreadCpuTime() - start) / 1e9);
        }
        return best;
    }

    /** Rounds of settle, four loads, a turn and a correction now and then. */
    private static List<Entry> entries() {
        List<Entry> all = new ArrayList<>(List.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar())));
        while (all.size() < ENTRIES) {
            long number = all.size() + 1;
            Header h = Samples.header(number);
            all.add(switch ((int) (number % 5)) {
                case 0 -> new Entry.Condition(h, Conditions.SETTLED, Conditions.YES, "");
                case 1 -> new Entry.Condition(h, "key" + number % 20, Conditions.IN, "");
                case 2 -> new Entry.Adjustment(h, List.of(new Entry.Turn(Samples.RR_PERCH, 0.125, OptionalDouble.empty())), "");
                case 3 -> number % 50 == 3 && number > 50 ? new Entry.Correction(h, number - 4, java.util.Optional.empty(), "undo")
                        : Samples.note("note").withHeader(h);
                default -> new Entry.Reading(h, loads(number), Map.of(), Entry.Source.RACER);
            });
        }
        return all;
    }

    private static Map<ReadingId, Double> loads(long number) {
        return Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), 150 + number % 7 * 0.2, ReadingId.of(ReadingKind.LOAD, Corner.RF), 160.2,
                ReadingId.of(ReadingKind.LOAD, Corner.LR), 155.4, ReadingId.of(ReadingKind.LOAD, Corner.RR), 163.0);
    }
}
