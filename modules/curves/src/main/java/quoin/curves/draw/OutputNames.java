package quoin.curves.draw;

import org.openide.util.NbBundle;
import org.openide.util.NbBundle.Messages;
import quoin.suspension.CurveOutput;

/** What the outputs are called, and which way is plus. */
@Messages({
    "output.CAMBER=Camber", "output.TOE=Toe", "output.CASTER=Caster", "output.KPI=Kingpin inclination",
    "output.SCRUB_RADIUS=Scrub radius", "output.TRAIL=Trail", "output.SCRUB_RADIUS_WHEEL=Scrub radius, wheel's axes",
    "output.TRAIL_WHEEL=Trail, wheel's axes", "output.HALF_TRACK_CHANGE=Half-track change",
    "output.WHEELBASE_CHANGE=Wheelbase change", "output.BUMP_STEER=Bump steer", "output.BUMP_CAMBER=Camber gain",
    "output.ROLL_CENTRE_HEIGHT=Roll centre height", "output.ROLL_CENTRE_HEIGHT_PATH=Roll centre, patch path",
    "output.COIL_LENGTH=Coil-over length", "output.MOTION_RATIO=Motion ratio",
    "sign.CAMBER=plus is top outboard", "sign.TOE=plus is in", "sign.CASTER=plus is top rearward", "sign.KPI=plus is top inboard",
    "sign.SCRUB_RADIUS=plus is axis inboard of the contact", "sign.TRAIL=plus is axis ahead of the contact",
    "sign.SCRUB_RADIUS_WHEEL=plus is axis inboard of the contact", "sign.TRAIL_WHEEL=plus is axis ahead of the contact",
    "sign.HALF_TRACK_CHANGE=plus is outboard", "sign.WHEELBASE_CHANGE=plus is forward", "sign.BUMP_STEER=plus is toe-in in bump",
    "sign.BUMP_CAMBER=plus is top outboard in bump", "sign.ROLL_CENTRE_HEIGHT=above the ground",
    "sign.ROLL_CENTRE_HEIGHT_PATH=above the ground", "sign.COIL_LENGTH=joint to joint", "sign.MOTION_RATIO=spring per wheel",
    "# {0} - output", "# {1} - sign", "output.plain={0}, {1}",
    "# {0} - output", "# {1} - unit", "# {2} - sign", "output.withUnit={0}, {1}, {2}"})
public final class OutputNames {

    private OutputNames() {
    }

    public static String of(CurveOutput output) {
        return NbBundle.getMessage(OutputNames.class, "output." + output.name());
    }

    static String withUnit(CurveOutput output) {
        String sign = NbBundle.getMessage(OutputNames.class, "sign." + output.name());
        return output.unit().isEmpty() ? Bundle.output_plain(of(output), sign)
                : Bundle.output_withUnit(of(output), output.unit(), sign);
    }
}
