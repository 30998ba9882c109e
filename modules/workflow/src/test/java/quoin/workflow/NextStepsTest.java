package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.workflow.NextStep.Kind;
import quoin.workflow.spi.Stage;

/** The one next thing, in the order in which a racer does it, with the caution at that moment. */
class NextStepsTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private NextStep next(DayBook book) {
        return order.status(book.day()).next();
    }

    private void assertNext(String stage, Kind kind, String words, DayBook book) {
        NextStep next = next(book);
        assertEquals(List.of(stage, kind, words), List.of(next.stageId(), next.kind(), next.words()));
    }

    @Test
    void withoutStagesThereIsNothingToDo() {
        OrderOfWork none = new OrderOfWork(List.of());
        assertEquals(new NextStep("", Kind.DONE, "No stage is installed", Optional.empty()), none.status(new DayBook().day()).next());
        DayBook closed = new DayBook();
        closed.add(none.close(closed.day(), "nothing done").entry().orElseThrow());
        assertEquals("The day is closed", none.status(closed.day()).next().words());
        assertEquals(List.of("the day was closed at entry 2"), none.close(closed.day()).reasons());
    }

    @Test
    void aClosedDayIsDone() {
        DayBook book = new DayBook();
        book.add(order.close(book.day(), "rain").entry().orElseThrow());
        assertNext("final-recheck", Kind.DONE, "The day is closed", book);
    }

    @Test
    void aDayGoesThroughItsStages() {
        DayBook book = new DayBook();
        assertEquals(Kind.CONDITION, next(book).kind());
        assertNext("preparation", Kind.SIGN_OFF, "Sign off preparation", book.prepared());
        assertEquals(List.of("preparation is signed off already"), order.signOff(book.sign(order, "preparation").day(), "preparation").reasons()
                .stream().map(r -> r.replace("Preparation", "preparation")).toList());
        assertEquals(Kind.READ, next(book).kind());
        assertEquals("ride-height", next(book).stageId());
        assertTrue(next(book).words().startsWith("Read height"), next(book).words());
        assertTrue(next(book).caution().orElseThrow().contains("hands out from under a car on its springs"));
        assertNext("ride-height", Kind.SIGN_OFF, "Sign off ride height", book.read("ride-height", DayBook.goodHeights()));
        book.sign(order, "ride-height");
        assertTrue(next(book).words().startsWith("Read weight"), next(book).words());
        assertTrue(next(book).caution().orElseThrow().contains("Sit still"));
        book.read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights");
        assertEquals(Kind.READ, next(book).kind());
        Map<ReadingId, Double> toes = new HashMap<>(DayBook.goodAngles());
        toes.keySet().removeIf(id -> id.kind() != quoin.car.ReadingKind.TOE);
        Map<ReadingId, Double> others = new HashMap<>(DayBook.goodAngles());
        others.keySet().removeAll(toes.keySet());
        book.read("wheel-angles", others);
        assertTrue(next(book).words().startsWith("Read toe"), next(book).words());
        assertTrue(next(book).caution().orElseThrow().contains("Cords are at shin height"));
    }

    /** What a reading needs comes before it; the car is settled last of all, and the driver sits in it by then. */
    @Test
    void theCarIsSettledLast() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").condition(Conditions.SETTLED, Conditions.NO)
                .condition(Conditions.DRIVER, Conditions.OUT).condition(Conditions.BRAKES, Conditions.ON);
        assertEquals(Kind.CONDITION, next(book).kind());
        assertEquals(Kind.CONDITION, next(book.condition(Conditions.BRAKES, Conditions.FREE)).kind());
        assertEquals(Kind.SETTLE, next(book.condition(Conditions.DRIVER, Conditions.IN)).kind());
        assertEquals(Kind.READ, next(book.settle()).kind());
    }

    @Test
    void whatIsOutsideIsTurnedWhereItIsSet() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.heights(65, 62, 70, 70));
        assertEquals(Kind.TURN, next(book).kind());
        assertTrue(next(book).words().startsWith("Turn the perches or pushrods of the plan: "), next(book).words());
        assertTrue(next(book).words().endsWith(" is outside"), next(book).words());
        assertTrue(next(book.read("ride-height", DayBook.heights(65, 65, 70, 70))).words().endsWith(" are outside"), next(book).words());
        assertTrue(next(book).caution().orElseThrow().startsWith("Driver out"));
        book.read("ride-height", DayBook.goodHeights()).sign(order, "ride-height").read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights");
        Map<ReadingId, Double> angles = DayBook.goodAngles();
        angles.put(DayBook.toe(Corner.LF), 0.9);
        book.read("wheel-angles", angles);
        assertTrue(next(book).words().startsWith("Set the links: toe LF"), next(book).words());
        assertTrue(next(book).caution().orElseThrow().contains("1.5 thread diameters"));
    }

    /** The driver who got out is all that is wrong with the weights: he comes back first. */
    @Test
    void theDriverComesBackBeforeAnythingIsReadAgain() {
        DayBook book = new DayBook().signedToAngles(order).condition(Conditions.DRIVER, Conditions.OUT);
        assertEquals(Kind.CONDITION, next(book).kind());
        assertTrue(next(book).words().startsWith("Driver"), next(book).words());
        assertFalse(next(book.condition(Conditions.DRIVER, Conditions.IN)).words().startsWith("Driver"));
    }

    @Test
    void readingsAreAskedForInTheStagesOwnOrder() {
        DayBook book = new DayBook().prepared().sign(order, "preparation");
        Stage heights = order.stages().get(1);
        String words = next(book).words();
        List<Integer> at = heights.readings(book.day().car()).stream().map(id -> words.indexOf(id.placeWords())).toList();
        assertEquals(at.stream().sorted().toList(), at, words);
        assertFalse(at.contains(-1), words);
    }

    /** A day for part of the job closes when what was taken off for it is back on. */
    @Test
    void aPartDayPutsBackWhatItTookOff() {
        DayBook book = new DayBook().condition(Conditions.PART, "corner-weights").prepared().read("corner-weights", DayBook.loads(50))
                .turn(AdjusterKind.PERCH, Corner.LF, 0.25).settle().read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights");
        assertTrue(next(book).words().startsWith("Join the front bar"), next(book).words());
        book.condition("front-bar", Conditions.CONNECTED);
        assertTrue(next(book).words().startsWith("Join the rear bar"), next(book).words());
        book.condition("rear-bar", Conditions.CONNECTED);
        assertTrue(next(book).words().startsWith("Put the dampers back"), next(book).words());
        book.condition(Conditions.DAMPERS, Conditions.RUNNING);
        assertTrue(next(book).words().startsWith("Tighten every nut"), next(book).words());
        assertEquals("corner-weights", next(book).stageId());
        book.condition(Conditions.LOCKNUTS, Conditions.YES);
        assertTrue(next(book).words().startsWith("Take the steering lock out"), next(book).words());
        book.condition(Conditions.STEERING, Conditions.FREE);
        assertNext("corner-weights", Kind.CLOSE, "Close the day", book);
    }

    /** A rear bar that was forced in moves the cross weight: its link is set, at the car's last stage. */
    @Test
    void aBarThatMovesTheWeightsIsSetBeforeTheDayCloses() {
        DayBook book = new DayBook().signedToAngles(order).read("final-recheck", DayBook.everything()).sign(order, "final-recheck")
                .condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED);
        assertEquals(Kind.READ, next(book).kind());
        assertEquals("final-recheck", next(book).stageId());
        assertTrue(next(book).caution().orElseThrow().contains("Sit still"));
        book.read("final-recheck", DayBook.loads(50.5));
        assertEquals(Kind.TURN, next(book).kind());
        assertEquals("final-recheck", next(book).stageId());
        assertTrue(next(book).words().contains("the joined bars move it by +0.50 %, more than 0.15 %"), next(book).words());
        assertTrue(Character.isUpperCase(next(book).words().charAt(0)), next(book).words());
    }

    /** Angles need the lock in as well: what is worked on comes before settling, which it would spoil. */
    @Test
    void theSteeringIsLockedBeforeTheCarIsSettled() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights").condition(Conditions.SETTLED, Conditions.NO)
                .condition(Conditions.STEERING, Conditions.FREE);
        assertTrue(next(book).words().startsWith("Lock the steering"), next(book).words());
        assertEquals(Kind.SETTLE, next(book.condition(Conditions.STEERING, Conditions.LOCKED)).kind());
    }

    /** Fuel taken off while the angles are set: heights are read where heights are read, not beside the angles. */
    @Test
    void whatTheOpenStageCannotReadIsReadInItsOwn() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights").condition(Conditions.FUEL, "12");
        assertEquals("ride-height", next(book).stageId());
        assertEquals(Kind.READ, next(book).kind());
        assertTrue(next(book).words().startsWith("Read height"), next(book).words());
    }

    /** Cords and driver are no part of reading camber. */
    @Test
    void cautionsBelongToWhatIsRead() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights");
        Map<ReadingId, Double> toes = new HashMap<>(DayBook.goodAngles());
        toes.keySet().removeIf(id -> id.kind() != quoin.car.ReadingKind.TOE);
        book.read("wheel-angles", toes);
        assertTrue(next(book).words().startsWith("Read caster"), next(book).words());
        assertEquals(Optional.empty(), next(book).caution());
    }

    /** A stage that judges what it does not list asks for it all the same, after its own. */
    @Test
    void whatIsJudgedIsAskedForAfterTheStagesOwn() {
        Stage heights = order.stages().get(1);
        Stage both = new PlainStage("heights-and-cross", 200, "Heights and cross", heights::readings, List.of(DayBook.CROSS), heights::requirements,
                heights.adjusters());
        OrderOfWork judging = new OrderOfWork(List.of(order.stages().get(0), both));
        String words = judging.status(new DayBook().prepared().sign(judging, "preparation").day()).next().words();
        assertTrue(words.startsWith("Read height"), words);
        assertTrue(words.indexOf("weight") > words.lastIndexOf("rail"), words);
    }
}
