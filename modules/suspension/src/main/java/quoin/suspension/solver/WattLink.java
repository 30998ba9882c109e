package quoin.suspension.solver;

import java.util.List;

/**
 * Watt's linkage: a crank that turns on the guided body, and a rod from each of its ends to the car's body. The crank's
 * angle follows from the first rod; the second is the equation.
 */
public final class WattLink implements Constraint {
    private final int[] fixedPoint;
    private final int[] movingEnd;
    private final int[] lengthIndex;
    private final Circle crank;
    private final double branch;

    /**
     * @param fixedPoint  the two joints on the car's body
     * @param movingEnd   the two crank ends at the design position
     * @param lengthIndex the two rods
     * @param pivot       pivot of the crank, from the guided body's reference point
     * @param axis        axis of the crank in the guided body's own axes
     */
    public WattLink(Geometry design, double[] origin, int[] fixedPoint, int[] movingEnd, int[] lengthIndex, double[] pivot,
            double[] axis) {
        this.fixedPoint = fixedPoint.clone();
        this.movingEnd = movingEnd.clone();
        this.lengthIndex = lengthIndex.clone();
        crank = new Circle(pivot, Vectors.unit(axis));
        branch = crank.branch(design.movingPoint(movingEnd[0]), Vectors.minus(design.fixedPoint(fixedPoint[0]), origin));
    }

    /** Whether the crank stands in line with its first rod, where it cannot be held. */
    public boolean isDead() {
        return branch == 0;
    }

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row) {
        double angle = angle(pose, geometry);
        double[][] span = {span(pose, geometry, 0, angle), span(pose, geometry, 1, angle)};
        double length = geometry.lengths[lengthIndex[1]];
        double distance = Vectors.length(span[1]);
        residual[row] = 0.5 * (distance * distance / length - length);
        double ratio = ratio(pose, geometry, span, angle);
        double[][] turn = new double[2][];
        for (int i = 0; i < 2; i++) {
            double[] end = Vectors.minus(Vectors.plus(span[i], 1, geometry.fixedPoint(fixedPoint[i])), pose.origin);
            turn[i] = Vectors.cross(end, span[i]);
        }
        for (int i = 0; i < 3; i++) {
            jacobian[6 * row + i] = (span[1][i] - ratio * span[0][i]) / length;
            jacobian[6 * row + 3 + i] = (turn[1][i] - ratio * turn[0][i]) / length;
        }
    }

    private double angle(Pose pose, Geometry geometry) {
        double[] target = pose.own(Vectors.minus(geometry.fixedPoint(fixedPoint[0]), pose.origin));
        return crank.angle(geometry.movingPoint(movingEnd[0]), target, geometry.lengths[lengthIndex[0]], branch);
    }

    private double[] span(Pose pose, Geometry geometry, int which, double angle) {
        double[] end = pose.point(crank.point(geometry.movingPoint(movingEnd[which]), angle));
        return Vectors.minus(end, geometry.fixedPoint(fixedPoint[which]));
    }

    private double ratio(Pose pose, Geometry geometry, double[][] span, double angle) {
        double[] per = new double[2];
        for (int i = 0; i < 2; i++) {
            per[i] = Vectors.dot(span[i], pose.direction(crank.velocity(geometry.movingPoint(movingEnd[i]), angle)));
        }
        return per[1] / per[0];
    }

    @Override
    public void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row) {
        double angle = angle(pose, geometry);
        double[][] span = {span(pose, geometry, 0, angle), span(pose, geometry, 1, angle)};
        double[] by = new double[2];
        for (int i = 0; i < 2; i++) {
            by[i] = -Vectors.dot(span[i], change.fixedPoint(fixedPoint[i]))
                    - geometry.lengths[lengthIndex[i]] * change.lengths[lengthIndex[i]];
        }
        out[row] = (by[1] - ratio(pose, geometry, span, angle) * by[0]) / geometry.lengths[lengthIndex[1]];
    }

    @Override
    public List<Segment> outline(Pose pose, Geometry geometry) {
        double angle = angle(pose, geometry);
        double[][] end = new double[2][];
        for (int i = 0; i < 2; i++) {
            end[i] = pose.point(crank.point(geometry.movingPoint(movingEnd[i]), angle));
        }
        return List.of(new Segment(Segment.Part.ROD, geometry.fixedPoint(fixedPoint[0]), end[0]),
                new Segment(Segment.Part.ROD, geometry.fixedPoint(fixedPoint[1]), end[1]),
                new Segment(Segment.Part.CRANK, end[0], end[1]));
    }
}
