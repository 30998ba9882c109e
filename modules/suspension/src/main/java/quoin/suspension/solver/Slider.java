package quoin.suspension.solver;

import java.util.List;

/**
 * A straight guide fixed in the guided body, as a strut's, that always passes through a joint on the car's body.
 */
public final class Slider implements Constraint {
    private final int fixedTop;
    private final int movingPoint;
    private final double[] first;
    private final double[] second;

    /** @param ownAxis direction of the guide, in the guided body's own axes */
    public Slider(int fixedTop, int movingPoint, double[] ownAxis) {
        this.fixedTop = fixedTop;
        this.movingPoint = movingPoint;
        first = Vectors.squareTo(ownAxis);
        second = Vectors.cross(Vectors.unit(ownAxis), first);
    }

    @Override
    public int rows() {
        return 2;
    }

    @Override
    public void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row) {
        double[] fromOrigin = Vectors.minus(geometry.fixedPoint(fixedTop), pose.origin);
        double[] offset = Vectors.minus(pose.own(fromOrigin), geometry.movingPoint(movingPoint));
        put(pose, fromOrigin, first, offset, residual, jacobian, row);
        put(pose, fromOrigin, second, offset, residual, jacobian, row + 1);
    }

    private static void put(Pose pose, double[] fromOrigin, double[] ownAcross, double[] offset, double[] residual,
            double[] jacobian, int row) {
        residual[row] = Vectors.dot(ownAcross, offset);
        double[] across = pose.direction(ownAcross);
        double[] turn = Vectors.cross(across, fromOrigin);
        for (int i = 0; i < 3; i++) {
            jacobian[6 * row + i] = -across[i];
            jacobian[6 * row + 3 + i] = turn[i];
        }
    }

    @Override
    public void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row) {
        double[] offset = Vectors.minus(pose.own(change.fixedPoint(fixedTop)), change.movingPoint(movingPoint));
        out[row] = Vectors.dot(first, offset);
        out[row + 1] = Vectors.dot(second, offset);
    }

    @Override
    public List<Segment> outline(Pose pose, Geometry geometry) {
        return List.of(new Segment(Segment.Part.STRUT, geometry.fixedPoint(fixedTop), pose.point(geometry.moving, 3 * movingPoint)));
    }
}
