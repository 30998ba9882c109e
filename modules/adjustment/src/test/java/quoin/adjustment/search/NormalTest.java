package quoin.adjustment.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class NormalTest {
    private final NormalDistribution reference = new NormalDistribution(0, 1);

    @Test
    void cumulativeAgreesWithHipparchus() {
        for (double x = -12; x <= 12; x += 0.0137) {
            double expected = reference.cumulativeProbability(x);
            assertEquals(expected, Normal.cumulative(x), 1e-15);
            assertEquals(1, Normal.cumulative(x) / expected, 1e-7);
        }
    }

    @Test
    void quantileAgreesWithHipparchusAndInverts() {
        for (double p = 1e-12; p < 1; p = p < 0.01 ? p * 1.7 : p + 0.0071) {
            double x = Normal.quantile(p);
            assertEquals(reference.inverseCumulativeProbability(p), x, 1e-5);
            assertEquals(p, Normal.cumulative(x), 1e-13 * Math.max(1e-3, p));
        }
    }

    /** Where a double ends: nothing is left of the tail, and nothing lies beyond certainty. */
    @Test
    void theEndsOfTheScale() {
        for (double x = 12; x <= 36.9; x += 0.37) {
            assertEquals(1, Normal.cumulative(-x) / reference.cumulativeProbability(-x), 1e-7, "at " + x);
            assertEquals(1, Normal.cumulative(x));
        }
        assertEquals(0, Normal.cumulative(-37.5));
        assertEquals(1, Normal.cumulative(37.5));
        assertEquals(0, Normal.cumulative(Double.NEGATIVE_INFINITY));
        assertEquals(Double.NEGATIVE_INFINITY, Normal.quantile(0));
        assertEquals(Double.POSITIVE_INFINITY, Normal.quantile(1));
        assertEquals(0, Normal.quantile(0.5));
        // the published check values of Algorithm AS 241 (Wichura 1988)
        assertEquals(-0.6744897501960817, Normal.quantile(0.25), 1e-15);
        assertEquals(-3.090232306167814, Normal.quantile(0.001), 1e-14);
        assertEquals(-9.262340089798408, Normal.quantile(1e-20), 1e-13);
    }
}
