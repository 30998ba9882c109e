package quoin.suspensiondoublewishbone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static quoin.suspensiondoublewishbone.Corners.value;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.WheelPosition;

/** Linkages in a plane, where closed forms exist; figures derived by hand unless a source is named. */
class PlanarLinkageTest {

    /** Arms whose axes run along the car; the tie rod lies 120 mm behind. Points are outboard, up. */
    private static Map<String, String> texts(String lowerIn, String lowerOut, String upperIn, String upperOut, String tieIn,
            String tieOut, String wheel) {
        Map<String, String> texts = new HashMap<>(Map.of("wheelCentre", "0 " + wheel, "loadedRadius_mm", "0.000001",
                "staticCamber_deg", "0", "staticToe_deg", "0"));
        arm(texts, "lower", lowerIn, lowerOut);
        arm(texts, "upper", upperIn, upperOut);
        texts.put("links.tie.inboard", "-120 " + tieIn);
        texts.put("links.tie.outboard", "-120 " + tieOut);
        return texts;
    }

    private static void arm(Map<String, String> texts, String name, String inboard, String outboard) {
        texts.put("links." + name + "_front.inboard", "150 " + inboard);
        texts.put("links." + name + "_rear.inboard", "-150 " + inboard);
        texts.put("links." + name + "_front.outboard", "0 " + outboard);
        texts.put("links." + name + "_rear.outboard", "0 " + outboard);
    }

    private static CornerKinematics frontView() {
        // the tie rod is parallel to the lower arm and as long, so nothing steers
        return Corners.left(texts("250 150", "700 130", "350 350", "650 380", "250 150", "700 130", "750 0"));
    }

    @ParameterizedTest(name = "travel {0} mm")
    @CsvSource({"-30, 0.858355, -4.211076", "-10, 0.305771, -1.232771", "-1, 0.031463, -0.115672", "1, -0.031660, 0.113989",
        "10, -0.325491, 1.064470", "30, -1.036313, 2.695823"})
    void theFrontViewIsAFourBarLinkage(double dz, double camber, double patch) {
        CornerPosition at = frontView().at(WheelPosition.travel(dz));
        assertEquals(camber, value(at, CurveOutput.CAMBER), 6e-7);
        assertEquals(patch, value(at, CurveOutput.HALF_TRACK_CHANGE), 2e-6);
        assertEquals(0, value(at, CurveOutput.TOE), 1e-10);
    }

    @Test
    void theInstantCentreGivesCamberGainAndRollCentre() {
        CornerPosition design = frontView().at(WheelPosition.DESIGN);
        assertEquals(-0.0315612, value(design, CurveOutput.BUMP_CAMBER), 6e-8);
        assertEquals(86.122881, value(design, CurveOutput.ROLL_CENTRE_HEIGHT), 2e-6);
    }

    private static CornerPosition parallel(String tieIn, String tieOut, double dz) {
        return Corners.left(texts("300 150", "700 150", "300 350", "700 350", tieIn, tieOut, "700 250")).at(WheelPosition.travel(dz));
    }

    @ParameterizedTest(name = "travel {0} mm")
    @CsvSource({"-40", "40"})
    void equalParallelArmsKeepTheWheelUpright(double dz) {
        CornerPosition at = parallel("300 250", "700 250", dz);
        assertEquals(0, value(at, CurveOutput.CAMBER), 1e-10);
        assertEquals(0, value(at, CurveOutput.TOE), 1e-10);
        assertEquals(Math.sqrt(400 * 400 - 40 * 40) - 400, value(at, CurveOutput.HALF_TRACK_CHANGE), 1e-9);
    }

    @ParameterizedTest(name = "inner joint 5 mm up, travel {0} mm")
    @CsvSource({"40, -0.239785", "10, -0.059692", "-10, 0.059711", "-40, 0.240087"})
    void aRaisedInnerJointSteersInProportionToTravel(double dz, double steer) {
        assertEquals(steer, -value(parallel("300 255", "700 250", dz), CurveOutput.TOE)
                + value(parallel("300 255", "700 250", 0), CurveOutput.TOE), 6e-7);
    }

    @ParameterizedTest(name = "short tie rod, travel {0} mm")
    @CsvSource({"40, 0.321622", "-40, 0.321622", "20, 0.079783", "-20, 0.079783"})
    void aShortTieRodSteersTheSameWayUpAndDown(double dz, double steer) {
        assertEquals(steer, Math.abs(value(parallel("400 250", "700 250", dz), CurveOutput.TOE)), 6e-7);
    }

    /** Norton, Design of Machinery, example 4-1: a 40, b 120, c 80, d 100; at 40 deg the open circuit has 57.33 deg. */
    @Test
    void closesTheLoopOfATextbookFourBar() {
        double[] start = open(40);
        assertEquals(57.324880, start[0], 6e-7);
        assertEquals(20.297883, start[1], 6e-7);
        CornerKinematics corner = fourBar(start[0]);
        for (double crank : new double[] {25, 32, 55, 70}) {
            double[] angles = open(crank);
            CornerPosition at = corner.at(WheelPosition.travel(40 * (sin(crank) - sin(40))));
            // the coupler turns by the change of its angle; outboard up is minus camber
            assertEquals(-(angles[1] - start[1]), value(at, CurveOutput.CAMBER), 1e-9);
        }
    }

    private static CornerKinematics fourBar(double rocker) {
        String crankEnd = String.format(Locale.ROOT, "%.11f %.11f", 500 + 40 * cos(40), 200 + 40 * sin(40));
        String rockerEnd = String.format(Locale.ROOT, "%.11f %.11f", 600 + 80 * cos(rocker), 200 + 80 * sin(rocker));
        return Corners.left(texts("500 200", crankEnd, "600 200", rockerEnd, "500 200", crankEnd, crankEnd));
    }

    /** Freudenstein's equation: angles of rocker and coupler of the open circuit, deg. */
    private static double[] open(double crank) {
        double x = 100 - 40 * cos(crank);
        double y = -40 * sin(crank);
        double reach = Math.hypot(x, y);
        double atJoint = Math.acos((reach * reach + 80 * 80 - 120 * 120) / (2 * reach * 80));
        double rocker = Math.toDegrees(Math.atan2(-y, -x) - atJoint);
        double coupler = Math.toDegrees(Math.atan2(y + 80 * sin(rocker), x + 80 * cos(rocker)));
        return new double[] {rocker, coupler};
    }

    private static double cos(double deg) {
        return Math.cos(Math.toRadians(deg));
    }

    private static double sin(double deg) {
        return Math.sin(Math.toRadians(deg));
    }

    @ParameterizedTest(name = "arm {0} rad")
    @CsvSource({"-0.05, 21.713746", "0.05, -16.175374", "0, 0"})
    void aRockerTurnsTheWheelsTravelRound(double turn, double coilChange) {
        Map<String, String> texts = texts("250 150", "700 150", "250 350", "700 350", "250 250", "700 250", "700 150");
        texts.putAll(Map.of("pushrodRocker.rockerPivot", "0 250 450", "pushrodRocker.rockerAxis", "1 0 0",
                "pushrodRocker.pushrodInboard", "0 310 450", "pushrodRocker.pushrodOutboard", "0 600 160",
                "pushrodRocker.pushrodOutboardOn", "lowerArm", "pushrodRocker.coilOverOnRocker", "0 250 510",
                "pushrodRocker.coilOverOnBody", "0 20 510"));
        CornerKinematics corner = Corners.left(texts);
        CornerPosition at = corner.at(WheelPosition.travel(450 * Math.sin(turn)));
        assertEquals(coilChange, value(at, CurveOutput.COIL_LENGTH) - 230, 6e-7);
        assertEquals(0.8, value(corner.at(WheelPosition.DESIGN), CurveOutput.MOTION_RATIO), 1e-12);
    }
}
