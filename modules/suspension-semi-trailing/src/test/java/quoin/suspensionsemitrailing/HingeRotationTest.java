package quoin.suspensionsemitrailing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.WheelPosition;

/** The arm turns as a rigid body about its axis: checked against Hipparchus' rotation by the angle it has turned. */
class HingeRotationTest {

    @ParameterizedTest(name = "inner pivot {0}, {1} deg")
    @CsvSource({"260 210 290, -9", "380 210 270, 6", "386 210 270, 12", "-100 610 300, 4"})
    void turnsTheWheelAboutTheHinge(String inner, double turnDeg) {
        Vector3D outer = new Vector3D(386, 614, 270);
        String[] xyz = inner.split(" ");
        Vector3D axis = new Vector3D(Double.parseDouble(xyz[0]), Double.parseDouble(xyz[1]), Double.parseDouble(xyz[2]))
                .subtract(outer);
        Rotation rotation = new Rotation(axis, Math.toRadians(turnDeg), RotationConvention.VECTOR_OPERATOR);
        Vector3D centre = new Vector3D(0, 745, 300);
        Vector3D moved = outer.add(rotation.applyTo(centre.subtract(outer)));
        double camber = Math.toRadians(-1.4);
        double toe = Math.toRadians(0.1);
        Vector3D spin = rotation.applyTo(new Vector3D(Math.cos(camber) * Math.sin(toe), Math.cos(camber) * Math.cos(toe),
                -Math.sin(camber)));
        CornerPosition at = corner(inner, moved.getZ() - 300);
        assertEquals(moved.getX(), at.wheelCentre().orElseThrow().xMm(), 1e-7);
        assertEquals(moved.getY(), at.wheelCentre().orElseThrow().yMm(), 1e-7);
        assertEquals(Math.toDegrees(-Math.asin(spin.getZ())), at.value(CurveOutput.CAMBER).orElseThrow(), 1e-9);
        assertEquals(Math.toDegrees(Math.atan2(spin.getX(), spin.getY())), at.value(CurveOutput.TOE).orElseThrow(), 1e-9);
    }

    private static CornerPosition corner(String inner, double travel) {
        SemiTrailingArm type = new SemiTrailingArm();
        return type.corner(ParameterValues.read(type.parameters(), Map.of("wheelCentre", "0 745 300", "staticCamber_deg",
                "-1.4", "staticToe_deg", "0.1", "loadedRadius_mm", "290", "hinge.outerPivot", "386 614 270",
                "hinge.innerPivot", inner)).values(), Side.LEFT).at(WheelPosition.travel(travel));
    }
}
