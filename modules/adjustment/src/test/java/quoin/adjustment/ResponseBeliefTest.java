package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import quoin.adjustment.bench.Session;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;
import quoin.car.Corner;

/** What is forecast of a car whose springs are known: the closed form of the simulated car, and normal chances. */
class ResponseBeliefTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final SimulatedCar car = new SimulatedCar(11, Conditions.FULL_NOISE);
    private final LearningPrior knowing = car.knowing(NoisePrior.garage());
    private final SettledReading read = new Session(car, Conditions.FULL_NOISE).read(true);
    private final ResponseBelief belief = Learner.learn(knowing, List.of(read));

    private double[] move(int adjuster, double turns) {
        double[] e = new double[4];
        e[adjuster] = turns * car.lift[adjuster];
        return car.move(e);
    }

    @Test
    void aTurnDoesWhatStaticsSay() {
        List<List<Double>> perTurn = belief.responsePerTurn();
        for (int a = 0; a < 4; a++) {
            double[] move = move(a, 1);
            for (int i = 0; i < 8; i++) {
                assertEquals(move[i], perTurn.get(i).get(a), 1e-3 * (1 + Math.abs(move[i])), "row " + i + " adjuster " + a);
            }
        }
        assertEquals(knowing, belief.prior());
        assertEquals(List.of(read), belief.history());
    }

    @Test
    void readingsAreForecastFromWhereTheCarStands() {
        ReadingForecast still = belief.predict(new double[4]);
        ReadingForecast moved = belief.predict(new double[] {1, 0, -2, 0});
        for (int i = 0; i < 8; i++) {
            assertEquals(read.figure(i).orElseThrow(), still.mean().get(i), 0.6 * still.readingSd(i), "row " + i);
            assertEquals(still.mean().get(i) + move(0, 1)[i] + move(2, -2)[i], moved.mean().get(i), 0.02 + 1e-3 * Math.abs(moved.mean().get(i)));
            // the same noise once more on top of what is not known: twice the variance where one reading is all there is
            assertEquals(Math.sqrt(2) * Math.sqrt(still.truthCovariance().get(i).get(i)), still.readingSd(i), 0.12 * still.readingSd(i));
            for (int j = 0; j < 8; j++) {
                assertEquals(still.truthCovariance().get(i).get(j), still.truthCovariance().get(j).get(i), 1e-9);
            }
        }
        assertTrue(still.truthCovariance().get(0).get(1) < 0, "friction moves load from side to side");
    }

    @Test
    void goalsAreForecastAsTheReadingsAre() {
        double[] turns = {0.5, 0, 0, -0.5};
        ReadingForecast forecast = belief.predict(turns);
        double load = forecast.mean().get(2);
        double sd = Math.sqrt(forecast.truthCovariance().get(2).get(2));
        GoalForecast one = belief.forecast(List.of(Goal.load(Corner.LR, load + sd, 1.5 * sd)), turns).get(0);
        assertEquals(load, one.mean(), 1e-6 * load);
        assertEquals(sd, one.sd(), 1e-6 * sd);
        double inside = NORMAL.cumulativeProbability(2.5) - NORMAL.cumulativeProbability(-0.5);
        assertEquals(inside, one.probabilityInside(), 0.06, "friction is not known, so the tails are a little longer");
        assertEquals(one.probabilityInside(), belief.probabilityInside(List.of(one.goal()), turns), 1e-12);
        double total = forecast.mean().subList(0, 4).stream().mapToDouble(v -> v).sum();
        Goal cross = Goal.cross(50, 0.2);
        GoalForecast share = belief.forecast(List.of(cross), turns).get(0);
        assertEquals(100 * (forecast.mean().get(1) + forecast.mean().get(2)) / total, share.mean(), 1e-3);
        double variance = 0;
        for (int i = 1; i < 3; i++) {
            for (int j = 1; j < 3; j++) {
                variance += forecast.truthCovariance().get(i).get(j);
            }
        }
        assertEquals(100 * Math.sqrt(variance) / total, share.sd(), 0.05 * share.sd());
        assertEquals(NORMAL.cumulativeProbability((50.2 - share.mean()) / share.sd()) - NORMAL.cumulativeProbability((49.8 - share.mean()) / share.sd()),
                share.probabilityInside(), 0.06);
    }

    @Test
    void theVerdictIsThatOfTheRule() {
        ReadingForecast now = belief.predict(new double[4]);
        double sd = Math.sqrt(now.truthCovariance().get(5).get(5));
        List<Goal> goals = List.of(Goal.height(Corner.RF, now.mean().get(5), 6 * sd), Goal.height(Corner.RF, now.mean().get(5) + 20 * sd, 2 * sd));
        CarVerdict verdict = belief.verdict(goals, GuardBand.USUAL);
        assertEquals(Verdict.Answer.INSIDE, verdict.goals().get(0).verdict());
        assertEquals(Verdict.Answer.OUTSIDE, verdict.goals().get(1).verdict());
        assertEquals(1.6448536 * sd, verdict.goals().get(0).guardBand(), 1e-4 * sd);
        assertEquals(0, verdict.probabilityInside());
        assertEquals(Verdict.Answer.OUTSIDE, verdict.verdict());
        assertEquals(1, belief.probabilityInside(goals.subList(0, 1)));
    }

    /** Four scales of independent standard uncertainty: the cross weight's is 100/W times the square root of the sum of squares (JCGM 100:2008, 5.1). */
    @Test
    void scalesThatMayBeOffMakeTheTruthLessCertainAndNoForecast() {
        double[] turns = {0.5, 0, 0, -0.5};
        double[] off = {12, 9, 15, 10};
        List<List<Double>> covariance = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            List<Double> row = new ArrayList<>(List.of(0.0, 0.0, 0.0, 0.0));
            row.set(i, off[i] * off[i]);
            covariance.add(row);
        }
        ResponseBelief wary = belief.onScalesOff(covariance);
        ReadingForecast before = belief.predict(turns);
        ReadingForecast after = wary.predict(turns);
        assertEquals(before.mean(), after.mean());
        assertEquals(before.readingCovariance(), after.readingCovariance(), "the same scales show it");
        assertEquals(belief.responsePerTurn(), wary.responsePerTurn());
        double total = before.mean().subList(0, 4).stream().mapToDouble(v -> v).sum();
        Goal cross = Goal.cross(100 * (before.mean().get(1) + before.mean().get(2)) / total, 0.3);
        GoalForecast sure = belief.forecast(List.of(cross), turns).get(0);
        GoalForecast unsure = wary.forecast(List.of(cross), turns).get(0);
        double c = sure.mean() / 100;
        // d cross / d load: (1 - c) / W on the diagonal, -c / W off it
        double more2 = 0;
        for (int i = 0; i < 4; i++) {
            more2 += Math.pow(100 / total * (i == 1 || i == 2 ? 1 - c : -c) * off[i], 2);
        }
        assertEquals(Math.sqrt(sure.sd() * sure.sd() + more2), unsure.sd(), 0.03 * unsure.sd());
        assertEquals(2 * NORMAL.cumulativeProbability(0.3 / unsure.sd()) - 1, unsure.probabilityInside(), 0.06, "friction is not known");
        assertTrue(unsure.probabilityInside() < sure.probabilityInside() - 0.03, unsure + " " + sure);
        assertEquals(belief.forecast(List.of(Goal.height(Corner.LF, 0, 5)), turns), wary.forecast(List.of(Goal.height(Corner.LF, 0, 5)), turns));
    }

    /** What exact mechanics says of a turn is believed from the start; learning corrects from there. */
    @Test
    void exactMechanicsIsBelievedFromTheStart() {
        List<List<Double>> exact = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            List<Double> row = new ArrayList<>();
            for (int a = 0; a < 4; a++) {
                row.add(1.02 * move(a, 1)[i] + 0.1 * (i - a));
            }
            exact.add(row);
        }
        LearningPrior prior = new LearningPrior(knowing.corners(), knowing.adjusters(), knowing.barRatesNPerMm(), knowing.noise(), exact);
        SettledReading turned = new SettledReading(List.of(0.0, 2.0, 0.0, 0.0), read.loadsN(), read.heightsMm(), List.of(), 1);
        List<List<Double>> perTurn = Learner.learn(prior, List.of(read)).responsePerTurn();
        for (int i = 0; i < 8; i++) {
            for (int a = 0; a < 4; a++) {
                assertEquals(exact.get(i).get(a), perTurn.get(i).get(a), 1e-3 * (1 + Math.abs(exact.get(i).get(a))));
            }
        }
        // two turns counted in between move what is expected of the same figures: half of it to either side
        double off = Learner.learn(prior, List.of(read, turned)).predict(new double[4]).mean().get(5)
                - Learner.learn(prior, List.of(read)).predict(new double[4]).mean().get(5);
        assertTrue(off > 0.2 * exact.get(5).get(1) && off < 1.8 * exact.get(5).get(1), off + " of " + exact.get(5).get(1));
    }

    @Test
    void stepsStayWithinTheirRange() {
        double far = belief.predict(new double[4]).mean().get(4) + 30;
        List<Goal> goals = List.of(Goal.height(Corner.LF, far, 1));
        TurnAdvice held = belief.bestSteps(goals, new double[] {0.25, 0.25, 0.25, 0.25}, new int[] {-4, -4, -4, -4}, new int[] {5, 4, 4, 4});
        assertEquals(5, held.steps().get(0));
        for (int a = 1; a < 4; a++) {
            assertTrue(Math.abs(held.steps().get(a)) <= 4, held.toString());
        }
        TurnAdvice free = belief.bestSteps(goals, new double[] {0.25, 0.25, 0.25, 0.25});
        assertTrue(free.probabilityAfter() > 0.5 && free.probabilityNow() == 0, free.toString());
        assertTrue(free.turnsAnything());
    }

    @Test
    void whatIsBelievedBeforehandStaysWhereNothingWasTurned() {
        LearningPrior prior = car.prior(NoisePrior.garage());
        ResponseBelief one = Learner.learn(prior, List.of(read));
        for (int a = 0; a < 4; a++) {
            assertEquals(prior.adjusters().get(a).liftMmPerTurn(), one.liftsMmPerTurn().get(a), 1e-6);
            assertEquals(prior.adjusters().get(a).liftRelativeSd(), one.liftRelativeSds().get(a), 1e-6);
            assertEquals(prior.corners().get(a).wheelRateNPerMm(), one.wheelRatesNPerMm().get(a), 0.02 * prior.corners().get(a).wheelRateNPerMm());
            assertEquals(prior.corners().get(a).rateRelativeSd(), one.wheelRateRelativeSds().get(a), 0.01);
        }
        ResponseBelief rearOnly = Learner.learn(prior.withAdjusters(prior.adjusters().subList(2, 4)),
                List.of(new SettledReading(List.of(0.0, 0.0), read.loadsN(), read.heightsMm(), List.of(), 1)));
        assertEquals(2, rearOnly.responsePerTurn().get(0).size());
        for (int i = 0; i < 8; i++) {
            double before = one.responsePerTurn().get(i).get(2);
            assertEquals(before, rearOnly.responsePerTurn().get(i).get(0), 0.05 * (1 + Math.abs(before)));
        }
        assertEquals(0.5, prior.withUnknownRates().corners().get(1).rateRelativeSd());
    }

    @Test
    void aCountThatDoesNotMatchIsRefused() {
        String message = assertThrows(IllegalArgumentException.class, () -> belief.predict(new double[3])).getMessage();
        assertEquals("turns holds 3 values; give one per adjuster, 4", message);
        List<Goal> goals = List.of(Goal.cross(50, 0.2));
        assertThrows(IllegalArgumentException.class, () -> belief.forecast(goals, new double[5]));
        assertThrows(IllegalArgumentException.class, () -> belief.probabilityInside(goals, new double[5]));
        assertThrows(IllegalArgumentException.class, () -> belief.bestSteps(goals, new double[5]));
    }
}
