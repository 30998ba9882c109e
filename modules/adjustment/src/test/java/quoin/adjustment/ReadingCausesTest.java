package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quoin.adjustment.QuietDay.G;
import static quoin.adjustment.QuietDay.assertSays;
import static quoin.adjustment.QuietDay.shown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import quoin.adjustment.ReadingDoubt.Cause;
import quoin.adjustment.ReadingDoubt.Level;
import quoin.car.Corner;

/** What is said of one fault built into a reading: the fault, its corner and its amount, and nothing besides. */
@ExtendWith(English.class)
class ReadingCausesTest {
    private static final double[] RECORDED = {0, 2, 0, -1};

    private final QuietDay day = new QuietDay();
    private final double[] round = day.after(day.asFound(), -1, 0, 0.5, 0);
    private final List<SettledReading> before = List.of(shown(day.asFound(), 0, 0, 0, 0), shown(round, -1, 0, 0.5, 0));
    private final double[] meant = day.after(round, RECORDED);

    private List<ReadingDoubt> check(double[] values) {
        return ReadingCheck.check(day.prior, before, shown(values, RECORDED));
    }

    /** The one doubt there is. */
    private ReadingDoubt only(Cause cause, double[] values) {
        List<ReadingDoubt> doubts = check(values);
        assertEquals(List.of(cause), doubts.stream().map(ReadingDoubt::cause).toList(), doubts.toString());
        return doubts.get(0);
    }

    private double[] turned(double... turns) {
        return day.after(round, turns);
    }

    private double[] off(int row, double by) {
        double[] out = meant.clone();
        out[row] += by;
        return out;
    }

    @Test
    void whatIsRightIsNotDoubted() {
        assertEquals(List.of(), check(meant));
    }

    @Test
    void turnsAreToldByWhatTheyDid() {
        assertSays("RF perch is recorded as # turns up; the readings fit # turns down ±#: turned the other way?",
                only(Cause.TURNED_THE_OTHER_WAY, turned(0, -2, 0, -1)).words(), 2, 2, 0.3);
        assertSays("RR perch is recorded as # turns down; the readings fit # turns up ±#: turned the other way?",
                only(Cause.TURNED_THE_OTHER_WAY, turned(0, 2, 0, 1)).words(), 1, 1, 0.2);
        assertSays("RF perch is recorded as # turns up; the readings show no turn there. Was it done, or does the ring stick?",
                only(Cause.NOT_TURNED, turned(0, 0, 0, -1)).words(), 2);
        assertSays("RF perch is recorded as # turns up; the readings fit # turns up ±#. Count again, or measure the thread.",
                only(Cause.MISCOUNTED, turned(0, 3, 0, -1)).words(), 2, 3, 0.3);
        assertSays("RF perch is recorded as # turns up; the readings fit # turns up ±#. Count again, or measure the thread.",
                only(Cause.MISCOUNTED, turned(0, 1, 0, -1)).words(), 2, 1, 0.3);
    }

    @Test
    void aCornerThatMovedWithoutATurnIsNamed() {
        String tail = " by # mm since the last reading, with no turn recorded there. Look at its pad, and whether a ring was turned.";
        assertSays("LF acts as if it had been raised" + tail, only(Cause.PAD_OR_UNRECORDED_TURN, turned(1, 2, 0, -1)).words(), day.car.lift[0]);
        assertSays("LF acts as if it had been lowered" + tail, only(Cause.PAD_OR_UNRECORDED_TURN, turned(-1.25, 2, 0, -1)).words(), 1.25 * day.car.lift[0]);
        assertSays("LR acts as if it had been raised" + tail, only(Cause.PAD_OR_UNRECORDED_TURN, turned(0, 2, 1, -1)).words(), day.car.lift[2]);
    }

    /** Nine kilograms more or seven less on each scale in turn. */
    @Test
    void aScaleThatIsOffIsNamedWithItsError() {
        for (Corner corner : Corner.values()) {
            for (double kg : new double[] {9, -7}) {
                double load = meant[corner.ordinal()] / G;
                ReadingDoubt doubt = only(Cause.SCALE, off(corner.ordinal(), kg * G));
                assertEquals(corner.ordinal(), doubt.row().orElseThrow());
                assertEquals(Level.WARNING, doubt.level());
                assertSays(corner + " load reads # kg; the other readings allow # kg ±# (# % off). Zero that scale, free the wheel of any chock, "
                        + "and read again; if it stays, exchange two scales.", doubt.words(), load + kg, load, 0.3, 100 * kg / load);
            }
        }
    }

    @Test
    void aHeightThatIsOffIsNamed() {
        for (int row = 4; row < 8; row++) {
            ReadingDoubt doubt = only(Cause.HEIGHT, off(row, -5.2));
            assertEquals(row, doubt.row().orElseThrow());
            assertTrue(doubt.suggested().isEmpty());
            assertSays(Corner.values()[row - 4] + " height reads # mm; the other readings allow # mm ±#. Read that height again.", doubt.words(),
                    meant[row] - 5.2, meant[row], 0.7);
        }
    }

    /** Both figures are put right in one thought: nothing is said of the other one. */
    @Test
    void exchangedCornersAreOneDoubt() {
        for (int[] pair : new int[][] {{0, 1}, {0, 2}, {0, 3}, {1, 2}, {2, 3}, {4, 5}, {4, 6}, {4, 7}, {5, 6}, {5, 7}, {6, 7}}) {
            double[] exchanged = meant.clone();
            exchanged[pair[0]] = meant[pair[1]];
            exchanged[pair[1]] = meant[pair[0]];
            ReadingDoubt doubt = only(Cause.CORNERS_EXCHANGED, exchanged);
            boolean load = pair[0] < 4;
            double unit = load ? G : 1;
            assertEquals(pair[0], doubt.row().orElseThrow());
            assertEquals(pair[1], doubt.exchangedRow().orElseThrow());
            assertEquals(meant[pair[0]] / unit, doubt.suggested().orElseThrow() / unit, 0.051);
            String what = load ? "loads" : "heights";
            String mm = load ? "kg" : "mm";
            assertSays("The " + what + " of " + Corner.values()[pair[0] % 4] + " and " + Corner.values()[pair[1] % 4] + " look exchanged: # " + mm
                    + " and # " + mm + " fit the other readings.", doubt.words(), meant[pair[0]] / unit, meant[pair[1]] / unit);
        }
    }

    /** 80 kg shifted: the change of loads and heights on the four springs in series with their tyres, by hand. */
    private double[] shifted(double mm, double[] lever) {
        double[] k = new double[4];
        double sum = 0;
        double mean = 0;
        for (int i = 0; i < 4; i++) {
            k[i] = 1 / (1 / day.car.wheelRate[i] + 1 / day.car.tyreRate[i]);
            sum += k[i];
            mean += k[i] * lever[i];
        }
        double stiffness = 0;
        for (int i = 0; i < 4; i++) {
            stiffness += k[i] * Math.pow(lever[i] - mean / sum, 2);
        }
        double[] out = meant.clone();
        for (int i = 0; i < 4; i++) {
            double down = 80 * G * mm / stiffness * (lever[i] - mean / sum);
            out[i] += k[i] * down;
            out[4 + i] -= down;
        }
        return out;
    }

    @Test
    void aDriverWhoSatOtherwiseIsToldHowFar() {
        double total = day.car.massKg;
        double track = (day.car.y[0] - day.car.y[1] + day.car.y[2] - day.car.y[3]) / 2;
        double base = day.car.x[0] - day.car.x[2];
        String tail = " points, and adjusters cannot change it: as if a driver of # kg sat # mm further ";
        for (double mm : new double[] {60, -60}) {
            ReadingDoubt across = only(Cause.DRIVER_MOVED, shifted(mm, day.car.y));
            assertEquals(Level.WARNING, across.level());
            assertSays("The left share changed by #" + tail + (mm > 0 ? "to the left" : "to the right") + ". Sit in the race position and read again.",
                    across.words(), 100 * 80 * mm / track / total, 80, 60);
            assertSays("The front share changed by #" + tail + (mm > 0 ? "forward" : "rearward") + ". Sit in the race position and read again.",
                    only(Cause.DRIVER_MOVED, shifted(mm, day.car.x)).words(), 100 * 80 * mm / base / total, 80, 60);
        }
        assertEquals(Level.INFO, only(Cause.DRIVER_MOVED, shifted(22, day.car.y)).level(), "who moves by less than 30 mm fidgets");
    }

    @Test
    void poundsAndDigitsAreAskedAbout() {
        double[] pounds = meant.clone();
        pounds[2] /= 0.45359237;
        ReadingDoubt doubt = only(Cause.POUNDS, pounds);
        assertEquals(Level.ERROR, doubt.level());
        assertEquals(meant[2] / G, doubt.suggested().orElseThrow() / G, 0.06);
        assertSays("LR load reads # kg; the other readings allow # kg ±#. Did you mean # kg? Is that scale set to pounds?", doubt.words(),
                pounds[2] / G, meant[2] / G, 0.3, meant[2] / G);
        double[] swapped = meant.clone();
        swapped[5] = 67.1;
        assertEquals(76.1, meant[5], 0.1, "the height of RF, its digits exchanged");
        assertEquals(76.1, only(Cause.TYPING, swapped).suggested().orElseThrow(), 1e-9);
    }

    private SettledReading few(double[] values, int... rows) {
        SettledReading all = shown(values, RECORDED);
        List<OptionalDouble> loads = new ArrayList<>(Collections.nCopies(4, OptionalDouble.empty()));
        List<OptionalDouble> heights = new ArrayList<>(loads);
        for (int row : rows) {
            (row < 4 ? loads : heights).set(row % 4, all.figure(row));
        }
        return new SettledReading(all.turns(), loads, heights, List.of(), 1);
    }

    /** While one or two figures of a kind stand there, only a plain slip is asked about; from three on the model judges. */
    @Test
    void theFirstFiguresAreJudgedByTheirDigits() {
        double[] slip = meant.clone();
        slip[1] *= 10;
        slip[5] *= 10;
        for (int[] rows : new int[][] {{1}, {1, 2}, {0, 1, 2, 3, 5}, {0, 1, 2, 3, 5, 6}}) {
            ReadingDoubt doubt = ReadingCheck.check(day.prior, before, few(rows.length > 2 ? heightSlip(slip) : slip, rows)).get(0);
            assertEquals(Cause.DECIMAL_POINT, doubt.cause());
            assertEquals(rows.length > 2 ? 5 : 1, doubt.row().orElseThrow(), Arrays.toString(rows));
        }
        assertEquals(List.of(), ReadingCheck.check(day.prior, before, few(meant, 1)));
        assertEquals(List.of(), ReadingCheck.check(day.prior, before, few(meant, 1, 2, 5)));
    }

    private double[] heightSlip(double[] slip) {
        double[] out = meant.clone();
        out[5] = slip[5];
        return out;
    }

    private Optional<ReadingDoubt> slipOfFew(double[] values, int... rows) {
        return ReadingCauses.slipOfFew(day.prior, before, few(values, rows));
    }

    private double[] with(int row, double value) {
        double[] out = meant.clone();
        out[row] = row < 4 ? value * G : value;
        return out;
    }

    /** 134.1 for 131.4 kg and 71.6 for 76.1 mm: digits decide while there are less than three of the kind, whatever there is of the other. */
    @Test
    void whatIsFewIsCountedKindByKind() {
        double[] load = with(1, 134.1);
        double[] height = with(5, 71.6);
        for (int[] rows : new int[][] {{1}, {1, 2}, {1, 5}, {1, 4, 5, 6}, {1, 4, 5, 6, 7}}) {
            assertEquals(1, slipOfFew(load, rows).orElseThrow().row().orElseThrow(), Arrays.toString(rows));
        }
        for (int[] rows : new int[][] {{5}, {5, 6}, {0, 1, 2, 5}, {0, 1, 2, 3, 4, 5}}) {
            assertEquals(5, slipOfFew(height, rows).orElseThrow().row().orElseThrow(), Arrays.toString(rows));
        }
        for (int[] rows : new int[][] {{0, 1, 2}, {0, 1, 2, 3, 4, 5, 6, 7}, {0, 1, 2, 3, 4}}) {
            assertTrue(slipOfFew(load, rows).isEmpty(), Arrays.toString(rows));
        }
        for (int[] rows : new int[][] {{4, 5, 6}, {0, 4, 5, 6, 7}}) {
            assertTrue(slipOfFew(height, rows).isEmpty(), Arrays.toString(rows));
        }
    }

    @Test
    void whatIsAskedOfOneFigure() {
        double[] sd = new double[8];
        ReadingForecast forecast = Learner.learn(day.prior, before).predict(RECORDED);
        Arrays.setAll(sd, row -> forecast.readingSd(row) / (row < 4 ? G : 1));
        assertSays("RF load reads # kg; the other readings allow # kg ±#. Did you mean # kg?", slipOfFew(with(1, 134.1), 1).orElseThrow().words(),
                134.1, 131.4, 2 * sd[1], 131.4);
        String height = " height reads # mm; the other readings allow # mm ±#. Did you mean # mm?";
        assertSays("RF" + height, only(Cause.TYPING, with(5, 71.6)).words(), 71.6, 76.1, 0.7, 76.1);
        ReadingDoubt point = slipOfFew(with(4, 776), 0, 1, 2, 3, 4).orElseThrow();
        assertSays("LF" + height, point.words(), 776, 77.6, 2 * sd[4], 77.6);
        assertEquals(Cause.DECIMAL_POINT, point.cause());
        assertEquals(77.6, point.suggested().orElseThrow(), 1e-9);
        assertEquals(Cause.POUNDS, slipOfFew(with(1, 289.7), 1).orElseThrow().cause());
        assertTrue(slipOfFew(with(4, 171.1), 4).isEmpty(), "a height has no pounds");
        assertEquals(Cause.HEIGHT, only(Cause.HEIGHT, with(4, 171.1)).cause());
        assertTrue(slipOfFew(with(1, 141.4), 1).isEmpty(), "another digit could be anything");
        assertTrue(slipOfFew(with(4, 76.7), 4).isEmpty(), "0.9 mm are noise");
    }

    /** A reading so good that 0.9 is not noise: it is a scale that is off by 0.9 kg or a height by 0.9 mm, and no slip of the finger. */
    @Test
    void whatIsSmallIsNoSlipHoweverGoodTheReading() {
        LearningPrior sharp = day.car.knowing(new NoisePrior(0.5, 0.1, 0.06, 0.1, 0.03 * G));
        UnaryOperator<SettledReading> lighter = r -> r.withFigure(1, r.figure(1).orElseThrow() - 0.2 * G);
        List<SettledReading> earlier = before.stream().map(lighter).toList();
        SettledReading read = lighter.apply(shown(meant, RECORDED));
        assertEquals(131.2, read.figure(1).orElseThrow() / G, 1e-9);
        assertEquals(List.of(), ReadingCheck.check(sharp, earlier, read));
        assertEquals(List.of(Cause.SCALE), causes(sharp, earlier, read.withFigure(1, 132.1 * G)));
        assertEquals(List.of(Cause.HEIGHT), causes(sharp, earlier, read.withFigure(4, 76.7)));
        assertEquals(List.of(Cause.HEIGHT), causes(sharp, earlier, read.withFigure(6, 54.3)));
        assertTrue(ReadingCauses.slipOfFew(sharp, before, few(with(4, 76.7), 4)).isEmpty());
    }

    private static List<Cause> causes(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        return ReadingCheck.check(prior, before, reading).stream().map(ReadingDoubt::cause).toList();
    }

    private double logOdds(int row, double read) {
        return ReadingCauses.likeliest(day.prior, before, shown(meant, RECORDED).withFigure(row, read)).orElseThrow().logOdds();
    }

    /** The same error is as odd on either side of the car; one that is a slip to the digit is explained by two more. */
    @Test
    void oddsAreThoseOfTheError() {
        List<Double> expected = Learner.learn(day.prior, before).predict(RECORDED).mean();
        assertEquals(logOdds(5, expected.get(5) - 4), logOdds(4, expected.get(4) - 4), 1);
        assertEquals(logOdds(7, expected.get(7) - 4), logOdds(6, expected.get(6) - 4), 1);
        double between = (logOdds(5, 71.3) + logOdds(5, 71.9)) / 2;
        assertEquals(between + 2, logOdds(5, 71.6), 0.8);
    }

    /** A perch and a rod of twice its lift at every corner: what was recorded and not done is named, whichever it is. */
    @Test
    void ofTwoAdjustersTheOneThatWasTurnedIsNamed() {
        List<LiftAdjuster> both = new ArrayList<>(day.prior.adjusters());
        for (LiftAdjuster perch : day.prior.adjusters()) {
            both.add(new LiftAdjuster(perch.corner() + " rod", perch.corner(), 2 * perch.liftMmPerTurn(), perch.liftGroup() + " rods", 1e-4));
        }
        LearningPrior prior = day.prior.withAdjusters(both);
        List<SettledReading> earlier = List.of(shown(day.asFound(), new double[8]), shown(round, -1, 0, 0.5, 0, 0, 0, 0, 0));
        assertEquals(List.of(), ReadingCheck.check(prior, earlier, shown(day.after(round, 2, 2, 0, 0), 2, 0, 0, 0, 0, 1, 0, 0)));
        for (int[] turned : new int[][] {{0, 2}, {1, 2}, {4, 1}, {5, 1}, {7, -1}}) {
            double[] recorded = new double[8];
            recorded[turned[0]] = turned[1];
            ReadingDoubt doubt = ReadingCheck.check(prior, earlier, shown(round, recorded)).get(0);
            assertEquals(Cause.NOT_TURNED, doubt.cause());
            assertTrue(doubt.words().startsWith(both.get(turned[0]).id() + " is recorded as "), doubt.words());
        }
    }

    /** Where the car's axes begin does not matter; where no load was read there is no share to tell. */
    @Test
    void whatIsSaidOfTheDriverRestsOnTheWheelbase() {
        double[] forward = shifted(60, day.car.x);
        List<CornerSpring> moved = day.prior.corners().stream().map(c -> new CornerSpring(c.xMm() + 700, c.yMm(), c.heightXMm() + 700,
                c.heightYMm(), c.wheelRateNPerMm(), c.tyreRateNPerMm(), c.rateRelativeSd())).toList();
        LearningPrior from700 = LearningPrior.of(moved, day.prior.adjusters()).withNoise(day.prior.noise());
        assertEquals(only(Cause.DRIVER_MOVED, forward).words(), ReadingCheck.check(from700, before, shown(forward, RECORDED)).get(0).words());
        ReadingDoubt heights = ReadingCheck.check(day.prior, before, few(shifted(200, day.car.y), 4, 5, 6, 7)).get(0);
        assertEquals(Cause.DRIVER_MOVED, heights.cause());
        assertTrue(heights.words().startsWith("As if a driver"), heights.words());
    }
}
