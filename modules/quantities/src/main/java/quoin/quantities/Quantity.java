package quoin.quantities;

/**
 * A figure as it was typed.
 *
 * @param value in the base unit of the dimension
 * @param unit the unit it was typed in (of the first part: ° for 1°30'), or the assumed one
 * @param resolution the step of the last digit or of the fraction typed, in the base unit: 0.1 for "107,9" in mm, 1/60
 *     for "1°30'"; what the typing shows, not what the instrument is good for
 */
public record Quantity(double value, Unit unit, double resolution) {
}
