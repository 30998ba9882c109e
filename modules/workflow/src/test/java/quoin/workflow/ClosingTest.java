package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.workflow.spi.Stage;

/** What is undone, and looked at once more, between the last sign-off and the close. */
class ClosingTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    /** Everything signed, after some work on the rods. */
    private DayBook signed() {
        return new DayBook().signedToAngles(order).turn(AdjusterKind.TOE_LINK, Corner.LF, 0.25).settle()
                .read("final-recheck", DayBook.everything()).sign(order, "final-recheck");
    }

    private DayBook barsJoined() {
        return signed().condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED);
    }

    private NextStep next(DayBook book) {
        return order.status(book.day()).next();
    }

    @Test
    void aSecondLookIsTakenAtTheToeOnceTheNutsAreTight() {
        DayBook book = barsJoined().read("final-recheck", DayBook.loads(50)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES);
        assertEquals(NextStep.Kind.READ, next(book).kind());
        assertTrue(next(book).words().endsWith("look at it once more, a locknut turns the rod"), next(book).words());
        book.read("final-recheck", Map.of(DayBook.toe(Corner.LF), 0.2, DayBook.toe(Corner.RF), 0.1, DayBook.toe(Corner.LR), 0.1,
                DayBook.toe(Corner.RR), 0.1));
        assertEquals("wheel-angles", next(book).stageId());
        assertEquals(NextStep.Kind.TURN, next(book).kind());
        assertTrue(next(book).words().startsWith("Toe LF: the nuts have turned it to 0.20"), next(book).words());
        book.read("final-recheck", Map.of(DayBook.toe(Corner.LF), 0.11));
        assertTrue(next(book).words().startsWith("Take the steering lock out"), next(book).words());
        assertEquals(NextStep.Kind.CLOSE, next(book.condition(Conditions.STEERING, Conditions.FREE)).kind());
    }

    @Test
    void aToeReadWithTheWheelsFreeIsNoSecondLook() {
        DayBook book = barsJoined().read("final-recheck", DayBook.loads(50)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES).condition(Conditions.STEERING, Conditions.FREE)
                .read("final-recheck", DayBook.goodAngles());
        assertTrue(next(book).words().startsWith("Lock the steering"), next(book).words());
        assertFalse(order.close(book.day()).allowed());
    }

    @Test
    void aDayWithoutRodWorkNeedsNoSecondLook() {
        DayBook book = new DayBook().signedToAngles(order).read("final-recheck", DayBook.everything()).sign(order, "final-recheck")
                .condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .read("final-recheck", DayBook.loads(50)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES).condition(Conditions.STEERING, Conditions.FREE);
        assertTrue(order.close(book.day()).allowed(), () -> order.close(book.day()).reasons().toString());
    }

    @Test
    void whatIsTurnedAfterwardsHasItsNutLooseAgain() {
        DayBook book = barsJoined().condition(Conditions.LOCKNUTS, Conditions.YES);
        assertTrue(holds(book, Conditions.LOCKNUTS));
        assertFalse(holds(book.turn(AdjusterKind.PERCH, Corner.RR, 0.125), Conditions.LOCKNUTS));
        assertTrue(holds(book.condition(Conditions.LOCKNUTS, Conditions.YES), Conditions.LOCKNUTS));
    }

    private static boolean holds(DayBook book, String key) {
        return Closing.states(book.day()).stream().filter(s -> s.requirement().key().equals(key)).findFirst().orElseThrow().holds();
    }

    @Test
    void barsAreWeighedWithTheDriverIn() {
        DayBook book = barsJoined().condition(Conditions.DRIVER, Conditions.OUT).read("final-recheck", DayBook.loads(50.05));
        assertTrue(next(book).words().startsWith("Driver"), next(book).words());
        book.condition(Conditions.DRIVER, Conditions.IN);
        assertTrue(next(book).words().contains("weigh once more with the bars joined"), "the weighing without him does not count");
        assertTrue(next(book.read("final-recheck", DayBook.loads(50.05))).words().startsWith("Put the dampers back"));
    }

    /** The comparison is with the last weighing with the bars off, which need not be the one that was signed. */
    @Test
    void aTrimAfterTheSignOffIsNotTakenForTheBars() {
        DayBook book = signed().turn(AdjusterKind.PERCH, Corner.RR, -0.125).settle()
                .read("final-recheck", DayBook.goodHeights()).read("final-recheck", DayBook.loads(50.2))
                .condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .read("final-recheck", DayBook.loads(50.25));
        assertTrue(order.close(book.day()).reasons().stream().noneMatch(r -> r.contains("joined bars")),
                () -> order.close(book.day()).reasons().toString());
    }

    @Test
    void weightsAreAlwaysTakenAgainAtTheEnd() {
        DayBook book = new DayBook().signedToAngles(order);
        Gate<Entry.SignOff> gate = order.signOff(book.day(), "final-recheck");
        assertFalse(gate.allowed());
        assertTrue(gate.reasons().get(0).endsWith("not read again since the stages before were signed off"), gate.reasons().toString());
        assertEquals(NextStep.Kind.READ, next(book).kind());
        assertTrue(order.signOff(book.read("final-recheck", DayBook.goodHeights()).read("final-recheck", DayBook.loads(50)).day(),
                "final-recheck").allowed(), "angles that nothing disturbed are not asked for");
    }

    /** Total and shares are for ballast, as no perch moves them (a law of statics). */
    @Test
    void aShareThatIsOutsideAsksForBallast() {
        ReadingId frontShare = ReadingId.ofCar(ReadingKind.FRONT_SHARE);
        List<Stage> stages = new ArrayList<>(PlainStage.day());
        stages.replaceAll(s -> s instanceof PlainStage p && p.id().equals("corner-weights") ? new PlainStage(p.id(), p.position(), p.title(),
                p.reads(), List.of(DayBook.CROSS, frontShare), p.asks(), p.adjusters()) : s);
        OrderOfWork judging = new OrderOfWork(stages);
        DayBook book = new DayBook().prepared().sign(judging, "preparation").read("ride-height", DayBook.goodHeights())
                .sign(judging, "ride-height");
        book.add(new Entry.TargetSet(book.entries().get(0).header(), frontShare, new Target(48, 0.5)));
        NextStep step = judging.status(book.read("corner-weights", DayBook.loads(50)).day()).next();
        assertTrue(step.words().startsWith("Move or change ballast"), step.words());
        assertTrue(step.caution().orElseThrow().contains("bolted"));
        NextStep both = judging.status(book.read("corner-weights", DayBook.loads(52)).day()).next();
        assertEquals("Turn the perches or pushrods of the plan: cross weight RF+LR is outside", both.words());
    }

    /** Dampers, the second look at the toe, the lock: each once, in the order in which it is done. */
    @Test
    void theListIsInWorkingOrder() {
        DayBook book = barsJoined().read("final-recheck", DayBook.loads(50)).condition(Conditions.LOCKNUTS, Conditions.YES);
        List<String> open = order.close(book.day()).reasons();
        assertEquals(3, open.size(), open.toString());
        assertTrue(open.get(0).startsWith("Put the dampers back"), open.toString());
        assertTrue(open.get(1).endsWith("look at it once more, a locknut turns the rod"), open.toString());
        assertTrue(open.get(2).startsWith("Take the steering lock out"), open.toString());
        DayBook apart = signed().condition("front-bar", Conditions.CONNECTED).condition(Conditions.LOCKNUTS, Conditions.YES);
        assertTrue(order.close(apart.day()).reasons().get(0).startsWith("Join the rear bar"), "weighed once both are on");
    }

    /** A ring has a nut and no rod: tightening it leaves the toe. */
    @Test
    void perchesAloneNeedNoSecondLook() {
        DayBook book = new DayBook().signedToAngles(order).turn(AdjusterKind.PERCH, Corner.RR, 0.125).settle()
                .read("final-recheck", DayBook.everything()).sign(order, "final-recheck")
                .condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .read("final-recheck", DayBook.loads(50)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES).condition(Conditions.STEERING, Conditions.FREE);
        assertEquals(List.of(), order.close(book.day()).reasons());
    }

    /** What was found on the car in the morning is not forgotten at night: it is settled where it was written down. */
    @Test
    void whatWasLeftOpenInTheCheckOfTheCarKeepsTheDayOpen() {
        String shafts = CarCheck.key("damper-shafts");
        DayBook book = new DayBook().condition(shafts, CarCheck.OPEN).signedToAngles(order).read("final-recheck", DayBook.everything())
                .sign(order, "final-recheck").condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .read("final-recheck", DayBook.loads(50)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES).condition(Conditions.STEERING, Conditions.FREE);
        assertEquals(List.of("left open in the check of the car: damper shafts"), order.close(book.day()).reasons());
        assertEquals(new NextStep("preparation", NextStep.Kind.CONDITION, "Left open in the check of the car: damper shafts", Optional.empty()),
                next(book));
        assertEquals(NextStep.Kind.CLOSE, next(book.condition(shafts, CarCheck.GOOD)).kind());
    }

    /** Fuel drained after the last signature: the day is not closed on heights and weights that no longer hold. */
    @Test
    void aSignedStageThatNoLongerHoldsKeepsTheDayOpen() {
        List<String> open = order.close(signed().condition(Conditions.FUEL, "12").day()).reasons();
        for (String stage : List.of("Ride height: ", "Corner weights: ", "Final re-check: ")) {
            assertTrue(open.stream().anyMatch(r -> r.startsWith(stage) && r.endsWith("fuel changed from 20 to 12 kg after this")), open.toString());
        }
        assertTrue(open.stream().noneMatch(r -> r.startsWith("Wheel angles: ")), "angles are only doubtful: " + open);
    }
}
