package quoin.adjustment;

/** Asked by a running search whether to give up; called often, so it must be quick. */
@FunctionalInterface
public interface PlanCancellation {
    /** Never gives up. */
    PlanCancellation NEVER = () -> false;

    /** True when the search shall stop and hand back the best so far. */
    boolean requested();
}
