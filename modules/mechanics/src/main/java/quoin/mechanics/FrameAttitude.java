package quoin.mechanics;

import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * What four ride heights say about a stiff frame: its rake, its tilt at the front and at the rear, and whether the four
 * readings can be true together. A frame that is flat has the same tilt at both ends; if not, a height was misread, a
 * point is bent, or the frame is.
 *
 * @param rakeDeg + nose down, from the mean of the front points to the mean of the rear
 * @param rakeMm rear mean height less front mean height
 * @param tiltDeg of the front pair and of the rear pair, + left side up
 * @param flatnessMm how far LF is above the plane of the other three if the frame is flat: 0 = the readings agree
 * @param flatnessSdPerReading standard deviation of flatnessMm for a standard deviation of 1 mm in each reading
 */
public record FrameAttitude(double rakeDeg, double rakeMm, PerAxle<Double> tiltDeg, double flatnessMm,
        double flatnessSdPerReading) {

    /**
     * @param points where the heights are taken, seen from above
     * @param heightsMm the readings
     * @throws InvalidInputException if points coincide or a height is not a number
     */
    public static FrameAttitude of(PerCorner<PlanPoint> points, PerCorner<Double> heightsMm) {
        PerCorner<Double> n = TransferVector.of(points, "rideHeightPoints");
        double flatness = 0;
        double square = 0;
        for (Corner corner : Corner.values()) {
            flatness += n.get(corner) * Require.finite("rideHeights_mm." + corner, heightsMm.get(corner));
            square += n.get(corner) * n.get(corner);
        }
        double along = (points.lf().xMm() + points.rf().xMm() - points.lr().xMm() - points.rr().xMm()) / 2;
        double rake = (heightsMm.lr() + heightsMm.rr() - heightsMm.lf() - heightsMm.rf()) / 2;
        return new FrameAttitude(Math.toDegrees(Math.atan2(rake, Require.positive("rideHeightPoints", along))), rake,
                new PerAxle<>(tilt(Axle.FRONT, points, heightsMm), tilt(Axle.REAR, points, heightsMm)), flatness,
                Math.sqrt(square));
    }

    private static double tilt(Axle axle, PerCorner<PlanPoint> points, PerCorner<Double> heightsMm) {
        double across = points.get(axle.left()).yMm() - points.get(axle.right()).yMm();
        return Math.toDegrees(Math.atan2(heightsMm.get(axle.left()) - heightsMm.get(axle.right()), across));
    }
}
