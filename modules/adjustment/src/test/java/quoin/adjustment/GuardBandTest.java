package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Decision rules after JCGM 106:2012, worked by hand; the two conformance examples are that guide's own (from memory). */
class GuardBandTest {

    private static final double ONE_SIDED_95 = 1.6448536269514722;

    /** Breakdown voltage of a Zener diode: -5.47 V, u = 0.05 V, upper limit -5.40 V: Phi(1.4) = 0.92. */
    @Test
    void conformanceToOneLimit() {
        double p = GuardBand.conformance(-5.47, 0.05, Double.NEGATIVE_INFINITY, -5.40);
        assertEquals(0.92, p, 0.005);
        assertEquals(0.9192433407662289, p, 1e-12);
    }

    /** Viscosity of a grade 40 oil: 13.6, u = 1.8, limits 12.5 and 16.3: Phi(1.5) - Phi(-0.61) = 0.66. */
    @Test
    void conformanceToTwoLimits() {
        assertEquals(0.66, GuardBand.conformance(13.6, 1.8, 12.5, 16.3), 0.005);
    }

    @Test
    void aCertainValueIsInOrOut() {
        assertEquals(1, GuardBand.conformance(50.2, 0, 49.8, 50.2));
        assertEquals(1, GuardBand.conformance(49.8, 0, 49.8, 50.2));
        assertEquals(0, GuardBand.conformance(50.2001, 0, 49.8, 50.2));
        assertEquals(0, GuardBand.conformance(49.7999, 0, 49.8, 50.2));
        assertEquals(Verdict.Answer.INSIDE, GuardBand.USUAL.verdict(50.25, 0, 50, 0.25));
        assertEquals(Verdict.Answer.OUTSIDE, GuardBand.USUAL.verdict(50.26, 0, 50, 0.25));
    }

    /** Cross 50 +-0.3 %, u = 0.1 %: guard band 0.164 %, so inside up to 0.136 % off and outside from 0.464 % on. */
    @Test
    void guardBandOfAShare() {
        GuardBand rule = GuardBand.USUAL;
        assertEquals(0.1 * ONE_SIDED_95, rule.width(0.1), 1e-9);
        assertEquals(Verdict.Answer.INSIDE, rule.verdict(50.13, 0.1, 50, 0.3));
        assertEquals(Verdict.Answer.INSIDE, rule.verdict(49.87, 0.1, 50, 0.3));
        assertEquals(Verdict.Answer.TOO_CLOSE, rule.verdict(50.14, 0.1, 50, 0.3));
        assertEquals(Verdict.Answer.TOO_CLOSE, rule.verdict(50.46, 0.1, 50, 0.3));
        assertEquals(Verdict.Answer.OUTSIDE, rule.verdict(50.47, 0.1, 50, 0.3));
        assertEquals(Verdict.Answer.OUTSIDE, rule.verdict(49.53, 0.1, 50, 0.3));
        assertEquals(Verdict.Answer.TOO_CLOSE, rule.verdict(1 + rule.width(1), 1, 0, 1), "more than the guard band, not just that");
    }

    /** Height 62 +-1 mm, u = 0.6 mm: guard band 0.987 mm; both tails count, and even 62.0 is inside with 90.4 % only. */
    @Test
    void bothTailsCountWhenTheBandIsNarrow() {
        assertEquals(0.9044, GuardBand.conformance(62, 0.6, 61, 63), 1e-4);
        assertEquals(Verdict.Answer.TOO_CLOSE, GuardBand.USUAL.verdict(62, 0.6, 62, 1));
    }

    @Test
    void probabilitiesAreJudgedBothWays() {
        GuardBand rule = new GuardBand(0.9);
        assertEquals(Verdict.Answer.INSIDE, rule.verdict(0.9));
        assertEquals(Verdict.Answer.TOO_CLOSE, rule.verdict(0.89));
        assertEquals(Verdict.Answer.TOO_CLOSE, rule.verdict(0.11));
        assertEquals(Verdict.Answer.OUTSIDE, rule.verdict(1 - 0.9), "as sure that it is outside");
    }

    @Test
    void aClaimNeedsMoreThanAnEvenChance() {
        assertThrows(IllegalArgumentException.class, () -> new GuardBand(0.5));
        assertThrows(IllegalArgumentException.class, () -> new GuardBand(1));
    }
}
