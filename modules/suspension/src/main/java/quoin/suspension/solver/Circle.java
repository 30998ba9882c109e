package quoin.suspension.solver;

/**
 * A crank: points that turn together about an axis. Finds the angle at which one of them is at a given distance from a
 * point, on the branch it is assembled on.
 */
final class Circle {
    private final double[] pivot;
    private final double[] axis;

    /** @param axis unit vector */
    Circle(double[] pivot, double[] axis) {
        this.pivot = pivot;
        this.axis = axis;
    }

    double[] centre() {
        return pivot.clone();
    }

    /** A point turned by an angle in rad, from the pivot. */
    double[] arm(double[] point, double angle) {
        double[] arm = Vectors.minus(point, pivot);
        double along = Vectors.dot(axis, arm);
        double[] across = Vectors.plus(arm, -along, axis);
        double[] turned = Vectors.plus(Vectors.times(Math.cos(angle), across), Math.sin(angle), Vectors.cross(axis, across));
        return Vectors.plus(turned, along, axis);
    }

    double[] point(double[] point, double angle) {
        return Vectors.plus(pivot, 1, arm(point, angle));
    }

    /** Velocity of a turned point per rad. */
    double[] velocity(double[] point, double angle) {
        return Vectors.cross(axis, arm(point, angle));
    }

    /** Side of the dead centre, +1 or -1, that a rod from the point to the target works on; 0 at the dead centre. */
    double branch(double[] point, double[] target) {
        return -Math.signum(Vectors.dot(Vectors.minus(target, pivot), Vectors.cross(axis, Vectors.minus(point, pivot))));
    }

    /** Angle that puts the point at a distance from the target, rad; NaN where the rod is too short or too long. */
    double angle(double[] point, double[] target, double distance, double branch) {
        double[] arm = Vectors.minus(point, pivot);
        double[] to = Vectors.minus(target, pivot);
        double along = Vectors.dot(axis, arm);
        double[] across = Vectors.plus(arm, -along, axis);
        double a = Vectors.dot(to, across);
        double b = Vectors.dot(to, Vectors.cross(axis, across));
        double k = (Vectors.dot(to, to) + Vectors.dot(arm, arm) - distance * distance) / 2 - along * Vectors.dot(axis, to);
        double cosine = k / Math.hypot(a, b);
        return Math.abs(cosine) < 1 ? Math.atan2(b, a) + branch * Math.acos(cosine) : Double.NaN;
    }
}
