package quoin.wheelangles.measure;

import org.openide.util.NbBundle.Messages;

/** Figures that are numbers and still cannot be. */
@Messages({
    "# {0} - angle", "checked.beyond=is beyond {0}, which cannot be here; type degrees, or minutes with their mark as in 6''.",
    "checked.steer=must be greater than 0 and less than 45°; type how far the plate turned from straight ahead, without a sign."})
final class Checked {

    /** Toe of one wheel, deg. */
    static final double TOE_DEG = 10;
    /** Camber of a wheel, also steered on turn plates, deg. */
    static final double CAMBER_DEG = 30;
    /** Slope of a floor a car is measured on, deg. */
    static final double SLOPE_DEG = 10;

    private Checked() {
    }

    static double within(String key, double deg, double most, Wording say) {
        if (Math.abs(deg) > most) {
            throw new Figures.BadFigure(key, Bundle.checked_beyond(say.deg(most)));
        }
        return deg;
    }

    /** How far a wheel is steered from straight ahead, whichever way. */
    static double steer(String key, double deg) {
        if (!(deg > 0 && deg < 45)) {
            throw new Figures.BadFigure(key, Bundle.checked_steer());
        }
        return deg;
    }
}
