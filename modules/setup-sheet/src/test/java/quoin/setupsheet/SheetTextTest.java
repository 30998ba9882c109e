package quoin.setupsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workflow.OrderOfWork;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

class SheetTextTest {

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void showsFiguresPositionsAndWhatIsNotSigned() {
        entries.add(new Entry.CarDescribed(next(), Ouzel23.car()));
        entries.add(new Entry.Condition(next(), Conditions.DRIVER, Conditions.IN, ""));
        entries.add(new Entry.Reading(next(), Map.of(load(Corner.LF), 160.2, load(Corner.RF), 170.4, load(Corner.LR), 150.0,
                load(Corner.RR), 157.6), Map.of(), Entry.Source.RACER));
        AdjusterId perch = new AdjusterId(AdjusterKind.PERCH, Corner.RF);
        entries.add(new Entry.Adjustment(next(), List.of(new Entry.Turn(perch, 0.375, OptionalDouble.empty())), ""));
        entries.add(new Entry.Note(next(), "RF ring was dry"));
        String sheet = sheet();
        assertTrue(sheet.contains("Ouzel 23"), sheet);
        assertTrue(sheet.matches("(?s).*LF +RF\\n +weight 160.2 kg +weight 170.4 kg\\n.*"), sheet);
        assertTrue(sheet.matches("(?s).*RF perch +.*3 notches up\\n.*"), sheet);
        assertTrue(sheet.contains("RF ring was dry"), sheet);
        assertTrue(sheet.matches("(?s).*Corner weights +NOT SIGNED.*"), sheet);
        assertTrue(sheet.contains("NOT CLOSED"), sheet);
        assertTrue(sheet.contains("RF perch turned"), "the weights are stale and the sheet says why: " + sheet);
    }

    @Test
    void printsTheReasonOfADayClosedOutOfOrder() {
        entries.add(new Entry.CarDescribed(next(), Ouzel23.car()));
        entries.add(new Entry.DayClosed(next(), Optional.of("rain, trailer leaves at six")));
        assertTrue(sheet().contains("OUT OF ORDER: rain, trailer leaves at six"), sheet());
    }

    @Test
    void fitsThePaper() {
        showsFiguresPositionsAndWhatIsNotSigned();
        long tooWide = sheet().lines().filter(l -> l.length() > 130).count();
        assertEquals(0, tooWide, sheet());
        assertFalse(sheet().lines().anyMatch(l -> l.endsWith(" ")), "no blanks at line ends");
    }

    private String sheet() {
        Day day = Day.of(entries);
        DaySnapshot snapshot = new DaySnapshot(day, new OrderOfWork(List.of(new Weights())).status(day), DisplayUnits.usual());
        return SheetText.of(snapshot, ZoneOffset.UTC);
    }

    private Header next() {
        return new Header(entries.size() + 1, Instant.parse("2026-05-02T08:00:00Z").plusSeconds(entries.size()), "corner-weights");
    }

    private static ReadingId load(Corner corner) {
        return ReadingId.of(ReadingKind.LOAD, corner);
    }

    /** The least a stage can be. */
    private static final class Weights implements Stage {
        @Override
        public String id() {
            return "corner-weights";
        }

        @Override
        public int position() {
            return 300;
        }

        @Override
        public String title() {
            return "Corner weights";
        }

        @Override
        public String purpose() {
            return "Loads on the four wheels.";
        }

        @Override
        public List<ReadingId> readings(Car car) {
            return car.cornerReadings(ReadingKind.LOAD);
        }

        @Override
        public List<ReadingId> judged(Car car) {
            return List.of(ReadingId.ofCar(ReadingKind.CROSS));
        }

        @Override
        public List<Requirement> requirements(Car car) {
            return List.of();
        }

        @Override
        public Set<AdjusterKind> adjusters() {
            return Set.of(AdjusterKind.PERCH);
        }

        @Override
        public List<Finding> findings(Day day) {
            return List.of();
        }
    }
}
