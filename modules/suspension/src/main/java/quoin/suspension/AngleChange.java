package quoin.suspension;

/**
 * A change of the three angles of one wheel, in deg. Camber + top outboard, toe + in, caster + top rearward, alike on
 * both sides.
 */
public record AngleChange(double camberDeg, double toeDeg, double casterDeg) {
    public static final AngleChange NONE = new AngleChange(0, 0, 0);

    public AngleChange plus(AngleChange other) {
        return new AngleChange(camberDeg + other.camberDeg, toeDeg + other.toeDeg, casterDeg + other.casterDeg);
    }

    public AngleChange times(double factor) {
        return new AngleChange(factor * camberDeg, factor * toeDeg, factor * casterDeg);
    }
}
