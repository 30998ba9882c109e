package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/**
 * A single reading by hand: the step of the instrument as a rectangle (its width over the root of 12, JCGM 100:2008, 4.3.7 and
 * F.2.2.1) and the usual repeatability, in squares. The car has scales of 0.2 kg, a rule of 0.5 mm, a gauge of 0.1 deg, toe
 * plates of 0.25 mm and a rim chord of 360 mm.
 */
class ReadingUncertaintyTest {

    private static final double ROOT12 = Math.sqrt(12);
    private static final double TOE_STEP = Math.toDegrees(0.25 / ROOT12 / 360);
    private static final double TOE_REPEAT = Math.toDegrees(0.1 / 360);

    private final ReadingUncertainty uncertainty = new ReadingUncertainty(DayBook.car());

    private void assertUncertainty(double step, double repeat, ReadingId reading, double... parts) {
        assertEquals(Math.hypot(step, repeat), uncertainty.of(reading, parts, List.of()), 1e-9, reading.words());
    }

    @Test
    void whatIsTyped() {
        assertUncertainty(0.2 / ROOT12, 0.3, DayBook.load(Corner.LF));
        assertUncertainty(0.2 / ROOT12, 0.05, ReadingId.of(ReadingKind.SCALE_ZERO, Corner.LF));
        assertUncertainty(0.5 / ROOT12, 0.3, DayBook.height(Corner.LF));
        assertUncertainty(0.5 / ROOT12, 0.3, ReadingId.of(ReadingKind.PAD_HEIGHT, Corner.LF));
        assertUncertainty(0.1 / ROOT12, 0.04, DayBook.camber(Corner.LF));
        assertUncertainty(2 * 0.1 / ROOT12, 0.08, DayBook.caster(Corner.LF));
        double kpi = Math.sqrt(1.5) / (1 - Math.cos(Math.toRadians(20))) * 0.1 / ROOT12;
        assertEquals(Math.hypot(kpi, 0.5), uncertainty.of(ReadingId.of(ReadingKind.KPI, Corner.LF), new double[0], List.of()), 1e-3);
        assertUncertainty(TOE_STEP, TOE_REPEAT, DayBook.toe(Corner.RR));
        assertUncertainty(0.01, 0.01, ReadingId.of(ReadingKind.PRESSURE, Corner.LF));
        assertUncertainty(1 / ROOT12, 0.5, ReadingId.ofCar(ReadingKind.WHEELBASE));
        assertUncertainty(1 / ROOT12, 5, ReadingId.ofCar(ReadingKind.CG_HEIGHT));
        assertUncertainty(1 / ROOT12, 0.5, ReadingId.of(ReadingKind.CIRCUMFERENCE, Corner.LF));
        assertUncertainty(Math.sqrt(2) * 0.5 / ROOT12, 0.2, ReadingId.of(ReadingKind.TURN_TOE_OUT, Corner.LF));
    }

    /** Total toe is the sum of two toes, the thrust angle half their difference: each toe enters with 1, or with a half. */
    @Test
    void whatIsMadeOfToe() {
        assertUncertainty(Math.sqrt(2) * TOE_STEP, TOE_REPEAT, new ReadingId(ReadingKind.TOTAL_TOE, Axle.FRONT.name()));
        assertUncertainty(TOE_STEP / Math.sqrt(2), TOE_REPEAT, new ReadingId(ReadingKind.THRUST_ANGLE, Axle.REAR.name()));
    }

    /** Four scales, each load entering a share with its partial derivative, worked numerically. */
    @Test
    void whatIsMadeOfLoads() {
        double[] loads = {90, 101, 146, 132};
        assertUncertainty(2 * 0.2 / ROOT12, 0.3, ReadingId.ofCar(ReadingKind.TOTAL), loads);
        assertUncertainty(ofShare(loads, 1, 2), 0.1, DayBook.CROSS, loads);
        assertUncertainty(ofShare(loads, 0, 1), 0.03, ReadingId.ofCar(ReadingKind.FRONT_SHARE), loads);
        assertUncertainty(ofShare(loads, 0, 2), 0.03, ReadingId.ofCar(ReadingKind.LEFT_SHARE), loads);
        assertUncertainty(0, 0.1, DayBook.CROSS, 0, 0, 0, 0);
        assertUncertainty(0, 0.1, DayBook.CROSS);
    }

    private static double ofShare(double[] loads, int one, int two) {
        double squares = 0;
        for (int i = 0; i < 4; i++) {
            double[] more = loads.clone();
            more[i] += 1e-4;
            double slope = (share(more, one, two) - share(loads, one, two)) / 1e-4;
            squares += Math.pow(slope * 0.2 / ROOT12, 2);
        }
        return Math.round(Math.sqrt(squares) * 1e9) / 1e9;
    }

    private static double share(double[] loads, int one, int two) {
        return 100 * (loads[one] + loads[two]) / (loads[0] + loads[1] + loads[2] + loads[3]);
    }

    /** Three degrees of freedom of the usual 0.3 kg beside one of two readings 0.8 kg apart; the mean halves the variance, not the step. */
    @Test
    void repeatsAreWeighedAgainstTheUsual() {
        double squares = 2 * 0.4 * 0.4;
        double repeat2 = (3 * 0.3 * 0.3 + squares) / 4;
        assertEquals(Math.sqrt(0.04 / 12 + repeat2), uncertainty.of(DayBook.load(Corner.LF), new double[] {100}, List.of(99.6, 100.4)), 1e-9);
        assertEquals(Math.sqrt(0.04 / 12 + repeat2 / 2), uncertainty.ofMean(DayBook.load(Corner.LF), new double[] {100},
                List.of(99.6, 100.4), OptionalDouble.empty(), 2), 1e-9);
        assertEquals(Math.hypot(0.7, 0.3), uncertainty.of(DayBook.load(Corner.LF), new double[] {100}, List.of(), OptionalDouble.of(0.7)), 1e-9);
    }

    /** Toe is read at the rim: 400 mm in front, 300 mm behind, and where nothing is known 360 mm (common practice, no source). */
    @Test
    void theChordIsThatOfTheWheel() {
        Car car = DayBook.car();
        PerCorner<CornerSetup> corners = PerCorner.of(c -> {
            CornerSetup corner = car.corners().get(c);
            OptionalDouble chord = c == Corner.RF ? OptionalDouble.empty() : OptionalDouble.of(c.isFront() ? 400 : 300);
            return new CornerSetup(corner.springRateNPerMm(), corner.motionRatio(), corner.pushrodRatio(), corner.tyreRateNPerMm(),
                    corner.unsprungMassKg(), chord, corner.adjusters());
        });
        ReadingUncertainty own = new ReadingUncertainty(new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), corners, car.masses(),
                car.heightPoints(), car.targets(), car.loadCase(), car.instruments(), car.walkingOrder()));
        assertChord(400, own, DayBook.toe(Corner.LF), 1);
        assertChord(360, own, DayBook.toe(Corner.RF), 1);
        assertChord(300, own, DayBook.toe(Corner.RR), 1);
        assertChord(380, own, new ReadingId(ReadingKind.TOTAL_TOE, Axle.FRONT.name()), Math.sqrt(2));
        assertChord(300, own, ReadingId.ofCar(ReadingKind.THRUST_ANGLE), 1 / Math.sqrt(2));
    }

    private static void assertChord(double mm, ReadingUncertainty own, ReadingId reading, double steps) {
        double step = steps * Math.toDegrees(0.25 / ROOT12 / mm);
        assertEquals(Math.hypot(step, Math.toDegrees(0.1 / mm)), own.of(reading, new double[2], List.of()), 1e-9, reading.words());
    }
}
