package quoin.curves.draw;

import org.openide.util.NbBundle;
import org.openide.util.NbBundle.Messages;
import quoin.suspension.CurveOutput;

/** What the outputs are called, with which way is plus. */
@Messages({
    "output.CAMBER=Camber, plus is top outboard", "output.TOE=Toe, plus is in", "output.CASTER=Caster, plus is top rearward",
    "output.KPI=Kingpin inclination, plus is top inboard", "output.SCRUB_RADIUS=Scrub radius", "output.TRAIL=Trail",
    "output.SCRUB_RADIUS_WHEEL=Scrub radius, along the wheel's own axes", "output.TRAIL_WHEEL=Trail, along the wheel's own axes",
    "output.HALF_TRACK_CHANGE=Half-track change, plus is outboard", "output.WHEELBASE_CHANGE=Wheelbase change, plus is forward",
    "output.BUMP_STEER=Bump steer, plus is toe-in in bump", "output.BUMP_CAMBER=Camber gain",
    "output.ROLL_CENTRE_HEIGHT=Roll centre above the ground", "output.ROLL_CENTRE_HEIGHT_PATH=Roll centre, from the path of the contact point",
    "output.COIL_LENGTH=Coil-over length", "output.MOTION_RATIO=Motion ratio, spring per wheel",
    "# {0} - output", "# {1} - unit", "output.withUnit={0}, {1}"})
public final class OutputNames {

    private OutputNames() {
    }

    public static String of(CurveOutput output) {
        return NbBundle.getMessage(OutputNames.class, "output." + output.name());
    }

    static String withUnit(CurveOutput output) {
        return output.unit().isEmpty() ? of(output) : Bundle.output_withUnit(of(output), output.unit());
    }
}
