package quoin.adjustment;

import java.util.List;
import java.util.Optional;

/**
 * What the planner offers.
 *
 * @param options the best plan for each number of visits, fewest first; at least one
 * @param first index of the plan recommended
 * @param reason why that one is first
 * @param reach per reading, how near to its target it can be brought by itself
 * @param conflict present when not all readings can be inside at once
 */
public record PlanOptions(List<PlanOption> options, int first, PlanReason reason, List<PlanReach> reach,
        Optional<PlanConflict> conflict) {

    /** Copies. */
    public PlanOptions {
        options = List.copyOf(options);
        reach = List.copyOf(reach);
    }

    /** The plan recommended. */
    public PlanOption recommended() {
        return options.get(first);
    }

    /** The readings that cannot be brought inside tolerance, with the reason. */
    public List<PlanReach> outOfReach() {
        return reach.stream().filter(r -> r.kind() != PlanReach.Kind.IN_REACH).toList();
    }
}
