package quoin.curves.draw;

import quoin.car.Corner;

/**
 * Bump steer of a wheel as it was measured on the car.
 *
 * @param points wheel travel (index 0, mm, plus is bump) and toe less toe at ride height (index 1, deg, plus is in)
 */
public record MeasuredToe(Corner corner, double[][] points) {

    /** The same with the toe at ride height added, so that it lies over the computed curve. */
    double[][] above(double toeDeg) {
        double[][] raised = {points[0].clone(), points[1].clone()};
        for (int i = 0; i < raised[1].length; i++) {
            raised[1][i] += toeDeg;
        }
        return raised;
    }
}
