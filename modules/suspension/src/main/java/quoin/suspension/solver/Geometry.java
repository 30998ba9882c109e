package quoin.suspension.solver;

import java.util.Arrays;

/**
 * The figures of a linkage, or a change of them: joints on the car's body in the car's axes, joints on the guided body from
 * its reference point, lengths of rods; mm. Points lie one after the other, x y z.
 */
public final class Geometry {
    final double[] fixed;
    final double[] moving;
    final double[] lengths;

    public Geometry(double[] fixed, double[] moving, double[] lengths) {
        this.fixed = fixed.clone();
        this.moving = moving.clone();
        this.lengths = lengths.clone();
    }

    /** A change of nothing, of the same shape. */
    public Geometry noChange() {
        return new Geometry(new double[fixed.length], new double[moving.length], new double[lengths.length]);
    }

    public Geometry plus(double factor, Geometry change) {
        return new Geometry(sum(fixed, factor, change.fixed), sum(moving, factor, change.moving),
                sum(lengths, factor, change.lengths));
    }

    private static double[] sum(double[] a, double factor, double[] b) {
        double[] sum = new double[a.length];
        Arrays.setAll(sum, i -> a[i] + factor * b[i]);
        return sum;
    }

    public double[] fixedPoint(int index) {
        return Arrays.copyOfRange(fixed, 3 * index, 3 * index + 3);
    }

    public double[] movingPoint(int index) {
        return Arrays.copyOfRange(moving, 3 * index, 3 * index + 3);
    }

    /** The same with one joint of the body shifted. */
    public Geometry shiftFixed(int index, double[] shift) {
        double[] changed = fixed.clone();
        add(changed, index, shift);
        return new Geometry(changed, moving, lengths);
    }

    /** The same with one joint of the guided body shifted. */
    public Geometry shiftMoving(int index, double[] shift) {
        double[] changed = moving.clone();
        add(changed, index, shift);
        return new Geometry(fixed, changed, lengths);
    }

    /** The same with one rod made longer. */
    public Geometry lengthen(int index, double by) {
        double[] changed = lengths.clone();
        changed[index] += by;
        return new Geometry(fixed, moving, changed);
    }

    private static void add(double[] points, int index, double[] shift) {
        for (int i = 0; i < 3; i++) {
            points[3 * index + i] += shift[i];
        }
    }
}
