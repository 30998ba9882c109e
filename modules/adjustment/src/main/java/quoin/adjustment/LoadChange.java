package quoin.adjustment;

/**
 * A known mass put in (positive) or taken out (negative) at a known place, relative to the load case the targets are
 * set for. The driver out of the seat is one negative mass at the seat (or two: seat and feet).
 *
 * @param massKg mass, kg
 * @param xMm place, mm forward of the origin used for the corners
 * @param yMm place, mm to the left
 */
public record LoadChange(double massKg, double xMm, double yMm) {
}
