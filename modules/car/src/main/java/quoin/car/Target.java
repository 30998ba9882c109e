package quoin.car;

/**
 * What a reading should be.
 *
 * @param value     wanted value, in the reading's base unit
 * @param tolerance half width of the accepted band, same unit, greater than 0
 */
public record Target(double value, double tolerance) {
    public Target {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a target must be a number");
        }
        if (!(tolerance > 0) || Double.isInfinite(tolerance)) {
            throw new IllegalArgumentException("a tolerance must be greater than 0");
        }
    }

    public boolean contains(double reading) {
        return Math.abs(reading - value) <= tolerance;
    }
}
