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
}
