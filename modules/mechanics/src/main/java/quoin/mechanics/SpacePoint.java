package quoin.mechanics;

/** A point of the body, ISO 8855: x forward, y left, z up from the road, in mm. */
public record SpacePoint(double xMm, double yMm, double zMm) {
    public PlanPoint inPlan() {
        return new PlanPoint(xMm, yMm);
    }
}
