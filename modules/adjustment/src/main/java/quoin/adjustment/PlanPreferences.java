package quoin.adjustment;

/**
 * What the user wants of a plan.
 *
 * @param mostVisits plans with up to this many visits are offered
 * @param sureEnough the probability of ending inside tolerance at which fewer visits count more than more certainty;
 *        between 0 and 1
 */
public record PlanPreferences(int mostVisits, double sureEnough) {
    /** Up to four visits; nine in ten is sure enough (our own choice, no source). */
    public static final PlanPreferences USUAL = new PlanPreferences(4, 0.9);

    /** Checks. */
    public PlanPreferences {
        if (mostVisits < 0) {
            throw new IllegalArgumentException("mostVisits: must not be negative");
        }
        if (!(sureEnough > 0 && sureEnough <= 1)) {
            throw new IllegalArgumentException("sureEnough: must be above 0 and at most 1");
        }
    }
}
