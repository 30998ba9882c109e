package quoin.car;

/**
 * A part of the car where a mass may be fixed: a box seen from above at one height. Axes as those of {@link Car}.
 *
 * @param name     as the racer calls it: "left sill"
 * @param rearXMm  rear edge, forward of the front axle line (behind is negative), mm
 * @param frontXMm front edge, not behind the rear edge, mm
 * @param rightYMm right edge, left of the centre line (right is negative), mm
 * @param leftYMm  left edge, not right of the right edge, mm
 * @param zMm      height of a mass fixed there above the pads, mm
 */
public record MassZone(String name, double rearXMm, double frontXMm, double rightYMm, double leftYMm, double zMm) {

    public MassZone {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a place for ballast needs a name");
        }
        if (!(rearXMm <= frontXMm)) {
            throw new IllegalArgumentException(name + ": the rear edge must lie behind the front edge");
        }
        if (!(rightYMm <= leftYMm)) {
            throw new IllegalArgumentException(name + ": the right edge must lie to the right of the left edge");
        }
        if (!Double.isFinite(zMm) || Double.isInfinite(rearXMm) || Double.isInfinite(frontXMm) || Double.isInfinite(rightYMm)
                || Double.isInfinite(leftYMm)) {
            throw new IllegalArgumentException(name + ": every edge and the height must be a number");
        }
    }
}
