package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.spi.Requirement;

/** Whole days, done by a racer who does nothing but the next step. */
class WholeDayTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    /**
     * A car that answers as cars do: perches move cross and one height, camber rods move camber, cross, height and toe.
     * Values are those of {@link DayBook#everything()} plus what is out.
     */
    private static final class SimpleCar {
        private final Map<ReadingId, Double> values = new LinkedHashMap<>(DayBook.everything());
        private double cross = 50;

        void shift(ReadingId id, double by) {
            values.merge(id, by, Double::sum);
        }

        void shiftCross(double by) {
            cross += by;
            values.putAll(DayBook.loads(cross));
        }

        Map<ReadingId, Double> read(List<ReadingId> wanted) {
            Map<ReadingId, Double> seen = new LinkedHashMap<>();
            wanted.forEach(id -> seen.put(id, values.get(id)));
            return seen;
        }
    }

    /** Does the next step until the day is closed, and tells the kinds of step with their stages. */
    private List<String> walk(DayBook book, SimpleCar car) {
        List<String> trail = new ArrayList<>();
        for (int steps = 0; steps < 120; steps++) {
            DayStatus status = order.status(book.day());
            NextStep next = status.next();
            trail.add(next.stageId() + " " + next.kind());
            switch (next.kind()) {
                case CONDITION, SETTLE -> recordCondition(book, status, next);
                case READ -> {
                    List<ReadingId> all = status.stage(next.stageId()).stage().readings(book.day().car());
                    book.read(next.stageId(), car.read(all));
                }
                case TURN -> repair(book, car, next);
                case SIGN_OFF -> book.sign(order, next.stageId());
                case CLOSE -> book.add(order.close(book.day()).entry().orElseThrow());
                default -> {
                    return trail;
                }
            }
        }
        throw new AssertionError("the day does not end: " + trail);
    }

    private static void recordCondition(DayBook book, DayStatus status, NextStep next) {
        List<Requirement> known = new ArrayList<>(Closing.requirements(book.day().car()));
        status.stages().forEach(s -> s.requirements().forEach(r -> known.add(r.requirement())));
        Requirement asked = known.stream().filter(r -> r.words().equals(next.words())).findFirst().orElseThrow();
        book.condition(asked.key(), asked.value().isEmpty() ? "20" : asked.value());
    }

    /** Turns what the words ask for and brings the car right; angle work leaves its mark on weights and heights. */
    private static void repair(DayBook book, SimpleCar car, NextStep next) {
        if (next.words().contains("camber")) {
            book.turn(AdjusterKind.CAMBER_ROD, Corner.LF, 0.5);
            car.values.put(DayBook.camber(Corner.LF), -2.0);
            car.shift(DayBook.toe(Corner.LF), 0.2);
            car.shift(DayBook.height(Corner.LF), 0.4);
            car.shiftCross(0.45);
        } else if (next.words().contains("toe")) {
            book.turn(AdjusterKind.TOE_LINK, Corner.LF, -0.25);
            car.values.put(DayBook.toe(Corner.LF), 0.1);
        } else if (next.words().contains("height")) {
            book.turn(AdjusterKind.PERCH, Corner.LF, -1);
            car.values.putAll(DayBook.goodHeights());
            car.shiftCross(1);
        } else {
            book.turn(AdjusterKind.PERCH, Corner.RR, -0.5);
            car.shiftCross(50 - car.cross);
            car.shift(DayBook.height(Corner.RR), -0.5);
        }
    }

    @Test
    void aWholeDayWithOneLoopBackFromTheRecheck() {
        SimpleCar car = new SimpleCar();
        car.shift(DayBook.height(Corner.LF), 3);
        car.shift(DayBook.camber(Corner.LF), 0.5);
        car.shiftCross(0.4);
        DayBook book = new DayBook().read("preparation", car.read(List.copyOf(DayBook.everything().keySet())));
        List<String> trail = walk(book, car);
        Day day = book.day();
        assertTrue(day.closed().isPresent());
        assertEquals(Optional.empty(), day.closed().get().outOfOrder(), "closed by the rules");
        for (String stage : List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck")) {
            assertEquals(Optional.empty(), day.signOff(stage).orElseThrow().waived());
            assertEquals(StageState.SIGNED, order.status(day).stage(stage).state(), () -> order.status(day).stage(stage).reasons().toString());
        }
        int angles = trail.indexOf("wheel-angles SIGN_OFF");
        assertTrue(trail.subList(angles, trail.size()).contains("corner-weights TURN"), () -> "loops back for the weights: " + trail);
        assertEquals("final-recheck CLOSE", trail.get(trail.size() - 2));
        assertEquals("final-recheck DONE", trail.get(trail.size() - 1));
    }

    @Test
    void theRecheckNamesTheFirstStageToRedo() {
        DayBook book = new DayBook().signedToAngles(order).turn(AdjusterKind.CAMBER_ROD, Corner.LF, 0.25).turn(AdjusterKind.CAMBER_ROD, Corner.LF, -0.25)
                .settle().read("wheel-angles", DayBook.goodAngles())
                .read("final-recheck", DayBook.heights(62.2, 62, 70, 70)).read("final-recheck", DayBook.loads(50.6));
        Recheck recheck = order.recheck(book.day());
        assertEquals(Optional.of("corner-weights"), recheck.redo());
        assertEquals(0.6, difference(recheck, DayBook.CROSS), 1e-9);
        assertEquals(Comparison.Word.MOVED, comparison(recheck, DayBook.CROSS).word());
        assertEquals(Comparison.Word.SAME, comparison(recheck, DayBook.height(Corner.LF)).word());
        assertEquals(Comparison.Word.SAME, comparison(recheck, DayBook.toe(Corner.LF)).word());
        assertEquals("corner-weights", order.status(book.day()).next().stageId());
        assertTrue(recheck.comparisons().stream().noneMatch(c -> c.reading().kind() == ReadingKind.PRESSURE));
    }

    private static Comparison comparison(Recheck recheck, ReadingId id) {
        return recheck.comparisons().stream().filter(c -> c.reading().equals(id)).findFirst().orElseThrow();
    }

    private static double difference(Recheck recheck, ReadingId id) {
        return comparison(recheck, id).difference().orElseThrow();
    }

    @Test
    void theDayClosesOnlyWithBarsJoinedAndWeighedAgain() {
        DayBook book = new DayBook().signedToAngles(order).read("final-recheck", DayBook.loads(50)).sign(order, "final-recheck");
        assertTrue(order.close(book.day()).reasons().stream().anyMatch(r -> r.contains("front bar")));
        book.condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .condition(Conditions.DAMPERS, Conditions.RUNNING).condition(Conditions.STEERING, Conditions.FREE);
        assertTrue(order.status(book.day()).next().words().startsWith("Tighten every nut"));
        book.condition(Conditions.LOCKNUTS, Conditions.YES);
        assertTrue(order.close(book.day()).reasons().get(0).contains("weigh once more with the bars joined"));
        book.read("final-recheck", DayBook.loads(50.2));
        assertTrue(order.close(book.day()).reasons().get(0).contains("+0.20 %"), order.close(book.day()).reasons().toString());
        book.read("final-recheck", DayBook.loads(50.1));
        assertTrue(order.close(book.day()).allowed(), order.close(book.day()).reasons().toString());
        assertEquals(NextStep.Kind.CLOSE, order.status(book.day()).next().kind());
        book.add(order.close(book.day()).entry().orElseThrow());
        assertFalse(order.close(book.day()).allowed(), "closed already");
    }

    @Test
    void aDayClosesOutOfOrderOnlyWithAWrittenReason() {
        DayBook book = new DayBook().prepared().sign(order, "preparation");
        assertFalse(order.close(book.day()).allowed());
        Gate<Entry.DayClosed> gate = order.close(book.day(), "rain, trailer leaves");
        assertEquals(Optional.of("rain, trailer leaves"), gate.entry().orElseThrow().outOfOrder());
        assertTrue(gate.reasons().contains("Ride height is not signed off"));
    }
}
