package quoin.suspensiondoublewishbone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static quoin.suspensiondoublewishbone.Corners.value;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.WheelPosition;

/**
 * Hard points printed in Rill and Castro, Road Vehicle Dynamics (listing of a double wishbone): a wheel with +0.8 deg of
 * camber. There the lower arm's rotation is given; a coil-over from the body to the lower ball joint tells it here, as its
 * length does not change while the arm stands still. Positions were derived with another solver.
 */
class PublishedFrontAxleTest {
    private static final CornerKinematics FRONT = Corners.left(Map.ofEntries(
            Map.entry("wheelCentre", "0 768 0"), Map.entry("spinAxisOutboardUnitVector", "0 1 -0.0139626"),
            Map.entry("loadedRadius_mm", "285"),
            Map.entry("links.lower_front.inboard", "148 320 -94"), Map.entry("links.lower_front.outboard", "13 737 -145"),
            Map.entry("links.lower_rear.inboard", "-251 320 -80"), Map.entry("links.lower_rear.outboard", "13 737 -145"),
            Map.entry("links.upper_front.inboard", "122 435 230"), Map.entry("links.upper_front.outboard", "-25 680 162"),
            Map.entry("links.upper_rear.inboard", "-105 435 196"), Map.entry("links.upper_rear.outboard", "-25 680 162"),
            Map.entry("links.tie.inboard", "-150 380 -38"), Map.entry("links.tie.outboard", "-137 690 -88"),
            Map.entry("coilOver.body", "0 400 500"), Map.entry("coilOver.uprightOrArm", "13 737 -145")));

    @Test
    void hasThePrintedSteeringAxis() {
        CornerPosition design = FRONT.at(WheelPosition.DESIGN);
        assertEquals(7.05610, value(design, CurveOutput.CASTER), 6e-6);
        assertEquals(10.5182, value(design, CurveOutput.KPI), 6e-5);
        assertEquals(30.3256, value(design, CurveOutput.TRAIL), 6e-5);
        assertEquals(1.03271, value(design, CurveOutput.SCRUB_RADIUS), 1e-5);
    }

    /** Those positions have camber as seen from the front, which is more than the tilt where the wheel is steered. */
    private static double frontViewCamber(CornerPosition at) {
        double tilt = Math.tan(Math.toRadians(value(at, CurveOutput.CAMBER)));
        return Math.toDegrees(Math.atan(tilt / Math.cos(Math.toRadians(value(at, CurveOutput.TOE)))));
    }

    /** Steer is + to the left, so a left wheel's is minus its toe. */
    @ParameterizedTest(name = "wheel centre {0} mm")
    @CsvSource({"-70.198596, 0.238563, -0.998917", "-35.554981, 0.101418, 0.212336", "36.150990, -0.084113, 0.929056",
        "72.591766, -0.159518, 0.671969"})
    void movesThroughBumpAndDroop(double z, double steer, double camber) {
        CornerPosition at = FRONT.at(WheelPosition.travel(z));
        assertEquals(steer, -value(at, CurveOutput.TOE), 2e-6);
        assertEquals(camber, frontViewCamber(at), 3e-6);
    }

    @Test
    void movesTheWheelCentreAlongItsPath() {
        CornerPosition at = FRONT.at(WheelPosition.travel(-70.198596));
        assertEquals(3.566818, at.wheelCentre().orElseThrow().xMm(), 2e-6);
        assertEquals(747.389305, at.wheelCentre().orElseThrow().yMm(), 2e-6);
    }

    @ParameterizedTest(name = "rack {0} mm")
    @CsvSource({"-30, 13.021343, 2.751574", "30, -12.191124, -0.469054"})
    void steersWithTheArmHeldStill(double rack, double steer, double camber) {
        double coil = value(FRONT.at(WheelPosition.DESIGN), CurveOutput.COIL_LENGTH);
        CornerPosition at = Corners.where(FRONT, rack, 0, coil, p -> value(p, CurveOutput.COIL_LENGTH));
        assertEquals(steer, -value(at, CurveOutput.TOE), 2e-6);
        assertEquals(camber, frontViewCamber(at), 3e-6);
    }
}
