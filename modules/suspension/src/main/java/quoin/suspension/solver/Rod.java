package quoin.suspension.solver;

import java.util.List;

/** A rod between a joint on the car's body and a joint on the guided body. */
public record Rod(int fixedPoint, int movingPoint, int lengthIndex) implements Constraint {

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row) {
        double[] r = pose.rotation;
        double[] m = geometry.moving;
        int c = 3 * movingPoint;
        double x = r[0] * m[c] + r[1] * m[c + 1] + r[2] * m[c + 2];
        double y = r[3] * m[c] + r[4] * m[c + 1] + r[5] * m[c + 2];
        double z = r[6] * m[c] + r[7] * m[c + 1] + r[8] * m[c + 2];
        int b = 3 * fixedPoint;
        double dx = pose.origin[0] + x - geometry.fixed[b];
        double dy = pose.origin[1] + y - geometry.fixed[b + 1];
        double dz = pose.origin[2] + z - geometry.fixed[b + 2];
        double length = geometry.lengths[lengthIndex];
        residual[row] = 0.5 * ((dx * dx + dy * dy + dz * dz) / length - length);
        double s = 1 / length;
        int j = 6 * row;
        jacobian[j] = s * dx;
        jacobian[j + 1] = s * dy;
        jacobian[j + 2] = s * dz;
        jacobian[j + 3] = s * (y * dz - z * dy);
        jacobian[j + 4] = s * (z * dx - x * dz);
        jacobian[j + 5] = s * (x * dy - y * dx);
    }

    @Override
    public void residual(Pose pose, Geometry geometry, double[] residual, int row) {
        double[] r = pose.rotation;
        double[] m = geometry.moving;
        double[] f = geometry.fixed;
        int c = 3 * movingPoint;
        int b = 3 * fixedPoint;
        double dx = pose.origin[0] + r[0] * m[c] + r[1] * m[c + 1] + r[2] * m[c + 2] - f[b];
        double dy = pose.origin[1] + r[3] * m[c] + r[4] * m[c + 1] + r[5] * m[c + 2] - f[b + 1];
        double dz = pose.origin[2] + r[6] * m[c] + r[7] * m[c + 1] + r[8] * m[c + 2] - f[b + 2];
        double length = geometry.lengths[lengthIndex];
        residual[row] = 0.5 * ((dx * dx + dy * dy + dz * dz) / length - length);
    }

    @Override
    public void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row) {
        double[] along = Vectors.unit(Vectors.minus(pose.point(geometry.moving, 3 * movingPoint), geometry.fixedPoint(fixedPoint)));
        out[row] = Vectors.dot(along, Vectors.minus(pose.direction(change.moving, 3 * movingPoint), change.fixedPoint(fixedPoint)))
                - change.lengths[lengthIndex];
    }

    @Override
    public List<Segment> outline(Pose pose, Geometry geometry) {
        return List.of(new Segment(Segment.Part.LINK, geometry.fixedPoint(fixedPoint), pose.point(geometry.moving, 3 * movingPoint)));
    }
}
