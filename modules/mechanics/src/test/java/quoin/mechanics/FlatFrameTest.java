package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/** Numeric cases S1 to S9 of the flat four-spring body: derived, verified by energy minimisation. Loads in N. */
class FlatFrameTest {
    private static final OptionalDouble RIGID = OptionalDouble.empty();
    private static final OptionalDouble TYRE = OptionalDouble.of(220);
    private static final double DIGIT = 6e-5;

    private final FlatFrame base = TestCars.flat(90, 70, TYRE);

    private static void loads(FlatFrame flat, double couple, double lf, double rf, double lr, double rr) {
        PerCorner<Double> change = flat.loadChangeN(couple);
        assertEquals(lf, change.lf(), DIGIT);
        assertEquals(rf, change.rf(), DIGIT);
        assertEquals(lr, change.lr(), DIGIT);
        assertEquals(rr, change.rr(), DIGIT);
    }

    private static FlatFrame square(double frontRate, double rearRate) {
        return new FlatFrame(PerAxle.both(1500.0), PerCorner.of(c -> c.isFront() ? frontRate : rearRate),
                PerCorner.all(0.0), PerAxle.both(0.0), 0);
    }

    @Test
    void s1FourEqualSpringsShareAQuarterEach() {
        FlatFrame flat = square(100, 100);
        PerCorner<Double> raised = TestCars.raised(Corner.RF, 1);
        loads(flat, flat.coupleNmm(raised), -25, 25, 25, -25);
        PerCorner<Double> rise = flat.bodyRiseMm(raised);
        assertEquals(0.25, rise.lf(), 1e-12);
        assertEquals(0.75, rise.rf(), 1e-12);
        assertEquals(-0.25, rise.lr(), 1e-12);
        assertEquals(0.25, rise.rr(), 1e-12);
    }

    @Test
    void s2UnlikeAxlesWithTyres() {
        PerCorner<Double> raised = TestCars.raised(Corner.RF, 1.5);
        double couple = base.coupleNmm(raised);
        assertEquals(3.09821266e-8, base.warpComplianceRadPerNmm(), 1e-16);
        loads(base, couple, -20.9553, 20.9553, 21.6680, -21.6680);
        assertEquals(42.6233, base.crossChangeN(couple), DIGIT);
        assertEquals(1470.0 / 1520, base.loadChangeN(couple).rf() / base.loadChangeN(couple).lr(), 1e-12);
        assertEquals(0.790051, 100 * base.crossChangeN(couple) / TestCars.WEIGHT_N, 6e-7);
        PerCorner<Double> after = TestCars.LOADS_N.zip(base.loadChangeN(couple), Double::sum);
        assertEquals(50.801220, Shares.of(TestCars.LOADS_N).leftPercent(), 6e-6);
        assertEquals(50.814432, Shares.of(after).leftPercent(), 6e-6, "unlike tracks: the left share moves a little");
        PerCorner<Double> rise = base.bodyRiseMm(raised);
        assertEquals(0.328087, rise.lf(), 6e-7);
        assertEquals(1.17191, rise.rf(), 6e-6);
        assertEquals(-0.408034, rise.lr(), 6e-7);
        assertEquals(0.408034, rise.rr(), 6e-7);
    }

    @Test
    void s3PadHighHasNoMotionRatio() {
        double couple = base.coupleNmm(PerCorner.all(0.0), TestCars.raised(Corner.RF, 1), PerAxle.both(0.0));
        loads(base, couple, -13.9702, 13.9702, 14.4453, -14.4453);
        double rear = base.coupleNmm(PerCorner.all(0.0), TestCars.raised(Corner.LR, 1), PerAxle.both(0.0));
        assertEquals(28.4155, base.crossChangeN(couple), DIGIT);
        assertEquals(0.526701, 100 * base.crossChangeN(couple) / TestCars.WEIGHT_N, 6e-7);
        assertEquals(29.3820, base.crossChangeN(rear), DIGIT);
    }

    @Test
    void s4ChassisTwistTakesAShare() {
        FlatFrame flat = TestCars.withChassis(base, 3000);
        loads(flat, flat.coupleNmm(TestCars.raised(Corner.RF, 1.5)), -17.6424, 17.6424, 18.2425, -18.2425);
        double cross = flat.crossChangeN(flat.coupleNmm(TestCars.raised(Corner.RF, 1.5)));
        assertEquals(35.8849, cross, DIGIT);
        assertEquals(0.665151, 100 * cross / TestCars.WEIGHT_N, 6e-7);
    }

    @Test
    void s5BarsOnTheSameAndOnTheOtherAxle() {
        PerCorner<Double> raised = TestCars.raised(Corner.RF, 1.5);
        FlatFrame front = TestCars.withBars(base, 20, 0);
        FlatFrame rear = TestCars.withBars(base, 0, 15);
        FlatFrame both = TestCars.withBars(base, 20, 15);
        loads(front, front.coupleNmm(raised), -16.0396, 16.0396, 16.5852, -16.5852);
        loads(rear, rear.coupleNmm(raised), -24.0320, 24.0320, 24.8495, -24.8495);
        loads(both, both.coupleNmm(raised), -18.6844, 18.6844, 19.3199, -19.3199);
        double link = front.coupleNmm(PerCorner.all(0.0), PerCorner.all(0.0), new PerAxle<>(2.0, 0.0));
        loads(front, link, 9.50496, -9.50496, -9.82826, 9.82826);
        assertEquals(-19.3332, front.crossChangeN(link), DIGIT);
        assertEquals(-0.358355, 100 * front.crossChangeN(link) / TestCars.WEIGHT_N, 6e-7);
        assertEquals(32.6248, front.crossChangeN(front.coupleNmm(raised)), DIGIT);
        assertEquals(48.8815, rear.crossChangeN(rear.coupleNmm(raised)), DIGIT);
        assertEquals(38.0043, both.crossChangeN(both.coupleNmm(raised)), 1e-4);
    }

    @Test
    void s6NeutralMovesKeepTheBodyWhereItIs() {
        FlatFrame rigid = TestCars.flat(90, 70, RIGID);
        PerCorner<Double> moves = rigid.attitudeNeutralMm(-20000);
        assertEquals(-0.146199, moves.lf(), 6e-7);
        assertEquals(0.194363, moves.lr(), 6e-7);
        assertEquals(26.7633, rigid.crossChangeN(rigid.coupleNmm(moves)), DIGIT);
        rigid.bodyRiseMm(moves).map(rise -> {
            assertEquals(0, rise, 1e-13);
            return rise;
        });
        assertEquals(19.7302, base.crossChangeN(base.coupleNmm(moves)), DIGIT);
    }

    @Test
    void s7OneTurnThroughTheMotionRatio() {
        FlatFrame flat = square(160 * 0.75 * 0.75, 80);
        loads(flat, flat.coupleNmm(TestCars.raised(Corner.RF, 1.5 / 0.75)), -42.3529, 42.3529, 42.3529, -42.3529);
        assertEquals(84.7059, flat.crossChangeN(flat.coupleNmm(TestCars.raised(Corner.RF, 1.5 / 0.75))), DIGIT);
    }

    @Test
    void s9OnlyTheWarpOfThePadsCounts() {
        PerCorner<Double> pads = new PerCorner<>(0.4, -0.2, 0.1, 0.5);
        double couple = base.coupleNmm(PerCorner.all(0.0), pads, PerAxle.both(0.0));
        assertEquals(21523.6, couple, 0.06);
        assertEquals(-28.8021, base.crossChangeN(couple), DIGIT);
        PerCorner<Double> residuals = new PadSurvey(TestCars.CONTACTS, pads).leastSquaresPlane().residualsMm();
        assertEquals(0.244929, residuals.lf(), 6e-7);
        assertEquals(-0.244929, residuals.rf(), 6e-7);
        assertEquals(-0.253260, residuals.lr(), 6e-7);
        assertEquals(0.253260, residuals.rr(), 6e-7);
    }

    /** Worked correction of the same source: loads 1480/1420/1320/1175 N to cross 50 %. */
    @Test
    void workedCorrectionByFourCornersOrOne() {
        double couple = (0.5 * 5395 - 2740) / (-1 / 1520.0 - 1 / 1470.0);
        assertEquals(31759.9, couple, 0.06);
        loads(base, couple, 20.8946, -20.8946, -21.6054, 21.6054);
        PerCorner<Double> neutral = base.attitudeNeutralMm(couple);
        assertEquals(0.327138, neutral.lf(), 6e-7);
        assertEquals(-0.406854, neutral.lr(), 6e-7);
        assertEquals(couple, base.coupleNmm(neutral), 1e-8);
        double perFront = base.coupleNmm(TestCars.raised(Corner.RF, 1));
        double perRear = base.coupleNmm(TestCars.raised(Corner.LR, 1));
        assertEquals(-1.49566, couple / perFront, 6e-6);
        assertEquals(-1.44646, couple / perRear, 6e-6);
        // In turns of perches with 1.5 mm pitch, spring travel 0.75 and 0.9 of the wheel's.
        assertEquals(0.163569, neutral.lf() * 0.75 / 1.5, 6e-7);
        assertEquals(-0.244112, neutral.lr() * 0.9 / 1.5, 6e-7);
        assertEquals(-0.747831, couple / perFront * 0.75 / 1.5, 6e-7);
        assertEquals(-0.867878, couple / perRear * 0.9 / 1.5, 6e-7);
    }

    /** A club-racing magazine's rule: the left front seat wound up loads the left front and the right rear. */
    @Test
    void theSeatWoundUpLoadsItsOwnDiagonal() {
        PerCorner<Double> change = base.loadChangeN(base.coupleNmm(TestCars.raised(Corner.LF, 1)));
        assertTrue(change.lf() > 0 && change.rr() > 0 && change.rf() < 0 && change.lr() < 0);
    }

    /** Wheel rates: 160 at 0.75 is 90, 400 at 0.8 is 256; tyre of 220 in series: 63.8710 and 53.1034. */
    @Test
    void springAndTyreInSeries() {
        assertEquals(90, corner(160, 0.75).wheelRateNPerMm(), 1e-12);
        assertEquals(256, corner(400, 0.80).wheelRateNPerMm(), 1e-12);
        assertEquals(63.8710, 1 / corner(90, 1).complianceMmPerN(), DIGIT);
        assertEquals(53.1034, 1 / corner(70, 1).complianceMmPerN(), DIGIT);
    }

    /** A manual that prints 1.218 as wheel per spring travel means 67.4 N/mm at the wheel for 100 at the spring, not 148. */
    @Test
    void aMotionRatioTheOtherWayRound() {
        assertEquals(67.4071, corner(100, 1 / 1.218).wheelRateNPerMm(), DIGIT);
        assertEquals(148.352, corner(100, 1.218).wheelRateNPerMm(), 6e-4);
    }

    private static CornerModel corner(double springRate, double motionRatio) {
        return new CornerModel(0, 760, 0, springRate, motionRatio, 0, 0, 1.5, 1, TYRE, 0);
    }
}
