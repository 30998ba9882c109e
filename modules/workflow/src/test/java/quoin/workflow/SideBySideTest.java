package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** Two readings, and two states of a car, side by side. */
class SideBySideTest {

    private static final ReadingId LF_CAMBER = DayBook.camber(Corner.LF);
    private static final Measured.Lasting SCALES = new Measured.Lasting(0.3, "5@then");

    private static CarState state(String day, Map<ReadingId, Measured> readings, Map<AdjusterId, Double> positions) {
        return new CarState(day, readings, Map.of(), positions);
    }

    private static CarState camber(String day, double deg, long entry) {
        return state(day, Map.of(LF_CAMBER, new Measured(deg, 0.03, 1, entry)), Map.of());
    }

    private static StateComparison.Line only(CarState from, CarState to) {
        List<StateComparison.Line> lines = StateComparison.of(from, to, StateComparison.Part.ALL).lines();
        assertEquals(1, lines.size());
        return lines.get(0);
    }

    /** 3-4-5: uncertainties in squares under the root (JCGM 100:2008, 5.1.2); the noise band is twice that (6.3.3). */
    @Test
    void aDifferenceAndItsBand() {
        Measured early = new Measured(10, 0.3, 1, 1);
        Difference same = Difference.of(early, new Measured(10.5, 0.4, 1, 2));
        assertEquals(0.5, same.amount(), 1e-12);
        assertEquals(0.5, same.uncertainty(), 1e-12);
        assertEquals(1, same.band(), 1e-12);
        assertEquals(Difference.Word.SAME, same.word());
        assertEquals(Difference.Word.TOO_CLOSE, new Difference(-0.51, 0.5).word());
        assertEquals(Difference.Word.TOO_CLOSE, new Difference(1, 0.5).word());
        assertTrue(new Difference(-1, 0.5).isNoise());
        assertEquals(Difference.Word.MOVED, new Difference(1.01, 0.5).word());
        assertFalse(new Difference(-1.01, 0.5).isNoise());
    }

    /** What both share drops out of the difference, fully correlated (JCGM 100:2008, 5.2.2): 0.5^2 + 0.5^2 - 2 * 0.3 * 0.3. */
    @Test
    void whatIsSharedDropsOut() {
        Measured early = new Measured(10, 0.5, 1, 1, SCALES);
        assertEquals(Math.sqrt(0.32), Difference.of(early, new Measured(11, 0.5, 1, 2, SCALES)).uncertainty(), 1e-12);
        Measured.Lasting other = new Measured.Lasting(0.3, "9@later");
        assertEquals(Math.sqrt(0.5), Difference.of(early, new Measured(11, 0.5, 1, 2, other)).uncertainty(), 1e-12);
        Measured.Lasting several = new Measured.Lasting(0.3, " ");
        assertEquals(Math.sqrt(0.5), Difference.of(new Measured(1, 0.5, 1, 1, several), new Measured(1, 0.5, 1, 2, several)).uncertainty(), 1e-12);
        Measured.Lasting all = new Measured.Lasting(0.5, "x");
        assertEquals(0, Difference.of(new Measured(1, 0.3, 1, 1, all), new Measured(1, 0.3, 1, 2, all)).uncertainty(), 0);
    }

    private static ReadingState now(OptionalDouble value, Freshness freshness, long entry) {
        return new ReadingState(LF_CAMBER, value, 2, entry, freshness, List.of(), Optional.empty(), 0.03, Measured.Lasting.NONE, Optional.empty());
    }

    @Test
    void aReadingBesideItsSignedValue() {
        Optional<Measured> signed = Optional.of(new Measured(-2, 0.04, 1, 7));
        Comparison moved = Comparison.of(LF_CAMBER, signed, now(OptionalDouble.of(-2.2), Freshness.FRESH, 9));
        assertEquals(-0.2, moved.difference().orElseThrow().amount(), 1e-12);
        assertEquals(0.05, moved.difference().orElseThrow().uncertainty(), 1e-12);
        assertEquals(Comparison.Word.MOVED, moved.word());
        assertFalse(moved.isStanding());
        assertEquals(-2, moved.signedValue().orElseThrow());
        assertEquals(2, moved.now().orElseThrow().count());
        assertEquals(Comparison.Word.TOO_CLOSE, Comparison.of(LF_CAMBER, signed, now(OptionalDouble.of(-2.06), Freshness.DOUBTFUL, 9)).word());
        assertEquals(Comparison.Word.SAME, Comparison.of(LF_CAMBER, signed, now(OptionalDouble.of(-2.01), Freshness.FRESH, 9)).word());
    }

    @Test
    void whatWasNotReadAgainHasNotMoved() {
        Optional<Measured> signed = Optional.of(new Measured(-2, 0.04, 1, 7));
        Comparison standing = Comparison.of(LF_CAMBER, signed, now(OptionalDouble.of(-2.3), Freshness.FRESH, 7));
        assertTrue(standing.isStanding());
        assertEquals(new Difference(0, 0.03), standing.difference().orElseThrow());
        for (Freshness gone : List.of(Freshness.STALE, Freshness.OUT_OF_ORDER)) {
            Comparison c = Comparison.of(LF_CAMBER, signed, now(OptionalDouble.of(-2), gone, 7));
            assertEquals(Comparison.Word.NOT_READ, c.word(), gone.toString());
            assertFalse(c.isStanding());
        }
        assertEquals(Comparison.Word.NOT_READ, Comparison.of(LF_CAMBER, signed, now(OptionalDouble.empty(), Freshness.FRESH, 0)).word());
        Comparison unsigned = Comparison.of(LF_CAMBER, Optional.empty(), now(OptionalDouble.of(-2), Freshness.FRESH, 7));
        assertEquals(Comparison.Word.NOT_READ, unsigned.word());
        assertFalse(unsigned.isStanding());
        assertTrue(unsigned.signedValue().isEmpty());
    }

    @Test
    void theWorseOfTwoIsInherited() {
        List<Freshness> ascending = List.of(Freshness.FRESH, Freshness.DOUBTFUL, Freshness.OUT_OF_ORDER, Freshness.STALE, Freshness.MISSING);
        for (int i = 0; i < ascending.size(); i++) {
            for (int j = 0; j < ascending.size(); j++) {
                assertEquals(ascending.get(Math.max(i, j)), ascending.get(i).worse(ascending.get(j)));
            }
        }
    }

    @Test
    void oneAndTheSameReadingIsNoComparison() {
        StateComparison.Line line = only(camber("a", -2, 5), camber("a", -2, 5));
        assertEquals(StateComparison.Word.NOT_READ_BETWEEN, line.word());
        assertTrue(line.difference().isEmpty());
        assertEquals(StateComparison.Word.NO_CHANGE, only(camber("a", -2, 5), camber("b", -2, 5)).word(), "entry 5 of another day");
        assertEquals(StateComparison.Word.CHANGED, only(camber("a", -2, 5), camber("a", -2.3, 6)).word());
        assertEquals(StateComparison.Word.MISSING, only(camber("a", -2, 5), state("a", Map.of(), Map.of())).word());
        assertEquals(StateComparison.Word.MISSING, only(state("a", Map.of(), Map.of()), camber("a", -2, 5)).word());
    }

    /** JCGM 106:2012, 8.3: u = 0.03 guards 0.049 on each side of the tolerance of 0.1. */
    @Test
    void aTargetOnEitherSideDecides() {
        CarState wanted = new CarState("", Map.of(), Map.of(LF_CAMBER, new Target(-2, 0.1)), Map.of());
        assertTrue(wanted.isTarget());
        assertEquals(StateComparison.Word.ON_TARGET, only(wanted, camber("a", -2.04, 5)).word());
        assertEquals(StateComparison.Word.ON_TARGET, only(camber("a", -1.96, 5), wanted).word());
        assertEquals(StateComparison.Word.TOO_CLOSE, only(wanted, camber("a", -2.12, 5)).word());
        assertEquals(StateComparison.Word.OFF_TARGET, only(wanted, camber("a", -2.16, 5)).word());
        assertEquals(0.16, only(camber("a", -2.16, 5), wanted).difference().orElseThrow().amount(), 1e-12);
    }

    @Test
    void linesStandInTheOrderOfReading() {
        List<ReadingId> wanted = List.of(DayBook.CROSS, ReadingId.ofCar(ReadingKind.TOTAL), DayBook.load(Corner.LF), DayBook.load(Corner.RF),
                DayBook.load(Corner.LR), DayBook.load(Corner.RR), DayBook.height(Corner.LF), DayBook.height(Corner.RR),
                new ReadingId(ReadingKind.HEIGHT, "nose"), DayBook.camber(Corner.LF), DayBook.caster(Corner.RF), DayBook.toe(Corner.LF));
        List<ReadingId> mixed = new ArrayList<>(wanted);
        Collections.shuffle(mixed, new Random(3));
        Map<ReadingId, Measured> readings = new HashMap<>();
        mixed.forEach(id -> readings.put(id, new Measured(1, 0.1, 1, 1)));
        readings.put(ReadingId.of(ReadingKind.PRESSURE, Corner.LF), new Measured(1.2, 0.01, 1, 1));
        CarState one = state("a", readings, Map.of());
        assertEquals(wanted, ids(one, StateComparison.Part.ALL));
        assertEquals(wanted.subList(0, 9), ids(one, StateComparison.Part.WEIGHTS_AND_HEIGHTS));
        assertEquals(wanted.subList(9, 12), ids(one, StateComparison.Part.ANGLES));
    }

    private static List<ReadingId> ids(CarState one, StateComparison.Part part) {
        return StateComparison.of(one, state("b", Map.of(), Map.of()), part).lines().stream().map(StateComparison.Line::reading).toList();
    }

    @Test
    void adjustersThatStandOtherwiseAreTold() {
        AdjusterId perch = new AdjusterId(AdjusterKind.PERCH, Corner.LF);
        AdjusterId still = new AdjusterId(AdjusterKind.PERCH, Corner.RF);
        AdjusterId once = new AdjusterId(AdjusterKind.PUSHROD, Corner.RF);
        CarState from = state("a", Map.of(), Map.of(perch, 20.0, still, 30.0));
        CarState to = state("a", Map.of(), Map.of(perch, 18.5, still, 30.0 + 1e-7, once, 5.0));
        assertEquals(Map.of(perch, -1.5), StateComparison.of(from, to, StateComparison.Part.ALL).positions());
    }

    @Test
    void aDayTellsItsStateAtAnyMoment() {
        DayBook book = new DayBook().prepared().read("corner-weights", DayBook.loads(52));
        long first = book.size();
        book.turn(AdjusterKind.PERCH, Corner.RR, -0.5).read("corner-weights", DayBook.loads(50));
        CarState then = CarState.at("d", book.day(), first);
        assertEquals(52, then.reading(DayBook.CROSS).orElseThrow().value(), 1e-9);
        assertFalse(then.isTarget());
        assertTrue(then.reading(LF_CAMBER).isEmpty());
        CarState last = CarState.at("d", book.day(), book.size());
        assertEquals(50, last.reading(DayBook.CROSS).orElseThrow().value(), 1e-9);
        CarState wanted = CarState.targets(book.day());
        assertEquals(new Target(-2, 0.1), wanted.targets().get(LF_CAMBER));
        assertTrue(wanted.readings().isEmpty());
    }

    @Test
    void whatIsWantedAndNotReadIsMissing() {
        CarState wanted = new CarState("", Map.of(), Map.of(LF_CAMBER, new Target(-2, 0.1)), Map.of());
        assertEquals(StateComparison.Word.MISSING, only(wanted, state("a", Map.of(), Map.of())).word());
        assertEquals(StateComparison.Word.MISSING, only(state("a", Map.of(), Map.of()), wanted).word());
    }

    @Test
    void anAdjusterStandsWhereItWasMeasured() {
        AdjusterId rod = new AdjusterId(AdjusterKind.PUSHROD, Corner.RF);
        DayBook book = new DayBook();
        book.add(new Entry.Adjustment(Header.draft("ride-height"), List.of(new Entry.Turn(rod, 1, OptionalDouble.of(40))), ""));
        assertEquals(40, CarState.at("d", book.day(), book.size()).positions().get(rod));
        assertFalse(CarState.at("d", book.day(), book.size() - 1).positions().containsKey(rod));
    }
}
