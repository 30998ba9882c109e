package quoin.adjustment;

/**
 * One of the plans offered.
 *
 * @param plan the best plan with its number of visits
 * @param inside probability that every reading ends inside tolerance
 * @param worthTheVisits false when a plan with fewer visits on offer leaves no larger errors
 */
public record PlanOption(StepPlan plan, PlanProbability inside, boolean worthTheVisits) {
    /** Number of visits. */
    public int visits() {
        return plan.visits().size();
    }
}
