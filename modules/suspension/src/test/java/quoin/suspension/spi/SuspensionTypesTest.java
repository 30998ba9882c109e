package quoin.suspension.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.Instruments;
import quoin.car.LoadCase;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.SuspensionChoice;
import quoin.car.Targets;
import quoin.mechanics.SpacePoint;
import quoin.suspension.AngleResponse;
import quoin.suspension.CornerKinematics;
import quoin.suspension.Linkage;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.Wheel;

class SuspensionTypesTest {

    /** A trailing arm with one parameter. */
    private static final class TrailingArm implements SuspensionType {
        @Override
        public String id() {
            return "trailing-arm";
        }

        @Override
        public String name() {
            return "Trailing arm";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(Parameter.length("arm_mm", "Arm", "From the pivot to the wheel centre"));
        }

        @Override
        public CornerKinematics corner(ParameterValues values, Side side) {
            Linkage linkage = new Linkage(side, Wheel.ofAngles(new SpacePoint(0, 700, 300), -1, 0, 300));
            linkage.hinge(new SpacePoint(values.required("arm_mm"), 600, 300), new SpacePoint(values.required("arm_mm"), 300, 290));
            return linkage.build();
        }
    }

    private static final SuspensionTypes TYPES = new SuspensionTypes(List.of(new TrailingArm()));

    private static Car car(String type, Map<String, String> parameters) {
        AxleSetup axle = new AxleSetup(1400, Optional.empty(), new SuspensionChoice(type, parameters));
        OptionalDouble none = OptionalDouble.empty();
        return new Car("bare", "Bare", 2380, new PerAxle<>(axle, axle), PerCorner.all(CornerSetup.unknown()),
                new Masses(none, none, List.of()), List.of(), new Targets(Map.of(), CrossGoal.EQUAL_DIAGONALS),
                LoadCase.unknown(), Instruments.usual(), List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF));
    }

    @Test
    void anUnknownTypeIsANormalCase() {
        Car car = car("gyroscopic", Map.of("wheels", "some"));
        assertTrue(TYPES.find("gyroscopic").isEmpty());
        assertTrue(TYPES.corner(car, Corner.LF).isEmpty());
        assertTrue(TYPES.read(car.axles().get(Axle.FRONT).suspension()).isEmpty());
        assertEquals(AngleResponse.unknown(), TYPES.response(car, Corner.RR));
        assertFalse(TYPES.has(car, Axle.FRONT));
    }

    @Test
    void aKnownTypeAnswers() {
        Car car = car("trailing-arm", Map.of("arm_mm", "400"));
        assertTrue(TYPES.has(car, Axle.REAR));
        // it turns by 1/400 rad a mm about an axis that leans atan(10 / 300) = 1.91 deg, 0.91 deg off the wheel's own
        double toePerMm = Math.toDegrees(1 / 400.0) * Math.tan(Math.atan(10.0 / 300) - Math.toRadians(1));
        assertEquals(toePerMm, Math.abs(TYPES.response(car, Corner.LR).perMmTravel().toeDeg()), 0.001 * toePerMm);
    }

    @Test
    void whatWasTypedForAnotherTypeIsNoHindrance() {
        Car plain = car("trailing-arm", Map.of("arm_mm", "400"));
        Car changedOver = car("trailing-arm", Map.of("arm_mm", "400", "camber_deg_per_mm", "-0.03"));
        assertEquals(TYPES.response(plain, Corner.LR), TYPES.response(changedOver, Corner.LR));
        assertTrue(TYPES.corner(changedOver, Corner.LR).isPresent());
        assertEquals("camber_deg_per_mm", TYPES.read(changedOver.axles().get(Axle.FRONT).suspension()).orElseThrow().problems().get(0).key(),
                "it is told all the same");
    }

    @Test
    void whatDoesNotMakeASuspensionMovesNothingAndIsTold() {
        Car car = car("trailing-arm", Map.of("arm_mm", "long"));
        assertEquals(AngleResponse.unknown(), TYPES.response(car, Corner.LF));
        assertEquals("arm_mm", TYPES.read(car.axles().get(Axle.FRONT).suspension()).orElseThrow().problems().get(0).key());
        assertEquals(AngleResponse.unknown(), TYPES.response(car("trailing-arm", Map.of("arm_mm", "0")), Corner.LF));
    }

    @Test
    void twoTypesOfOneIdAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SuspensionTypes(List.of(new TrailingArm(), new TrailingArm())));
    }
}
