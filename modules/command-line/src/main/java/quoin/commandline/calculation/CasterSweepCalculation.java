package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;
import quoin.mechanics.CasterSweep;

/** Caster and kingpin inclination from a camber sweep. */
final class CasterSweepCalculation implements Calculation {
    @Override
    public String name() {
        return "caster-sweep";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        boolean left = in.isLeft("side");
        double angle = in.positive("steerAngle_deg");
        double straight = camber(in, "camberStraight_deg");
        double steeredLeft = camber(in, "camberSteeredLeft_deg");
        double steeredRight = camber(in, "camberSteeredRight_deg");
        CasterSweep sweep = CasterSweep.symmetric(left, in.number("toeIn_deg"), angle, straight, steeredLeft, steeredRight);
        return () -> Results.object().put("caster_deg", sweep.exact().casterDeg()).put("kpi_deg", sweep.exact().kpiDeg())
                .put("casterTextbook_deg", sweep.textbook().casterDeg()).put("kpiTextbook_deg", sweep.textbook().kpiDeg());
    }

    private static double camber(Fields in, String name) {
        double camber = in.number(name);
        if (Math.abs(camber) >= 90) {
            throw new RefusedException(in.path(name), "must be less than a quarter of a turn");
        }
        return camber;
    }
}
