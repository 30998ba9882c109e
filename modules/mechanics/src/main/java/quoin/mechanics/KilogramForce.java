package quoin.mechanics;

/** Loads are shown as a scale shows them: in kgf, that is newtons divided by standard gravity. */
public final class KilogramForce {
    /** Standard gravity in m/s², exact by definition (3rd General Conference on Weights and Measures, 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    private KilogramForce() {
    }

    public static double toNewtons(double kgf) {
        return kgf * STANDARD_GRAVITY;
    }

    public static double fromNewtons(double newtons) {
        return newtons / STANDARD_GRAVITY;
    }
}
