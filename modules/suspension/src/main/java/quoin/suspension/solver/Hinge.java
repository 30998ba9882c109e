package quoin.suspension.solver;

import java.util.Arrays;
import java.util.List;

/** An axis on the car's body that the guided body turns about; held along the axis at its first joint. */
public final class Hinge implements Constraint {
    private final int fixedA;
    private final int fixedB;
    private final int movingA;
    private final int movingB;

    public Hinge(int fixedA, int fixedB, int movingA, int movingB) {
        this.fixedA = fixedA;
        this.fixedB = fixedB;
        this.movingA = movingA;
        this.movingB = movingB;
    }

    @Override
    public int rows() {
        return 5;
    }

    @Override
    public void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row) {
        double[] arm = pose.direction(geometry.moving, 3 * movingA);
        double[] a = geometry.fixedPoint(fixedA);
        Arrays.fill(jacobian, 6 * row, 6 * (row + 5), 0);
        for (int i = 0; i < 3; i++) {
            residual[row + i] = pose.origin[i] + arm[i] - a[i];
            jacobian[6 * (row + i) + i] = 1;
        }
        // w x arm, row by row
        put(jacobian, row, 0, arm[2], -arm[1]);
        put(jacobian, row + 1, -arm[2], 0, arm[0]);
        put(jacobian, row + 2, arm[1], -arm[0], 0);
        double[] along = Vectors.minus(geometry.fixedPoint(fixedB), a);
        double[] own = span(pose, geometry);
        double[] first = Vectors.squareTo(along);
        double[] second = Vectors.cross(Vectors.unit(along), first);
        direction(residual, jacobian, row + 3, first, own);
        direction(residual, jacobian, row + 4, second, own);
    }

    private double[] span(Pose pose, Geometry geometry) {
        return Vectors.minus(pose.direction(geometry.moving, 3 * movingB), pose.direction(geometry.moving, 3 * movingA));
    }

    private static void direction(double[] residual, double[] jacobian, int row, double[] across, double[] own) {
        residual[row] = Vectors.dot(across, own);
        double[] turn = Vectors.cross(own, across);
        put(jacobian, row, turn[0], turn[1], turn[2]);
    }

    private static void put(double[] jacobian, int row, double x, double y, double z) {
        jacobian[6 * row + 3] = x;
        jacobian[6 * row + 4] = y;
        jacobian[6 * row + 5] = z;
    }

    @Override
    public void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row) {
        double[] a = Vectors.minus(pose.direction(change.moving, 3 * movingA), change.fixedPoint(fixedA));
        double[] b = Vectors.minus(pose.direction(change.moving, 3 * movingB), change.fixedPoint(fixedB));
        System.arraycopy(a, 0, out, row, 3);
        double[] along = Vectors.minus(geometry.fixedPoint(fixedB), geometry.fixedPoint(fixedA));
        double[] first = Vectors.squareTo(along);
        double[] second = Vectors.cross(Vectors.unit(along), first);
        out[row + 3] = Vectors.dot(first, Vectors.minus(b, a));
        out[row + 4] = Vectors.dot(second, Vectors.minus(b, a));
    }

    @Override
    public List<Segment> outline(Pose pose, Geometry geometry) {
        return List.of(new Segment(Segment.Part.HINGE, geometry.fixedPoint(fixedA), pose.point(geometry.moving, 3 * movingB)));
    }
}
