package quoin.adjustment.learn;

/**
 * One departure from the plain model, with a single free parameter of Gaussian prior.
 *
 * @param kind what departs
 * @param index adjuster, corner, axle or row of the reading, by kind
 * @param at index of the reading at which (or from which on) it acts; 0 when it acts always
 * @param mean prior mean of the free parameter
 * @param sd prior standard deviation of the free parameter
 */
public record Suspect(Kind kind, int index, int at, double mean, double sd) {

    /** What departs, and the meaning of the free parameter. */
    public enum Kind {
        /** Nothing: the plain model; no free parameter. */
        NONE,
        /** Turns not counted at one adjuster before one reading, turns. */
        TURNS,
        /** An adjuster that lifts by another amount in every round: factor less one. */
        LIFT,
        /** A wheel rate off from the start: log of the factor. */
        RATE,
        /** A wheel rate that differs from one reading on: log of the factor. */
        RATE_FROM,
        /** A bar still connected at one axle: log of its rate over the axle's mean wheel rate. */
        BAR,
        /** One figure of one reading is wrong: the error in N or mm. */
        FIGURE,
        /** Mass moved within the car at one reading, along x (index 0) or y (index 1): moment, N mm, plus forward or left. */
        MOMENT
    }

    /** The plain model. */
    public static final Suspect NONE = new Suspect(Kind.NONE, 0, 0, 0, 1);

    boolean free() {
        return kind != Kind.NONE;
    }
}
