package quoin.car;

import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * What a reading should be.
 *
 * @param value     wanted value, in the reading's base unit
 * @param tolerance half width of the accepted band, same unit, greater than 0
 */
public record Target(double value, double tolerance) {
    private static final Texts TEXTS = Texts.of(Target.class);

    /** Far below what any gauge shows, in any of the base units. */
    private static final double ON_THE_LIMIT = 1e-9;

    public Target {
        if (!Double.isFinite(value)) {
            throw new NotTakenException(TEXTS.phrase("targetMustBeA"));
        }
        if (!(tolerance > 0) || Double.isInfinite(tolerance)) {
            throw new NotTakenException(TEXTS.phrase("toleranceMustBeGreater"));
        }
    }

    /** True where a reading is inside; one on the limit is, although -2.1 and -2.2 are not 0.1 apart in binary figures. */
    public boolean contains(double reading) {
        return Math.abs(reading - value) <= tolerance + ON_THE_LIMIT;
    }
}
