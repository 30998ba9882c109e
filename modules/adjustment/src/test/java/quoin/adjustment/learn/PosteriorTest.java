package quoin.adjustment.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/** What is believed after a day's readings, held against the law of the multivariate normal distribution. */
class PosteriorTest {
    private static final NoiseLevel QUIET = new NoiseLevel(12, 0.5, 1, -0.5);
    private static final NoiseLevel ROUGH = new NoiseLevel(15, 0.5, 1, -0.2);
    private static final NoiseLevel IMPOSSIBLE = new NoiseLevel(0.2, 0.02, 0.1, 0);

    private final LinearCar car = new LinearCar(LinearCar.day());

    private Posterior posterior(List<NoiseLevel> levels, Suspect suspect) {
        return Posterior.of(car.model, levels, car.history, suspect);
    }

    @Test
    void withKnownSpringsItIsTheNormalLaw() {
        for (NoiseLevel level : List.of(QUIET, ROUGH)) {
            Posterior posterior = posterior(List.of(level), Suspect.NONE);
            assertEquals(car.logEvidence(level), posterior.logEvidence(), 1e-5);
            RealVector mean = car.mean(level);
            RealMatrix spread = car.spread(level);
            for (int k = 0; k < 7; k++) {
                assertEquals(mean.getEntry(k), posterior.mean(car.model.loadAt() + k), 1e-5 * (1 + Math.abs(mean.getEntry(k))));
                assertEquals(Math.sqrt(spread.getEntry(k, k)), posterior.sd(car.model.loadAt() + k), 1e-5);
            }
        }
    }

    /** Levels of noise weigh by their chance of the readings times what was believed of them; one that cannot be drops out. */
    @Test
    void noiseLevelsAreMixedByTheirProbability() {
        Posterior both = posterior(List.of(QUIET, ROUGH, IMPOSSIBLE), Suspect.NONE);
        double quiet = Math.exp(QUIET.logPrior() + car.logEvidence(QUIET) - car.logEvidence(ROUGH));
        double rough = Math.exp(ROUGH.logPrior());
        double share = quiet / (quiet + rough);
        assertTrue(share > 0.05 && share < 0.95, "both count: " + share);
        assertEquals(2, both.nodes().size());
        assertEquals(car.logEvidence(ROUGH) + Math.log((quiet + rough) / (Math.exp(-0.5) + Math.exp(-0.2) + 1)), both.logEvidence(), 1e-5);
        for (int k = 0; k < 7; k++) {
            double one = car.mean(QUIET).getEntry(k);
            double other = car.mean(ROUGH).getEntry(k);
            double mean = share * one + (1 - share) * other;
            double variance = share * (car.spread(QUIET).getEntry(k, k) + Math.pow(one - mean, 2))
                    + (1 - share) * (car.spread(ROUGH).getEntry(k, k) + Math.pow(other - mean, 2));
            assertEquals(mean, both.mean(car.model.loadAt() + k), 1e-5 * (1 + Math.abs(mean)));
            assertEquals(Math.sqrt(variance), both.sd(car.model.loadAt() + k), 1e-5);
        }
        assertEquals(Math.sqrt(share * 144 + (1 - share) * 225), both.noise()[0], 1e-5);
        assertEquals(Math.sqrt(0.25), both.noise()[1], 1e-6);
        assertEquals(share > 0.5 ? QUIET : ROUGH, both.likeliest().noise());
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < 8; j++) {
                assertEquals(share * car.noise(QUIET, i, j, 2) + (1 - share) * car.noise(ROUGH, i, j, 2), both.readingCovariance(2)[i][j], 1e-5);
            }
        }
    }

    @Test
    void whatWasKnownStaysKnown() {
        Posterior posterior = posterior(List.of(QUIET), Suspect.NONE);
        for (int i = 0; i < 4; i++) {
            assertEquals(LinearCar.RATE[i], posterior.rates()[i], 1e-4);
            assertEquals(LinearCar.LIFT[i], posterior.lifts()[i], 1e-5);
            assertEquals(1e-7, posterior.rateSds()[i], 1e-8);
            assertEquals(1e-7, posterior.liftSds()[i], 1e-8);
        }
        assertEquals(1.5, posterior.turnsInPlace()[0], 1e-12);
        assertEquals(0, posterior.turnsInPlace()[1], 1e-12);
        assertEquals(-2, posterior.turnsInPlace()[2], 1e-12);
        assertEquals(0.5, posterior.turnsInPlace()[3], 1e-12);
        assertThrows(IllegalStateException.class, posterior::extra, "the plain car has no amount");
    }

    /** One more unknown that enters linearly: its amount, its uncertainty and the probability of the readings. */
    private void assertLinear(Suspect suspect, ToDoubleBiFunction<Integer, Integer> perUnit) {
        List<int[]> rows = car.rows();
        RealVector column = new ArrayRealVector(rows.size());
        for (int k = 0; k < rows.size(); k++) {
            column.setEntry(k, perUnit.applyAsDouble(rows.get(k)[0], rows.get(k)[1]));
        }
        RealVector unexplained = car.unexplained().subtract(column.mapMultiply(suspect.mean()));
        RealMatrix covariance = car.covariance(QUIET, car.design(column), car.sds(suspect.sd()));
        RealVector weighted = new LUDecomposition(covariance).getSolver().solve(unexplained);
        double square = suspect.sd() * suspect.sd();
        double amount = suspect.mean() + square * column.dotProduct(weighted);
        double variance = square - square * square * column.dotProduct(new LUDecomposition(covariance).getSolver().solve(column));
        Posterior posterior = posterior(List.of(QUIET), suspect);
        assertEquals(LinearCar.logDensity(unexplained, covariance), posterior.logEvidence(), 1e-4, suspect.toString());
        assertEquals(amount, posterior.extra()[0], 1e-4 * Math.sqrt(variance), suspect.toString());
        assertEquals(Math.sqrt(variance), posterior.extra()[1], 1e-4 * Math.sqrt(variance), suspect.toString());
        Departure departure = Departure.of(car.model, List.of(QUIET), car.history, List.of(suspect)).get(0);
        assertEquals(LinearCar.logDensity(unexplained, covariance) - car.logEvidence(QUIET), departure.logOdds(), 1e-4);
        assertEquals(amount, departure.amount(), 1e-4 * Math.sqrt(variance));
    }

    @Test
    void aWrongFigureIsOneUnknownMore() {
        assertLinear(new Suspect(Suspect.Kind.FIGURE, 3, 1, 5, 40), (r, i) -> r == 1 && i == 3 ? 1 : 0);
        assertLinear(new Suspect(Suspect.Kind.FIGURE, 5, 3, 0, 10), (r, i) -> r == 3 && i == 5 ? 1 : 0);
    }

    @Test
    void turnsNotCountedActFromThatReadingOn() {
        assertLinear(new Suspect(Suspect.Kind.TURNS, 1, 1, 0.2, 1), (r, i) -> r >= 1 ? car.perTurn(i, 1) : 0);
        assertLinear(new Suspect(Suspect.Kind.TURNS, 2, 3, 0, 2), (r, i) -> r >= 3 ? car.perTurn(i, 2) : 0);
    }

    @Test
    void aRingThatLiftsLessDoesSoInEveryRound() {
        assertLinear(new Suspect(Suspect.Kind.LIFT, 1, 0, -0.7, 0.35), (r, i) -> {
            double moved = 0;
            for (int round = 0; round <= r; round++) {
                moved += car.perTurn(i, 1) * car.history.get(round).turns()[1];
            }
            return moved;
        });
    }

    @Test
    void aDriverWhoMovedActsInOneReading() {
        assertLinear(new Suspect(Suspect.Kind.MOMENT, 0, 3, 0, 47000), (r, i) -> r == 3 ? car.perLoad(i, 1) : 0);
        assertLinear(new Suspect(Suspect.Kind.MOMENT, 1, 2, 0, 47000), (r, i) -> r == 2 ? car.perLoad(i, 2) : 0);
    }

    /** However many levels are left out as negligible, the others share the whole weight. */
    @Test
    void theWeightsAddUp() {
        Posterior grid = posterior(NoiseLevel.grid(12, 0.45, 0.5, 0.2, 1), Suspect.NONE);
        assertTrue(grid.nodes().size() < 21 && grid.nodes().size() > 4, "" + grid.nodes().size());
        assertEquals(1, grid.nodes().stream().mapToDouble(Posterior.Node::weight).sum(), 1e-12);
    }

    /** Springs and threads other than believed come out of loads put in and turns made: a day simulated by the springs' own statics. */
    @Test
    void springsAndThreadsAreLearnt() {
        double[] factor = {1.3, 0.8, 1.1, 0.7};
        double[] lift = {1.08, 1.08, 0.94, 0.94};
        double[] rate = new double[4];
        for (int i = 0; i < 4; i++) {
            rate[i] = LinearCar.RATE[i] * factor[i];
        }
        double[][] truth = LinearCar.model(0.3, 0.1).springs().response(rate, LinearCar.BAR);
        double[][] turns = {{0, 0, 0, 0}, {3, 0, 0, 0}, {0, 3, -2, 0}, {0, 0, 0, 0}, {-3, 0, 2, 3}, {0, -3, 0, -3}, {0, 0, 0, 0}};
        double[][] loads = {{0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {-700, 900_000, -30_000}, {0, 0, 0}, {0, 0, 0}, {400, -100_000, 150_000}};
        double[] at = {1150, 1010, 1280, 1470, 41, 44, 55, 56};
        boolean[] all = {true, true, true, true, true, true, true, true};
        List<Settling> day = new ArrayList<>();
        for (int r = 0; r < turns.length; r++) {
            double[] read = new double[8];
            for (int i = 0; i < 8; i++) {
                for (int a = 0; a < 4; a++) {
                    at[i] += truth[i][a] * LinearCar.LIFT[a] * lift[a] * turns[r][a];
                }
                read[i] = at[i];
                for (int c = 0; c < 3; c++) {
                    read[i] += truth[i][FourSprings.LOAD + c] * loads[r][c];
                }
            }
            day.add(new Settling(turns[r], read, all, loads[r], 1));
        }
        Posterior learnt = Posterior.of(LinearCar.model(0.3, 0.1), List.of(new NoiseLevel(1, 0.05, 0.2, 0)), day, Suspect.NONE);
        for (int i = 0; i < 4; i++) {
            assertEquals(rate[i], learnt.rates()[i], 0.01 * rate[i]);
            assertEquals(LinearCar.LIFT[i] * lift[i], learnt.lifts()[i], 0.005 * lift[i]);
            assertTrue(learnt.rateSds()[i] > 1e-4 && learnt.rateSds()[i] < 0.02, "" + learnt.rateSds()[i]);
            assertTrue(learnt.liftSds()[i] > 1e-5 && learnt.liftSds()[i] < 0.03, "" + learnt.liftSds()[i]);
        }
        assertEquals(learnt.liftSds()[0], learnt.liftSds()[1], "one thread, one error");
        assertTrue(Math.abs(learnt.liftSds()[0] - learnt.liftSds()[2]) > 1e-6);
        Scenarios cars = Scenarios.draw(learnt, 64);
        for (int a = 0; a < 4; a++) {
            for (int i = 0; i < 8; i++) {
                double expected = truth[i][a] * LinearCar.LIFT[a] * lift[a];
                assertEquals(expected, cars.perTurn(5)[i][a], 0.03 * Math.abs(expected) + 0.05);
            }
        }
    }

    /** A spring from the start, a spring from one round on, a bar still on: what was built in comes out as the amount. */
    @Test
    void faultsOfSpringsAreMeasured() {
        double[][] turns = {{0, 0, 0, 0}, {3, 0, 0, 0}, {0, 3, -2, 0}, {0, 0, 0, 0}, {-3, 0, 2, 3}, {0, -3, 0, -3}};
        double[][] loads = {{0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {-700, 900_000, -30_000}, {0, 0, 0}, {0, 0, 0}};
        double[] stiff = LinearCar.RATE.clone();
        stiff[2] *= 1.5;
        double[] bar = LinearCar.BAR.clone();
        bar[1] += 0.6 * (LinearCar.RATE[2] + LinearCar.RATE[3]) / 2;
        FourSprings springs = LinearCar.model(1, 1).springs();
        double[][] sound = springs.response(LinearCar.RATE, LinearCar.BAR);
        double[][] sprung = springs.response(stiff, LinearCar.BAR);
        double[][] barred = springs.response(LinearCar.RATE, bar);
        assertMeasured(new Suspect(Suspect.Kind.RATE, 2, 0, 0, 0.4), Math.log(1.5), simulated(turns, loads, sprung, sprung, sprung, 0));
        assertMeasured(new Suspect(Suspect.Kind.BAR, 1, 0, Math.log(0.5), 0.8), Math.log(0.6), simulated(turns, loads, barred, barred, barred, 0));
        assertMeasured(new Suspect(Suspect.Kind.RATE_FROM, 2, 2, 0.8, 0.5), Math.log(1.5), simulated(turns, loads, sound, sprung, sound, 2));
    }

    private static List<Settling> simulated(double[][] turns, double[][] loads, double[][] before, double[][] after, double[][] underLoad, int from) {
        double[] at = {1150, 1010, 1280, 1470, 41, 44, 55, 56};
        boolean[] all = {true, true, true, true, true, true, true, true};
        List<Settling> day = new ArrayList<>();
        for (int r = 0; r < turns.length; r++) {
            double[] read = new double[8];
            for (int i = 0; i < 8; i++) {
                for (int a = 0; a < 4; a++) {
                    at[i] += (r < from ? before : after)[i][a] * LinearCar.LIFT[a] * turns[r][a];
                }
                read[i] = at[i];
                for (int c = 0; c < 3; c++) {
                    read[i] += underLoad[i][FourSprings.LOAD + c] * loads[r][c];
                }
            }
            day.add(new Settling(turns[r], read, all, loads[r], 1));
        }
        return day;
    }

    private static void assertMeasured(Suspect suspect, double amount, List<Settling> day) {
        List<NoiseLevel> noise = List.of(new NoiseLevel(0.3, 0.02, 0.1, 0));
        CarModel known = LinearCar.model(1e-4, 1e-4);
        Posterior posterior = Posterior.of(known, noise, day, suspect);
        assertEquals(amount, posterior.extra()[0], 0.02, suspect.toString());
        assertTrue(posterior.extra()[1] > 1e-4 && posterior.extra()[1] < 0.1, suspect + " " + posterior.extra()[1]);
        assertTrue(posterior.logEvidence() > 10 + Posterior.of(known, noise, day, Suspect.NONE).logEvidence());
        Suspect elsewhere = new Suspect(suspect.kind(), suspect.kind() == Suspect.Kind.BAR ? 0 : 1, suspect.at(), suspect.mean(), suspect.sd());
        assertTrue(posterior.logEvidence() > 10 + Posterior.of(known, noise, day, elsewhere).logEvidence(), "not of another corner");
    }

    /** The grid of noise: standard points of a log-normal law, each with its normal weight. */
    @Test
    void noiseIsLogNormal() {
        List<NoiseLevel> grid = NoiseLevel.grid(10, 0.45, 0.5, 0.2, 1);
        assertEquals(21, grid.size());
        for (NoiseLevel level : grid) {
            double f = Math.log(level.friction() / 10) / 0.45;
            double h = Math.log(level.height() / 0.5) / 0.2;
            assertEquals(-(f * f + h * h) / 2, level.logPrior(), 1e-12);
            assertEquals(1, level.scale());
        }
        assertEquals(0, grid.stream().mapToDouble(l -> Math.log(l.friction() / 10)).sum(), 1e-12);
        assertEquals(0.45 * 2.4, grid.stream().mapToDouble(l -> Math.log(l.friction() / 10)).max().orElseThrow(), 1e-12);
        assertEquals(0.2 * 1.3, grid.stream().mapToDouble(l -> Math.log(l.height() / 0.5)).max().orElseThrow(), 1e-12);
        List<NoiseLevel> coarse = NoiseLevel.coarse(10, 0.45, 0.5, 1);
        assertEquals(3, coarse.size());
        assertEquals(10, coarse.get(1).friction(), 1e-12);
        assertTrue(coarse.stream().allMatch(l -> l.height() == 0.5));
    }
}
