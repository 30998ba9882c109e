package quoin.suspension.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The closed loops of a linkage: the joints that guide one body, the heights that drive it, and the joints a rack moves.
 * Immutable.
 */
public final class Loops {
    static final int UNKNOWNS = 6;

    final Constraint[] constraints;
    final Geometry design;
    final double[] origin;
    final int[] heightPoints;
    final int[] rackPoints;

    /**
     * @param guides       joints and rods
     * @param design       the figures at the design position, where every loop closes; the last fixed points, one per
     *                     driven point, hold the driven heights
     * @param origin       reference point of the guided body at the design position
     * @param drivenPoints points of the guided body whose height is given
     * @param rackPoints   joints on the car's body that the rack moves along y
     * @throws IllegalArgumentException where the joints leave the body free or hold it twice
     */
    public Loops(List<Constraint> guides, Geometry design, double[] origin, int[] drivenPoints, int[] rackPoints) {
        List<Constraint> all = new ArrayList<>(guides);
        heightPoints = new int[drivenPoints.length];
        int fixedCount = design.fixed.length / 3;
        for (int i = 0; i < drivenPoints.length; i++) {
            heightPoints[i] = fixedCount - drivenPoints.length + i;
            all.add(new Height(heightPoints[i], drivenPoints[i]));
        }
        constraints = all.toArray(Constraint[]::new);
        this.design = design;
        this.origin = origin.clone();
        this.rackPoints = rackPoints.clone();
        int rows = Arrays.stream(constraints).mapToInt(Constraint::rows).sum();
        if (rows != UNKNOWNS) {
            throw new IllegalArgumentException("joints and driven heights give " + rows + " equations, a rigid body needs 6");
        }
    }

    public int drives() {
        return heightPoints.length;
    }

    public boolean hasRack() {
        return rackPoints.length > 0;
    }

    public Geometry design() {
        return design;
    }

    /** The change of geometry that is 1 mm of rack to plus y. */
    public Geometry rackChange() {
        Geometry change = design.noChange();
        for (int point : rackPoints) {
            change = change.shiftFixed(point, new double[] {0, 1, 0});
        }
        return change;
    }

    /** The change of geometry that raises driven points, each by its share. */
    public Geometry heightChange(double... share) {
        Geometry change = design.noChange();
        for (int i = 0; i < heightPoints.length; i++) {
            change = change.shiftFixed(heightPoints[i], new double[] {0, 0, share[i]});
        }
        return change;
    }

    /** The same joints with other figures; the loops close where a walker has first moved. */
    public Loops with(Geometry changed) {
        return new Loops(this, changed);
    }

    private Loops(Loops other, Geometry changed) {
        constraints = other.constraints;
        design = changed;
        origin = other.origin;
        heightPoints = other.heightPoints;
        rackPoints = other.rackPoints;
    }

    /** How the guides are drawn where a walker stands. */
    public List<Segment> outline(Walker walker) {
        List<Segment> segments = new ArrayList<>();
        for (Constraint constraint : constraints) {
            segments.addAll(constraint.outline(walker.pose(), walker.geometry()));
        }
        return segments;
    }

    /** A driven point where a walker stands. */
    public double[] driven(Walker walker, int index) {
        for (Constraint constraint : constraints) {
            if (constraint instanceof Height height && height.fixedPoint() == heightPoints[index]) {
                return walker.pose().point(walker.geometry().movingPoint(height.movingPoint()));
            }
        }
        throw new IllegalArgumentException("no driven point " + index);
    }

    /** A walker at the design position. */
    public Walker walker() {
        return new Walker(this);
    }
}
