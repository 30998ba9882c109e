package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;

/** Whatever happened to the car since a reading was taken is told beside it, in the racer's words. */
class CausesTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private DayBook read() {
        return new DayBook().signedToAngles(order).read("final-recheck", DayBook.everything());
    }

    private ReadingState state(DayBook book, ReadingId reading) {
        return order.status(book.day()).reading(reading);
    }

    private List<String> reasons(DayBook book, ReadingId reading) {
        return state(book, reading).reasons();
    }

    @Test
    void conditionsTellWhatTheyBecame() {
        ReadingId height = DayBook.height(Corner.LF);
        assertEquals(List.of("ballast moved after this"), reasons(read().condition(Conditions.BALLAST, "5 kg to the nose"), height));
        assertEquals(List.of("tyres changed after this"), reasons(read().condition(Conditions.TYRES, "wets"), height));
        assertEquals(List.of("tyre pressures set after this"), reasons(read().condition(Conditions.PRESSURES, "again"), height));
        assertEquals(List.of("RR tyre pressure changed after this"), reasons(read().condition(Conditions.pressure(Corner.RR), "1.6"), height));
        assertEquals(List.of("pads levelled after this"), reasons(read().condition(Conditions.PADS, Conditions.MOVED)
                .condition(Conditions.PADS, Conditions.LEVELLED), height));
        assertEquals(List.of("steering lock taken out after this"), reasons(read().condition(Conditions.STEERING, Conditions.FREE), height));
        assertEquals(List.of("locknuts tightened after this: a locknut turns the rod"),
                reasons(read().condition(Conditions.LOCKNUTS, Conditions.YES), DayBook.toe(Corner.LF)));
    }

    @Test
    void theDriverGettingInIsToldAsThat() {
        DayBook out = new DayBook().signedToAngles(order).condition(Conditions.DRIVER, Conditions.OUT).read("final-recheck", DayBook.goodHeights());
        out.condition(Conditions.DRIVER, Conditions.IN);
        List<String> reasons = reasons(out, DayBook.height(Corner.LF));
        assertEquals("driver got in after this", reasons.get(reasons.size() - 1));
    }

    @Test
    void aBarIsToldByWhatWasDoneToIt() {
        ReadingId load = DayBook.load(Corner.LF);
        DayBook book = read().condition("rear-bar", Conditions.CONNECTED);
        assertEquals(List.of("rear bar connected after this"), reasons(book, load));
        assertEquals(List.of("rear bar changed and changed back after this"), reasons(book.condition("rear-bar", Conditions.DISCONNECTED), load));
        assertEquals(Freshness.DOUBTFUL, state(book, load).freshness());
        assertEquals(List.of("rear bar on its stiff hole after this"), reasons(read().condition("rear-bar", "on its stiff hole"), load));
    }

    /** Put back to what it was, it leaves a doubt only; anything else makes the reading void. */
    @Test
    void fuelAndPressurePutBackLeaveADoubt() {
        ReadingId height = DayBook.height(Corner.LF);
        DayBook fuel = read().condition(Conditions.FUEL, "12");
        assertEquals(List.of("fuel changed from 20 to 12 kg after this"), reasons(fuel, height));
        assertEquals(Freshness.STALE, state(fuel, height).freshness());
        assertEquals(List.of("fuel changed and put back after this"), reasons(fuel.condition(Conditions.FUEL, "20.0"), height));
        assertEquals(Freshness.DOUBTFUL, state(fuel, height).freshness());
        DayBook tyre = new DayBook().condition(Conditions.pressure(Corner.LF), "1.5").signedToAngles(order)
                .read("final-recheck", DayBook.everything()).condition(Conditions.pressure(Corner.LF), "1.7")
                .condition(Conditions.pressure(Corner.LF), "1.50");
        assertEquals(List.of("LF tyre pressure changed and set back after this"), reasons(tyre, height));
        assertEquals(Freshness.DOUBTFUL, state(tyre, height).freshness());
    }

    /** Pads put back are not where they were, and another set of tyres is another set. */
    @Test
    void padsAndTyresPutBackAreNotWhatTheyWere() {
        ReadingId height = DayBook.height(Corner.LF);
        assertEquals(Freshness.STALE, state(read().condition(Conditions.PADS, Conditions.MOVED)
                .condition(Conditions.PADS, Conditions.LEVELLED), height).freshness());
        DayBook tyres = new DayBook().condition(Conditions.TYRES, "slicks").signedToAngles(order)
                .read("final-recheck", DayBook.everything()).condition(Conditions.TYRES, "wets").condition(Conditions.TYRES, "slicks");
        assertEquals(Freshness.STALE, state(tyres, height).freshness());
    }

    @Test
    void fuelThatWasNotKnownIsToldByWhatItIsNow() {
        DayBook book = new DayBook().read("ride-height", DayBook.goodHeights()).condition(Conditions.FUEL, "12");
        List<String> reasons = reasons(book, DayBook.height(Corner.LF));
        assertEquals("fuel changed to 12 kg after this", reasons.get(reasons.size() - 1));
    }

    @Test
    void scalesTestedAfterwardsDidNotPutItRight() {
        DayBook book = read();
        book.add(new Entry.Check(new Header(0, Instant.EPOCH, "preparation"), ScaleCorrection.SUBJECT, Map.of("factor.LF", 1.002, "u.LF", 0.001),
                new Measurement("known-person", Map.of(), "", Map.of())));
        assertEquals(List.of("scales tested after this: this was not put right by what they were found to show"),
                reasons(book, DayBook.load(Corner.LF)));
        assertEquals(List.of(), reasons(book, DayBook.height(Corner.LF)));
    }

    @Test
    void whatIsTurnedIsToldInItsOwnSteps() {
        ReadingId camber = DayBook.camber(Corner.LF);
        assertEquals(List.of("LF camber shim changed by 0.5 mm after this"), reasons(read().turn(AdjusterKind.CAMBER_SHIM, Corner.LF, -0.5), camber));
        assertEquals(List.of("LF camber shim changed and changed back after this"), reasons(read()
                .turn(AdjusterKind.CAMBER_SHIM, Corner.LF, 0.5).turn(AdjusterKind.CAMBER_SHIM, Corner.LF, -0.5), camber));
        assertEquals(List.of("LF toe link turned 3 flats after this"), reasons(read().turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5), camber));
    }

    /** A car whose adjusters are not described: turns are all there is to say. */
    @Test
    void whatIsNotDescribedIsToldInTurns() {
        Car car = DayBook.car();
        PerCorner<CornerSetup> bare = car.corners().map(c -> new CornerSetup(c.springRateNPerMm(), c.motionRatio(), c.pushrodRatio(),
                c.tyreRateNPerMm(), c.unsprungMassKg(), c.rimChordMm(), List.of()));
        DayBook book = new DayBook(new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), bare, car.masses(), car.heightPoints(),
                car.targets(), car.loadCase(), car.instruments(), car.walkingOrder())).signedToAngles(order)
                .read("final-recheck", DayBook.everything());
        ReadingId height = DayBook.height(Corner.LF);
        assertEquals(List.of("LF perch turned 1 turn after this"), reasons(book.turn(AdjusterKind.PERCH, Corner.LF, 1), height));
        assertEquals(List.of("LF perch turned 1.25 turns after this"), reasons(book.turn(AdjusterKind.PERCH, Corner.LF, 0.25), height));
        assertEquals(List.of("LF perch turned 10 turns after this"), reasons(book.turn(AdjusterKind.PERCH, Corner.LF, 8.75), height));
    }

    /** What a turn is expected to do is said where it would show; within the noise it is expected unchanged. */
    @Test
    void expectedMovesAreMeasuredAgainstTheNoise() {
        ReadingId height = DayBook.height(Corner.LF);
        double noise = new ReadingUncertainty(DayBook.car()).of(height, new double[] {62}, List.of());
        assertEquals("unchanged", expected(0.5 * noise, 0.2 * noise));
        assertEquals("to move +0.2 mm", expected(0.5 * noise, 0.3 * noise), "it may well be more");
        assertEquals("to move -0.7 mm", expected(-2 * noise, 0));
    }

    private String expected(double amount, double uncertainty) {
        OrderOfWork knowing = order.withExpectedMove((turns, reading) -> Optional.of(new ExpectedMove.Move(amount, uncertainty)));
        String words = knowing.status(read().turn(AdjusterKind.PERCH, Corner.RR, 0.25).day()).reading(DayBook.height(Corner.LF)).reasons().get(0);
        return words.replaceFirst(".*\\(expected ", "").replace(")", "");
    }

    /** Ring and pushrod of one corner lift the same leg: 1.5 mm up by each are 3 mm, and angles are void beyond 2 mm. */
    @Test
    void ringAndPushrodOfACornerAddUp() {
        ReadingId toe = DayBook.toe(Corner.RR);
        DayBook both = read().turn(AdjusterKind.PERCH, Corner.LF, 0.75).turn(AdjusterKind.PUSHROD, Corner.LF, 0.9);
        assertEquals(Freshness.STALE, state(both, toe).freshness());
        DayBook against = read().turn(AdjusterKind.PERCH, Corner.LF, 0.75).turn(AdjusterKind.PUSHROD, Corner.LF, -0.9);
        assertEquals(Freshness.DOUBTFUL, state(against, toe).freshness());
        DayBook apart = read().turn(AdjusterKind.PERCH, Corner.LF, 0.75).turn(AdjusterKind.PUSHROD, Corner.RF, 0.9);
        assertEquals(Freshness.DOUBTFUL, state(apart, toe).freshness(), "each of another corner");
    }

    /** A turn of 1.25 mm over a pushrod ratio of 0.5 is 2.5 mm of leg; the spring's own ratio of 0.75 would make it 1.7. */
    @Test
    void aPushrodHasItsOwnRatio() {
        Car car = DayBook.car();
        PerCorner<CornerSetup> corners = car.corners().map(c -> new CornerSetup(c.springRateNPerMm(), c.motionRatio(), OptionalDouble.of(0.5),
                c.tyreRateNPerMm(), c.unsprungMassKg(), c.rimChordMm(), c.adjusters()));
        Car own = new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), corners, car.masses(), car.heightPoints(), car.targets(),
                car.loadCase(), car.instruments(), car.walkingOrder());
        assertEquals(2.5, Causes.legMm(own, new AdjusterId(AdjusterKind.PUSHROD, Corner.LF), 1), 1e-9);
        assertEquals(2, Causes.legMm(own, new AdjusterId(AdjusterKind.PERCH, Corner.LF), 1), 1e-9);
        assertEquals(1.25 / 0.75, Causes.legMm(car, new AdjusterId(AdjusterKind.PUSHROD, Corner.LF), 1), 1e-9, "not known: the usual ratio");
    }
}
