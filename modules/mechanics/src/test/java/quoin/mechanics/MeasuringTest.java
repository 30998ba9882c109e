package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/** Plates, plumb line, diagonals, two dials, turn plates. Figures recomputed independently unless a source is named. */
class MeasuringTest {

    @Test
    void platesGiveTheTotalHoweverItIsShared() {
        double rear = 1400;
        for (double left : new double[] {0.12, 0, 0.3}) {
            double front = rear - 500 * (Math.sin(Math.toRadians(left)) + Math.sin(Math.toRadians(0.24 - left)));
            assertEquals(2.09439, rear - front, 2e-5);
            assertEquals(0.24, new PlateToe(front, rear, 500).totalToeDeg(), 2e-6);
        }
        assertEquals(-new PlateToe(1401, 1402, 500).totalToeDeg(), new PlateToe(1402, 1401, 500).totalToeDeg(), 1e-15);
        assertEquals("plate_mm", assertThrows(InvalidInputException.class, () -> new PlateToe(1, 1, 0)).field());
    }

    /** 0.5 mm over 330 mm is 0.09 deg: common practice, no source. The oracle is a rim turned by Hipparchus. */
    @Test
    void plumbLineAndRule() {
        assertEquals(0.0868, new PlumbCamber(40, 40.5, 330).camberDeg(), 5e-5);
        Vector3D up = new Rotation(Vector3D.PLUS_I, Math.toRadians(-2.2), RotationConvention.VECTOR_OPERATOR).applyTo(new Vector3D(0, 0, 165));
        // left wheel, y to the left and outboard; the line hangs 60 mm outboard of the hub
        assertEquals(2.2, new PlumbCamber(60 - up.getY(), 60 + up.getY(), 330).camberDeg(), 1e-12);
        assertEquals("top_mm", assertThrows(InvalidInputException.class, () -> new PlumbCamber(-1, 0, 330)).field());
    }

    /** 100 % on 2300 by 1380 mm with 10 deg outside: the normals of both wheels meet on the rear axle. */
    @Test
    void ackermann() {
        TurnToeOut turn = new TurnToeOut(11.15, 10);
        assertEquals(11.155, turn.idealInnerDeg(1380, 2300), 1e-3);
        double inner = turn.idealInnerDeg(1380, 2300);
        double fromInner = 2300 / Math.tan(Math.toRadians(inner));
        double fromOuter = 2300 / Math.tan(Math.toRadians(10));
        assertEquals(1380, fromOuter - fromInner, 1e-9);
        assertEquals(100, new TurnToeOut(inner, 10).ackermannPercent(1380, 2300), 1e-9);
        assertEquals(0, new TurnToeOut(10, 10).ackermannPercent(1380, 2300), 1e-12);
        assertEquals(-0.5, new TurnToeOut(9.5, 10).toeOutDeg(), 1e-12);
        assertEquals("outer_deg", assertThrows(InvalidInputException.class, () -> new TurnToeOut(10, 0)).field());
    }

    /** Scaling of the dials to the rim: 0.10 and 0.35 mm on 250 mm are 0.06 deg or 0.36 mm on 360 (a stock-car magazine). */
    @Test
    void twoDials() {
        BumpSteerFit fit = new BumpSteerFit(250, List.of(new BumpSteerFit.Position(10, 0.10, 0.35), new BumpSteerFit.Position(0, 0, 0)));
        BumpSteerFit.Point bump = fit.points().get(1);
        assertEquals(0.06, bump.toeInDeg(), 0.003);
        assertEquals(0.36, WheelAngles.toeMm(bump.toeInDeg(), 360), 1e-9);
        assertEquals(bump.toeInDeg() / 10, fit.curve().slopeDegPerMm(), 1e-15);
        assertEquals(0, fit.curve().curvatureDegPerMm2());
    }

    @Property(tries = 50)
    void slopeAndCurvatureComeBack(@ForAll @DoubleRange(min = -10, max = 10) double milliSlope,
            @ForAll @DoubleRange(min = -2, max = 2) double tenthsOfMilliCurvature, @ForAll @DoubleRange(min = -3, max = 3) double offset) {
        double slope = milliSlope / 1000;
        double curvature = tenthsOfMilliCurvature / 10000;
        PolynomialFunction toe = new PolynomialFunction(0, slope, curvature / 2);
        List<BumpSteerFit.Position> read = new ArrayList<>();
        List<BumpSteerFit.Position> mirrored = new ArrayList<>();
        for (double z = -30; z <= 30; z += 10) {
            double difference = 250 * Math.sin(Math.toRadians(toe.value(z) + 0.1));
            read.add(new BumpSteerFit.Position(z, offset - difference / 2 + z / 20, offset + difference / 2 + z / 20));
            mirrored.add(new BumpSteerFit.Position(-z, offset + z / 20, offset + difference + z / 20));
        }
        BumpSteerFit.Curve curve = new BumpSteerFit(250, read).curve();
        assertEquals(slope, curve.slopeDegPerMm(), 1e-12);
        assertEquals(curvature, curve.curvatureDegPerMm2(), 1e-12);
        assertEquals(-slope, new BumpSteerFit(250, mirrored).curve().slopeDegPerMm(), 1e-12, "travel counted the other way");
    }

    @Test
    void dialsNeedTheRideHeight() {
        InvalidInputException e = assertThrows(InvalidInputException.class, () -> new BumpSteerFit(250,
                List.of(new BumpSteerFit.Position(10, 0, 0), new BumpSteerFit.Position(-10, 0, 0))));
        assertTrue(e.getMessage().contains("0 mm"), e.getMessage());
        assertThrows(InvalidInputException.class, () -> new BumpSteerFit(250,
                List.of(new BumpSteerFit.Position(0, 0, 0), new BumpSteerFit.Position(0, 0.1, 0))));
    }

    /** Wheels put anywhere near their places; distances by Hipparchus' points. */
    @Property(tries = 100)
    void diagonalsTellHowTheWheelsStand(@ForAll @DoubleRange(min = -15, max = 15) double frontMm,
            @ForAll @DoubleRange(min = -15, max = 15) double rearMm, @ForAll @DoubleRange(min = -0.05, max = 0.05) double turned) {
        // by definition: both middles on the centre line, each axle's wheels ahead and behind by half the setback
        Vector2D[] at = {turn(2380 + frontMm / 2, half(1440, frontMm), turned), turn(2380 - frontMm / 2, -half(1440, frontMm), turned),
            turn(rearMm / 2, half(1420, rearMm), turned), turn(-rearMm / 2, -half(1420, rearMm), turned)};
        WheelPlan.Standing standing = plan(at, 0).standing();
        assertEquals(frontMm, standing.setbackMm().front(), 1e-7);
        assertEquals(rearMm, standing.setbackMm().rear(), 1e-7);
        assertEquals(0, standing.misfitMm(), 1e-8);
        assertEquals(Math.toDegrees(Math.asin(frontMm / 1440)), standing.setbackDeg(Axle.FRONT), 1e-9);
        Vector2D[] mirrored = new Vector2D[4];
        for (int i = 0; i < 4; i++) {
            mirrored[i] = new Vector2D(at[i ^ 1].getX(), -at[i ^ 1].getY());
        }
        assertEquals(-frontMm, plan(mirrored, 0).standing().setbackMm().front(), 1e-7);
    }

    private static double half(double track, double setback) {
        return Math.sqrt(track * track - setback * setback) / 2;
    }

    private static Vector2D turn(double x, double y, double angle) {
        return new Vector2D(x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle));
    }

    private static WheelPlan plan(Vector2D[] at, double error) {
        return new WheelPlan(new PerAxle<>(at[0].distance(at[1]), at[2].distance(at[3])),
                new StringToe.Sides(at[0].distance(at[2]), at[1].distance(at[3])), at[0].distance(at[3]) + error, at[1].distance(at[2]));
    }

    @Test
    void aMisreadDiagonalShows() {
        Vector2D[] square = {new Vector2D(2380, 720), new Vector2D(2380, -720), new Vector2D(0, 710), new Vector2D(0, -710)};
        assertEquals(0, plan(square, 0).standing().misfitMm(), 1e-9);
        assertTrue(plan(square, 10).standing().misfitMm() > 2);
        InvalidInputException e = assertThrows(InvalidInputException.class, () -> plan(square, 2000));
        assertEquals("diagonalLfRr_mm", e.field());
    }

    /** The law of propagation for three equal cambers: 1 / sin 20 / sqrt 2 and sqrt(3/2) / (1 - cos 20). */
    @Test
    void inclinationMultipliesCamberNoiseAboutTwentyfold() {
        CasterSweep.SteeringAxis factors = CasterSweep.symmetric(true, 0, 20, 0, 0, 0).noiseFactors();
        assertEquals(2.06744, factors.casterDeg(), 1e-4);
        assertEquals(20.3084, factors.kpiDeg(), 1e-3);
        CasterSweep.SteeringAxis ten = CasterSweep.symmetric(true, 0, 10, 0, 0, 0).noiseFactors();
        assertTrue(ten.kpiDeg() > 75, "a smaller sweep is worse still: " + ten);
    }

    /** Hub gaps 200/210 on the left, 203/210 on the right of 2300 mm, tracks 20 mm apart: the right cord stands askew by 0.075 deg. */
    @Test
    void aSkewCordHidesHalfAMillimetre() {
        PerCorner<StringToe.Gaps> gaps = new PerCorner<>(new StringToe.Gaps(200, 200), new StringToe.Gaps(202.25, 203.75),
                new StringToe.Gaps(210, 210), new StringToe.Gaps(210, 210));
        StringToe.Result result = new StringToe(gaps, new PerAxle<>(1380.0, 1360.0), new StringToe.Sides(2300, 2300), new PerAxle<>(360.0, 360.0))
                .independent();
        assertEquals(0.075, result.splayDeg().right(), 5e-4);
        assertEquals(0, result.splayDeg().left(), 1e-9);
        assertEquals(-2.0, WheelAngles.toeMm(result.toeInDeg().rf(), 360), 0.04);
    }
}
