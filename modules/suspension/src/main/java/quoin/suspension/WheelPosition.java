package quoin.suspension;

/**
 * Where a wheel is asked to be.
 *
 * @param travelMm   height of the wheel centre above its design position relative to the body, mm, + in bump
 * @param rackLeftMm how far the rack (inner tie-rod joints) has moved to the left of the car, mm
 */
public record WheelPosition(double travelMm, double rackLeftMm) {
    public static final WheelPosition DESIGN = new WheelPosition(0, 0);

    public static WheelPosition travel(double travelMm) {
        return new WheelPosition(travelMm, 0);
    }
}
