package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.Target;

/**
 * The way back from the final re-check that takes least with it. One turn of a perch is 2 mm of leg on this car: a pitch of
 * 1.5 mm over a motion ratio of 0.75.
 */
class LoopBackTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private DayBook signed() {
        return new DayBook().signedToAngles(order);
    }

    private static CornerMove move(AdjusterKind kind, Corner corner, double turns) {
        return new CornerMove(new AdjusterId(kind, corner), turns, OptionalDouble.empty(), "");
    }

    private static CornerMove perch(Corner corner, double turns) {
        return move(AdjusterKind.PERCH, corner, turns);
    }

    private static RoundPlan plan(double probability, Map<ReadingId, Predicted> predicted, CornerMove... moves) {
        return new RoundPlan(1, List.of(moves), predicted, OptionalDouble.of(probability), OptionalDouble.empty(), "", List.of(), List.of());
    }

    private static RoundPlan plan(double probability, CornerMove... moves) {
        return plan(probability, Map.of(), moves);
    }

    private static LoopBack chosen(DayBook book, RoundPlan... plans) {
        return LoopBack.of(book.day(), List.of(plans), "wheel-angles").orElseThrow();
    }

    @Test
    void ofPlansAboutAsLikelyTheOneThatLeavesTheAnglesIsTaken() {
        RoundPlan far = plan(0.80, perch(Corner.RR, 1.5));
        RoundPlan near = plan(0.77, perch(Corner.LF, 0.5), perch(Corner.RF, -0.25));
        RoundPlan unlikely = plan(0.50, perch(Corner.LR, 0.125));
        LoopBack back = chosen(signed(), far, near, unlikely, plan(0.82));
        assertEquals(near, back.plan());
        assertEquals(1, back.largestLegMm(), 1e-9);
        assertFalse(back.anglesAgain());
        LoopBack only = chosen(signed(), far);
        assertEquals(3, only.largestLegMm(), 1e-9);
        assertTrue(only.anglesAgain());
    }

    @Test
    void withoutATurnThereIsNoWayBack() {
        assertEquals(Optional.empty(), LoopBack.of(signed().day(), List.of(), "wheel-angles"));
        assertEquals(Optional.empty(), LoopBack.of(signed().day(), List.of(plan(0.9)), "wheel-angles"));
    }

    @Test
    void whatWasTurnedSinceTheAnglesWereSignedCounts() {
        DayBook book = new DayBook().turn(AdjusterKind.PERCH, Corner.LF, 5).signedToAngles(order).turn(AdjusterKind.PERCH, Corner.LF, 0.75);
        LoopBack further = chosen(book, plan(0.8, perch(Corner.LF, 0.5)));
        assertEquals(2.5, further.largestLegMm(), 1e-9);
        assertTrue(further.anglesAgain());
        assertEquals(0.5, chosen(book, plan(0.8, perch(Corner.LF, -0.5))).largestLegMm(), 1e-9, "turned back towards where it was");
    }

    @Test
    void exactlyTwoMillimetresLeaveTheAngles() {
        assertFalse(chosen(signed(), plan(0.8, perch(Corner.LF, -1))).anglesAgain());
        assertTrue(chosen(signed(), plan(0.8, perch(Corner.LF, -1.125))).anglesAgain());
    }

    @Test
    void linksAlwaysAskForTheAnglesAgainABarLinkDoesNot() {
        LoopBack toe = chosen(signed(), plan(0.8, move(AdjusterKind.TOE_LINK, Corner.LF, 0.25)));
        assertTrue(toe.anglesAgain());
        assertEquals(0, toe.largestLegMm());
        assertFalse(chosen(signed(), plan(0.8, move(AdjusterKind.BAR_LINK, Corner.LF, 0.25))).anglesAgain());
    }

    @Test
    void whatThePlanPutsOutsideIsNamed() {
        Optional<Target> target = Optional.of(new Target(62, 1));
        Map<ReadingId, Predicted> predicted = new LinkedHashMap<>();
        predicted.put(DayBook.height(Corner.LF), new Predicted(62.5, 63.5, 0.1, target));
        predicted.put(DayBook.height(Corner.RF), new Predicted(63.5, 64.5, 0.1, target));
        predicted.put(DayBook.height(Corner.LR), new Predicted(62.5, 62.9, 0.1, target));
        predicted.put(DayBook.height(Corner.RR), new Predicted(62.5, 63.5, 0.1, Optional.empty()));
        RoundPlan leaves = plan(0.8, predicted, perch(Corner.LF, 0.25));
        assertEquals(List.of(DayBook.height(Corner.LF)), chosen(signed(), leaves).leaving());
        RoundPlan keeps = plan(0.8, perch(Corner.LF, 0.5));
        assertEquals(keeps, chosen(signed(), leaves, keeps).plan(), "a larger turn that leaves every reading inside goes first");
    }

    @Test
    void ofEqualTurnsFewerCornersGoFirst() {
        RoundPlan two = plan(0.8, perch(Corner.LF, 0.5), perch(Corner.RR, 0.5));
        RoundPlan one = plan(0.8, perch(Corner.LF, 0.5));
        assertEquals(one, chosen(signed(), two, one).plan());
    }
}
