package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.LoadCase;
import quoin.car.PerAxle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.spi.Finding;
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

    /** Caster is read by steering the wheels, so the lock is out for it; camber and toe want it in. */
    @Test
    void casterIsReadWithTheLockOut() {
        DayBook book = new DayBook().signedToAngles(order).condition(Conditions.STEERING, Conditions.FREE).settle()
                .read("wheel-angles", DayBook.goodAngles());
        DayStatus status = order.status(book.day());
        assertEquals(Freshness.FRESH, status.reading(DayBook.caster(Corner.LF)).freshness());
        assertEquals(Freshness.OUT_OF_ORDER, status.reading(DayBook.camber(Corner.LF)).freshness());
        assertEquals(Freshness.OUT_OF_ORDER, status.reading(DayBook.toe(Corner.LF)).freshness());
    }

    /** A racer who decides on a camber while the day runs is asked for it from then on. */
    @Test
    void aTargetSetDuringTheDayIsAskedFor() {
        Map<ReadingId, Target> without = new HashMap<>(DayBook.car().targets().readings());
        Target camber = without.remove(DayBook.camber(Corner.LR));
        DayBook book = new DayBook(DayBook.car().withTargets(new Targets(without, CrossGoal.EQUAL_DIAGONALS))).prepared();
        assertEquals(Optional.empty(), order.status(book.day()).reading(DayBook.camber(Corner.LR)).target(), "not asked for");
        book.add(new Entry.TargetSet(book.entries().get(0).header(), DayBook.camber(Corner.LR), camber));
        assertTrue(stage(book, "wheel-angles").readings().stream().anyMatch(r -> r.reading().equals(DayBook.camber(Corner.LR))));
        assertEquals(Optional.of(camber), order.status(book.day()).reading(DayBook.camber(Corner.LR)).target());
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

    /**
     * 62.9 mm, wanted 61 to 63, read with a rule of 0.5 mm and 0.3 mm of repeating: the root of 0.5 * 0.5 / 12 + 0.3 * 0.3 is
     * 0.333 mm, 63 mm are 0.30 of it away, and the normal distribution has 0.62 below that (from memory of its table).
     */
    @Test
    void aFigureNearItsLimitIsSaidToBeTooClose() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.heights(62.9, 62, 70, 70));
        assertState(StageState.READY, book, "ride-height");
        assertEquals(List.of(DayBook.height(Corner.LF).words() + " is too close to call: 62 % likely inside; settle and read again to be surer"),
                findings(book, "ride-height"), "of the others nothing is to be said");
        assertEquals(List.of(), findings(book, "final-recheck"), "said where the height belongs");
    }

    private List<String> findings(DayBook book, String id) {
        return stage(book, id).findings().stream().map(Finding::words).toList();
    }

    /** Heights are read along with the weights and again at the end; the fuel they were read with is told of once. */
    @Test
    void anotherLoadCaseIsToldWhereTheReadingBelongs() {
        LoadCase twenty = new LoadCase("", OptionalDouble.of(20), PerAxle.both(OptionalDouble.empty()));
        DayBook book = new DayBook(DayBook.car().withLoadCase(twenty)).condition(Conditions.FUEL, "12").read("final-recheck", DayBook.everything());
        Map<String, String> told = Map.of("ride-height", "Height", "corner-weights", "Weight", "wheel-angles", "Camber and caster and toe");
        for (Stage stage : order.stages()) {
            List<String> expected = told.containsKey(stage.id()) ? List.of(told.get(stage.id())
                    + " read in another load case: 12.0 kg of fuel on board, the load case says 20.0 kg; fill or drain and read again, or change the load case")
                    : List.of();
            assertEquals(expected, findings(book, stage.id()), stage.id());
        }
    }

    /** Weighing with the bars on belongs to the close; before the last signature, or without the driver, it is out of order. */
    @Test
    void aLookTakenToCloseLeavesWhatWasSigned() {
        DayBook early = new DayBook().signedToAngles(order).condition("front-bar", Conditions.CONNECTED).read("final-recheck", DayBook.loads(50.4));
        assertCross(Freshness.OUT_OF_ORDER, 50.4, early);
        DayBook book = new DayBook().signedToAngles(order).read("final-recheck", DayBook.everything()).sign(order, "final-recheck")
                .condition("front-bar", Conditions.CONNECTED).read("final-recheck", DayBook.loads(50.4));
        assertCross(Freshness.DOUBTFUL, 50, book);
        assertCross(Freshness.OUT_OF_ORDER, 50.6, book.condition(Conditions.DRIVER, Conditions.OUT).read("final-recheck", DayBook.loads(50.6)));
    }

    private void assertCross(Freshness freshness, double percent, DayBook book) {
        ReadingState cross = order.status(book.day()).reading(DayBook.CROSS);
        assertEquals(freshness, cross.freshness(), () -> cross.reasons().toString());
        assertEquals(percent, cross.value().orElseThrow(), 1e-9);
    }

    /** A stage shows what is typed in it and all that follows from it, and nothing of which a part is typed elsewhere only. */
    @Test
    void aStageShowsWhatFollowsFromItsReadings() {
        List<ReadingId> heights = Stream.of(Corner.values()).map(DayBook::height).toList();
        List<ReadingId> loads = Stream.of(Corner.values()).map(DayBook::load).toList();
        List<ReadingId> ofLoads = Stream.of(ReadingKind.TOTAL, ReadingKind.CROSS, ReadingKind.FRONT_SHARE, ReadingKind.LEFT_SHARE)
                .map(ReadingId::ofCar).toList();
        List<ReadingId> rake = List.of(ReadingId.ofCar(ReadingKind.RAKE));
        assertShows(Stream.of(Corner.values()).map(c -> ReadingId.of(ReadingKind.PRESSURE, c)).toList(), "preparation");
        assertShows(Stream.of(heights, rake).flatMap(List::stream).toList(), "ride-height");
        assertShows(Stream.of(loads, heights, ofLoads, rake).flatMap(List::stream).toList(), "corner-weights");
    }

    private void assertShows(List<ReadingId> expected, String id) {
        assertEquals(new TreeSet<>(expected), new TreeSet<>(stage(new DayBook(), id).readings().stream().map(ReadingState::reading).toList()), id);
    }

    @Test
    void whatNoStageKnowsIsNotRead() {
        DayStatus status = order.status(new DayBook().day());
        assertThrows(NoSuchElementException.class, () -> status.stage("no-such-stage"));
        ReadingId kpi = ReadingId.of(ReadingKind.KPI, Corner.LF);
        assertEquals(ReadingState.missing(kpi, Optional.empty(), 0), status.reading(kpi));
    }
}
