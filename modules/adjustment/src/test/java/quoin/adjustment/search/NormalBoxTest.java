package quoin.adjustment.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Probabilities of boxes against one-dimensional integrals by Hipparchus. */
class NormalBoxTest {
    /** With three to six readings: measured on the day this was written. */
    private static final double[] MEAN_ERROR = {0.0015005, 0.0036747, 0.011964, 0.0083080};
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

    /** Covariance of some mixtures of as many or fewer independent things, each reading of deviation one. */
    private static double[][] correlation(Random random, int rows, int things) {
        double[][] mixture = new double[rows][things];
        double[][] out = new double[rows][rows];
        for (int i = 0; i < rows; i++) {
            Arrays.setAll(mixture[i], k -> random.nextGaussian());
            double length = Math.sqrt(Arrays.stream(mixture[i]).map(v -> v * v).sum());
            double[] row = mixture[i];
            Arrays.setAll(row, k -> row[k] / length);
            for (int j = 0; j <= i; j++) {
                for (int k = 0; k < things; k++) {
                    out[i][j] += mixture[i][k] * mixture[j][k];
                }
                out[j][i] = out[i][j];
            }
        }
        return out;
    }

    private static double[] all(int n, double value) {
        double[] out = new double[n];
        Arrays.fill(out, value);
        return out;
    }

    /** What is certain is so against the width of its band, whatever the unit; on the edge of its band half of an uncertain one is inside. */
    @Test
    void certainIsWhatIsSmallAgainstTheBand() {
        for (double unit : new double[] {1e-4, 1, 1e4}) {
            for (double side : new double[] {1, -1}) {
                double[] edge = {side * unit};
                double[] lower = {-unit};
                double[] upper = {unit};
                double sure = 1.9e-9 * unit;
                assertEquals(1, NormalBox.probability(edge, new double[][] {{sure * sure}}, lower, upper).value());
                double unsure = 2.1e-9 * unit;
                assertEquals(0.5, NormalBox.probability(edge, new double[][] {{unsure * unsure}}, lower, upper).value(), 1e-6);
            }
        }
        double[][] none = {{0}};
        assertEquals(1, NormalBox.probability(all(1, 3), none, all(1, 3), all(1, 3)).value(), "a band of one value, and that value");
        assertEquals(0, NormalBox.probability(all(1, 3.01), none, all(1, 3), all(1, 3)).value());
    }

    /** Sheppard: three normals are all positive with 1/8 + (asin r12 + asin r13 + asin r23) / 4 pi; the error stated is the error made. */
    @Test
    void orthants() {
        Random random = new Random(5);
        double squares = 0;
        int runs = 200;
        for (int run = 0; run < runs; run++) {
            double[][] r = correlation(random, 3, 2 + run % 2);
            double expected = 1 / 8.0 + (Math.asin(r[0][1]) + Math.asin(r[0][2]) + Math.asin(r[1][2])) / (4 * Math.PI);
            NormalBox.Probability p = NormalBox.probability(all(3, 0), r, all(3, 0), all(3, 50));
            NormalBox.Probability mirrored = NormalBox.probability(all(3, 0), r, all(3, -50), all(3, 0));
            assertEquals(expected, p.value(), 2e-3, "run " + run);
            assertEquals(expected, mirrored.value(), 2e-3, "run " + run);
            squares += Math.pow((p.value() - expected) / (p.standardError() + 1e-9), 2);
        }
        assertEquals(1, Math.sqrt(squares / runs), 0.3, "errors in units of the error stated");
    }

    /** Readings with one factor in common, each inside its band with both limits far on one side: by an integral over the factor. */
    @Test
    void farBandsOfReadingsThatGoTogether() {
        for (double from : new double[] {1, 3, 9}) {
            for (double share : new double[] {0.3, 0.6}) {
                double own = Math.sqrt(1 - share * share);
                double[][] r = new double[4][4];
                for (int i = 0; i < 4; i++) {
                    Arrays.fill(r[i], share * share);
                    r[i][i] = 1;
                }
                double expected = new IterativeLegendreGaussIntegrator(20, 1e-9, 1e-300).integrate(1_000_000,
                        z -> NORMAL.density(z) * Math.pow(NORMAL.probability((from - share * z) / own, (from + 1 - share * z) / own), 4), -5, 15);
                NormalBox.Probability above = NormalBox.probability(all(4, 0), r, all(4, from), all(4, from + 1));
                NormalBox.Probability below = NormalBox.probability(all(4, 0), r, all(4, -from - 1), all(4, -from));
                assertEquals(1, above.value() / expected, 0.02);
                assertEquals(1, below.value() / expected, 0.02);
            }
        }
    }

    /** A reading that is another one doubled narrows it wherever it stands: a product of independent shares, exactly. */
    @Test
    void aRowThatHangsOnOneOnlyNarrowsThatOne() {
        for (int with = 0; with < 3; with++) {
            double[][] covariance = new double[4][4];
            for (int i = 0; i < 3; i++) {
                covariance[i][i] = 1;
            }
            covariance[3][3] = 4;
            covariance[3][with] = -2;
            covariance[with][3] = -2;
            double[] lower = {-1, -1.1, -1.2, -1};
            double[] upper = {1, 1.1, 1.2, 9};
            double expected = between(-1, 1) * between(-1.1, 1.1) * between(-1.2, 1.2) / between(lower[with], upper[with]) * between(lower[with], 0.5);
            NormalBox.Probability p = NormalBox.probability(all(4, 0), covariance, lower, upper);
            assertEquals(expected, p.value(), 1e-9, "row " + with);
            assertEquals(0, p.standardError(), 1e-12);
        }
    }

    @Test
    void theOrderOfTheReadingsDoesNotMatter() {
        Random random = new Random(9);
        for (int run = 0; run < 60; run++) {
            int n = 3 + run % 3;
            double[][] r = correlation(random, n, n);
            double[] lower = random.doubles(n, -1.5, 0.5).toArray();
            double[] upper = Arrays.stream(lower).map(v -> v + 0.5 + random.nextDouble()).toArray();
            double[][] back = new double[n][n];
            double[] backLower = new double[n];
            double[] backUpper = new double[n];
            for (int i = 0; i < n; i++) {
                int other = n - 1 - i;
                Arrays.setAll(back[i], j -> r[other][n - 1 - j]);
                backLower[i] = lower[other];
                backUpper[i] = upper[other];
            }
            double value = NormalBox.probability(all(n, 0), r, lower, upper).value();
            assertEquals(value, NormalBox.probability(all(n, 0), back, backLower, backUpper).value(), 1e-9, "run " + run);
        }
    }

    /** The row of least chance goes first: what the error of small chances is by it, in their own size. */
    @Test
    void smallChancesAreFoundWithFewPoints() {
        Random random = new Random(17);
        for (int n = 3; n <= 6; n++) {
            double sum = 0;
            int count = 0;
            for (int run = 0; run < 200; run++) {
                double[][] r = correlation(random, n, n);
                double[] lower = random.doubles(n, -2, 2).toArray();
                double[] upper = Arrays.stream(lower).map(v -> v + 0.05 + 3 * random.nextDouble() * random.nextDouble()).toArray();
                NormalBox.Probability p = NormalBox.probability(all(n, 0), r, lower, upper);
                if (p.value() > 1e-9 && p.value() < 2e-3) {
                    sum += p.standardError() / p.value();
                    count++;
                }
            }
            assertTrue(sum / count < 1.05 * MEAN_ERROR[n - 3], n + " readings: " + sum / count);
        }
    }
}
