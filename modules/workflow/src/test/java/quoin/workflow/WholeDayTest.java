package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.spi.Stage;

/** Whole days to their close. */
class WholeDayTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private static LinearCar asBuilt() {
        LinearCar car = new LinearCar().out(DayBook.height(Corner.LF), 3).out(DayBook.height(Corner.RF), 1)
                .out(DayBook.height(Corner.LR), 2).out(DayBook.CROSS, 0.8);
        return car.out(DayBook.camber(Corner.LF), 0.9).out(DayBook.camber(Corner.RR), -0.5).out(DayBook.caster(Corner.RF), 0.6)
                .out(DayBook.toe(Corner.LR), -0.2);
    }

    @Test
    void aWholeDayWithOneLoopBackFromTheRecheck() {
        LinearCar car = asBuilt().out(DayBook.camber(Corner.RR), 1.5).barOut(0.4);
        DayBook book = new DayBook();
        book.read("preparation", car.read(book.day(), LinearCar.everything()));
        List<String> trail = new NextStepFollower(order, car).follow(book, 120);
        Day day = book.day();
        assertTrue(day.closed().isPresent());
        assertEquals(Optional.empty(), day.closed().get().outOfOrder(), "closed by the rules");
        for (Stage stage : order.stages()) {
            assertEquals(Optional.empty(), day.signOff(stage.id()).orElseThrow().waived());
            assertEquals(StageState.SIGNED, order.status(day).stage(stage.id()).state(),
                    () -> order.status(day).stage(stage.id()).reasons().toString());
        }
        int angles = trail.indexOf("wheel-angles SIGN_OFF");
        assertTrue(trail.subList(angles, trail.size()).contains("corner-weights TURN"), () -> "loops back for the weights: " + trail);
        assertTrue(trail.subList(angles, trail.size()).contains("final-recheck TURN"), () -> "sets the bar link: " + trail);
        assertEquals("final-recheck CLOSE", trail.get(trail.size() - 2));
        assertEquals("final-recheck DONE", trail.get(trail.size() - 1));
    }

    /** A first day of a car that is right as it stands: every stage once, nothing turned. */
    @Test
    void aCarThatIsRightIsOnlyReadAndSigned() {
        DayBook book = new DayBook();
        List<String> trail = new NextStepFollower(order, new LinearCar()).follow(book, 60);
        assertTrue(trail.stream().noneMatch(s -> s.endsWith("TURN")), trail::toString);
        assertEquals(5, trail.stream().filter(s -> s.endsWith("SIGN_OFF")).count());
        assertEquals(5, trail.stream().filter(s -> s.endsWith("READ")).count(), () -> "heights, weights, angles, all again, weights with bars: "
                + trail);
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
        return comparison(recheck, id).difference().orElseThrow().amount();
    }

    @Test
    void theDayClosesOnlyWithBarsJoinedAndWeighedAgain() {
        DayBook book = new DayBook().signedToAngles(order).read("final-recheck", DayBook.everything()).sign(order, "final-recheck");
        assertTrue(order.close(book.day()).reasons().stream().anyMatch(r -> r.contains("front bar")));
        book.condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .condition(Conditions.DAMPERS, Conditions.RUNNING).condition(Conditions.STEERING, Conditions.FREE);
        assertTrue(order.status(book.day()).next().words().contains("weigh once more with the bars joined"));
        book.read("final-recheck", DayBook.loads(50.2));
        assertTrue(order.close(book.day()).reasons().get(0).contains("+0.20 %"), order.close(book.day()).reasons().toString());
        book.read("final-recheck", DayBook.loads(50.1));
        assertTrue(order.status(book.day()).next().words().startsWith("Tighten every nut"));
        book.condition(Conditions.LOCKNUTS, Conditions.YES);
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
