package quoin.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workflow.Derived;
import quoin.workflow.OrderOfWork;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/** The light car of 469 kg with its driver, LF 90, RF 101, LR 146, RR 132 kg (common practice, no source). */
class WorkingsTest {

    private List<Working> workings;

    /** Weighs and judges everything. */
    private static final class Weighing implements Stage {
        @Override
        public String id() {
            return "weighing";
        }

        @Override
        public int position() {
            return 1;
        }

        @Override
        public String title() {
            return "Weighing";
        }

        @Override
        public String purpose() {
            return "";
        }

        @Override
        public List<ReadingId> readings(Car car) {
            List<ReadingId> all = new ArrayList<>(car.cornerReadings(ReadingKind.LOAD));
            all.addAll(car.cornerReadings(ReadingKind.TOE));
            return all;
        }

        @Override
        public List<ReadingId> judged(Car car) {
            return Derived.all(car);
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

    @BeforeEach
    void weigh() {
        Map<ReadingId, Double> read = new LinkedHashMap<>();
        read.put(ReadingId.of(ReadingKind.LOAD, Corner.LF), 90.0);
        read.put(ReadingId.of(ReadingKind.LOAD, Corner.RF), 101.0);
        read.put(ReadingId.of(ReadingKind.LOAD, Corner.LR), 146.0);
        read.put(ReadingId.of(ReadingKind.LOAD, Corner.RR), 132.0);
        for (Corner corner : Corner.values()) {
            read.put(ReadingId.of(ReadingKind.TOE, corner), 0.1);
        }
        Day day = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car()),
                new Entry.Reading(new Header(2, Instant.EPOCH, "weighing"), read, Map.of(), Entry.Source.RACER)));
        workings = Workings.of(new DaySnapshot(day, new OrderOfWork(List.of(new Weighing())).status(day), DisplayUnits.usual()), "weighing");
    }

    private Working of(String title) {
        return workings.stream().filter(w -> w.title().contains(title)).findFirst()
                .orElseThrow(() -> new AssertionError(title + " is not among " + workings));
    }

    @Test
    void crossWeightWithTheNumbersPutIn() {
        Working cross = of("cross");
        assertEquals("52.67 %", cross.result());
        assertTrue(cross.lines().get(0).contains("100 × (101.0 + 146.0) / 469.0 = 52.67 %"), cross.lines().toString());
    }

    @Test
    void frontShareWithTheNumbersPutIn() {
        assertTrue(of("front share").lines().get(0).contains("(90.0 + 101.0) / 469.0 = 40.72 %"), of("front share").lines().toString());
    }

    /** 372 mm times sin 0.1 deg is 0.649 mm. */
    @Test
    void toeInMillimetresFromItsAngle() {
        assertTrue(of("LF toe").lines().stream().anyMatch(l -> l.contains("372.00 mm × sin 0.100° = 0.65 mm")), of("LF toe").lines().toString());
    }

    /** 61.3 N/mm at a motion ratio of 0.72: 31.78 N/mm; with a tyre of 190 N/mm 27.2 N/mm. */
    @Test
    void wheelRateFromSpringAndMotionRatio() {
        List<String> lines = of("LF wheel rate").lines();
        assertTrue(lines.get(0).contains("0.720² = 31.8"), lines.toString());
        assertTrue(lines.get(1).contains("= 27.2"), lines.toString());
    }

    /** 2380 mm times 278 over 469 is 1410.75 mm, shown in whole mm: the scales do not know it better. */
    @Test
    void centreOfGravityBehindTheFrontAxle() {
        assertEquals("1411 mm", of("CG").result());
    }

    @Test
    void theVerdictWithItsGuardBand() {
        List<String> lines = of("cross").lines();
        assertTrue(lines.stream().anyMatch(l -> l.contains("52.67 − 50.00 = +2.67 %")), lines.toString());
        assertTrue(lines.get(lines.size() - 2).contains("outside"), lines.toString());
    }
}
