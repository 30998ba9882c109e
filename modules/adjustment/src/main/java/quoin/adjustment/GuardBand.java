package quoin.adjustment;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The decision rule of one goal (JCGM 106:2012, clauses 7 and 8; ISO 14253-1): a value is called inside only when it
 * lies inside the tolerance by more than a guard band, outside only when it lies outside by more than the guard band.
 * The guard band is the one-sided quantile of the asked probability times the standard uncertainty: 1.645 u for 95 %.
 *
 * @param probability probability asked for a claim, between 0.5 and 1; ISO 14253-1:2017 takes 0.95 unless agreed
 *     otherwise
 */
public record GuardBand(double probability) {

    /** The rule of ISO 14253-1:2017: 95 %. */
    public static final GuardBand USUAL = new GuardBand(0.95);

    private static final NormalDistribution NORMAL = new NormalDistribution();

    public GuardBand {
        if (!(probability > 0.5 && probability < 1)) {
            throw new IllegalArgumentException("probability must lie between 0.5 and 1; got " + probability);
        }
    }

    /** Width of the guard band for a standard uncertainty, same unit. */
    public double width(double standardUncertainty) {
        return NORMAL.inverseCumulativeProbability(probability) * standardUncertainty;
    }

    /**
     * The verdict on one value by the guard band.
     *
     * @param value best estimate
     * @param standardUncertainty its standard uncertainty, at least 0
     */
    public Verdict.Answer verdict(double value, double standardUncertainty, double target, double tolerance) {
        // inside with that probability, both tails counted, is inside both limits by more than the guard band
        if (conformance(value, standardUncertainty, target - tolerance, target + tolerance) >= probability) {
            return Verdict.Answer.INSIDE;
        }
        return Math.abs(value - target) > tolerance + width(standardUncertainty) ? Verdict.Answer.OUTSIDE : Verdict.Answer.TOO_CLOSE;
    }

    /** The verdict on a probability of being inside. */
    public Verdict.Answer verdict(double probabilityInside) {
        if (probabilityInside >= probability) {
            return Verdict.Answer.INSIDE;
        }
        return probabilityInside <= 1 - probability ? Verdict.Answer.OUTSIDE : Verdict.Answer.TOO_CLOSE;
    }

    /**
     * Probability that a value with Gaussian uncertainty lies within limits (JCGM 106:2012, 7.4).
     *
     * @param lower lower limit; negative infinity for none
     * @param upper upper limit; positive infinity for none
     */
    public static double conformance(double value, double standardUncertainty, double lower, double upper) {
        if (standardUncertainty == 0) {
            return value >= lower && value <= upper ? 1 : 0;
        }
        return NORMAL.cumulativeProbability((upper - value) / standardUncertainty)
                - NORMAL.cumulativeProbability((lower - value) / standardUncertainty);
    }
}
