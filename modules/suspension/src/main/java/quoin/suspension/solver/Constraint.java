package quoin.suspension.solver;

import java.util.List;

/** One joint or rod that guides the body: one or more equations that are zero where it is assembled. */
public interface Constraint {

    /** How many equations. */
    int rows();

    /**
     * Writes the residuals, in mm, and their derivatives by the moves of the reference point (mm/mm) and by the rotation
     * vector in the axes of the car (mm/rad).
     *
     * @param residual filled from {@code row} on
     * @param jacobian six entries a row, filled from {@code 6 * row} on
     */
    void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row);

    /** Writes the residuals alone, in mm. */
    default void residual(Pose pose, Geometry geometry, double[] residual, int row) {
        linearise(pose, geometry, residual, new double[6 * (row + rows())], row);
    }

    /** How it is drawn at this pose; nothing where there is nothing to see. */
    default List<Segment> outline(Pose pose, Geometry geometry) {
        return List.of();
    }

    /** Writes how the residuals change, at this pose, for a change of the geometry; mm per unit of the change. */
    void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row);
}
