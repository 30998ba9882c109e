package quoin.mechanics;

/** A point seen from above, ISO 8855: x forward, y left, in mm. */
public record PlanPoint(double xMm, double yMm) {
}
