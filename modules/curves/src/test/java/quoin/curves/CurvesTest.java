package quoin.curves;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.Setting;
import quoin.car.SuspensionChoice;
import quoin.curves.set.AxleGeometry;
import quoin.curves.set.AxlePose;
import quoin.curves.set.Curve;
import quoin.curves.set.CurveRequest;
import quoin.curves.set.CurveSet;
import quoin.curves.set.CurveTable;
import quoin.curves.set.Sweep;
import quoin.curves.set.Turned;
import quoin.rehearsal.Ouzel23;
import quoin.suspension.CurveOutput;
import quoin.suspension.spi.SuspensionTypes;

class CurvesTest {

    private static final SuspensionTypes TYPES = SuspensionTypes.installed();
    private static final AxleGeometry EXAMPLE = AxleGeometry.of(ExampleAxle.in(Ouzel23.car(), Axle.FRONT), Axle.FRONT, TYPES);
    private static final Setting TURN = new Setting.Thread(1.5, false, 6, "flat");

    private static CurveSet set(Sweep sweep, double range) {
        return CurveSet.of(EXAMPLE, new CurveRequest(sweep, range, Optional.empty()), Optional.empty());
    }

    private static CurveSet turned(AdjusterKind kind, double amount) {
        AdjusterId id = new AdjusterId(kind, Corner.RF);
        return CurveSet.of(EXAMPLE, new CurveRequest(Sweep.TRAVEL, 40, Optional.of(new Turned(id, amount))),
                Optional.of(Adjuster.unmeasured(id, TURN)));
    }

    private static double value(Curve curve, CurveOutput output, double mm) {
        return curve.positions().stream().filter(p -> Math.abs(curve.sweep().of(p.position()) - mm) < 1e-9).findFirst()
                .orElseThrow().value(output).orElseThrow();
    }

    @Test
    void leftAndRightOfASymmetricAxleAreAlikeInTravelAndOppositeInRack() {
        CurveSet travel = set(Sweep.TRAVEL, 40);
        assertEquals(List.of(Corner.LF, Corner.RF), travel.curves().stream().map(Curve::corner).toList());
        for (Curve curve : travel.curves()) {
            double[] along = curve.points(CurveOutput.CAMBER)[0];
            assertEquals(81, along.length);
            for (int i = 1; i < along.length; i++) {
                assertEquals(1, along[i] - along[i - 1], 1e-9, "in rising order, 1 mm apart");
            }
        }
        assertEquals(-1.5, value(travel.curves().get(0), CurveOutput.CAMBER, 0), 1e-9, "as typed for ride height");
        CurveSet rack = set(Sweep.RACK, 20);
        for (double mm : new double[] {-20, -7, 0, 12}) {
            assertEquals(value(travel.curves().get(0), CurveOutput.TOE, 2 * mm), value(travel.curves().get(1), CurveOutput.TOE, 2 * mm), 1e-9);
            assertEquals(value(rack.curves().get(0), CurveOutput.TOE, mm), value(rack.curves().get(1), CurveOutput.TOE, -mm), 1e-9);
        }
    }

    @Test
    void aTurnedToeLinkMovesToeOfItsWheelAsTheResponseSays() {
        CurveSet set = turned(AdjusterKind.TOE_LINK, 0.5);
        assertEquals(3, set.curves().size());
        Curve before = set.curves().get(1);
        Curve after = set.curves().get(2);
        assertTrue(after.after() && after.corner() == Corner.RF);
        double perTurn = EXAMPLE.corners().get(Corner.RF).response(List.of(Adjuster.unmeasured(
                new AdjusterId(AdjusterKind.TOE_LINK, Corner.RF), TURN))).of(AdjusterKind.TOE_LINK).angles().toeDeg();
        double moved = value(after, CurveOutput.TOE, 0) - value(before, CurveOutput.TOE, 0);
        assertEquals(0.5 * perTurn, moved, 0.02 * Math.abs(0.5 * perTurn), "slope at the start against the solved position");
        assertTrue(moved > 0.05, "half a turn is seen: " + moved);
    }

    @Test
    void aPerchShowsTheSameCurveFromAnotherRideHeight() {
        double lift = EXAMPLE.corners().get(Corner.RF).response(List.of(Adjuster.unmeasured(
                new AdjusterId(AdjusterKind.PERCH, Corner.RF), TURN))).of(AdjusterKind.PERCH).legLiftMm();
        CurveSet one = turned(AdjusterKind.PERCH, 5 / lift);
        assertEquals(value(one.curves().get(1), CurveOutput.CAMBER, -5), value(one.curves().get(2), CurveOutput.CAMBER, 0), 1e-9);
        assertEquals(value(one.curves().get(1), CurveOutput.MOTION_RATIO, 10), value(one.curves().get(2), CurveOutput.MOTION_RATIO, 15), 1e-9);
    }

    @Test
    void whereTheLinkageEndsTheCurveEndsAndSaysSo() {
        for (Curve curve : set(Sweep.TRAVEL, 1500).curves()) {
            double[] along = curve.points(CurveOutput.TOE)[0];
            assertTrue(curve.stopped().orElseThrow().contains("cannot reach"), curve.stopped().orElseThrow());
            assertTrue(along.length > 2 && along[along.length - 1] < 1500 && along[0] > -1500, "as far as it goes");
        }
        assertFalse(set(Sweep.TRAVEL, 40).curves().stream().anyMatch(c -> c.stopped().isPresent()));
    }

    @Test
    void anAxleWithoutCurvesSaysWhy() {
        Car car = Ouzel23.car();
        assertEquals(AxleGeometry.Reason.NO_HARD_POINTS, AxleGeometry.of(car, Axle.REAR, TYPES).missing().orElseThrow().reason());
        Car unknown = rear(car, new SuspensionChoice("swing-axle", Map.of("pivot", "0 90 300")));
        assertEquals(new AxleGeometry.Missing(AxleGeometry.Reason.NOT_INSTALLED, "swing-axle"),
                AxleGeometry.of(unknown, Axle.REAR, TYPES).missing().orElseThrow());
        SuspensionChoice whole = ExampleAxle.in(car, Axle.REAR).axles().rear().suspension();
        Map<String, String> parameters = new LinkedHashMap<>(whole.parameters());
        parameters.remove("wheelCentre");
        AxleGeometry.Missing incomplete = AxleGeometry.of(rear(car, new SuspensionChoice(whole.typeId(), parameters)), Axle.REAR, TYPES)
                .missing().orElseThrow();
        assertEquals(new AxleGeometry.Missing(AxleGeometry.Reason.INCOMPLETE, "Wheel centre is missing"), incomplete);
        parameters.put("wheelCentre", "0 -720 280");
        assertEquals(AxleGeometry.Reason.IMPOSSIBLE, AxleGeometry.of(rear(car, new SuspensionChoice(whole.typeId(), parameters)),
                Axle.REAR, TYPES).missing().orElseThrow().reason());
        assertTrue(EXAMPLE.isSteered());
        assertFalse(AxleGeometry.of(ExampleAxle.in(car, Axle.REAR), Axle.REAR, TYPES).isSteered());
    }

    private static Car rear(Car car, SuspensionChoice choice) {
        AxleSetup rear = car.axles().rear();
        return new Car(car.id(), car.name(), car.wheelbaseMm(), new PerAxle<>(car.axles().front(),
                new AxleSetup(rear.trackMm(), rear.bar(), choice)), car.corners(), car.masses(), car.heightPoints(), car.targets(),
                car.loadCase(), car.instruments(), car.walkingOrder());
    }

    @Test
    void theTableHasEveryWheelPositionAndOutput() {
        CurveSet set = turned(AdjusterKind.CAMBER_ROD, 1);
        String[] lines = CurveTable.text(set, EXAMPLE.outputs()).split("\r\n");
        assertEquals(1 + 3 * 81, lines.length);
        assertTrue(lines[0].startsWith("corner,state,wheelCentreTravel_mm,rackTravelLeft_mm,camber_deg,toe_deg,"), lines[0]);
        assertTrue(lines[1].startsWith("LF,before,-40.0,0.0,"), lines[1]);
        assertTrue(lines[3 * 81].startsWith("RF,after,40.0,0.0,"), lines[3 * 81]);
    }

    @Test
    void theGeometryStandsAtTheSlider() {
        AxlePose pose = AxlePose.of(EXAMPLE, Map.of(), Sweep.TRAVEL.at(25));
        assertEquals(2, pose.wheels().size());
        pose.wheels().forEach(wheel -> {
            assertEquals(305, wheel.position().wheelCentre().orElseThrow().zMm(), 1e-8);
            assertTrue(wheel.members().size() >= 10, "five links, their uprights, the coil-over, the steering axis");
        });
    }
}
