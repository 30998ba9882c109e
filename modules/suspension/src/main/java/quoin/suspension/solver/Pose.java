package quoin.suspension.solver;

/**
 * Where a rigid body is: a reference point, and a rotation from its design position. Its own points are given from the
 * reference point, in the axes they have at the design position. Mutable, for one walker.
 */
public final class Pose {
    final double[] origin;
    final double[] rotation;

    /** The design position with the reference point there. */
    Pose(double[] origin) {
        this.origin = origin.clone();
        this.rotation = new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
    }

    private Pose(Pose other) {
        origin = other.origin.clone();
        rotation = other.rotation.clone();
    }

    public Pose copy() {
        return new Pose(this);
    }

    void set(Pose other) {
        System.arraycopy(other.origin, 0, origin, 0, 3);
        System.arraycopy(other.rotation, 0, rotation, 0, 9);
    }

    public double[] origin() {
        return origin.clone();
    }

    /** Whether it is turned by less than a right angle from its design position. */
    boolean isUpright() {
        return rotation[0] + rotation[4] + rotation[8] > 1;
    }

    /** A direction of the body in the axes of the car. */
    public double[] direction(double[] own) {
        return direction(own, 0);
    }

    double[] direction(double[] points, int at) {
        double x = points[at];
        double y = points[at + 1];
        double z = points[at + 2];
        double[] r = rotation;
        return new double[] {r[0] * x + r[1] * y + r[2] * z, r[3] * x + r[4] * y + r[5] * z, r[6] * x + r[7] * y + r[8] * z};
    }

    /** A point of the body in the axes of the car. */
    public double[] point(double[] own) {
        return Vectors.plus(origin, 1, direction(own));
    }

    double[] point(double[] points, int at) {
        return Vectors.plus(origin, 1, direction(points, at));
    }

    /** A direction of the car in the body's own axes. */
    double[] own(double[] d) {
        double[] r = rotation;
        return new double[] {r[0] * d[0] + r[3] * d[1] + r[6] * d[2], r[1] * d[0] + r[4] * d[1] + r[7] * d[2],
            r[2] * d[0] + r[5] * d[1] + r[8] * d[2]};
    }

    /** Moves the reference point and turns by a rotation vector in rad, in the axes of the car (Rodrigues' formula). */
    public void move(double dx, double dy, double dz, double wx, double wy, double wz) {
        origin[0] += dx;
        origin[1] += dy;
        origin[2] += dz;
        double square = wx * wx + wy * wy + wz * wz;
        double a;
        double b;
        if (square < 1e-3) {
            // the series to the order that double precision shows
            a = 1 - square / 6 * (1 - square / 20 * (1 - square / 42));
            b = 0.5 - square / 24 * (1 - square / 30 * (1 - square / 56));
        } else {
            double angle = Math.sqrt(square);
            a = Math.sin(angle) / angle;
            b = (1 - Math.cos(angle)) / square;
        }
        double[] r = rotation;
        for (int c = 0; c < 3; c++) {
            double x = r[c];
            double y = r[3 + c];
            double z = r[6 + c];
            double cx = wy * z - wz * y;
            double cy = wz * x - wx * z;
            double cz = wx * y - wy * x;
            r[c] = x + a * cx + b * (wy * cz - wz * cy);
            r[3 + c] = y + a * cy + b * (wz * cx - wx * cz);
            r[6 + c] = z + a * cz + b * (wx * cy - wy * cx);
        }
    }
}
