package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quoin.adjustment.bench.FaultySession;
import quoin.adjustment.bench.Session;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;
import quoin.car.Corner;

/** Learning against simulated cars whose springs, lifts and friction are known; the simulation has its own mechanics. */
class LearnerTest {

    private static final int CARS = 20;

    /** Springs typed at anything between half and double the truth, and said to be unknown. */
    private static LearningPrior fromNothing(SimulatedCar car, NoisePrior noise) {
        SplittableRandom random = new SplittableRandom(car.seed + 99);
        List<CornerSpring> corners = new ArrayList<>();
        for (CornerSpring c : car.prior(noise).corners()) {
            corners.add(new CornerSpring(c.xMm(), c.yMm(), c.heightXMm(), c.heightYMm(),
                    c.wheelRateNPerMm() * Math.exp(random.nextDouble(-0.7, 0.7)), c.tyreRateNPerMm(), c.rateRelativeSd()));
        }
        LearningPrior prior = car.prior(noise);
        return new LearningPrior(corners, prior.adjusters(), prior.barRatesNPerMm(), noise, List.of()).withUnknownRates();
    }

    private static double crossPerTurn(List<List<Double>> response, SimulatedCar car, int adjuster) {
        return 100 * (response.get(1).get(adjuster) + response.get(2).get(adjuster)) / (car.massKg * SimulatedCar.G);
    }

    private static double trueCrossPerTurn(SimulatedCar car, int corner) {
        double[] e = new double[4];
        e[corner] = car.lift[corner];
        double[] move = car.move(e);
        return 100 * (move[1] + move[2]) / (car.massKg * SimulatedCar.G);
    }

    /** From nothing: after one move of two turns at one corner the cross per turn of every corner is known. */
    @Test
    void oneMoveTeaches() {
        double before = 0;
        double after = 0;
        for (long seed = 0; seed < CARS; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.WELL_SETTLED);
            Session session = new Session(car, Conditions.WELL_SETTLED);
            LearningPrior prior = fromNothing(car, NoisePrior.wellSettled());
            List<SettledReading> history = new ArrayList<>(List.of(session.read(true)));
            List<List<Double>> ignorant = Learner.learn(prior, history).responsePerTurn();
            session.turn(new int[] {0, 8, 0, 0});
            history.add(session.read(true));
            List<List<Double>> taught = Learner.learn(prior, history).responsePerTurn();
            for (int corner = 0; corner < 4; corner++) {
                double truth = trueCrossPerTurn(car, corner);
                before += Math.pow(crossPerTurn(ignorant, car, corner) / truth - 1, 2) / (4 * CARS);
                after += Math.pow(crossPerTurn(taught, car, corner) / truth - 1, 2) / (4 * CARS);
            }
        }
        assertTrue(Math.sqrt(before) > 0.2, "relative error before: " + Math.sqrt(before));
        assertTrue(Math.sqrt(after) < 0.08, "relative error after one move: " + Math.sqrt(after));
    }

    /** From nothing, full noise: two more turns at each of the worst corners, and the car is mostly inside in three rounds. */
    @Test
    void worksFromNothing() {
        int inside = 0;
        for (long seed = 0; seed < CARS; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.WELL_SETTLED);
            Session session = new Session(car, Conditions.WELL_SETTLED);
            LearningPrior prior = fromNothing(car, NoisePrior.wellSettled());
            List<SettledReading> history = new ArrayList<>(List.of(session.read(true)));
            for (int round = 0; round < 3; round++) {
                TurnAdvice advice = Learner.learn(prior, history).bestSteps(LearningGoals.GOALS, LearningGoals.QUARTERS);
                session.turn(advice.steps().stream().mapToInt(Integer::intValue).toArray());
                history.add(session.read(true));
            }
            inside += session.trulyInside() ? 1 : 0;
        }
        assertTrue(inside >= 0.9 * CARS, inside + " of " + CARS + " inside after three rounds");
    }

    /** Driver out and in, nothing turned: load over height difference gives all four rates, honestly uncertain. */
    @Test
    void driverOutAndInGivesWheelRates() {
        double sdSum = 0;
        double squares = 0;
        for (long seed = 0; seed < CARS; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.WELL_SETTLED);
            Session session = new Session(car, Conditions.WELL_SETTLED);
            LearningPrior prior = fromNothing(car, NoisePrior.wellSettled());
            ResponseBelief one = Learner.learn(prior, List.of(session.read(true)));
            assertEquals(CornerSpring.UNKNOWN_RATE_SD, one.wheelRateRelativeSds().get(0), 0.02, "one reading teaches no rate");
            ResponseBelief both = Learner.learn(prior, List.of(session.read(false), session.read(true), session.read(false)));
            for (int i = 0; i < 4; i++) {
                double sd = both.wheelRateRelativeSds().get(i);
                double z = Math.log(both.wheelRatesNPerMm().get(i) / car.wheelRate[i]) / sd;
                sdSum += sd / (4 * CARS);
                squares += z * z / (4 * CARS);
            }
        }
        assertTrue(sdSum < 0.22, "mean relative sd of the rates " + sdSum);
        assertEquals(1, squares, 0.45, "mean square of error over claimed sd");
    }

    /** The mean square of 120 prediction errors over their claimed spread lies within four standard errors of 1. */
    @Test
    @Tag("slow")
    void predictionsAreAsUncertainAsClaimed() {
        double[] squares = new double[8];
        int cars = 120;
        for (long seed = 1000; seed < 1000 + cars; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.FULL_NOISE);
            Session session = new Session(car, Conditions.FULL_NOISE);
            List<SettledReading> history = new ArrayList<>(List.of(session.read(true)));
            session.turn(new int[] {4, -3, -2, 6});
            history.add(session.read(true));
            ResponseBelief belief = Learner.learn(car.prior(NoisePrior.garage()), history);
            session.turn(new int[] {-2, 3, 5, -1});
            SettledReading next = session.read(true);
            ReadingForecast forecast = belief.predict(next.turns().stream().mapToDouble(Double::doubleValue).toArray());
            for (int i = 0; i < 8; i++) {
                double value = (i < 4 ? next.loadsN().get(i) : next.heightsMm().get(i - 4)).getAsDouble();
                double z = (value - forecast.mean().get(i)) / forecast.readingSd(i);
                squares[i] += z * z / cars;
            }
        }
        for (int i = 0; i < 8; i++) {
            assertEquals(1, squares[i], 4 * Math.sqrt(2.0 / cars), "reading " + i);
        }
    }

    /** Claims of being inside, after one round and after two, sum to the cars truly inside, within 3.5 standard deviations. */
    @Test
    @Tag("slow")
    void claimsAreKept() {
        double claimed = 0;
        double variance = 0;
        int inside = 0;
        double brier = 0;
        int claims = 0;
        for (long seed = 2000; seed < 2070; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.FULL_NOISE);
            Session session = new Session(car, Conditions.FULL_NOISE);
            LearningPrior prior = car.prior(NoisePrior.garage());
            List<SettledReading> history = new ArrayList<>(List.of(session.read(true)));
            TurnAdvice advice = Learner.learn(prior, history).bestSteps(LearningGoals.GOALS, LearningGoals.QUARTERS);
            for (int round = 0; round < 2; round++) {
                session.turn(advice.steps().stream().mapToInt(Integer::intValue).toArray());
                history.add(session.read(true));
                advice = Learner.learn(prior, history).bestSteps(LearningGoals.GOALS, LearningGoals.QUARTERS);
                double p = advice.probabilityNow();
                boolean in = session.trulyInside();
                claimed += p;
                variance += p * (1 - p);
                inside += in ? 1 : 0;
                brier += Math.pow(p - (in ? 1 : 0), 2);
                claims++;
            }
        }
        assertEquals(claimed, inside, 3.5 * Math.sqrt(variance), "claimed against truly inside, of " + claims);
        double share = inside / (double) claims;
        assertTrue(brier / claims < 0.9 * share * (1 - share), "the claims say more than the mere share: Brier score "
                + brier / claims + " against " + share * (1 - share));
    }

    @Test
    void aSecondSettlingNarrowsTheVerdict() {
        SimulatedCar car = new SimulatedCar(7, Conditions.FULL_NOISE);
        Session session = new Session(car, Conditions.FULL_NOISE);
        LearningPrior prior = car.prior(NoisePrior.garage());
        SettledReading first = session.read(true);
        SettledReading second = session.read(true);
        double one = Learner.learn(prior, List.of(first)).forecast(LearningGoals.GOALS, new double[4]).get(0).sd();
        double two = Learner.learn(prior, List.of(first, second)).forecast(LearningGoals.GOALS, new double[4]).get(0).sd();
        assertEquals(1 / Math.sqrt(2), two / one, 0.25, "two settlings against one");
    }

    @Test
    void frictionIsLearntFromTheScatter() {
        double quiet = 0;
        double rough = 0;
        for (long seed = 0; seed < 20; seed++) {
            quiet += friction(seed, Conditions.WELL_SETTLED) / 20;
            rough += friction(seed, Conditions.FULL_NOISE) / 20;
        }
        assertTrue(rough > 1.5 * quiet, "friction sd learnt " + rough + " N against " + quiet + " N");
    }

    private static double friction(long seed, Conditions conditions) {
        SimulatedCar car = new SimulatedCar(seed, conditions);
        Session session = new Session(car, conditions);
        List<SettledReading> history = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            history.add(session.read(true));
        }
        return Learner.learn(car.prior(NoisePrior.garage()), history).frictionSdN();
    }

    /** What was not read is not needed: loads alone teach the loads, and heights stay unknown. */
    @Test
    void missingFiguresAreNotInvented() {
        SimulatedCar car = new SimulatedCar(3, Conditions.FULL_NOISE);
        SettledReading full = new Session(car, Conditions.FULL_NOISE).read(true);
        SettledReading loadsOnly = new SettledReading(full.turns(), full.loadsN(),
                java.util.Collections.nCopies(4, OptionalDouble.empty()), List.of(), 1);
        ReadingForecast forecast = Learner.learn(car.prior(NoisePrior.garage()), List.of(loadsOnly)).predict(new double[4]);
        assertEquals(full.loadsN().get(0).getAsDouble(), forecast.mean().get(0), 3 * forecast.readingSd(0));
        assertTrue(forecast.readingSd(4) > 100, "heights were not read: sd " + forecast.readingSd(4));
    }

    /** A car whose left front height moves 1.2 mm a turn more than on four springs: who knows that from exact mechanics, believes the day. */
    @Test
    void whatExactMechanicsSayIsBelieved() {
        QuietDay day = new QuietDay();
        double[][] perTurn = new double[8][4];
        for (int a = 0; a < 4; a++) {
            double[] one = new double[4];
            one[a] = 1;
            double[] moved = FaultySession.plain(day.car, one);
            for (int row = 0; row < 8; row++) {
                perTurn[row][a] = moved[row] + (row == 4 && a == 0 ? 1.2 : 0);
            }
        }
        List<List<Double>> exact = Arrays.stream(perTurn).map(row -> Arrays.stream(row).boxed().toList()).toList();
        LearningPrior knows = new LearningPrior(day.prior.corners(), day.prior.adjusters(), List.of(0.0, 0.0), day.prior.noise(), exact);
        double[] after = day.after(day.asFound(), 2, 0, -1, 0);
        after[4] += 2.4;
        List<SettledReading> history = List.of(QuietDay.shown(day.asFound(), 0, 0, 0, 0), QuietDay.shown(after, 2, 0, -1, 0));
        assertTrue(Learner.logEvidence(knows, history) > Learner.logEvidence(day.prior, history) + 5);
        assertEquals(after[4] + 1.2 + FaultySession.plain(day.car, new double[] {1, 0, 0, 0})[4],
                Learner.learn(knows, history).predict(new double[] {1, 0, 0, 0}).mean().get(4), 0.2);
    }

    private static double heightSd(double warpMm) {
        QuietDay day = new QuietDay();
        List<SettledReading> history = new ArrayList<>();
        for (int reading = 0; reading < 6; reading++) {
            double warp = reading % 2 == 0 ? warpMm : -warpMm;
            history.add(QuietDay.shown(QuietDay.plus(day.asFound(), new double[] {0, 0, 0, 0, warp, -warp, -warp, warp}), new double[4]));
        }
        return Learner.learn(day.car.knowing(NoisePrior.garage()), history).heightSdMm();
    }

    /** A frame does not warp: heights that do so by 1.2 mm from reading to reading are read badly, and the steady ones well. */
    @Test
    void theNoiseOfTheHeightsIsLearnt() {
        double usual = NoisePrior.garage().heightSdMm();
        assertTrue(heightSd(0) < usual && usual < heightSd(1.2), heightSd(0) + " " + usual + " " + heightSd(1.2));
    }

    @Test
    void misuseNamesTheRemedy() {
        LearningPrior prior = new SimulatedCar(3, Conditions.FULL_NOISE).prior(NoisePrior.garage());
        assertThrows(IllegalArgumentException.class, () -> Learner.learn(prior, List.of()));
        SettledReading threeTurns = SettledReading.of(new double[3], new double[4], new double[4]);
        String message = assertThrows(IllegalArgumentException.class, () -> Learner.learn(prior, List.of(threeTurns))).getMessage();
        assertTrue(message.contains("one per adjuster"), message);
        assertThrows(IllegalArgumentException.class, () -> new LiftAdjuster("RR perch", Corner.RR, 0, "rear", 0.03));
    }
}
