package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A reading against its target. Values of the normal distribution: NIST/SEMATECH e-Handbook, table 1.3.6.7.1. */
class VerdictTest {

    /** u = 1: the guard band is 1.645 (one-sided 95 %, ISO 14253-1:2017), the tolerance 3. */
    @Test
    void insideAndOutsideNeedTheGuardBand() {
        for (double sign : new double[] {1, -1}) {
            assertEquals(Verdict.Answer.INSIDE, Verdict.of(10 + sign * 1.35, 10, 3, 1).answer());
            assertEquals(Verdict.Answer.TOO_CLOSE, Verdict.of(10 + sign * 1.36, 10, 3, 1).answer());
            assertEquals(Verdict.Answer.TOO_CLOSE, Verdict.of(10 + sign * 4.64, 10, 3, 1).answer());
            assertEquals(Verdict.Answer.OUTSIDE, Verdict.of(10 + sign * 4.65, 10, 3, 1).answer());
        }
    }

    /** On the very edge of a guard band: still inside, not yet outside. */
    @Test
    void theEdgeOfTheGuardBand() {
        assertEquals(Verdict.Answer.INSIDE, Verdict.of(Verdict.GUARD_BAND, 0, 2 * Verdict.GUARD_BAND, 1).answer());
        assertEquals(Verdict.Answer.TOO_CLOSE, Verdict.of(1 + Verdict.GUARD_BAND, 0, 1, 1).answer());
    }

    /** Within 1, 2 and 3 standard deviations lie 68.27, 95.45 and 99.73 %; beyond a limit it stands on, one half. */
    @Test
    void theProbabilityIsThatOfTheNormalDistribution() {
        assertEquals(0.6827, Verdict.of(5, 5, 1, 1).probabilityInside(), 5e-5);
        assertEquals(0.9545, Verdict.of(5, 5, 1, 0.5).probabilityInside(), 5e-5);
        assertEquals(0.9973, Verdict.of(5, 5, 3, 1).probabilityInside(), 5e-5);
        assertEquals(0.5, Verdict.of(15, 5, 10, 1).probabilityInside(), 1e-12);
        assertEquals(0.1587, Verdict.of(16, 5, 10, 1).probabilityInside(), 5e-5);
    }

    @Property
    void bothSidesCountAlikeAndNoProbabilityLeavesItsRange(@ForAll @DoubleRange(min = -50, max = 50) double off,
            @ForAll @DoubleRange(min = 0.01, max = 5) double tolerance, @ForAll @DoubleRange(min = 0.01, max = 5) double u) {
        Verdict above = Verdict.of(20 + off, 20, tolerance, u);
        Verdict below = Verdict.of(20 - off, 20, tolerance, u);
        assertEquals(above.answer(), below.answer());
        assertEquals(above.probabilityInside(), below.probabilityInside(), 1e-9);
        assertTrue(above.answer() != Verdict.Answer.OUTSIDE || above.probabilityInside() <= 0.05);
    }

    @Test
    void aCertainReadingIsInOrOut() {
        assertEquals(new Verdict(Verdict.Answer.INSIDE, 1), Verdict.of(62.5, 62, 0.5, 0));
        assertEquals(new Verdict(Verdict.Answer.OUTSIDE, 0), Verdict.of(62.6, 62, 0.5, 0));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Verdict.of(1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Verdict.of(1, 1, 1, -1e-9));
        assertThrows(IllegalArgumentException.class, () -> Verdict.of(1, 1, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Verdict(Verdict.Answer.INSIDE, -1e-9));
        assertThrows(IllegalArgumentException.class, () -> new Verdict(Verdict.Answer.INSIDE, 1 + 1e-9));
        assertEquals(0, new Verdict(Verdict.Answer.OUTSIDE, 0).probabilityInside());
        assertEquals(1, new Verdict(Verdict.Answer.INSIDE, 1).probabilityInside());
    }

    @Test
    void whichStepsEndTheWork() {
        TurnAdvice still = new TurnAdvice(List.of(0, 0), 0.9, 0.9);
        assertEquals(List.of(true, true, false, false), List.of(NextStep.Action.STOP_INSIDE, NextStep.Action.STOP_NO_GAIN,
                NextStep.Action.TURN, NextStep.Action.READ_AGAIN).stream().map(a -> new NextStep(a, still, 0, 0, 0, 0, "").stops()).toList());
        assertEquals(false, still.turnsAnything());
        assertEquals(true, new TurnAdvice(List.of(0, -1), 0.5, 0.9).turnsAnything());
    }
}
