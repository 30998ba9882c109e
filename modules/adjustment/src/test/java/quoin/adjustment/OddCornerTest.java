package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quoin.adjustment.OddCorner.Cause;
import quoin.adjustment.bench.FaultySession;
import quoin.adjustment.bench.Session;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;
import quoin.car.Corner;

/** Faults built into simulated cars, and cars without any. */
class OddCornerTest {

    private static final int CARS = 12;
    private static final int[][] ROUNDS = {{-6, 4, 6, -4}, {4, -6, -2, 6}, {2, 4, -4, -2}};

    private static List<SettledReading> day(Session session) {
        List<SettledReading> out = new ArrayList<>(List.of(session.read(true)));
        for (int[] quarters : ROUNDS) {
            session.turn(quarters);
            out.add(session.read(true));
        }
        return out;
    }

    private static Optional<OddCorner> odd(SimulatedCar car, Conditions conditions, BiFunction<Integer, double[], double[]> fault) {
        NoisePrior noise = conditions.equals(Conditions.WELL_SETTLED) ? NoisePrior.wellSettled() : NoisePrior.garage();
        return OddCorner.of(car.prior(noise), day(new FaultySession(car, conditions, fault)));
    }

    /** What is named on several cars with a fault; every one named must be the right one but for a few. */
    private static List<OddCorner> named(Conditions conditions, Function<SimulatedCar, BiFunction<Integer, double[], double[]>> fault,
            Cause cause, Corner corner, int least) {
        List<OddCorner> right = new ArrayList<>();
        List<OddCorner> wrong = new ArrayList<>();
        for (long seed = 0; seed < CARS; seed++) {
            SimulatedCar car = new SimulatedCar(seed, conditions);
            odd(car, conditions, fault.apply(car)).ifPresent(o -> (o.cause() == cause && o.corner() == corner ? right : wrong).add(o));
        }
        assertTrue(right.size() >= least, right.size() + " of " + CARS + " named; otherwise named: " + wrong);
        assertTrue(wrong.size() <= 1, "wrongly named: " + wrong);
        return right;
    }

    /** Shares of the amounts within two standard uncertainties of the truth. */
    private static void assertAmounts(double truth, List<OddCorner> named) {
        long near = named.stream().filter(o -> Math.abs(o.amount() - truth) < 2.5 * o.sd()).count();
        assertTrue(near >= 0.75 * named.size(), "true amount " + truth + ": " + named);
    }

    /** Fewer than 3 in 100 sound cars are accused, full noise. */
    @Test
    @Tag("slow")
    void soundCarsAreNotAccused() {
        List<OddCorner> accused = new ArrayList<>();
        int cars = 300;
        for (long seed = 100; seed < 100 + cars; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.FULL_NOISE);
            odd(car, Conditions.FULL_NOISE, (r, t) -> FaultySession.plain(car, t)).ifPresent(accused::add);
        }
        assertTrue(accused.size() < 0.03 * cars, accused.size() + " accused: " + accused);
    }

    @Test
    void soundCarsWellSettledAreNotAccused() {
        List<OddCorner> accused = new ArrayList<>();
        for (long seed = 500; seed < 560; seed++) {
            SimulatedCar car = new SimulatedCar(seed, Conditions.WELL_SETTLED);
            odd(car, Conditions.WELL_SETTLED, (r, t) -> FaultySession.plain(car, t)).ifPresent(accused::add);
        }
        assertTrue(accused.size() <= 1, accused.toString());
    }

    @Test
    void seizedRing() {
        Function<SimulatedCar, BiFunction<Integer, double[], double[]>> fault =
                car -> (r, t) -> FaultySession.plain(car, new double[] {0, t[1], t[2], t[3]});
        List<OddCorner> named = named(Conditions.WELL_SETTLED, fault, Cause.SEIZED_RING, Corner.LF, CARS - 1);
        assertAmounts(0, named);
        assertTrue(named.get(0).words().startsWith("LF perch does "), named.get(0).words());
        named(Conditions.FULL_NOISE, fault, Cause.SEIZED_RING, Corner.LF, CARS / 3);
    }

    @Test
    void miscount() {
        List<OddCorner> named = named(Conditions.FULL_NOISE, car -> (r, t) -> FaultySession.plain(car,
                r == 2 ? new double[] {t[0], t[1], t[2], t[3] - 2} : t), Cause.MISCOUNT, Corner.RR, CARS - 1);
        assertAmounts(-0.5, named);
        assertTrue(named.get(0).words().startsWith("RR perch answers oddly in round 2: 1.50 turns up recorded, "), named.get(0).words());
    }

    @Test
    void bumpStopTouched() {
        List<OddCorner> named = named(Conditions.WELL_SETTLED, car -> (r, t) -> r < 2 ? FaultySession.plain(car, t)
                : FaultySession.plain(FaultySession.stiffer(car, Conditions.WELL_SETTLED, 1, 4), t), Cause.BUMP_STOP, Corner.RF, CARS - 1);
        assertAmounts(4, named);
        assertTrue(named.get(0).words().contains(" times as stiff from round 2 on: look for a bump stop touched"), named.get(0).words());
    }

    @Test
    void barConnected() {
        List<OddCorner> front = named(Conditions.WELL_SETTLED, car -> (r, t) -> FaultySession.withBars(car, t,
                new double[] {car.wheelRate[0] * 0.8, 0}), Cause.BAR_CONNECTED, Corner.LF, CARS / 2);
        assertAmounts(0.8, front);
        assertTrue(front.get(0).words().startsWith("The front axle answers as if its anti-roll bar were connected"),
                front.get(0).words());
        named(Conditions.WELL_SETTLED, car -> (r, t) -> FaultySession.withBars(car, t, new double[] {0, car.wheelRate[2] * 0.8}),
                Cause.BAR_CONNECTED, Corner.LR, CARS / 2);
    }

    /** The effect with bars of no stiffness is the plain one: two derivations of one mechanics. */
    @Test
    void theBarModelOfTheSimulationAgreesWithThePlainOne() {
        SimulatedCar car = new SimulatedCar(4, Conditions.FULL_NOISE);
        double[] turns = {1, -2, 0.5, 3};
        assertArrayEquals(FaultySession.plain(car, turns), FaultySession.withBars(car, turns, new double[2]), 1e-9);
    }

    /** A spring of 0.55 of the rate believed; driver out and in first, which tells rates apart. */
    @Test
    void wrongSpring() {
        int right = 0;
        List<OddCorner> wrong = new ArrayList<>();
        for (long seed = 0; seed < CARS; seed++) {
            SimulatedCar believed = new SimulatedCar(seed, Conditions.WELL_SETTLED);
            SimulatedCar real = FaultySession.stiffer(believed, Conditions.WELL_SETTLED, 2, 0.55);
            Session session = new Session(real, Conditions.WELL_SETTLED);
            List<SettledReading> history = new ArrayList<>(List.of(session.read(false), session.read(true)));
            for (int[] quarters : ROUNDS) {
                session.turn(quarters);
                history.add(session.read(true));
            }
            Optional<OddCorner> odd = OddCorner.of(believed.prior(NoisePrior.wellSettled()), history);
            if (odd.isPresent()) {
                if (odd.get().cause() == Cause.WRONG_SPRING && odd.get().corner() == Corner.LR) {
                    right++;
                } else {
                    wrong.add(odd.get());
                }
            }
        }
        assertTrue(right >= CARS * 2 / 3, right + " of " + CARS + " named; otherwise named: " + wrong);
        assertTrue(wrong.size() <= 1, wrong.toString());
    }

    @Test
    void nothingTurnedNothingSaid() {
        SimulatedCar car = new SimulatedCar(4, Conditions.FULL_NOISE);
        Session session = new Session(car, Conditions.FULL_NOISE);
        assertEquals(Optional.empty(), OddCorner.of(car.prior(NoisePrior.garage()), List.of(session.read(true), session.read(true))));
    }
}
