package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.mechanics.BarModel;
import quoin.mechanics.CarModel;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.CornerModel;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.LoadFinding;
import quoin.mechanics.Sensitivity;
import quoin.mechanics.SpacePoint;
import quoin.mechanics.Turns;

/** Loads and heights of a car before and after turns of perches and rods, and what one turn does at the start. */
final class CornerLoadsCalculation implements Calculation {
    @Override
    public String name() {
        return "corner-loads";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        CarModel car = car(in.unnamed("car"));
        Fields turned = in.object("turns");
        Turns turns = new Turns(turned.perCorner("perch"), turned.perCorner("rod"));
        return () -> {
            CornerLoads.Response start = CornerLoads.response(car, Turns.NONE, CornerLoads.ADJUSTERS);
            ObjectNode node = Results.object();
            node.set("baseline", state(start.state()));
            node.set("afterTurns", state(CornerLoads.solve(car, turns)));
            node.set("sensitivities", sensitivities(start.sensitivities()));
            return node;
        };
    }

    private static CarModel car(Fields in) {
        double mass = in.number("sprungMass_kg");
        SpacePoint cg = point(in.object("sprungCg"));
        Fields corners = in.object("corners");
        PerCorner<CornerModel> models = PerCorner.of(corner -> corner(corners.object(corner.name())));
        Fields bars = in.object("antiRollBars");
        Fields rollCentres = in.object("rollCentreHeight_mm");
        Fields points = in.object("rideHeightPoints");
        Map<String, SpacePoint> named = new LinkedHashMap<>();
        points.names().forEach(name -> named.put(name, point(points.object(name))));
        return new CarModel(mass, cg, models, new PerAxle<>(bar(bars.object("front")), bar(bars.object("rear"))),
                new PerAxle<>(rollCentres.numberOrNull("front"), rollCentres.numberOrNull("rear")),
                in.numberOrNull("chassisTorsionalStiffness_Nm_per_deg"), in.number("torsionAxisHeight_mm"), named);
    }

    private static CornerModel corner(Fields in) {
        return new CornerModel(in.number("x_mm"), in.number("y_mm"), in.number("unsprungMass_kg"),
                in.number("springRate_N_per_mm"), in.number("motionRatio_springPerWheel"),
                in.number("motionRatioSlope_per_mm"), in.number("springCompressionAtDesign_mm"),
                in.number("perchPitchAtSpring_mm_per_turn"), in.number("rodLiftAtWheel_mm_per_turn"),
                in.numberOrNull("tyreVerticalRate_N_per_mm"), in.number("padHeight_mm"));
    }

    private static BarModel bar(Fields in) {
        return new BarModel(in.number("wheelRateInRoll_N_per_mm"), in.number("linkPreloadOffset_mm"));
    }

    private static SpacePoint point(Fields in) {
        return new SpacePoint(in.number("x_mm"), in.number("y_mm"), in.number("z_mm"));
    }

    private static ObjectNode state(Equilibrium state) {
        ObjectNode node = Results.object();
        node.set("cornerLoads_kgf", Results.perCorner(state.loadsKgf()));
        node.put("total_kgf", state.shares().totalKgf()).put("front_percent", state.shares().frontPercent())
                .put("left_percent", state.shares().leftPercent()).put("cross_percent", state.shares().crossPercent());
        node.set("cg_mm", Results.object().put("x", state.centreOfGravity().xMm())
                .put("y", state.centreOfGravity().yMm()));
        node.set("rideHeights_mm", Results.named(state.rideHeightsMm()));
        node.put("bodyHeave_mm", state.heaveMm()).put("bodyRoll_deg", state.rollDeg())
                .put("bodyPitch_deg", state.pitchDeg()).put("chassisTwist_deg", state.twistDeg());
        node.set("wheelTravel_mm", Results.perCorner(state.wheelTravelMm()));
        node.set("springForce_N", Results.perCorner(state.springForceN()));
        ArrayNode findings = node.putArray("findings");
        state.findings().forEach(finding -> findings.add(finding(finding)));
        return node;
    }

    private static ObjectNode finding(LoadFinding finding) {
        String message = switch (finding.kind()) {
            case SPRING_UNLOADED -> "the spring would have to pull: it is loose on its seat, so these figures do not hold";
            case WHEEL_LIFTED -> "the wheel is off its scale, so these figures do not hold";
        };
        return Results.object().put("corner", finding.corner().name()).put("message", message);
    }

    private static ObjectNode sensitivities(List<Sensitivity> all) {
        ObjectNode loads = Results.object();
        ObjectNode heights = Results.object();
        ObjectNode cross = Results.object();
        for (Sensitivity one : all) {
            String adjuster = one.input().name().toLowerCase(Locale.ROOT) + one.corner();
            loads.set(adjuster, Results.perCorner(one.loadsKgf()));
            heights.set(adjuster, Results.named(one.rideHeightsMm()));
            cross.put(adjuster, one.crossPercent());
        }
        ObjectNode node = Results.object();
        node.set("cornerLoads_kgf_per_turn", loads);
        node.set("rideHeights_mm_per_turn", heights);
        node.set("cross_percent_per_turn", cross);
        return node;
    }
}
