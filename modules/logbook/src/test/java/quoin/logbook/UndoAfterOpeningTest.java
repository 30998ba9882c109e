package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A long day was opened, and the last entries are undone one after the other: nothing is computed from all entries again. */
class UndoAfterOpeningTest {

    private static final int LONG = 2000;
    private static final int UNDONE = 20;

    /** The number of entries that count, and the days it was counted from the beginning for. */
    private static final class Counted implements Derivation<Integer> {
        private final List<Integer> whole = new ArrayList<>();

        @Override
        public Integer of(Day day) {
            whole.add(day.written().size());
            return day.effective().size();
        }

        @Override
        public Integer onward(Day then, Integer known, Day now) {
            assertTrue(now.written().size() - then.written().size() < LONG / 4, "carried on from too far back");
            return known + now.effective().size() - then.effective().size();
        }
    }

    @Test
    void goesOnFromAStateBeforeTheEnd() {
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry.CarDescribed(Samples.header(1), Samples.bareCar()));
        for (long n = 2; n <= LONG; n++) {
            entries.add(Samples.note("note " + n).withHeader(Samples.header(n)));
        }
        Counted counted = new Counted();
        Day day = Day.of(entries);
        assertEquals(LONG, day.derive(counted));
        for (int undone = 1; undone <= UNDONE; undone++) {
            day = day.with(new Entry.Correction(Samples.header(LONG + undone), LONG + 1L - undone, Optional.empty(), "undo"));
            assertEquals(LONG - undone, day.derive(counted));
        }
        assertEquals(1, counted.whole.size(), "computed from the beginning for days of so many entries: " + counted.whole);
    }
}
