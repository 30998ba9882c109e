package quoin.suspension.solver;

/** Three-dimensional vectors as arrays of x, y, z. */
public final class Vectors {
    private Vectors() {
    }

    public static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    /** a + factor b. */
    public static double[] plus(double[] a, double factor, double[] b) {
        return new double[] {a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]};
    }

    public static double[] times(double factor, double[] a) {
        return new double[] {factor * a[0], factor * a[1], factor * a[2]};
    }

    public static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    public static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    public static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }

    public static double distance(double[] a, double[] b) {
        return length(minus(a, b));
    }

    public static double[] unit(double[] a) {
        return times(1 / length(a), a);
    }

    /** Some unit vector square to a. */
    public static double[] squareTo(double[] a) {
        double[] helper = Math.abs(a[2]) < 0.8 * length(a) ? new double[] {0, 0, 1} : new double[] {1, 0, 0};
        return unit(cross(a, helper));
    }
}
