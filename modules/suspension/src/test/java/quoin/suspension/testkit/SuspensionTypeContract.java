package quoin.suspension.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.Setting;
import quoin.mechanics.SpacePoint;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.Member;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterProblem;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.spi.SuspensionTypes;

/**
 * The contract of a suspension type. Extend it in the type's own tests and give a typical corner; what holds for every
 * type is then checked: the description, the mirror image, the design position, the rates against differences, and clear
 * refusals.
 */
public abstract class SuspensionTypeContract {
    private static final double STEP_MM = 0.01;
    private static final double STEP_TURNS = 0.02;

    /** The type under test. */
    protected abstract SuspensionType type();

    /** Every required parameter of a typical corner, as a person would type it. */
    protected abstract Map<String, String> typicalCorner();

    /** Travel in bump and droop that the typical corner must reach, mm. */
    protected double travelMm() {
        return 30;
    }

    /** Rack travel that the typical corner must reach either way, mm; 0 where it is not steered. */
    protected double rackMm() {
        return 0;
    }

    /** Parameters of the whole axle, whose y is to the left whatever the side, at the other side: y turned round. */
    private Map<String, String> mirrored() {
        Map<String, String> texts = new HashMap<>(typicalCorner());
        for (Parameter parameter : type().parameters()) {
            String text = texts.get(parameter.key());
            if (text != null && parameter.kind() == Parameter.Kind.AXLE_POINT) {
                String[] xyz = text.trim().split("[\\s;]+");
                texts.put(parameter.key(), xyz[0] + "; " + (xyz[1].startsWith("-") ? xyz[1].substring(1) : "-" + xyz[1])
                        + "; " + xyz[2]);
            }
        }
        return texts;
    }

    private CornerKinematics corner(Side side) {
        ParameterReading reading = ParameterValues.read(type().parameters(), side == Side.LEFT ? typicalCorner() : mirrored());
        assertEquals(List.of(), reading.problems());
        return type().corner(reading.values(), side);
    }

    private List<WheelPosition> positions() {
        List<WheelPosition> positions = new ArrayList<>();
        for (double share : new double[] {-1, -0.4, 0, 0.3, 1}) {
            positions.add(WheelPosition.travel(share * travelMm()));
            if (rackMm() > 0) {
                positions.add(new WheelPosition(-0.5 * share * travelMm(), share * rackMm()));
            }
        }
        return positions;
    }

    @Test
    void isRegisteredUnderAStableId() {
        assertTrue(type().id().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*"), type().id());
        assertEquals(type().getClass(), SuspensionTypes.installed().find(type().id()).orElseThrow().getClass());
        assertFalse(type().name().isBlank());
    }

    @Test
    void describesItsParameters() {
        Set<String> keys = new HashSet<>();
        for (Parameter parameter : type().parameters()) {
            assertTrue(keys.add(parameter.key()), parameter.key() + " is there twice");
            assertFalse(parameter.help().isBlank(), parameter.key() + " has no help");
        }
    }

    @Test
    void namesEveryRequiredParameterThatIsMissing() {
        for (Parameter parameter : type().parameters()) {
            Map<String, String> texts = new HashMap<>(typicalCorner());
            texts.remove(parameter.key());
            List<String> problems = ParameterValues.read(type().parameters(), texts).problems().stream()
                    .map(ParameterProblem::key).toList();
            assertEquals(parameter.required() ? List.of(parameter.key()) : List.of(), problems);
        }
    }

    @Test
    void theDesignPositionChangesNothing() {
        CornerPosition design = corner(Side.LEFT).at(WheelPosition.DESIGN);
        for (CurveOutput output : List.of(CurveOutput.HALF_TRACK_CHANGE, CurveOutput.WHEELBASE_CHANGE)) {
            assertEquals(0, design.value(output).orElse(0), 1e-9, output.words());
        }
        assertEquals(corner(Side.LEFT).outputs(), design.values().keySet());
    }

    @Test
    void theWheelGoesWhereItIsAsked() {
        CornerPosition design = corner(Side.LEFT).at(WheelPosition.DESIGN);
        for (CornerPosition position : corner(Side.LEFT).along(positions())) {
            position.wheelCentre().ifPresent(centre -> assertEquals(position.position().travelMm(),
                    centre.zMm() - design.wheelCentre().orElseThrow().zMm(), 1e-8));
        }
    }

    @Test
    void theRightIsTheMirrorImageOfTheLeft() {
        List<CornerPosition> left = corner(Side.LEFT).along(positions());
        List<CornerPosition> right = corner(Side.RIGHT).along(positions().stream()
                .map(p -> new WheelPosition(p.travelMm(), -p.rackLeftMm())).toList());
        for (int i = 0; i < left.size(); i++) {
            same(left.get(i), right.get(i), 1e-8);
            CornerPosition other = right.get(i);
            left.get(i).contactPoint().ifPresent(p -> assertEquals(-p.yMm(), other.contactPoint().orElseThrow().yMm(), 1e-8));
        }
    }

    @Test
    void theWayThereDoesNotMatter() {
        CornerKinematics corner = corner(Side.RIGHT);
        List<CornerPosition> oneAfterTheOther = corner.along(positions());
        for (CornerPosition position : oneAfterTheOther) {
            same(corner.at(position.position()), position, 1e-8);
        }
    }

    private static void same(CornerPosition expected, CornerPosition actual, double tolerance) {
        assertEquals(expected.values().keySet(), actual.values().keySet());
        expected.values().forEach((output, value) -> assertEquals(value, actual.values().get(output),
                tolerance * Math.max(1, Math.abs(value)), output.words() + " at " + expected.position()));
    }

    @Test
    void ratesAreTheDifferencesOfTheCurves() {
        CornerKinematics corner = corner(Side.LEFT);
        for (WheelPosition at : positions()) {
            CornerPosition here = corner.at(at);
            CornerPosition below = corner.at(new WheelPosition(at.travelMm() - STEP_MM, at.rackLeftMm()));
            CornerPosition above = corner.at(new WheelPosition(at.travelMm() + STEP_MM, at.rackLeftMm()));
            rate(here, below, above, CurveOutput.CAMBER, CurveOutput.BUMP_CAMBER, 1);
            rate(here, below, above, CurveOutput.TOE, CurveOutput.BUMP_STEER, 1);
            rate(here, below, above, CurveOutput.COIL_LENGTH, CurveOutput.MOTION_RATIO, -1);
        }
    }

    private static void rate(CornerPosition here, CornerPosition below, CornerPosition above, CurveOutput curve,
            CurveOutput rate, double sign) {
        if (here.value(curve).isPresent()) {
            double difference = (above.value(curve).getAsDouble() - below.value(curve).orElseThrow()) / (2 * STEP_MM);
            assertEquals(sign * difference, here.value(rate).orElseThrow(), 2e-6, rate.words() + " at " + here.position());
        }
    }

    @Test
    void theResponseIsTheSlopeOfTheCurves() {
        CornerPosition design = corner(Side.LEFT).at(WheelPosition.DESIGN);
        AngleResponse response = corner(Side.LEFT).response(List.of());
        assertEquals(design.value(CurveOutput.BUMP_CAMBER).orElseThrow(),
                response.perMmTravel().plus(response.perMmTravelAcross()).camberDeg(), 1e-9);
        assertEquals(design.value(CurveOutput.BUMP_STEER).orElseThrow(),
                response.perMmTravel().plus(response.perMmTravelAcross()).toeDeg(), 1e-9);
    }

    @Test
    void plusOfAnAdjusterIsPlusOfItsReading() {
        Setting turn = new Setting.Thread(1.5, false, 6, "flat");
        Setting finerTurn = new Setting.Thread(0.75, true, 6, "flat");
        for (AdjusterKind kind : AdjusterKind.values()) {
            AdjusterId id = new AdjusterId(kind, Corner.LF);
            AngleResponse response = corner(Side.LEFT).response(List.of(Adjuster.unmeasured(id, turn)));
            AngleResponse same = corner(Side.RIGHT).response(List.of(Adjuster.unmeasured(id, finerTurn)));
            if (response.knows(kind)) {
                double main = switch (kind) {
                    case PERCH, PUSHROD, BAR_LINK -> response.of(kind).legLiftMm();
                    case CAMBER_ROD, CAMBER_SHIM -> response.of(kind).angles().camberDeg();
                    case CASTER_ROD -> response.of(kind).angles().casterDeg();
                    case TOE_LINK -> response.of(kind).angles().toeDeg();
                };
                assertTrue(main > 0, kind.words() + " moves its reading by " + main);
                assertEquals(response.of(kind).angles().toeDeg(), same.of(kind).angles().toeDeg(), 1e-7);
                assertEquals(response.of(kind).legLiftMm(), same.of(kind).legLiftMm(), 1e-7);
            }
        }
    }

    @Test
    void anAdjustedCornerMovesAsTheResponseSays() {
        Setting turn = new Setting.Thread(1.5, false, 6, "flat");
        CornerPosition design = corner(Side.LEFT).at(WheelPosition.DESIGN);
        for (AdjusterKind kind : AdjusterKind.values()) {
            Adjuster adjuster = Adjuster.unmeasured(new AdjusterId(kind, Corner.LF), turn);
            AngleResponse response = corner(Side.LEFT).response(List.of(adjuster));
            corner(Side.LEFT).adjusted(adjuster, STEP_TURNS).ifPresent(adjusted -> {
                AngleChange expected = response.of(kind).angles().times(STEP_TURNS)
                        .plus(rates(design).times(-STEP_TURNS * (isSpringLeg(kind) ? response.of(kind).legLiftMm() : 0)));
                CornerPosition after = adjusted.at(WheelPosition.DESIGN);
                assertEquals(expected.camberDeg(), change(design, after, CurveOutput.CAMBER), 1e-3 * STEP_TURNS, kind.words());
                assertEquals(expected.toeDeg(), change(design, after, CurveOutput.TOE), 1e-3 * STEP_TURNS, kind.words());
            });
        }
    }

    private static boolean isSpringLeg(AdjusterKind kind) {
        return kind == AdjusterKind.PERCH || kind == AdjusterKind.PUSHROD;
    }

    private static AngleChange rates(CornerPosition design) {
        return new AngleChange(design.value(CurveOutput.BUMP_CAMBER).orElseThrow(),
                design.value(CurveOutput.BUMP_STEER).orElseThrow(), 0);
    }

    private static double change(CornerPosition before, CornerPosition after, CurveOutput output) {
        return after.value(output).orElseThrow() - before.value(output).orElseThrow();
    }

    @Test
    void whatIsDrawnMovesWithTheWheel() {
        CornerKinematics corner = corner(Side.RIGHT);
        for (WheelPosition position : positions()) {
            CornerPosition at = corner.at(WheelPosition.travel(position.travelMm()));
            List<Member> members = corner.members(WheelPosition.travel(position.travelMm()));
            assertEquals(at.wheelCentre().isEmpty(), members.isEmpty());
            at.wheelCentre().ifPresent(centre -> assertTrue(members.stream().anyMatch(m -> apart(m.from(), centre) < 1e-6
                    || apart(m.to(), centre) < 1e-6), "nothing drawn holds the wheel at " + position));
        }
    }

    private static double apart(SpacePoint one, SpacePoint other) {
        return Math.hypot(one.xMm() - other.xMm(), Math.hypot(one.yMm() - other.yMm(), one.zMm() - other.zMm()));
    }

    @Test
    void whatCannotBeReachedIsSaid() {
        CornerKinematics corner = corner(Side.RIGHT);
        if (corner.outputs().contains(CurveOutput.CAMBER)) {
            WheelPosition far = WheelPosition.travel(5000);
            UnreachablePositionException e = assertThrows(UnreachablePositionException.class, () -> corner.at(far));
            assertEquals(far, e.wanted());
            assertTrue(e.reached().travelMm() >= travelMm() && e.reached().travelMm() < 5000, e.getMessage());
        }
        if (rackMm() == 0) {
            assertThrows(UnreachablePositionException.class, () -> corner.at(new WheelPosition(0, 1)));
        }
    }
}
