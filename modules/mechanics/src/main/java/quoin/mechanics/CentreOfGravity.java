package quoin.mechanics;

import quoin.car.Corner;
import quoin.car.PerCorner;

/** Centre of gravity seen from above, from four loads on level pads. */
public final class CentreOfGravity {
    private CentreOfGravity() {
    }

    /**
     * Moment balance about both axes, as in handbooks of vehicle dynamics and ISO 10392.
     *
     * @param loadsKgf the four readings
     * @param contactPoints where the wheels stand
     * @return in the same axes as the contact points
     */
    public static PlanPoint inPlan(PerCorner<Double> loadsKgf, PerCorner<PlanPoint> contactPoints) {
        double total = Shares.of(loadsKgf).totalKgf();
        double x = 0;
        double y = 0;
        for (Corner corner : Corner.values()) {
            x += loadsKgf.get(corner) * contactPoints.get(corner).xMm();
            y += loadsKgf.get(corner) * contactPoints.get(corner).yMm();
        }
        return new PlanPoint(x / total, y / total);
    }

    /** The contact points of a car with straight axles; origin on the centre line under the front axle. */
    public static PerCorner<PlanPoint> contactPoints(double wheelbaseMm, double frontTrackMm, double rearTrackMm) {
        Require.positive("wheelbase_mm", wheelbaseMm);
        Require.positive("frontTrack_mm", frontTrackMm);
        Require.positive("rearTrack_mm", rearTrackMm);
        return PerCorner.of(c -> new PlanPoint(c.isFront() ? 0 : -wheelbaseMm,
                (c.isLeft() ? 0.5 : -0.5) * (c.isFront() ? frontTrackMm : rearTrackMm)));
    }
}
