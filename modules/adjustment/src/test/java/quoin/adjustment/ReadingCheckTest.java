package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import quoin.adjustment.ReadingDoubt.Cause;
import quoin.adjustment.bench.Session;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;

/** Every trap set for the reader, on simulated cars with garage noise; the simulation has its own mechanics. */
class ReadingCheckTest {

    private static final int CARS = 8;
    private static final int CLEAN = 40;
    private static final double G = SimulatedCar.G;
    private static final double HEIGHT_MM = 62;

    /** A day: as found, one round, then the reading to be judged. */
    private record Rounds(SimulatedCar car, List<SettledReading> before, SettledReading next) {
    }

    private static SettledReading raised(SettledReading r) {
        SettledReading out = r;
        for (int i = 4; i < 8; i++) {
            out = out.withFigure(i, Math.rint((r.figure(i).orElseThrow() + HEIGHT_MM) * 2) / 2);
        }
        for (int i = 0; i < 4; i++) {
            out = out.withFigure(i, Math.rint(out.figure(i).orElseThrow() / G * 10) / 10 * G);
        }
        return out;
    }

    private static Rounds rounds(long seed, double[] reallyTurned, double driverShiftMm) {
        Conditions conditions = new Conditions(0.4, 1, true);
        SimulatedCar car = new SimulatedCar(seed, conditions);
        Session session = new Session(car, conditions);
        List<SettledReading> before = new ArrayList<>();
        before.add(raised(session.read(true)));
        session.turn(new int[] {-4, 0, 2, 0});
        before.add(raised(session.read(true)));
        double[] recorded = {0, 2, 0, -1};
        int[] quarters = new int[4];
        for (int i = 0; i < 4; i++) {
            quarters[i] = (int) Math.round(reallyTurned[i] * 4);
        }
        session.turn(quarters);
        SettledReading read = raised(session.read(true));
        double[] lean = lean(car, driverShiftMm);
        for (int i = 0; i < 8; i++) {
            read = read.withFigure(i, read.figure(i).orElseThrow() + lean[i]);
        }
        return new Rounds(car, before, new SettledReading(List.of(recorded[0], recorded[1], recorded[2], recorded[3]),
                read.loadsN(), read.heightsMm(), List.of(), 1));
    }

    /** The driver's mass shifted to the left: taken out here and put in there. */
    private static double[] lean(SimulatedCar car, double mm) {
        double[] k = new double[4];
        double roll = 0;
        for (int i = 0; i < 4; i++) {
            k[i] = 1 / (1 / car.wheelRate[i] + 1 / car.tyreRate[i]);
            roll += k[i] * car.y[i] * car.y[i];
        }
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            double down = 80 * G * mm / roll * car.y[i];
            out[i] = k[i] * down;
            out[4 + i] = -down;
        }
        return out;
    }

    private static LearningPrior prior(SimulatedCar car) {
        return car.prior(new NoisePrior(10, 0.45, 0.35, 0.22, Math.max(0.1, car.resolutionKg / Math.sqrt(12)) * G));
    }

    private static final double[] AS_RECORDED = {0, 2, 0, -1};

    private static List<ReadingDoubt> check(Rounds r, UnaryOperator<SettledReading> spoil) {
        return ReadingCheck.check(prior(r.car()), r.before(), spoil.apply(r.next()));
    }

    /** First doubts of several cars. */
    private static List<ReadingDoubt> first(UnaryOperator<SettledReading> spoil, double[] turned, double lean) {
        List<ReadingDoubt> out = new ArrayList<>();
        for (long seed = 0; seed < CARS; seed++) {
            check(rounds(seed, turned, lean), spoil).stream().findFirst().ifPresent(out::add);
        }
        return out;
    }

    private static void assertNamed(int least, Cause cause, List<ReadingDoubt> doubts) {
        long named = doubts.stream().filter(d -> d.cause() == cause).count();
        assertTrue(named >= least, named + " of " + CARS + " " + cause + ": " + doubts);
    }

    @Test
    void cleanReadingsRaiseNoDoubt() {
        List<ReadingDoubt> alarms = new ArrayList<>();
        for (long seed = 0; seed < CLEAN; seed++) {
            alarms.addAll(check(rounds(seed, AS_RECORDED, 0), r -> r));
        }
        assertTrue(alarms.size() <= 0.03 * CLEAN, alarms.toString());
    }

    @Test
    void typoInOneLoadMakesAnImpossibleTotal() {
        for (long seed = 0; seed < CARS; seed++) {
            Rounds r = rounds(seed, AS_RECORDED, 0);
            double meant = r.next().figure(1).orElseThrow();
            double typed = Math.floor(meant / G / 100) * 100 + (Math.floor(meant / G) + 30) % 100 + meant / G % 1;
            ReadingDoubt doubt = check(r, s -> s.withFigure(1, typed * G)).get(0);
            assertEquals(Cause.TYPING, doubt.cause(), doubt.words());
            assertEquals(1, doubt.row().orElseThrow());
            assertEquals(meant / G, doubt.suggested().orElseThrow() / G, 1.001, doubt.words());
        }
    }

    @Test
    void forgottenDecimalPoint() {
        for (ReadingDoubt doubt : first(r -> r.withFigure(2, r.figure(2).orElseThrow() * 10), AS_RECORDED, 0)) {
            assertEquals(Cause.DECIMAL_POINT, doubt.cause());
            assertEquals(ReadingDoubt.Level.ERROR, doubt.level());
        }
        Rounds r = rounds(1, AS_RECORDED, 0);
        SettledReading asFound = r.before().get(0);
        double meant = asFound.figure(5).orElseThrow();
        ReadingDoubt doubt = ReadingCheck.check(prior(r.car()), List.of(), asFound.withFigure(5, meant * 10)).get(0);
        assertEquals(meant, doubt.suggested().orElseThrow(), 1e-9, doubt.words());
        assertTrue(doubt.words().contains("Did you mean"), doubt.words());
    }

    /** The first load of a weighing, the others not typed yet. */
    @Test
    void aSlipInTheFirstFigureIsAskedAboutAtOnce() {
        for (long seed = 0; seed < CARS; seed++) {
            Rounds r = rounds(seed, AS_RECORDED, 0);
            double meant = r.next().figure(0).orElseThrow();
            assertEquals(List.of(), check(r, s -> onlyFirst(s, meant)), "as it is");
            for (double typed : new double[] {meant * 10, meant / 10, meant / 0.45359237}) {
                ReadingDoubt doubt = check(r, s -> onlyFirst(s, typed)).get(0);
                assertEquals(0, doubt.row().orElseThrow());
                assertEquals(meant / G, doubt.suggested().orElseThrow() / G, 0.001, doubt.words());
            }
        }
    }

    private static SettledReading onlyFirst(SettledReading of, double loadN) {
        OptionalDouble none = OptionalDouble.empty();
        return new SettledReading(of.turns(), List.of(OptionalDouble.of(loadN), none, none, none), List.of(none, none, none, none), List.of(), 1);
    }

    @Test
    void oneScaleInPounds() {
        assertNamed(CARS - 1, Cause.POUNDS, first(r -> r.withFigure(2, r.figure(2).orElseThrow() / 0.45359237), AS_RECORDED, 0));
    }

    /** 34.5 for 43.5: the frame is not flat, and the digits say what was meant. */
    @Test
    void swappedDigitsInAHeightOfTheFirstReading() {
        LearningPrior prior = prior(new SimulatedCar(1, Conditions.FULL_NOISE));
        double[] loads = {900, 1000, 1400, 1300};
        SettledReading flat = SettledReading.of(new double[4], loads, new double[] {44, 43.5, 52, 51});
        assertEquals(List.of(), ReadingCheck.check(prior, List.of(), flat));
        ReadingDoubt doubt = ReadingCheck.check(prior, List.of(), flat.withFigure(5, 34.5)).get(0);
        assertEquals(Cause.TYPING, doubt.cause());
        assertEquals(5, doubt.row().orElseThrow());
        assertEquals(43.5, doubt.suggested().orElseThrow());
        assertTrue(doubt.words().endsWith("a stiff frame has one tilt. Did you mean 43.5 mm at RF?"), doubt.words());
        assertEquals(43.5, ReadingCheck.check(prior, List.of(), flat.withFigure(5, 435)).get(0).suggested().orElseThrow());
        assertEquals(43.5, ReadingCheck.check(prior, List.of(), flat.withFigure(5, 453)).get(0).suggested().orElseThrow(), 2);
    }

    @Test
    void swappedDigitsInALaterHeight() {
        List<ReadingDoubt> doubts = first(r -> r.withFigure(6, swapped(r.figure(6).orElseThrow())), AS_RECORDED, 0);
        assertNamed(CARS - 2, Cause.TYPING, doubts);
        assertTrue(doubts.stream().allMatch(d -> d.row().orElseThrow() == 6), doubts.toString());
    }

    @Test
    void upDoneAsDown() {
        List<ReadingDoubt> doubts = first(r -> r, new double[] {0, -2, 0, -1}, 0);
        assertNamed(CARS, Cause.TURNED_THE_OTHER_WAY, doubts);
        assertTrue(doubts.get(0).words().startsWith("RF perch is recorded as 2.00 turns up; the readings fit "), doubts.get(0).words());
    }

    @Test
    void recordedButNotTurned() {
        assertNamed(CARS - 1, Cause.NOT_TURNED, first(r -> r, new double[] {0, 0, 0, -1}, 0));
    }

    @Test
    void miscountedByTwoTurns() {
        assertNamed(CARS - 1, Cause.MISCOUNTED, first(r -> r, new double[] {0, 4, 0, -1}, 0));
    }

    @Test
    void driverLeaning() {
        List<ReadingDoubt> doubts = first(r -> r, AS_RECORDED, 60);
        assertNamed(CARS, Cause.DRIVER_MOVED, doubts);
        assertTrue(doubts.stream().allMatch(d -> d.words().contains("further to the left")), doubts.toString());
        assertTrue(doubts.get(0).words().startsWith("The left share changed by +0."), doubts.get(0).words());
    }

    @Test
    void padKickedByThreeMillimetres() {
        List<ReadingDoubt> doubts = new ArrayList<>();
        for (long seed = 0; seed < CARS; seed++) {
            double turns = Math.rint(3 / new SimulatedCar(seed, Conditions.FULL_NOISE).lift[0] * 4) / 4;
            check(rounds(seed, new double[] {turns, 2, 0, -1}, 0), r -> r).stream().findFirst().ifPresent(doubts::add);
        }
        assertNamed(CARS - 3, Cause.PAD_OR_UNRECORDED_TURN, doubts);
        assertTrue(doubts.get(0).words().startsWith("LF acts as if it had been raised by "), doubts.get(0).words());
    }

    /** 0.8 kg on one scale shows in the total: named as the scale, or as a total that cannot be. */
    @Test
    void zeroDriftedByEightHundredGrams() {
        List<ReadingDoubt> doubts = first(r -> r.withFigure(3, r.figure(3).orElseThrow() + 0.8 * G), AS_RECORDED, 0);
        long named = doubts.stream().filter(d -> d.cause() == Cause.SCALE || d.cause() == Cause.TOTAL_CHANGED
                || d.cause() == Cause.TYPING).count();
        assertTrue(named >= CARS - 4, doubts.toString());
    }

    @Test
    void scaleThreePercentHigh() {
        List<ReadingDoubt> doubts = first(r -> r.withFigure(3, r.figure(3).orElseThrow() * 1.03), AS_RECORDED, 0);
        assertNamed(CARS - 3, Cause.SCALE, doubts);
        assertTrue(doubts.stream().allMatch(d -> d.row().orElseThrow() == 3), doubts.toString());
    }

    @Test
    void cornersExchanged() {
        List<ReadingDoubt> loads = first(r -> r.withFigure(0, r.figure(3).orElseThrow()).withFigure(3, r.figure(0).orElseThrow()),
                AS_RECORDED, 0);
        assertNamed(CARS - 1, Cause.CORNERS_EXCHANGED, loads);
        List<ReadingDoubt> heights = first(r -> r.withFigure(5, r.figure(6).orElseThrow()).withFigure(6, r.figure(5).orElseThrow()),
                AS_RECORDED, 0);
        assertNamed(CARS - 2, Cause.CORNERS_EXCHANGED, heights);
    }

    /** Two slips in one reading are both named, the likelier one first. */
    @Test
    void twoSlipsAtOnce() {
        Rounds r = rounds(2, AS_RECORDED, 0);
        double load = Math.rint(r.next().figure(0).orElseThrow() / G);
        List<ReadingDoubt> doubts = check(r, s -> s.withFigure(0, (load + (load % 100 < 50 ? 40 : -40)) * G)
                .withFigure(6, swapped(s.figure(6).orElseThrow())));
        assertEquals(2, doubts.size(), doubts.toString());
        assertTrue(doubts.stream().anyMatch(d -> d.row().orElse(-1) == 0) && doubts.stream().anyMatch(d -> d.row().orElse(-1) == 6),
                doubts.toString());
    }

    private static double swapped(double v) {
        int whole = (int) v;
        return whole % 10 * 10 + whole / 10 + v - whole;
    }
}
