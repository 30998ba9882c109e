package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.spi.Stage;

class OrderOfWorkTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private StageStatus stage(DayBook book, String id) {
        return order.status(book.day()).stage(id);
    }

    private void assertState(StageState expected, DayBook book, String id) {
        StageStatus status = stage(book, id);
        assertEquals(expected, status.state(), () -> id + ": " + status.reasons());
    }

    @Test
    void stagesComeInTheirOrderHoweverTheyAreInstalled() {
        assertEquals(List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck"),
                order.stages().stream().map(Stage::id).toList());
        assertThrows(IllegalArgumentException.class, () -> new OrderOfWork(List.of(PlainStage.day().get(0), PlainStage.day().get(0))));
        assertThrows(NoSuchElementException.class, () -> order.signOff(new DayBook().day(), "no-such-stage"));
    }

    @Test
    void aFreshDayWaitsForPreparation() {
        DayBook book = new DayBook();
        assertState(StageState.OPEN, book, "preparation");
        assertState(StageState.WAITING, book, "ride-height");
        assertEquals("Preparation comes first: it is not signed off", stage(book, "ride-height").reasons().get(0));
        assertState(StageState.READY, book.prepared(), "preparation");
    }

    @Test
    void asFoundReadingsAreKeptAndDoNotCount() {
        DayBook book = new DayBook().condition("front-bar", Conditions.CONNECTED).read("preparation", DayBook.everything());
        ReadingState load = order.status(book.day()).reading(DayBook.load(Corner.LF));
        assertEquals(Freshness.OUT_OF_ORDER, load.freshness());
        assertEquals(150, load.value().orElseThrow());
        assertTrue(load.reasons().containsAll(List.of("as found: kept as the way home", "taken with the front bar connected",
                "taken before the car was settled", "read before preparation was signed off")), load.reasons().toString());
        book.prepared().sign(order, "preparation");
        assertState(StageState.OPEN, book, "ride-height");
        assertFalse(order.signOff(book.day(), "ride-height").allowed());
    }

    @Test
    void aReadingWithAConditionMissingDoesNotCount() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").condition("rear-bar", Conditions.CONNECTED)
                .read("ride-height", DayBook.goodHeights());
        assertEquals(List.of("as found: kept as the way home", "taken with the rear bar connected"),
                order.status(book.day()).reading(DayBook.height(Corner.LF)).reasons());
        assertState(StageState.OPEN, book, "ride-height");
        book.condition("rear-bar", Conditions.DISCONNECTED).turn(AdjusterKind.PERCH, Corner.LF, 0.5).read("ride-height", DayBook.goodHeights());
        assertEquals(List.of("taken before the car was settled"), order.status(book.day()).reading(DayBook.height(Corner.LF)).reasons());
        assertState(StageState.READY, book.settle().read("ride-height", DayBook.goodHeights()), "ride-height");
    }

    @Test
    void anEarlierGoodReadingStillCountsBesideALaterOneOutOfOrder() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights())
                .condition(Conditions.BRAKES, Conditions.ON).read("ride-height", DayBook.heights(64, 62, 70, 70));
        assertEquals(Freshness.OUT_OF_ORDER, order.status(book.day()).reading(DayBook.height(Corner.LF)).freshness());
        assertState(StageState.READY, book, "ride-height");
    }

    @Test
    void outsideIsNotSignedOff() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.heights(64, 62, 70, 70));
        Gate<Entry.SignOff> gate = order.signOff(book.day(), "ride-height");
        assertEquals(List.of("LF rail height: outside, 64.0 mm, wanted 62.0 mm \u00b1 1.0"), gate.reasons().stream()
                .map(r -> r.replace("height LF rail", "LF rail height")).toList());
        assertFalse(gate.allowed());
        NextStep next = order.status(book.day()).next();
        assertEquals(NextStep.Kind.TURN, next.kind());
        assertTrue(next.caution().orElseThrow().contains("stands"));
    }

    @Test
    void aPerchTurnedForTheWeightsSendsRideHeightBackUntilItIsReadAgain() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", DayBook.loads(51)).turn(AdjusterKind.PERCH, Corner.RR, 0.25).settle()
                .read("corner-weights", DayBook.loads(50));
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
        assertTrue(stage(book, "ride-height").reasons().get(1).endsWith("RR perch turned 2 notches after this"));
        assertState(StageState.WAITING, book, "corner-weights");
        assertFalse(order.signOff(book.day(), "corner-weights").allowed());
        NextStep next = order.status(book.day()).next();
        assertEquals("corner-weights", next.stageId(), "heights are read together with the weights");
        assertEquals(NextStep.Kind.READ, next.kind());
        book.read("corner-weights", DayBook.goodHeights());
        assertState(StageState.SIGNED, book, "ride-height");
        assertTrue(stage(book, "ride-height").reasons().get(0).matches("signed off at entry \\d+, read again since and inside \\(entry \\d+\\)"));
        assertState(StageState.READY, book, "corner-weights");
    }

    @Test
    void readAgainOutsideStaysToBeChecked() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .turn(AdjusterKind.PERCH, Corner.RR, 1).settle().read("corner-weights", DayBook.heights(62, 62, 70, 72));
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
        assertEquals("ride-height", order.status(book.day()).next().stageId());
        assertEquals(NextStep.Kind.TURN, order.status(book.day()).next().kind());
    }

    @Test
    void camberWorkDoesNotKeepTheAnglesFromTheirSignOff() {
        DayBook book = new DayBook().signedToAngles(order).turn(AdjusterKind.CAMBER_ROD, Corner.LF, 0.5).settle();
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
        assertState(StageState.CHECK_AGAIN, book, "corner-weights");
        assertState(StageState.CHECK_AGAIN, book, "wheel-angles");
        book.add(new Entry.Reopened(new Header(0, Instant.EPOCH, "wheel-angles"), "again"));
        book.read("wheel-angles", DayBook.goodAngles());
        assertState(StageState.READY, book, "wheel-angles");
        book.sign(order, "wheel-angles");
        assertFalse(order.signOff(book.day(), "final-recheck").allowed());
        assertState(StageState.READY, book.read("final-recheck", DayBook.goodHeights()).read("final-recheck", DayBook.loads(50)),
                "final-recheck");
        assertState(StageState.SIGNED, book, "corner-weights");
    }

    @Test
    void perchesTurnedDuringTheAnglesDoKeepThemBack() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", DayBook.loads(50)).sign(order, "corner-weights")
                .turn(AdjusterKind.PERCH, Corner.RR, 0.25).settle().read("wheel-angles", DayBook.goodAngles());
        assertState(StageState.WAITING, book, "wheel-angles");
    }

    @Test
    void theFinalRecheckTakesAnglesAfterASmallTrimOnly() {
        DayBook book = new DayBook().signedToAngles(order).turn(AdjusterKind.PERCH, Corner.RR, 0.5).settle()
                .read("final-recheck", DayBook.goodHeights()).read("final-recheck", DayBook.loads(50));
        assertState(StageState.READY, book, "final-recheck");
        book.turn(AdjusterKind.PERCH, Corner.RR, 1).settle().read("final-recheck", DayBook.goodHeights())
                .read("final-recheck", DayBook.loads(50));
        assertState(StageState.CHECK_AGAIN, book, "wheel-angles");
        assertFalse(order.signOff(book.day(), "final-recheck").allowed());
        NextStep next = order.status(book.day()).next();
        assertEquals(NextStep.Kind.READ, next.kind());
        assertState(StageState.READY, book.read("final-recheck", DayBook.goodAngles()), "final-recheck");
    }

    @Test
    void aJackedCarMustBeReadAgainInTheFinalRecheck() {
        DayBook book = new DayBook().signedToAngles(order).condition(Conditions.SETTLED, Conditions.NO).settle()
                .read("final-recheck", DayBook.goodHeights()).read("final-recheck", DayBook.loads(50));
        assertState(StageState.SIGNED, book, "wheel-angles");
        assertFalse(order.signOff(book.day(), "final-recheck").allowed(), "angles are doubtful for another reason than a trim");
    }

    @Test
    void aWrittenReasonOpensEveryGateAndHoldsUntilTheCarIsDisturbed() {
        DayBook book = new DayBook().prepared();
        Gate<Entry.SignOff> byRule = order.signOff(book.day(), "preparation", "not needed");
        assertEquals(Optional.empty(), byRule.entry().orElseThrow().waived(), "nothing had to be waived");
        book.sign(order, "preparation").read("ride-height", DayBook.heights(64, 62, 70, 70));
        Gate<Entry.SignOff> waived = order.signOff(book.day(), "ride-height", "rough track, nose up on purpose");
        assertTrue(waived.allowed());
        assertFalse(waived.reasons().isEmpty(), "says what was passed over");
        book.add(waived.entry().orElseThrow());
        assertState(StageState.SIGNED, book, "ride-height");
        book.turn(AdjusterKind.PERCH, Corner.LF, -0.25).settle();
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
        book.read("ride-height", DayBook.heights(63.5, 62, 70, 70));
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
        assertState(StageState.SIGNED, book.read("ride-height", DayBook.goodHeights()), "ride-height");
        Day day = book.day();
        assertThrows(IllegalArgumentException.class, () -> order.signOff(day, "corner-weights", " "));
        assertFalse(order.signOff(day, "ride-height").allowed(), "signed already");
    }

    @Test
    void aCorrectedFigureIsJudgedAnew() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights());
        long read = book.size();
        book.sign(order, "ride-height");
        Entry.Reading wrong = (Entry.Reading) book.entries().get((int) read - 1);
        Entry right = new Entry.Reading(wrong.header(), DayBook.heights(65, 62, 70, 70), Map.of(), Entry.Source.RACER);
        book.add(new Entry.Correction(wrong.header(), read, Optional.of(right), "read 65, typed 62"));
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
    }

    @Test
    void aChangedTargetIsFeltByTheSignedStage() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height");
        book.add(new Entry.TargetSet(book.entries().get(0).header(), DayBook.height(Corner.LF), new Target(58, 1)));
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
    }

    @Test
    void padsMovedUndoThePreparationUntilTheyAreLevelled() {
        DayBook book = new DayBook().signedToAngles(order).condition(Conditions.PADS, Conditions.MOVED);
        assertState(StageState.CHECK_AGAIN, book, "preparation");
        assertEquals("preparation", order.status(book.day()).next().stageId());
        assertEquals(NextStep.Kind.CONDITION, order.status(book.day()).next().kind());
        assertState(StageState.SIGNED, book.condition(Conditions.PADS, Conditions.LEVELLED), "preparation");
        assertState(StageState.CHECK_AGAIN, book, "ride-height");
    }

    @Test
    void aFigureNearItsLimitIsSaidToBeTooClose() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.heights(62.9, 62, 70, 70));
        assertState(StageState.READY, book, "ride-height");
        assertTrue(stage(book, "ride-height").findings().stream().anyMatch(f -> f.words().contains("too close to call")));
    }
}
