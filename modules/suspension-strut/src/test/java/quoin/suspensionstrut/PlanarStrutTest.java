package quoin.suspensionstrut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.WheelPosition;

/**
 * A strut in a plane: the upright turns with the line from the ball joint to the top mount, so camber is minus the change
 * of its angle. Derived in closed form.
 */
class PlanarStrutTest {
    private static final Map<String, String> TEXTS = Map.ofEntries(
            Map.entry("wheelCentre", "0 680 170"), Map.entry("staticCamber_deg", "0"), Map.entry("staticToe_deg", "0"),
            Map.entry("loadedRadius_mm", "170"), Map.entry("strut.topMount", "0 590 780"),
            Map.entry("strut.lowerPointOnStrutAxis", "0 680 170"),
            Map.entry("links.lower_front.inboard", "150 300 180"), Map.entry("links.lower_front.outboard", "0 680 170"),
            Map.entry("links.lower_rear.inboard", "-150 300 180"), Map.entry("links.lower_rear.outboard", "0 680 170"),
            Map.entry("links.tie.inboard", "-120 300 180"), Map.entry("links.tie.outboard", "-120 680 170"));

    private static CornerKinematics corner() {
        Strut type = new Strut();
        return type.corner(ParameterValues.read(type.parameters(), TEXTS).values(), Side.LEFT);
    }

    private static double value(CornerPosition position, CurveOutput output) {
        return position.value(output).orElseThrow();
    }

    @ParameterizedTest(name = "travel {0} mm")
    @CsvSource({"-40, 0.784234, 39.170182", "-20, 0.356793, 19.644287", "20, -0.280249, -19.778668",
        "40, -0.476293, -39.705538"})
    void followsTheClosedForm(double travel, double camber, double strut) {
        CornerPosition at = corner().at(WheelPosition.travel(travel));
        assertEquals(camber, value(at, CurveOutput.CAMBER), 6e-7);
        assertEquals(strut, value(at, CurveOutput.COIL_LENGTH) - 616.603600, 2e-6);
        assertEquals(0, value(at, CurveOutput.TOE), 1e-10);
    }

    @Test
    void hasTheInclinationAndGainOfTheInstantCentre() {
        CornerPosition design = corner().at(WheelPosition.DESIGN);
        assertEquals(8.392925, value(design, CurveOutput.KPI), 6e-7);
        assertEquals(-0.015982, value(design, CurveOutput.BUMP_CAMBER), 6e-7);
    }
}
