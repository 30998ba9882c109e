package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;
import quoin.mechanics.SlopeCamber;

/** Camber relative to a sloped floor. */
final class CamberOnSlopeCalculation implements Calculation {
    @Override
    public String name() {
        return "camber-on-slope";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        SlopeCamber camber = new SlopeCamber(in.isLeft("side"), in.number("gaugeReading_deg"), in.number("toeIn_deg"),
                in.number("floorRisesToLeft_deg"), in.number("floorRisesForward_deg"));
        return () -> Results.object().put("camberRelativeToFloor_deg", camber.camberToFloorDeg())
                .put("firstOrder_deg", camber.firstOrderDeg());
    }
}
