package quoin.adjustment;

import java.util.Objects;

/**
 * A reading held against its target, its uncertainty taken into account.
 *
 * <p>Decision rule: guard bands on both sides of each limit, wide enough that "inside" and "outside" are each right with
 * 95 % probability (ISO 14253-1:2017, 5; JCGM 106:2012, 8.3). Between them it is too close to call.
 *
 * @param answer            what can be said
 * @param probabilityInside probability that the true value lies within the tolerance, 0 to 1, for a normal error of the
 *                          reading (JCGM 106:2012, 7.2)
 */
public record Verdict(Answer answer, double probabilityInside) {

    /** What can be said of a reading. */
    public enum Answer { INSIDE, OUTSIDE, TOO_CLOSE }

    /** Guard band in standard uncertainties: the one-sided 95 % point of the normal distribution. */
    public static final double GUARD_BAND = 1.6448536269514722;

    public Verdict {
        Objects.requireNonNull(answer, "answer");
        if (!(probabilityInside >= 0 && probabilityInside <= 1)) {
            throw new IllegalArgumentException("probabilityInside must lie between 0 and 1, not " + probabilityInside);
        }
    }

    /**
     * Judges one reading; all four in the reading's unit.
     *
     * @param value               the reading
     * @param target              wanted value
     * @param tolerance           half width of the accepted band, greater than 0
     * @param standardUncertainty of the reading, 0 or more
     */
    public static Verdict of(double value, double target, double tolerance, double standardUncertainty) {
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("tolerance must be greater than 0, not " + tolerance);
        }
        if (!(standardUncertainty >= 0)) {
            throw new IllegalArgumentException("standardUncertainty must be 0 or more, not " + standardUncertainty);
        }
        double off = Math.abs(value - target);
        if (standardUncertainty == 0) {
            return off <= tolerance ? new Verdict(Answer.INSIDE, 1) : new Verdict(Answer.OUTSIDE, 0);
        }
        // far outside, rounding may leave a hair below nothing
        double inside = Math.max(0, GuardBand.conformance(value, standardUncertainty, target - tolerance, target + tolerance));
        double guard = GUARD_BAND * standardUncertainty;
        Answer answer = off <= tolerance - guard ? Answer.INSIDE : off > tolerance + guard ? Answer.OUTSIDE : Answer.TOO_CLOSE;
        return new Verdict(answer, inside);
    }
}
