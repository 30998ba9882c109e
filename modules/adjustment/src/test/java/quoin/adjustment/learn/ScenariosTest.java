package quoin.adjustment.learn;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/** Cars drawn from what is believed, the chances counted over them, and what one more reading would teach: normal laws where springs are known. */
class ScenariosTest {
    private static final NoiseLevel LEVEL = new NoiseLevel(11, 0.5, 1, 0);
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final LinearCar car = new LinearCar(LinearCar.day());
    private final Posterior posterior = Posterior.of(car.model, List.of(LEVEL), car.history, Suspect.NONE);
    private final Scenarios scenarios = Scenarios.draw(posterior, 1024);

    private static RealMatrix rowsAsFound() {
        RealMatrix a = new Array2DRowRealMatrix(8, 7);
        for (int i = 0; i < 8; i++) {
            a.setRowVector(i, LinearCar.asFound(i));
        }
        return a;
    }

    /** Mean readings now and after more turns. */
    private RealVector mean(double[] turns) {
        RealVector out = rowsAsFound().operate(car.mean(LEVEL));
        for (int i = 0; i < 8; i++) {
            double moved = car.turned(3, i);
            for (int a = 0; a < 4; a++) {
                moved += car.perTurn(i, a) * turns[a];
            }
            out.addToEntry(i, moved);
        }
        return out;
    }

    private RealMatrix spread() {
        return rowsAsFound().multiply(car.spread(LEVEL)).multiplyTransposed(rowsAsFound());
    }

    @Test
    void carsAreDrawnEvenlyFromWhatIsBelieved() {
        assertEquals(1024, scenarios.size());
        assertEquals(4, scenarios.adjusters());
        double[] turns = {0.5, 0, -1, 0.25};
        double[][] after = scenarios.after(turns);
        RealVector expected = mean(turns);
        RealMatrix spread = spread();
        for (int i = 0; i < 8; i++) {
            double sd = Math.sqrt(spread.getEntry(i, i));
            double mean = 0;
            for (double[] row : after) {
                mean += row[i] / after.length;
            }
            assertEquals(expected.getEntry(i), mean, 0.01 * sd, "row " + i);
            for (int j = 0; j < 8; j++) {
                double other = Math.sqrt(spread.getEntry(j, j));
                double product = 0;
                for (double[] row : after) {
                    product += (row[i] - expected.getEntry(i)) * (row[j] - expected.getEntry(j)) / after.length;
                }
                assertEquals(spread.getEntry(i, j), product, 0.03 * sd * other, "rows " + i + " " + j);
            }
        }
        assertEquals(16, Scenarios.draw(posterior, 16).size());
        assertEquals(1024, Scenarios.draw(posterior, 5000).size(), "no more than there are points");
    }

    /** A level of noise with a quarter of the weight has a quarter of the cars. */
    @Test
    void noiseLevelsHaveCarsByTheirWeight() {
        Posterior two = Posterior.of(car.model, List.of(LEVEL, new NoiseLevel(18, 0.7, 1, 0)), car.history, Suspect.NONE);
        double wanted = 0;
        for (Posterior.Node node : two.nodes()) {
            wanted += node.weight() * node.fit().p()[car.model.loadAt()];
        }
        Scenarios mixed = Scenarios.draw(two, 1024);
        double mean = 0;
        for (int i = 0; i < 1024; i++) {
            mean += mixed.truth(i)[0] / 1024;
        }
        assertEquals(wanted + car.turned(3, 0), mean, 0.05 * two.sd(car.model.loadAt()));
    }

    private static double[] weights(int row) {
        double[] w = new double[8];
        w[row] = 1;
        return w;
    }

    @Test
    void oneAimHasTheChanceOfANormalValue() {
        double[] turns = {0, 0.5, 0, 0};
        double sd = Math.sqrt(spread().getEntry(4, 4));
        double mean = mean(turns).getEntry(4);
        Aim aim = new Aim(weights(4), false, mean + 0.4 * sd, 1.1 * sd);
        ChanceTable table = new ChanceTable(scenarios, List.of(aim), new double[] {0.25, 0.25, 0.25, 0.25});
        double expected = NORMAL.cumulativeProbability(1.5) - NORMAL.cumulativeProbability(-0.7);
        int[] steps = {0, 2, 0, 0};
        assertEquals(expected, table.chance(steps), 0.01);
        assertEquals(table.chance(steps), table.chance(steps, 0));
        assertEquals(-0.4 / 1.1, table.meanDeviation(steps)[0], 0.01);
        assertEquals(1 / 1.1, table.sdDeviation(steps)[0], 0.02);
        for (int a = 0; a < 4; a++) {
            assertEquals(car.perTurn(4, a) * 0.25 / (1.1 * sd), table.meanSlope()[0][a], 1e-4);
        }
        double mid = 0;
        for (double[] row : scenarios.after(turns)) {
            mid += Math.abs(row[4] - aim.target()) / aim.tolerance() / 1024;
        }
        assertEquals(table.chance(steps) - 0.01 * mid, table.score(steps), 1e-9, "a hundredth of the mean excess is taken off");
        assertEquals(table.score(steps), table.score(steps, table.score(steps) - 1e-6), 1e-12);
        assertEquals(Double.NEGATIVE_INFINITY, table.score(steps, table.score(steps) + 1e-6));
    }

    /** Two aims at once, one of them a share: counted car by car over the readings after the turns. */
    @Test
    void everyAimMustBeMetInOneAndTheSameCar() {
        RealVector now = mean(new double[4]);
        double cross = 100 * (now.getEntry(1) + now.getEntry(2)) / (now.getEntry(0) + now.getEntry(1) + now.getEntry(2) + now.getEntry(3));
        double height = 1.2 * Math.sqrt(spread().getEntry(6, 6));
        List<Aim> aims = List.of(new Aim(new double[] {0, 100, 100, 0, 0, 0, 0, 0}, true, cross + 0.03, 0.06),
                new Aim(weights(6), false, now.getEntry(6), height));
        int[] steps = {1, 0, 0, -2};
        double[] stepTurns = {0.025, 0.25, 0.25, 0.0125};
        int both = 0;
        int[] each = new int[2];
        for (double[] row : scenarios.after(new double[] {0.025, 0, 0, -0.025})) {
            double share = 100 * (row[1] + row[2]) / (row[0] + row[1] + row[2] + row[3]);
            boolean first = Math.abs(share - cross - 0.03) <= 0.06;
            boolean second = Math.abs(row[6] - now.getEntry(6)) <= height;
            each[0] += first ? 1 : 0;
            each[1] += second ? 1 : 0;
            both += first && second ? 1 : 0;
        }
        ChanceTable table = new ChanceTable(scenarios, aims, stepTurns);
        assertTrue(both > 100 && both < Math.min(each[0], each[1]) - 50, "" + both + " of " + each[0] + " and " + each[1]);
        assertEquals(both / 1024.0, table.chance(steps), 1.5 / 1024);
        assertEquals(each[0] / 1024.0, table.chance(steps, 0), 1.5 / 1024);
        assertEquals(each[1] / 1024.0, table.chance(steps, 1), 1.5 / 1024);
        assertEquals(cross, aims.get(0).value(now.toArray()), 1e-9);
    }

    /** No whole steps within reach have a better score: all of them tried. */
    @Test
    void noStepsWithinReachHaveABetterChance() {
        RealVector now = mean(new double[4]);
        Random random = new Random(5);
        for (int run = 0; run < 6; run++) {
            List<Aim> aims = List.of(new Aim(weights(4), false, now.getEntry(4) + random.nextGaussian(), 0.7),
                    new Aim(weights(5), false, now.getEntry(5) + random.nextGaussian(), 0.7),
                    new Aim(new double[] {0, 100, 100, 0, 0, 0, 0, 0}, true, 50 + 0.3 * random.nextGaussian(), 0.4));
            ChanceTable table = new ChanceTable(Scenarios.draw(posterior, 128), aims, new double[] {0.5, 0.5, 0.5, 0.5});
            int[] low = {-3, -2, run % 2 == 0 ? 0 : -2, -2};
            int[] high = {3, run % 2 == 0 ? 0 : 3, 2, 3};
            int[] best = ChanceSearch.best(table, low, high);
            int[] tried = new int[4];
            double most = Double.NEGATIVE_INFINITY;
            int[] winner = null;
            for (int code = 0; code < 7 * 6 * 5 * 6; code++) {
                int c = code;
                boolean within = true;
                for (int a = 0; a < 4; a++) {
                    int[] span = {7, 6, 5, 6};
                    tried[a] = low[a] + c % span[a];
                    c /= span[a];
                    within &= tried[a] <= high[a];
                }
                if (within && table.score(tried) > most) {
                    most = table.score(tried);
                    winner = tried.clone();
                }
            }
            assertEquals(most, table.score(best), 1e-9, "run " + run + ": " + Arrays.toString(best) + " " + Arrays.toString(winner));
        }
    }

    /** Perches and rods: six adjusters at four corners. No single step and no pair of them makes it better. */
    @Test
    void withManyAdjustersNoPairOfStepsIsBetter() {
        CarModel six = CarModel.of(LinearCar.WHEELS, LinearCar.POINTS, LinearCar.TYRE, LinearCar.RATE, new double[] {0.1, 0.1, 0.1, 0.1}, LinearCar.BAR,
                new int[] {0, 1, 2, 3, 0, 3}, new double[] {1.5, 1.4, 1.2, 1.3, 0.9, 0.8}, new int[] {0, 0, 1, 1, 2, 2}, new double[] {0.03, 0.03, 0.03},
                new double[0][]);
        List<Settling> history = car.history.stream()
                .map(s -> new Settling(Arrays.copyOf(s.turns(), 6), s.values(), s.present(), s.load(), s.settlings())).toList();
        Posterior belief = Posterior.of(six, List.of(LEVEL), history, Suspect.NONE);
        Scenarios drawn = Scenarios.draw(belief, 64);
        assertEquals(6, drawn.adjusters());
        double[] now = drawn.truth(0);
        List<Aim> aims = List.of(new Aim(weights(4), false, now[4] + 2, 0.6), new Aim(weights(5), false, now[5] - 1.5, 0.6),
                new Aim(weights(7), false, now[7] + 1, 0.6), new Aim(new double[] {0, 100, 100, 0, 0, 0, 0, 0}, true, 50, 0.4));
        ChanceTable table = new ChanceTable(drawn, aims, new double[] {0.25, 0.25, 0.25, 0.25, 0.25, 0.25});
        int[] low = {-20, -20, -20, -20, -2, 0};
        int[] high = {20, 20, 20, 20, 1, 2};
        int[] best = ChanceSearch.best(table, low, high);
        double score = table.score(best);
        assertTrue(score >= table.score(new int[6]), "never worse than leaving it");
        for (int a = 0; a < 6; a++) {
            assertTrue(best[a] >= low[a] && best[a] <= high[a], Arrays.toString(best));
            for (int b = 0; b < 6; b++) {
                for (int code = 0; code < 9; code++) {
                    int[] tried = best.clone();
                    tried[a] += code % 3 - 1;
                    tried[b] += a == b ? 0 : code / 3 - 1;
                    if (tried[a] >= low[a] && tried[a] <= high[a] && tried[b] >= low[b] && tried[b] <= high[b]) {
                        assertTrue(table.score(tried) <= score + 1e-9, Arrays.toString(best) + " but " + Arrays.toString(tried));
                    }
                }
            }
        }
        assertEquals(0.9, belief.lifts()[4], 1e-6, "never turned, so nothing is learnt of it");
    }

    /** A car that stands at its targets is left alone. */
    @Test
    void whatIsRightStays() {
        RealVector now = mean(new double[4]);
        ChanceTable table = new ChanceTable(scenarios, List.of(new Aim(weights(4), false, now.getEntry(4), 3), new Aim(weights(6), false, now.getEntry(6), 3)),
                new double[] {0.25, 0.25, 0.25, 0.25});
        assertArrayEquals(new int[4], ChanceSearch.best(table, new int[] {-9, -9, -9, -9}, new int[] {9, 9, 9, 9}));
    }

    /**
     * One more reading of known noise N narrows a normal state C to C - C (C + N)^-1 C; its mean moves by what is taken off
     * (Raiffa and Schlaifer, preposterior analysis of the normal process).
     */
    @Test
    void oneMoreReadingTeachesByTheNormalLaw() {
        RealMatrix c = spread();
        RealMatrix n = new Array2DRowRealMatrix(posterior.readingCovariance(1));
        RealMatrix after = c.subtract(c.multiply(MatrixUtils.inverse(c.add(n))).multiply(c));
        double before = Math.sqrt(c.getEntry(4, 4));
        double left = Math.sqrt(after.getEntry(4, 4));
        double moves = Math.sqrt(c.getEntry(4, 4) - after.getEntry(4, 4));
        assertTrue(left < 0.95 * before, "it teaches: " + before + " " + left);
        double[] turns = {0.25, 0, 0, 0};
        double tolerance = 1.5 * left;
        double off = 0.5 * left;
        Aim aim = new Aim(weights(4), false, mean(turns).getEntry(4) - off, tolerance);
        NextReading next = new NextReading(posterior, scenarios, List.of(aim), turns);
        assertEquals(NORMAL.cumulativeProbability(1) - NORMAL.cumulativeProbability(-2), next.chanceAfterFurtherTurn(), 0.02);
        // Inside with 80 % or more where the new mean lies within d of the target: found by halving, then the chance of such a mean.
        double low = 0;
        double high = tolerance;
        for (int i = 0; i < 60; i++) {
            double d = (low + high) / 2;
            double inside = NORMAL.cumulativeProbability((tolerance - d) / left) - NORMAL.cumulativeProbability((-tolerance - d) / left);
            low = inside >= 0.8 ? d : low;
            high = inside >= 0.8 ? high : d;
        }
        double expected = NORMAL.cumulativeProbability((low - off) / moves) - NORMAL.cumulativeProbability((-low - off) / moves);
        assertTrue(expected > 0.1 && expected < 0.9, "" + expected);
        assertEquals(expected, next.chanceOfReaching(0.8), 0.1);
        assertEquals(1, next.chanceOfReaching(0));
        assertEquals(0, next.chanceOfReaching(1.01));
    }

    /** Scales that are off by something of known spread: added to what is true (variances add, JCGM 100:2008, 5.2), in no reading to be seen. */
    @Test
    void whatTheScalesAreOffByIsInTheTruthAndInNoReading() {
        double[] turns = {0.5, 0, -1, 0.25};
        RealMatrix own = new Array2DRowRealMatrix(new double[][] {{90, 20, 5, -8}, {20, 60, 0, 4}, {5, 0, 120, 30}, {-8, 4, 30, 70}});
        RealMatrix shared = new Array2DRowRealMatrix(new double[][] {{100, 120, 140, 150}, {120, 144, 168, 180}, {140, 168, 196, 210}, {150, 180, 210, 225}});
        RealMatrix spread = spread();
        RealVector mean = mean(turns);
        for (RealMatrix covariance : List.of(own, shared)) {
            Scenarios off = scenarios.off(covariance.getData());
            assertArrayEquals(scenarios.after(turns), off.after(turns), "what will be read");
            double[][] truth = off.truthAfter(turns);
            for (int i = 0; i < 8; i++) {
                for (int j = 0; j < 8; j++) {
                    double more = i < 4 && j < 4 ? covariance.getEntry(i, j) : 0;
                    double si = Math.sqrt(spread.getEntry(i, i) + (i < 4 ? covariance.getEntry(i, i) : 0));
                    double sj = Math.sqrt(spread.getEntry(j, j) + (j < 4 ? covariance.getEntry(j, j) : 0));
                    double product = 0;
                    for (double[] row : truth) {
                        product += (row[i] - mean.getEntry(i)) * (row[j] - mean.getEntry(j)) / truth.length;
                    }
                    assertEquals(spread.getEntry(i, j) + more, product, 0.03 * si * sj, "rows " + i + " " + j);
                }
            }
        }
        assertArrayEquals(scenarios.after(turns), scenarios.off(new double[4][4]).truthAfter(turns), "scales that are right");
    }

    /** No number of readings tells what is in all of them: one more teaches as much of the rest as on scales that are right. */
    @Test
    void oneMoreReadingTeachesNothingOfTheScales() {
        RealMatrix c = spread();
        RealMatrix n = new Array2DRowRealMatrix(posterior.readingCovariance(1));
        double left2 = c.subtract(c.multiply(MatrixUtils.inverse(c.add(n))).multiply(c)).getEntry(0, 0);
        double lasting2 = 3 * left2;
        Scenarios off = scenarios.off(new double[][] {{lasting2, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}});
        double left = Math.sqrt(left2 + lasting2);
        Aim aim = new Aim(weights(0), false, mean(new double[4]).getEntry(0) + 0.3 * left, 1.2 * left);
        double expected = NORMAL.cumulativeProbability(1.5) - NORMAL.cumulativeProbability(-0.9);
        assertEquals(expected, new NextReading(posterior, off, List.of(aim), new double[4]).chanceAfterFurtherTurn(), 0.02);
        double sd = Math.sqrt(c.getEntry(0, 0) + lasting2);
        double[] steps = {0.25, 0.25, 0.25, 0.25};
        assertEquals(NORMAL.cumulativeProbability(1.5 * left / sd) - NORMAL.cumulativeProbability(-0.9 * left / sd),
                new ChanceTable(off, List.of(aim), steps).chance(new int[4]), 0.02);
    }

    /** The chance of two at once lies between Frechet's bounds, and below that of either. */
    @Test
    void chancesOfSeveralGoalsAreCountedTogether() {
        RealVector now = mean(new double[4]);
        List<Aim> both = List.of(new Aim(weights(4), false, now.getEntry(4), Math.sqrt(spread().getEntry(4, 4))),
                new Aim(weights(5), false, now.getEntry(5), Math.sqrt(spread().getEntry(5, 5))));
        double one = new NextReading(posterior, scenarios, both.subList(0, 1), new double[4]).chanceAfterFurtherTurn();
        double other = new NextReading(posterior, scenarios, both.subList(1, 2), new double[4]).chanceAfterFurtherTurn();
        double together = new NextReading(posterior, scenarios, both, new double[4]).chanceAfterFurtherTurn();
        assertTrue(together <= Math.min(one, other) && together >= one + other - 1, together + " of " + one + " and " + other);
        assertTrue(together < Math.min(one, other) - 0.02 && together > 0.05, together + " of " + one + " and " + other);
    }
}
