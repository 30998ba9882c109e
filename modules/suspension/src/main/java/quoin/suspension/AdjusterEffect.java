package quoin.suspension;

import java.util.Objects;

/**
 * What one unit of an adjuster does to its own wheel: one turn of a thread, or one mm of shim.
 *
 * @param angles    change of the angles with the wheel centre held at its height relative to the body, deg
 * @param legLiftMm how far the corner of the body would rise over its contact point with the spring's length held, mm
 */
public record AdjusterEffect(AngleChange angles, double legLiftMm) {
    public static final AdjusterEffect NONE = new AdjusterEffect(AngleChange.NONE, 0);

    public AdjusterEffect {
        Objects.requireNonNull(angles, "angles");
    }

    public AdjusterEffect times(double factor) {
        return new AdjusterEffect(angles.times(factor), factor * legLiftMm);
    }
}
