package quoin.mechanics;

import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.stat.regression.SimpleRegression;
import quoin.quantities.Texts;

/**
 * A straight line through points by least squares, such as the force of a spring over its deflection.
 *
 * @param slope     rise per unit
 * @param intercept value at 0
 * @param slopeStandard standard uncertainty of the slope; empty with two points, which say nothing of it
 * @param residualSd standard deviation of the points about the line; empty with two points
 */
public record LineFit(double slope, double intercept, OptionalDouble slopeStandard, OptionalDouble residualSd) {
    private static final Texts TEXTS = Texts.of(LineFit.class);

    /** A point to be fitted. */
    public record Point(double x, double y) {
        public Point {
            Require.finite("points.x", x);
            Require.finite("points.y", y);
        }
    }

    /** @throws InvalidInputException where fewer than two points, or all at one place, are given */
    public static LineFit through(List<Point> points) {
        if (points.stream().map(Point::x).distinct().count() < 2) {
            throw new InvalidInputException("points", TEXTS.phrase("twoPointsAtDifferent"));
        }
        SimpleRegression fit = new SimpleRegression();
        points.forEach(p -> fit.addData(p.x(), p.y()));
        boolean spread = points.size() > 2;
        return new LineFit(fit.getSlope(), fit.getIntercept(), spread ? OptionalDouble.of(fit.getSlopeStdErr()) : OptionalDouble.empty(),
                spread ? OptionalDouble.of(Math.sqrt(fit.getMeanSquareError())) : OptionalDouble.empty());
    }
}
