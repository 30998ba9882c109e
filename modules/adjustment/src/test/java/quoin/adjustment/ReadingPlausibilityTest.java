package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import quoin.adjustment.ReadingDoubt.Cause;
import quoin.adjustment.ReadingDoubt.Level;
import quoin.car.Corner;

/** What a reading must satisfy whatever the springs are; limits worked by hand. */
@ExtendWith(English.class)
class ReadingPlausibilityTest {
    private static final double G = 9.80665;
    private static final double NONE = Double.NaN;
    private static final double[] LOADS = {110, 120, 130, 140};
    private static final double[] LEVEL = {60, 60, 60, 60};

    private static OptionalDouble figure(double value, double unit) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value * unit);
    }

    private static SettledReading reading(double[] loadsKg, double[] heights) {
        return new SettledReading(List.of(0.0), Arrays.stream(loadsKg).mapToObj(v -> figure(v, G)).toList(),
                Arrays.stream(heights).mapToObj(v -> figure(v, 1)).toList(), List.of(), 1);
    }

    private static LearningPrior prior(double frontHalf, double rearHalf, NoisePrior noise) {
        List<CornerSpring> corners = new ArrayList<>();
        for (Corner c : Corner.values()) {
            double side = c.isLeft() ? 1 : -1;
            corners.add(new CornerSpring(c.isFront() ? 0 : -2400, 700 * side, c.isFront() ? -200 : -2200,
                    side * (c.isFront() ? frontHalf : rearHalf), 45, 200, 0.1));
        }
        return LearningPrior.of(corners, List.of(new LiftAdjuster("LF perch", Corner.LF, 1.5, "front", 0.03))).withNoise(noise);
    }

    private static LearningPrior square() {
        return prior(300, 300, NoisePrior.garage());
    }

    private static List<Integer> rows(List<ReadingDoubt> doubts) {
        return doubts.stream().map(d -> d.row().orElse(-1)).toList();
    }

    private static List<Integer> outOfScale(double[] loads, double[] heights) {
        return rows(ReadingPlausibility.outOfScale(reading(loads, heights)));
    }

    /** The middle of 100, 110, 120 and a fourth is 115 or 105: four times that, or a quarter of it, is out of scale. */
    @Test
    void aFigureFourTimesTheMiddleOneIsOutOfScale() {
        assertEquals(List.of(), outOfScale(new double[] {100, 110, 120, 459.9}, LEVEL));
        assertEquals(List.of(3), outOfScale(new double[] {100, 110, 120, 460.1}, LEVEL));
        assertEquals(List.of(), outOfScale(new double[] {100, 26.3, 110, 120}, LEVEL));
        assertEquals(List.of(1), outOfScale(new double[] {100, 26.2, 110, 120}, LEVEL));
        assertEquals(List.of(2), outOfScale(new double[] {100, NONE, 441, 110}, LEVEL), "three figures have a middle one");
        assertEquals(List.of(), outOfScale(new double[] {100, NONE, 439, 110}, LEVEL));
        assertEquals(List.of(), outOfScale(new double[] {100, NONE, NONE, 900}, LEVEL), "two have not");
    }

    @Test
    void smallHeightsSayNothingByTheirRatio() {
        assertEquals(List.of(), outOfScale(LOADS, new double[] {20, 20, 20, 100}));
        assertEquals(List.of(7), outOfScale(LOADS, new double[] {20.1, 20.1, 20.1, 100}));
        assertEquals(List.of(), outOfScale(LOADS, new double[] {24, 24, 24, 96}), "four times it is not yet out");
        assertEquals(List.of(), outOfScale(LOADS, new double[] {24, 6, 24, 24}), "nor a quarter");
        assertEquals(List.of(4), outOfScale(LOADS, new double[] {15, 62, 63, 64}));
        assertEquals(List.of(0, 6), outOfScale(new double[] {1100, 120, 130, 140}, new double[] {61, 62, 630, 64}), "each kind by itself");
    }

    @Test
    void whatWasMeantIsOfferedWhereThePointExplainsIt() {
        ReadingDoubt meant = ReadingPlausibility.outOfScale(reading(new double[] {100, 110, 1085, 120}, LEVEL)).get(0);
        assertEquals("LR load of 1085.0 kg does not go with the other corners, about 115.0 kg. Did you mean 108.5 kg?", meant.words());
        assertEquals(108.5 * G, meant.suggested().orElseThrow(), 1e-9);
        assertEquals(Level.ERROR, meant.level());
        assertEquals(Cause.DECIMAL_POINT, meant.cause());
        ReadingDoubt again = ReadingPlausibility.outOfScale(reading(new double[] {100, 110, 2100, 120}, LEVEL)).get(0);
        assertEquals("LR load of 2100.0 kg does not go with the other corners, about 115.0 kg. Type it again.", again.words());
        assertTrue(again.suggested().isEmpty());
        ReadingDoubt left = ReadingPlausibility.outOfScale(reading(LOADS, new double[] {6.2, 61, 63, 64})).get(0);
        assertEquals(62, left.suggested().orElseThrow(), 1e-9);
        ReadingDoubt height = ReadingPlausibility.outOfScale(reading(LOADS, new double[] {61, 6.2, 63, 64})).get(0);
        assertEquals("RF height of 6.2 mm does not go with the other corners, about 62.0 mm. Did you mean 62.0 mm?", height.words());
    }

    private static Optional<ReadingDoubt> frame(LearningPrior prior, double[] heights, int settlings) {
        return ReadingPlausibility.frame(prior, reading(LOADS, heights).meanOf(settlings));
    }

    /**
     * Four alike readings of a rectangle have a warp of twice the noise of one; 3.5 of that at 0.73 mm / sqrt 3 times e^0.22 is
     * 3.68 mm, half of it for the mean of four settlings.
     */
    @Test
    void aStiffFrameHasOneTilt() {
        double limit = 3.5 * 2 * 0.73 / Math.sqrt(3) * Math.exp(0.22);
        assertEquals(3.68, limit, 0.005);
        for (double side : new double[] {1, -1}) {
            assertTrue(frame(square(), new double[] {60, 60 + side * (limit - 0.01), 60, 60}, 1).isEmpty());
            assertTrue(frame(square(), new double[] {60, 60 + side * (limit + 0.01), 60, 60}, 1).isPresent());
            assertTrue(frame(square(), new double[] {60, 60, 60 + side * (limit / 2 - 0.01), 60}, 4).isEmpty());
            assertTrue(frame(square(), new double[] {60, 60, 60 + side * (limit / 2 + 0.01), 60}, 4).isPresent());
        }
        ReadingDoubt doubt = frame(square(), new double[] {60, 63.7, 60.5, 60}, 1).orElseThrow();
        assertEquals("The front tilts -3.7 mm (LF less RF) and the rear +0.5 mm: a stiff frame has one tilt. Read the four heights again.", doubt.words());
        assertEquals(Cause.FRAME_NOT_FLAT, doubt.cause());
        assertTrue(frame(square(), new double[] {60, 70, 60, NONE}, 1).isEmpty(), "three heights are always flat");
    }

    /** Points 800 mm apart in front and 600 mm behind: a leaning plane tilts 16 and 12 mm; 16 and 16 mm is no plane. */
    @Test
    void theTiltGoesWithTheDistanceOfThePoints() {
        LearningPrior trapezium = prior(400, 300, NoisePrior.garage());
        assertTrue(frame(trapezium, new double[] {68, 52, 76, 64}, 1).isEmpty());
        assertTrue(frame(trapezium, new double[] {68, 52, 78, 62}, 1).isPresent());
        double limit = 3.5 * Math.sqrt(1 + 1 + 2 * 16 / 9.0) * 0.73 / Math.sqrt(3) * Math.exp(0.22);
        assertTrue(frame(trapezium, new double[] {60 + limit - 0.01, 60, 60, 60}, 1).isEmpty());
        assertTrue(frame(trapezium, new double[] {60 + limit + 0.01, 60, 60, 60}, 1).isPresent());
    }

    @Test
    void aSlipThatWouldFlattenTheFrameIsAsked() {
        ReadingDoubt swapped = frame(square(), new double[] {62, 62.5, 64.8, 56.3}, 1).orElseThrow();
        assertEquals(Cause.TYPING, swapped.cause());
        assertEquals(7, swapped.row().orElseThrow());
        assertEquals(65.3, swapped.suggested().orElseThrow(), 1e-9);
        assertTrue(swapped.words().endsWith("Did you mean 65.3 mm at RR?"), swapped.words());
        ReadingDoubt point = frame(square(), new double[] {62, 62.5, 630, 63}, 1).orElseThrow();
        assertEquals(Cause.DECIMAL_POINT, point.cause());
        assertEquals(6, point.row().orElseThrow());
        assertEquals(63, point.suggested().orElseThrow(), 1e-9);
    }

    /**
     * A slip is offered where the frame would be flat with it within 3.5 times the noise: 63.7 for 67.3 leaves 1.5 mm, which
     * one settling allows (3.68) and the mean of sixteen does not (0.92). Behind, where the points are nearer by a quarter, a height
     * weighs 4/3: 3.25 mm are allowed there.
     */
    @Test
    void whatIsOfferedFlattensTheFrame() {
        double[] heights = {62.2, 62.2, 67.3, 62.2};
        assertEquals(63.7, frame(square(), heights, 1).orElseThrow().suggested().orElseThrow(), 1e-9);
        assertEquals(Cause.FRAME_NOT_FLAT, frame(square(), heights, 16).orElseThrow().cause());
        LearningPrior trapezium = prior(400, 300, NoisePrior.garage());
        assertEquals(3.25, 3.5 * Math.sqrt(1 + 1 + 2 * 16 / 9.0) * 0.73 / Math.sqrt(3) * Math.exp(0.22) * 3 / 4, 0.01);
        assertEquals(58.7, frame(trapezium, new double[] {55.5, 55.5, 85.7, 55.5}, 1).orElseThrow().suggested().orElseThrow(), 1e-9);
        assertTrue(frame(trapezium, new double[] {55.5, 55.5, 85.8, 55.5}, 1).orElseThrow().suggested().orElseThrow() != 58.8);
    }

    /** A bent frame is said where the total is as it was; a total that changed is enough to say. */
    @Test
    void oneThingIsSaidAtATime() {
        double[] bent = {60, 63.7, 60.5, 60};
        ReadingDoubt frame = unexplained(NoisePrior.garage(), reading(LOADS, bent), withLoad(0)).get(0);
        assertEquals(Cause.FRAME_NOT_FLAT, frame.cause());
        List<ReadingDoubt> total = unexplained(NoisePrior.garage(), reading(new double[] {110, 120, 130, 145}, bent), withLoad(0));
        assertEquals(List.of(Cause.TOTAL_CHANGED), total.stream().map(ReadingDoubt::cause).toList());
    }

    /** All heights 20 mm lower are further out of their noise than 2 kg on two scales. */
    @Test
    void theFigureFurthestOutOfItsNoiseIsNamed() {
        SettledReading sunk = reading(new double[] {112, 118, 130, 140}, new double[] {40, 40, 40, 40});
        ReadingDoubt doubt = unexplained(NoisePrior.garage(), sunk, withLoad(0)).get(0);
        assertEquals(Cause.UNEXPLAINED, doubt.cause());
        assertTrue(doubt.row().orElseThrow() >= 4, doubt.words());
    }

    private static List<ReadingDoubt> unexplained(NoisePrior noise, SettledReading reading, SettledReading... earlier) {
        return ReadingPlausibility.unexplained(prior(300, 300, noise), List.of(earlier), reading);
    }

    private static SettledReading withLoad(double more) {
        return reading(new double[] {110, 120, 130, 140 + more}, LEVEL);
    }

    /** Four scales of 0.1 kg: the difference to the mean of two totals has 2 * 0.1 * sqrt 1.5 = 0.245 kg, three times that is 0.735. */
    @Test
    void aTotalThatChangesIsSaid() {
        NoisePrior garage = NoisePrior.garage();
        assertEquals(List.of(), unexplained(garage, withLoad(0.72), withLoad(0), withLoad(0)));
        for (double side : new double[] {1, -1}) {
            ReadingDoubt doubt = unexplained(garage, withLoad(side * 0.75), withLoad(0), withLoad(0)).get(0);
            assertEquals(Cause.TOTAL_CHANGED, doubt.cause());
            assertTrue(doubt.words().startsWith("The total reads " + (side > 0 ? "500.8" : "499.3") + " kg where it was 500.0 (±0.5), "
                    + "and adjusters cannot change it: a scale's zero has moved"), doubt.words());
        }
        // the mean of the earlier ones counts
        assertEquals(List.of(), unexplained(garage, withLoad(0.5), withLoad(0), withLoad(1)));
    }

    @Test
    void halfAKilogramIsTheLeastThatIsSaid() {
        NoisePrior sharp = new NoisePrior(13, 0.45, 0.42, 0.22, 0.01 * G);
        assertTrue(unexplained(sharp, withLoad(0.49), withLoad(0)).stream().noneMatch(d -> d.cause() == Cause.TOTAL_CHANGED));
        assertEquals(Cause.TOTAL_CHANGED, unexplained(sharp, withLoad(0.51), withLoad(0)).get(0).cause());
    }

    @Test
    void aTotalIsThatOfTheLoadCaseOfTheTargets() {
        NoisePrior garage = NoisePrior.garage();
        SettledReading driverOut = reading(new double[] {94, 104, 106, 116}, LEVEL).with(List.of(new LoadChange(-80, -1300, 0)));
        assertEquals(List.of(), unexplained(garage, driverOut, withLoad(0)));
        SettledReading forgotten = reading(new double[] {94, 104, 106, 116}, LEVEL);
        assertEquals(Cause.TOTAL_CHANGED, unexplained(garage, forgotten, withLoad(0)).get(0).cause());
        assertEquals(List.of(), unexplained(garage, reading(new double[] {94, 104, 106, NONE}, LEVEL), withLoad(0)), "three loads have no total");
        assertTrue(unexplained(garage, withLoad(9), reading(new double[] {NONE, 120, 130, 140}, LEVEL)).stream()
                .noneMatch(d -> d.cause() == Cause.TOTAL_CHANGED), "nor had the reading before");
    }

    /** All four heights 20 mm lower with the same loads: no slip, a flat frame, the same total, and yet it cannot be. */
    @Test
    void aJumpThatNothingExplainsIsSaid() {
        NoisePrior garage = NoisePrior.garage();
        SettledReading sunk = reading(LOADS, new double[] {40, 40, 40, 40});
        ReadingDoubt doubt = unexplained(garage, sunk, withLoad(0)).get(0);
        assertEquals(Cause.UNEXPLAINED, doubt.cause());
        assertEquals(Level.WARNING, doubt.level());
        assertTrue(doubt.row().orElseThrow() >= 4, doubt.toString());
        assertTrue(doubt.words().contains("height reads 40.0 mm where 60.0 mm was expected"), doubt.words());
        assertEquals(List.of(), unexplained(garage, sunk.with(List.of(new LoadChange(0, 0, 0))), withLoad(0)), "in another load case all may move");
        assertEquals(List.of(), unexplained(garage, reading(LOADS, new double[] {40, 40, 40, NONE}), withLoad(0)));
        assertEquals(List.of(), unexplained(garage, reading(LOADS, new double[] {61, 61, 61, 61}), withLoad(0)), "a millimetre is noise");
    }

    /** Before there is anything to compare with, only the frame can be judged; an empty reading before is none. */
    @Test
    void theFirstReadingIsJudgedByItsFrame() {
        SettledReading nothing = reading(new double[] {NONE, NONE, NONE, NONE}, new double[] {NONE, NONE, NONE, NONE});
        SettledReading bent = reading(LOADS, new double[] {60, 63.7, 60.5, 60});
        assertEquals(Cause.FRAME_NOT_FLAT, ReadingCheck.check(square(), List.of(), bent).get(0).cause());
        assertEquals(Cause.FRAME_NOT_FLAT, ReadingCheck.check(square(), List.of(nothing), bent).get(0).cause());
        assertEquals(List.of(), ReadingCheck.check(square(), List.of(), withLoad(0)));
        assertEquals(false, ReadingCheck.hasFigures(nothing));
        assertEquals(true, ReadingCheck.hasFigures(reading(new double[] {NONE, NONE, NONE, NONE}, new double[] {NONE, NONE, NONE, 60})));
    }
}
