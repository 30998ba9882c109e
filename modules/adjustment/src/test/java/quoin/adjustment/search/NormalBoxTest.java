package quoin.adjustment.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Probabilities of boxes against one-dimensional integrals by Hipparchus. */
class NormalBoxTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private static double between(double a, double b) {
        return a < b ? NORMAL.cumulativeProbability(b) - NORMAL.cumulativeProbability(a) : 0;
    }

    /** One uncertain thing read four ways, one of them backwards: the narrowest band from either side decides. */
    @Test
    void readingsOfOneThingNarrowEachOther() {
        double[] slope = {1, 2, -0.5, 3};
        double[] mean = {0.2, -0.5, 0.1, 1};
        double[] lower = {-1, -2, -0.4, -9};
        double[] upper = {1.5, 2.1, 0.9, 9};
        double[][] covariance = new double[4][4];
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                covariance[i][j] = slope[i] * slope[j];
            }
            double one = (lower[i] - mean[i]) / slope[i];
            double two = (upper[i] - mean[i]) / slope[i];
            low = Math.max(low, Math.min(one, two));
            high = Math.min(high, Math.max(one, two));
        }
        NormalBox.Probability p = NormalBox.probability(mean, covariance, lower, upper);
        assertEquals(between(low, high), p.value(), 1e-9);
        assertEquals(0, p.standardError());
    }

    /** Two heights and their sum: rank two, three rows. */
    @Test
    void aSumOfTwoIsBoundToBoth() {
        double[][] cases = {{0, 0, 1, 1, 1}, {0.5, -0.3, 1, 2, 0.8}, {-1, 1.4, 0.6, 0.9, 3}, {2.2, 2.1, 1.5, 1.5, 2}};
        for (double[] c : cases) {
            double[][] covariance = {{1, 0, 1}, {0, 1, 1}, {1, 1, 2}};
            double[] mean = {c[0], c[1], c[0] + c[1]};
            double[] lower = {-c[2], -c[3], -c[4]};
            double[] upper = {c[2], c[3], c[4]};
            double expected = new IterativeLegendreGaussIntegrator(20, 1e-9, 1e-12).integrate(1_000_000,
                    x -> NORMAL.density(x) * between(Math.max(-c[3], -c[4] - c[0] - x) - c[1], Math.min(c[3], c[4] - c[0] - x) - c[1]),
                    -c[2] - c[0], c[2] - c[0]);
            NormalBox.Probability p = NormalBox.probability(mean, covariance, lower, upper);
            assertEquals(expected, p.value(), 5e-4, "case " + c[0]);
            assertTrue(p.standardError() <= 2e-3, "" + p.standardError());
        }
    }

    /** Bands to one side, far out: the tails keep their digits. */
    @Test
    void farTailsKeepTheirDigits() {
        double[][] independent = {{1, 0}, {0, 4}};
        for (double side : new double[] {1, -1}) {
            double[] mean = {-6 * side, 0};
            NormalBox.Probability p = NormalBox.probability(mean, independent, new double[] {-1, -2}, new double[] {1, 2});
            double expected = (NORMAL.cumulativeProbability(-5) - NORMAL.cumulativeProbability(-7)) * between(-1, 1);
            assertEquals(1, p.value() / expected, 1e-9);
        }
        NormalBox.Probability never = NormalBox.probability(new double[] {60, 0}, independent, new double[] {-1, -2}, new double[] {1, 2});
        assertEquals(0, never.value());
    }

    /** A reading known beside an uncertain one decides alone where it is out, and counts for nothing where it is in. */
    @Test
    void whatIsCertainIsInOrOut() {
        double[][] covariance = {{0, 0}, {0, 1}};
        double[] lower = {-1, -1};
        double[] upper = {1, 1};
        assertEquals(between(-1, 1), NormalBox.probability(new double[] {1, 0}, covariance, lower, upper).value(), 1e-12);
        assertEquals(between(-1, 1), NormalBox.probability(new double[] {-1, 0}, covariance, lower, upper).value(), 1e-12);
        assertEquals(0, NormalBox.probability(new double[] {1.001, 0}, covariance, lower, upper).value());
        assertEquals(0, NormalBox.probability(new double[] {-1.001, 0}, covariance, lower, upper).value());
    }

    /** Five dimensions with one factor in common: a one-dimensional integral over it. */
    @Test
    void aCommonFactor() {
        double[] share = {0.9, -0.6, 0.3, 0.8, 0.5};
        double[] mean = {0.4, 0, -0.7, 0.1, 0.2};
        double[][] covariance = new double[5][5];
        double[] lower = new double[5];
        double[] upper = new double[5];
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                covariance[i][j] = i == j ? 1 : share[i] * share[j];
            }
            lower[i] = -1;
            upper[i] = 1.2;
        }
        double expected = new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-13).integrate(1_000_000, z -> {
            double product = NORMAL.density(z);
            for (int i = 0; i < 5; i++) {
                double own = Math.sqrt(1 - share[i] * share[i]);
                product *= between((lower[i] - mean[i] - share[i] * z) / own, (upper[i] - mean[i] - share[i] * z) / own);
            }
            return product;
        }, -9, 9);
        NormalBox.Probability p = NormalBox.probability(mean, covariance, lower, upper);
        assertEquals(expected, p.value(), 4e-4);
        assertTrue(p.standardError() > 0 && p.standardError() < 2e-4, "" + p.standardError());
        assertTrue(Math.abs(expected - p.value()) < 5 * p.standardError(), expected + " " + p);
    }
}
