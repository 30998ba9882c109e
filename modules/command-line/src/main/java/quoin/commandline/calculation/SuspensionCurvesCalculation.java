package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import quoin.mechanics.SpacePoint;
import quoin.suspension.AngleSensitivity;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;
import quoin.suspension.spi.SuspensionTypes;

/** The wheel at each asked position, and what each adjuster does at the design position; for every installed type. */
final class SuspensionCurvesCalculation implements Calculation {
    private final Supplier<SuspensionTypes> types;

    /** @param types asked for when a request is read, as plug-ins may come later */
    SuspensionCurvesCalculation(Supplier<SuspensionTypes> types) {
        this.types = types;
    }

    @Override
    public String name() {
        return "suspension-curves";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        CornerRequest corner = CornerRequest.read(in.unnamed("corner"), types.get());
        List<WheelPosition> positions = new ArrayList<>();
        for (Fields position : in.objects("positions")) {
            positions.add(new WheelPosition(position.number("wheelCentreTravel_mm"), position.number("rackTravelLeft_mm")));
        }
        return () -> result(corner.build(), positions);
    }

    private static ObjectNode result(CornerKinematics corner, List<WheelPosition> positions) {
        ObjectNode result = Results.object();
        ArrayNode list = result.putArray("positions");
        for (int i = 0; i < positions.size(); i++) {
            list.add(position(reach(corner, positions.get(i), "positions[" + i + "].")));
        }
        ObjectNode adjusters = result.putObject("adjusterSensitivitiesAtDesign");
        corner.sensitivities().forEach((name, sensitivity) -> adjusters.set(name, sensitivity(sensitivity)));
        return result;
    }

    /** The position, or a refusal of the rack where the travel alone can be reached, of the travel where it cannot. */
    private static CornerPosition reach(CornerKinematics corner, WheelPosition position, String path) {
        try {
            return corner.at(position);
        } catch (UnreachablePositionException e) {
            boolean rack = position.rackLeftMm() != 0 && reaches(corner, position.travelMm());
            throw new RefusedException(path + (rack ? "rackTravelLeft_mm" : "wheelCentreTravel_mm"), e.getMessage());
        }
    }

    private static boolean reaches(CornerKinematics corner, double travelMm) {
        try {
            corner.at(WheelPosition.travel(travelMm));
            return true;
        } catch (UnreachablePositionException e) {
            return false;
        }
    }

    private static ObjectNode position(CornerPosition position) {
        ObjectNode node = Results.object().put("wheelCentreTravel_mm", position.position().travelMm())
                .put("rackTravelLeft_mm", position.position().rackLeftMm());
        position.wheelCentre().ifPresent(p -> put(node.putArray("wheelCentre_mm"), p));
        position.contactPoint().ifPresent(p -> put(node.putArray("contactPoint_mm"), p));
        position.values().forEach((output, value) -> node.put(output.key(), value));
        return node;
    }

    private static void put(ArrayNode array, SpacePoint point) {
        array.add(point.xMm()).add(point.yMm()).add(point.zMm());
    }

    private static ObjectNode sensitivity(AngleSensitivity sensitivity) {
        ObjectNode node = Results.object().put("camber_deg_per_mm", sensitivity.camberDegPerMm())
                .put("toe_deg_per_mm", sensitivity.toeDegPerMm());
        sensitivity.casterDegPerMm().ifPresent(v -> node.put("caster_deg_per_mm", v));
        sensitivity.kpiDegPerMm().ifPresent(v -> node.put("kpi_deg_per_mm", v));
        return node;
    }
}
