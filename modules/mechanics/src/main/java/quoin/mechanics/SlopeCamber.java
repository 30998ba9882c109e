package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * Camber on a floor that is not level, read by a gauge that knows gravity only.
 *
 * @param left               true for a left wheel
 * @param gaugeDeg           what the gauge shows, + top outboard
 * @param toeInDeg           toe of the wheel, + in
 * @param risesToLeftDeg     slope of the floor across the car, + higher on the left
 * @param risesForwardDeg    slope of the floor along the car, + higher in front
 */
public record SlopeCamber(boolean left, double gaugeDeg, double toeInDeg, double risesToLeftDeg, double risesForwardDeg) {
    private static final Texts TEXTS = Texts.of(SlopeCamber.class);
    private static final double STEEPEST_DEG = 45;

    /** @throws InvalidInputException naming what cannot be */
    public SlopeCamber {
        limited("gaugeReading_deg", gaugeDeg, STEEPEST_DEG);
        limited("toeIn_deg", toeInDeg, STEEPEST_DEG);
        limited("floorRisesToLeft_deg", risesToLeftDeg, STEEPEST_DEG);
        limited("floorRisesForward_deg", risesForwardDeg, STEEPEST_DEG);
    }

    private static void limited(String field, double value, double limit) {
        if (Math.abs(Require.finite(field, value)) >= limit) {
            throw new InvalidInputException(field, TEXTS.phrase("mustBeLessThanDeg", limit));
        }
    }

    /**
     * Camber relative to the floor, deg: the spin axis has the gauge's tilt to the vertical, and the floor's normal is
     * tilted by both slopes. Derived here.
     */
    public double camberToFloorDeg() {
        double across = Math.sin(Math.toRadians(outboardRiseDeg()));
        double along = Math.sin(Math.toRadians(risesForwardDeg));
        double up = Math.sqrt(1 - across * across - along * along);
        double toe = Math.toRadians(toeInDeg);
        // how much the spin axis rises if it lies in the floor
        double rise = Math.cos(toe) * across + Math.sin(toe) * along;
        double camber = Math.atan2(rise, up) + Math.asin(Math.sin(Math.toRadians(gaugeDeg)) / Math.hypot(rise, up));
        return Math.toDegrees(camber);
    }

    /** Gauge reading plus the slope across: right to a few ten-thousandths of a degree on a garage floor. */
    public double firstOrderDeg() {
        return gaugeDeg + outboardRiseDeg();
    }

    private double outboardRiseDeg() {
        return left ? risesToLeftDeg : -risesToLeftDeg;
    }
}
