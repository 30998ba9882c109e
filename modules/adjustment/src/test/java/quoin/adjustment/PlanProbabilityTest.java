package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PlanProbabilityTest {
    private static final double FAR = 50;

    @Test
    void oneReadingIsExact() {
        NormalDistribution normal = new NormalDistribution(0.3, 0.5);
        PlanProbability p = PlanProbability.inside(new double[] {0.3}, new double[][] {{0.25}}, new double[] {1});
        assertEquals(normal.cumulativeProbability(1) - normal.cumulativeProbability(-1), p.value(), 1e-14);
        assertEquals(0, p.standardError());
    }

    @Test
    void independentReadingsMultiply() {
        double[] mean = {0.3, -0.8, 0, 2, -0.1};
        double[] deviation = {0.5, 0.4, 1, 1.5, 0.05};
        double[] tolerance = {1, 1, 0.5, 1, 0.2};
        double expected = 1;
        double[][] covariance = new double[5][5];
        for (int i = 0; i < 5; i++) {
            NormalDistribution normal = new NormalDistribution(mean[i], deviation[i]);
            expected *= normal.cumulativeProbability(tolerance[i]) - normal.cumulativeProbability(-tolerance[i]);
            covariance[i][i] = deviation[i] * deviation[i];
        }
        PlanProbability p = PlanProbability.inside(mean, covariance, tolerance);
        assertEquals(expected, p.value(), 1e-13);
        assertTrue(p.standardError() < 1e-9);
    }

    /** Sheppard 1899: orthant probability 1/4 + asin(rho) / (2 pi). */
    @Test
    void orthantOfTwo() {
        for (double rho : new double[] {-0.95, -0.5, 0, 0.3, 0.9, 0.999}) {
            double[][] covariance = {{1, rho}, {rho, 1}};
            assertEquals(0.25 + Math.asin(rho) / (2 * Math.PI), orthant(covariance), 5e-4, "rho " + rho);
        }
    }

    /** Equal correlations of one half: the orthant probability of n variables is 1 / (n + 1). */
    @Test
    void orthantOfEquallyCorrelated() {
        for (int n = 2; n <= 9; n++) {
            double[][] covariance = new double[n][n];
            for (int i = 0; i < n; i++) {
                Arrays.fill(covariance[i], 0.5);
                covariance[i][i] = 1;
            }
            assertEquals(1.0 / (n + 1), orthant(covariance), 1e-3, "n " + n);
        }
    }

    @Test
    void readingsThatAreTheSameCountOnce() {
        double[][] covariance = {{1, 1, -2}, {1, 1, -2}, {-2, -2, 4}};
        PlanProbability p = PlanProbability.inside(new double[3], covariance, new double[] {1, 0.7, 1.2});
        NormalDistribution normal = new NormalDistribution(0, 1);
        assertEquals(normal.cumulativeProbability(0.6) - normal.cumulativeProbability(-0.6), p.value(), 1e-9);
    }

    @Test
    void certainReadingsDecideAlone() {
        double[][] none = new double[2][2];
        assertEquals(1, PlanProbability.inside(new double[] {1, -0.5}, none, new double[] {1, 1}).value());
        assertEquals(0, PlanProbability.inside(new double[] {1.01, 0}, none, new double[] {1, 1}).value());
    }

    /** Four heights of a rigid frame (rank three) and a cross weight that hangs on them, against plain sampling. */
    @Test
    @Tag("slow")
    void singularCovarianceAgreesWithSampling() {
        Random random = new Random(11);
        for (int run = 0; run < 12; run++) {
            int n = 2 + random.nextInt(7);
            int rank = 1 + random.nextInt(n);
            double[][] root = new double[n][rank];
            double[] mean = new double[n];
            double[] tolerance = new double[n];
            for (int i = 0; i < n; i++) {
                mean[i] = 0.4 * random.nextGaussian();
                tolerance[i] = 0.5 + random.nextDouble();
                for (int k = 0; k < rank; k++) {
                    root[i][k] = 0.4 * random.nextGaussian();
                }
            }
            double[][] covariance = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    for (int k = 0; k < rank; k++) {
                        covariance[i][j] += root[i][k] * root[j][k];
                    }
                }
            }
            PlanProbability p = PlanProbability.inside(mean, covariance, tolerance);
            double sampled = sample(random, mean, root, tolerance, 200_000);
            assertEquals(sampled, p.value(), 5 * Math.sqrt(0.25 / 200_000) + 4 * p.standardError(), "run " + run);
            assertTrue(p.standardError() < 2e-3);
        }
    }

    private static double sample(Random random, double[] mean, double[][] root, double[] tolerance, int draws) {
        int inside = 0;
        double[] z = new double[root[0].length];
        for (int d = 0; d < draws; d++) {
            Arrays.setAll(z, k -> random.nextGaussian());
            boolean all = true;
            for (int i = 0; i < mean.length; i++) {
                double value = mean[i];
                for (int k = 0; k < z.length; k++) {
                    value += root[i][k] * z[k];
                }
                all &= Math.abs(value) <= tolerance[i];
            }
            inside += all ? 1 : 0;
        }
        return (double) inside / draws;
    }

    /** The box from 0 to 2 FAR, shifted to be symmetric. */
    private static double orthant(double[][] covariance) {
        double[] mean = new double[covariance.length];
        double[] tolerance = new double[covariance.length];
        Arrays.fill(mean, -FAR);
        Arrays.fill(tolerance, FAR);
        return PlanProbability.inside(mean, covariance, tolerance).value();
    }
}
