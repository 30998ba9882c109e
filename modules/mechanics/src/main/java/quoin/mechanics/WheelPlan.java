package quoin.mechanics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import quoin.car.Axle;
import quoin.car.PerAxle;
import quoin.quantities.Texts;

/**
 * Where the four wheels stand seen from above, from the six distances between the points plumbed down from the hubs. Five of
 * them would do; the sixth tells a misread one. The centre line goes through the middles of both axles.
 *
 * @param trackMm      between the points of an axle
 * @param wheelbaseMm  between the points of the left side, and of the right side
 * @param lfToRrMm     one diagonal
 * @param rfToLrMm     the other
 */
public record WheelPlan(PerAxle<Double> trackMm, StringToe.Sides wheelbaseMm, double lfToRrMm, double rfToLrMm) {
    private static final Texts TEXTS = Texts.of(WheelPlan.class);

    private static final int MOST_STEPS = 30;
    private static final double DONE_MM = 1e-10;

    /** @throws InvalidInputException naming the length that cannot be */
    public WheelPlan {
        Require.positive("trackFront_mm", trackMm.get(Axle.FRONT));
        Require.positive("trackRear_mm", trackMm.get(Axle.REAR));
        Require.positive("wheelbaseLeft_mm", wheelbaseMm.left());
        Require.positive("wheelbaseRight_mm", wheelbaseMm.right());
        Require.positive("diagonalLfRr_mm", lfToRrMm);
        Require.positive("diagonalRfLr_mm", rfToLrMm);
        triangle("diagonalLfRr_mm", lfToRrMm, trackMm.get(Axle.FRONT), wheelbaseMm.right());
        triangle("diagonalLfRr_mm", lfToRrMm, trackMm.get(Axle.REAR), wheelbaseMm.left());
        triangle("diagonalRfLr_mm", rfToLrMm, trackMm.get(Axle.FRONT), wheelbaseMm.left());
        triangle("diagonalRfLr_mm", rfToLrMm, trackMm.get(Axle.REAR), wheelbaseMm.right());
    }

    private static void triangle(String field, double diagonal, double track, double wheelbase) {
        if (diagonal >= track + wheelbase || diagonal <= Math.abs(wheelbase - track)) {
            throw new InvalidInputException(field, TEXTS.phrase("doesNotFitA", track, wheelbase));
        }
    }

    /**
     * How the wheels stand.
     *
     * @param setbackMm   of each axle: how far the left wheel is ahead of the right one along the centre line
     * @param wheelbaseMm of each side, as the fit has it
     * @param trackMm     of each axle, as the fit has it
     * @param misfitMm    largest difference between a distance as measured and as fitted
     */
    public record Standing(PerAxle<Double> setbackMm, StringToe.Sides wheelbaseMm, PerAxle<Double> trackMm, double misfitMm) {

        /** Setback of an axle as an angle, deg. */
        public double setbackDeg(Axle axle) {
            return Math.toDegrees(Math.asin(setbackMm.get(axle) / trackMm.get(axle)));
        }
    }

    /** By least squares (Gauss-Newton) with RR in the origin and LR on the y axis. */
    public Standing standing() {
        double wheelbase = (wheelbaseMm.left() + wheelbaseMm.right()) / 2;
        double[] at = {trackMm.get(Axle.REAR), wheelbase, trackMm.get(Axle.FRONT), wheelbase, 0};
        double step = Double.MAX_VALUE;
        for (int i = 0; i < MOST_STEPS && step > DONE_MM; i++) {
            double[] change = new QRDecomposition(new Array2DRowRealMatrix(slopes(at), false)).getSolver()
                    .solve(new ArrayRealVector(residuals(at), false)).toArray();
            step = 0;
            for (int k = 0; k < at.length; k++) {
                at[k] += change[k];
                step = Math.max(step, Math.abs(change[k]));
            }
        }
        return standing(at);
    }

    /** The six distances of LF (1,2), RF (3,4), LR (0, at 0) and RR (0, 0) as pairs of points. */
    private static double[][] pairs(double[] at) {
        return new double[][] {
            {at[1], at[2], at[3], at[4]}, {0, at[0], 0, 0}, {at[1], at[2], 0, at[0]},
            {at[3], at[4], 0, 0}, {at[1], at[2], 0, 0}, {at[3], at[4], 0, at[0]}};
    }

    private double[] residuals(double[] at) {
        double[] measured = {trackMm.get(Axle.FRONT), trackMm.get(Axle.REAR), wheelbaseMm.left(), wheelbaseMm.right(), lfToRrMm, rfToLrMm};
        double[][] pairs = pairs(at);
        double[] r = new double[measured.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = measured[i] - Math.hypot(pairs[i][0] - pairs[i][2], pairs[i][1] - pairs[i][3]);
        }
        return r;
    }

    private static double[][] slopes(double[] at) {
        double[][] pairs = pairs(at);
        // which coordinate of a pair each unknown is: x1, y1, x2, y2
        int[][] unknown = {{1, 2, 3, 4}, {-1, 0, -1, -1}, {1, 2, -1, 0}, {3, 4, -1, -1}, {1, 2, -1, -1}, {3, 4, -1, 0}};
        double[][] slopes = new double[pairs.length][at.length];
        for (int i = 0; i < pairs.length; i++) {
            double dx = pairs[i][0] - pairs[i][2];
            double dy = pairs[i][1] - pairs[i][3];
            double length = Math.hypot(dx, dy);
            double[] along = {dx / length, dy / length, -dx / length, -dy / length};
            for (int k = 0; k < along.length; k++) {
                if (unknown[i][k] >= 0) {
                    slopes[i][unknown[i][k]] += along[k];
                }
            }
        }
        return slopes;
    }

    private Standing standing(double[] at) {
        double forward = (at[1] + at[3]) / 2;
        double left = (at[2] + at[4] - at[0]) / 2;
        double length = Math.hypot(forward, left);
        double front = ((at[1] - at[3]) * forward + (at[2] - at[4]) * left) / length;
        double rear = at[0] * left / length;
        double misfit = 0;
        for (double r : residuals(at)) {
            misfit = Math.max(misfit, Math.abs(r));
        }
        return new Standing(new PerAxle<>(front, rear),
                new StringToe.Sides(Math.hypot(at[1], at[2] - at[0]), Math.hypot(at[3], at[4])),
                new PerAxle<>(Math.hypot(at[1] - at[3], at[2] - at[4]), at[0]), misfit);
    }
}
