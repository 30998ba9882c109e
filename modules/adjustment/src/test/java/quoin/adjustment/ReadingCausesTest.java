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
import java.util.OptionalDouble;
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
}
