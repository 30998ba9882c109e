package quoin.suspension.solver;

/**
 * A straight piece of a linkage as it stands, for drawing.
 *
 * @param part what it is
 * @param from one end, mm, y outboard; on the car's body where the part is held there
 * @param to   the other end; on the guided body where the part carries or guides it
 */
public record Segment(Part part, double[] from, double[] to) {

    /** What a piece is. */
    public enum Part { LINK, HINGE, STRUT, CRANK, ROD, ROCKER, COIL }
}
