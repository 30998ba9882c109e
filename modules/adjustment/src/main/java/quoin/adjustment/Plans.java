package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;

/** The plans offered to the user: the best for each number of visits, with the first of them chosen and explained. */
public final class Plans {
    private static final double AS_LIKELY = 0.05;
    private static final double UNLIKELY = 0.05;

    private Plans() {
    }

    /** As {@link #offer(StepProblem, PlanUncertainty, PlanPreferences, PlanCancellation)}, in the usual way, to the end. */
    public static PlanOptions offer(StepProblem problem, PlanUncertainty uncertainty) {
        return offer(problem, uncertainty, PlanPreferences.USUAL, PlanCancellation.NEVER);
    }

    /**
     * Searches and chooses. The first plan is, by the first rule that applies:
     * <ol>
     * <li>the fewest visits (none included) whose probability of ending inside tolerance is sure enough;
     * <li>where the best probability is 5 % or more: the fewest visits within 5 points of it;
     * <li>the plan with the lowest objective.
     * </ol>
     * Each plan has the lowest objective for its number of visits, not the highest probability. The plan with the lowest
     * objective of all is always on offer, also when it needs more visits than preferred.
     */
    public static PlanOptions offer(StepProblem problem, PlanUncertainty uncertainty, PlanPreferences preferences,
            PlanCancellation cancellation) {
        List<StepPlan> plans = new ArrayList<>(
                PlanSearch.bestPerVisitCount(problem, preferences.mostVisits(), cancellation));
        StepPlan best = PlanSearch.best(problem, cancellation);
        if (plans.stream().noneMatch(plan -> plan.visits().size() == best.visits().size())) {
            plans.add(best);
        }
        if (plans.isEmpty()) {
            throw new CancellationException("cancelled before any plan was found");
        }
        List<PlanOption> options = options(problem, plans, uncertainty);
        PlanReason.Kind kind = rule(options, preferences);
        int first = first(options, kind, preferences);
        return new PlanOptions(options, first, reason(options, first, kind, preferences), PlanReach.of(problem),
                PlanConflict.of(problem));
    }

    private static List<PlanOption> options(StepProblem problem, List<StepPlan> plans, PlanUncertainty uncertainty) {
        List<PlanOption> options = new ArrayList<>();
        double leastMisfit = Double.POSITIVE_INFINITY;
        for (StepPlan plan : plans) {
            PlanProbability inside = PlanProbability.inside(plan.predictedErrors(),
                    uncertainty.covarianceAfter(plan.turns()), problem.tolerances());
            options.add(new PlanOption(plan, inside, plan.misfit() < leastMisfit));
            leastMisfit = Math.min(leastMisfit, plan.misfit());
        }
        return options;
    }

    private static PlanReason.Kind rule(List<PlanOption> options, PlanPreferences preferences) {
        double most = mostLikely(options);
        if (most >= preferences.sureEnough()) {
            PlanOption fewest = options.get(first(options, PlanReason.Kind.FEWEST_VISITS, preferences));
            return fewest.visits() == 0 ? PlanReason.Kind.NOTHING_TO_TURN : PlanReason.Kind.FEWEST_VISITS;
        }
        return most >= UNLIKELY ? PlanReason.Kind.MOST_LIKELY : PlanReason.Kind.SMALLEST_ERRORS;
    }

    private static int first(List<PlanOption> options, PlanReason.Kind kind, PlanPreferences preferences) {
        double wanted = switch (kind) {
            case NOTHING_TO_TURN, FEWEST_VISITS -> preferences.sureEnough();
            case MOST_LIKELY -> mostLikely(options) - AS_LIKELY;
            case SMALLEST_ERRORS -> Double.POSITIVE_INFINITY;
        };
        int lowest = 0;
        for (int k = 0; k < options.size(); k++) {
            if (options.get(k).inside().value() >= wanted) {
                return k;
            }
            if (options.get(k).plan().objective() < options.get(lowest).plan().objective()) {
                lowest = k;
            }
        }
        return lowest;
    }

    private static double mostLikely(List<PlanOption> options) {
        return mostLikely(options, option -> true).orElse(0);
    }

    private static OptionalDouble mostLikely(List<PlanOption> options, Predicate<PlanOption> which) {
        return options.stream().filter(which).mapToDouble(option -> option.inside().value()).max();
    }

    private static PlanReason reason(List<PlanOption> options, int first, PlanReason.Kind kind,
            PlanPreferences preferences) {
        PlanOption chosen = options.get(first);
        return new PlanReason(kind, chosen.visits(), chosen.inside().value(), preferences.sureEnough(),
                mostLikely(options, option -> option.visits() < chosen.visits()),
                mostLikely(options, option -> option.visits() > chosen.visits()));
    }
}
