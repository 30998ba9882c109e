package quoin.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.workflow.CarState;
import quoin.workflow.Measured;
import quoin.workflow.StateComparison;

/** Any two states side by side, and the moments of a day they are taken from. */
class StateComparisonTest {

    private static final ReadingId LF_CAMBER = ReadingId.of(ReadingKind.CAMBER, Corner.LF);
    private static final ReadingId LF_LOAD = ReadingId.of(ReadingKind.LOAD, Corner.LF);

    private static CarState state(String day, Map<ReadingId, Measured> readings) {
        return new CarState(day, readings, Map.of(), Map.of());
    }

    private static StateComparison.Line only(CarState from, CarState to) {
        List<StateComparison.Line> lines = StateComparison.of(from, to, StateComparison.Part.ALL).lines();
        assertEquals(1, lines.size());
        return lines.get(0);
    }

    /** Two readings of 0.05 deg each: their difference has 0.0707, its band for 95 % is 0.141 (JCGM 100:2008, 5.1.2, 6.3.3). */
    @Test
    void insideTheNoiseNothingChanged() {
        CarState before = state("a", Map.of(LF_CAMBER, new Measured(-2.0, 0.05, 1, 5)));
        StateComparison.Line still = only(before, state("b", Map.of(LF_CAMBER, new Measured(-2.14, 0.05, 1, 5))));
        assertEquals(StateComparison.Word.NO_CHANGE, still.word());
        assertEquals(0.1414, still.difference().orElseThrow().band(), 1e-4);
        assertEquals(StateComparison.Word.CHANGED, only(before, state("b", Map.of(LF_CAMBER, new Measured(-2.145, 0.05, 1, 5)))).word());
        assertEquals(-1, DifferenceChart.inBands(only(before, state("b", Map.of(LF_CAMBER, new Measured(-2 - 0.1 * Math.sqrt(2), 0.05, 1, 5))))), 1e-9);
    }

    @Test
    void aReadingTakenOnlyOnceIsNoComparison() {
        CarState one = state("a", Map.of(LF_CAMBER, new Measured(-2, 0.05, 1, 5)));
        assertEquals(StateComparison.Word.NOT_READ_BETWEEN, only(one, one).word());
        assertTrue(only(one, one).difference().isEmpty());
        assertEquals(StateComparison.Word.MISSING, only(one, state("b", Map.of())).word());
    }

    /** JCGM 106:2012, 8.3: with u = 0.05 the guard band is 0.082, so 0.1 off with a tolerance of 0.1 cannot be called. */
    @Test
    void againstATargetTheToleranceDecides() {
        CarState target = new CarState("", Map.of(), Map.of(LF_CAMBER, new Target(-2, 0.1)), Map.of());
        assertEquals(StateComparison.Word.ON_TARGET, only(target, state("a", Map.of(LF_CAMBER, new Measured(-2.01, 0.05, 1, 5)))).word());
        assertEquals(StateComparison.Word.TOO_CLOSE, only(target, state("a", Map.of(LF_CAMBER, new Measured(-2.1, 0.05, 1, 5)))).word());
        StateComparison.Line off = only(target, state("a", Map.of(LF_CAMBER, new Measured(-2.3, 0.05, 1, 5))));
        assertEquals(StateComparison.Word.OFF_TARGET, off.word());
        assertEquals(-0.3, off.difference().orElseThrow().amount(), 1e-12);
    }

    @Test
    void theMomentsOfADayAreFoundInItsEntries() {
        Day day = new Book().read(Book.loads(48)).read(Book.angles(-1.8, 0.1)).turn(AdjusterKind.PERCH, Corner.RR, -0.25).read(Book.loads(49.9))
                .sign("corner-weights").turn(AdjusterKind.CAMBER_ROD, Corner.LF, -0.5).read(Book.angles(-2, 0.1)).sign("wheel-angles")
                .read(Book.loads(49.5)).turn(AdjusterKind.PERCH, Corner.RR, -0.125).read(Book.loads(50)).read(Book.angles(-2.02, 0.1)).day();
        assertEquals(List.of("AS_FOUND 3", "SIGNED 6", "SIGNED 9", "ROUND 10", "LAST 13"),
                Moment.of(day).stream().map(m -> m.kind() + " " + m.entry()).toList());
        assertTrue(Moment.beforeReweigh(day).isEmpty(), "the angles were read on their own once more after the weights");
        Day sooner = Day.of(day.written().subList(0, 12));
        assertEquals(9, Moment.beforeReweigh(sooner).orElseThrow().entry());
    }

    @Test
    void asFoundAndNowShowsWhatTheDayDid() {
        Book book = new Book().read(Book.loads(48)).turn(AdjusterKind.PERCH, Corner.RR, -0.25).read(Book.loads(50));
        CarState found = CarState.at("d", book.day(), 2);
        CarState now = CarState.at("d", book.day(), book.size());
        StateComparison compared = StateComparison.of(found, now, StateComparison.Part.WEIGHTS_AND_HEIGHTS);
        assertEquals(Book.CROSS, compared.lines().get(0).reading(), "the cross weight comes first");
        assertEquals(2, compared.lines().get(0).difference().orElseThrow().amount(), 1e-9);
        assertEquals(StateComparison.Word.CHANGED, compared.lines().get(0).word());
        StateComparison.Line load = compared.lines().stream().filter(l -> l.reading().equals(LF_LOAD)).findFirst().orElseThrow();
        assertEquals(-6, load.difference().orElseThrow().amount(), 1e-9, "2 % of 600 kg on two wheels");
        assertEquals(Map.of(new AdjusterId(AdjusterKind.PERCH, Corner.RR), -0.5), compared.positions(), "a quarter turn of a 2 mm thread");
        assertFalse(StateComparison.of(found, now, StateComparison.Part.ANGLES).lines().stream().anyMatch(l -> l.reading().equals(LF_LOAD)));
    }

    @Test
    void theTargetsOfADayAreAState() {
        CarState target = CarState.targets(new Book().read(Book.loads(50)).day());
        assertEquals(Optional.of(50.0), Optional.ofNullable(target.targets().get(Book.CROSS)).map(Target::value));
    }
}
