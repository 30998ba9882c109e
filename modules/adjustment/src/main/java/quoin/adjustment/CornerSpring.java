package quoin.adjustment;

/**
 * One corner of the car as learning sees it: where the wheel stands, where the height is read, and what is believed
 * of its rates.
 *
 * @param xMm wheel contact, mm forward of any fixed origin (ISO 8855 x)
 * @param yMm wheel contact, mm to the left of the car's centre line (ISO 8855 y)
 * @param heightXMm height point, mm forward of the same origin
 * @param heightYMm height point, mm to the left
 * @param wheelRateNPerMm believed wheel rate (spring rate times motion ratio squared), N/mm, tyre not included
 * @param tyreRateNPerMm tyre rate in series, N/mm; {@link Double#POSITIVE_INFINITY} for stands in place of tyres
 * @param rateRelativeSd relative standard deviation of the believed wheel rate: about 0.12 for a typed spring rate,
 *     0.5 when nothing was typed
 */
public record CornerSpring(double xMm, double yMm, double heightXMm, double heightYMm, double wheelRateNPerMm,
        double tyreRateNPerMm, double rateRelativeSd) {

    /** Relative standard deviation of a wheel rate worked out from a typed spring rate (common practice, no source). */
    public static final double TYPED_RATE_SD = 0.12;
    /** Relative standard deviation of a wheel rate of which nothing is known but the kind of car. */
    public static final double UNKNOWN_RATE_SD = 0.5;

    public CornerSpring {
        if (!(wheelRateNPerMm > 0) || Double.isInfinite(wheelRateNPerMm)) {
            throw new IllegalArgumentException("wheelRateNPerMm must be a positive number; got " + wheelRateNPerMm
                    + "; give a typical rate with a wide rateRelativeSd when it is not known");
        }
        if (!(tyreRateNPerMm > 0)) {
            throw new IllegalArgumentException("tyreRateNPerMm must be positive; got " + tyreRateNPerMm);
        }
        if (!(rateRelativeSd > 0) || rateRelativeSd > 2) {
            throw new IllegalArgumentException("rateRelativeSd must lie in (0, 2]; got " + rateRelativeSd);
        }
    }

    /** A corner whose height is read at the wheel, with a typed spring rate. */
    public static CornerSpring typed(double xMm, double yMm, double wheelRateNPerMm, double tyreRateNPerMm) {
        return new CornerSpring(xMm, yMm, xMm, yMm, wheelRateNPerMm, tyreRateNPerMm, TYPED_RATE_SD);
    }

    /** The same corner with another confidence in its rate. */
    public CornerSpring withRateRelativeSd(double relativeSd) {
        return new CornerSpring(xMm, yMm, heightXMm, heightYMm, wheelRateNPerMm, tyreRateNPerMm, relativeSd);
    }
}
