package quoin.mechanics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * Heights of four pad tops and what to put under them. What matters to the weights is that the four tops lie in one
 * plane; what matters to camber is that they are level.
 *
 * @param positionsMm pads seen from above
 * @param heightsMm surveyed heights of the pad tops against any common level, + up
 */
public record PadSurvey(PerCorner<PlanPoint> positionsMm, PerCorner<Double> heightsMm) {

    /** @throws InvalidInputException naming a pad that coincides with another or a height that is not a number */
    public PadSurvey {
        TransferVector.of(positionsMm, "padPositions_mm");
        for (Corner corner : Corner.values()) {
            Require.finite("surveyHeights_mm." + corner, heightsMm.get(corner));
        }
    }

    /** Shims that bring every pad to the height of the highest, in mm. */
    public PerCorner<Double> shimsToLevelMm() {
        double highest = Math.max(Math.max(heightsMm.lf(), heightsMm.rf()), Math.max(heightsMm.lr(), heightsMm.rr()));
        return heightsMm.map(height -> highest - height);
    }

    /** The same in whole steps of a shim stock, rounded to the nearest. */
    public PerCorner<Double> shimsToLevelMm(double stepMm) {
        Require.positive("shimStep_mm", stepMm);
        return shimsToLevelMm().map(shim -> Math.rint(shim / stepMm) * stepMm);
    }

    /** The pattern of heights that no plane can follow, 1 at LF; also how loads answer to warp. */
    public PerCorner<Double> transferVector() {
        return TransferVector.of(positionsMm, "padPositions_mm");
    }

    /** Warp of the pads in mm, counted so that 1 mm at LF is 1 mm of warp: 0 = the tops lie in one plane. */
    public double warpMm() {
        PerCorner<Double> n = transferVector();
        double warp = 0;
        for (Corner corner : Corner.values()) {
            warp += n.get(corner) * heightsMm.get(corner);
        }
        return warp;
    }

    /**
     * The least total of shims that brings the four tops into one plane: one pad only, the one whose mm counts most
     * against the warp.
     */
    public PerCorner<Double> leastShimsToPlaneMm() {
        PerCorner<Double> n = transferVector();
        double warp = warpMm();
        Corner best = null;
        for (Corner corner : Corner.values()) {
            boolean helps = n.get(corner) * warp < 0;
            if (helps && (best == null || Math.abs(n.get(corner)) > Math.abs(n.get(best)))) {
                best = corner;
            }
        }
        return best == null ? PerCorner.all(0.0) : PerCorner.all(0.0).with(best, -warp / n.get(best));
    }

    /** The plane that fits the four tops best by least squares, and what each is off it. */
    public Plane leastSquaresPlane() {
        double[][] rows = new double[4][];
        double[] heights = new double[4];
        for (Corner corner : Corner.values()) {
            PlanPoint at = positionsMm.get(corner);
            rows[corner.ordinal()] = new double[] {1, at.xMm() / 1000, at.yMm() / 1000};
            heights[corner.ordinal()] = heightsMm.get(corner);
        }
        double[] fit = new QRDecomposition(new Array2DRowRealMatrix(rows, false)).getSolver()
                .solve(new ArrayRealVector(heights, false)).toArray();
        return new Plane(fit[0], fit[1], fit[2], PerCorner.of(c -> {
            double[] row = rows[c.ordinal()];
            return heightsMm.get(c) - fit[0] - fit[1] * row[1] - fit[2] * row[2];
        }));
    }

    /**
     * @param heightMm at the origin of the positions
     * @param riseForwardMmPerM slope along the car, + rising forward
     * @param riseLeftMmPerM slope across the car, + rising to the left
     * @param residualsMm surveyed height less the plane's
     */
    public record Plane(double heightMm, double riseForwardMmPerM, double riseLeftMmPerM,
            PerCorner<Double> residualsMm) {
    }
}
