package quoin.adjustment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import quoin.adjustment.search.SearchSpace;
import quoin.adjustment.search.VisitSearch;

/**
 * The proven optimum of a {@link StepProblem}: every set of visits whose relaxation does not rule it out is searched by
 * branch and bound over the allowed positions themselves; nothing is rounded.
 *
 * <p>Where objectives agree to the rounding error (2e-14 of the square of the longest residual the ranges permit), the plan
 * with fewer visits comes first, then with fewer turns altogether, then, adjuster by adjuster, the smaller turn, then the
 * positive one. The same problem therefore always has the same plan.
 */
public final class PlanSearch {
    private PlanSearch() {
    }

    /** The best plan over any number of visits. */
    public static StepPlan best(StepProblem problem) {
        return best(problem, PlanCancellation.NEVER);
    }

    /** The best plan over any number of visits; {@link StepPlan#proven} tells whether the search came to its end. */
    public static StepPlan best(StepProblem problem, PlanCancellation cancellation) {
        SearchSpace space = space(problem);
        return new VisitSearch(space, cancellation::requested).best().map(found -> plan(problem, space, found))
                .orElseThrow(() -> new CancellationException("cancelled before any plan was found"));
    }

    /**
     * The best plan with exactly k visits for k = 0, 1, ... {@code mostVisits}, as far as such plans exist (fewer than k
     * visits with an adjuster free to move, or adjusters that cannot stay where they stand, make a count impossible).
     */
    public static List<StepPlan> bestPerVisitCount(StepProblem problem, int mostVisits) {
        return bestPerVisitCount(problem, mostVisits, PlanCancellation.NEVER);
    }

    /** As {@link #bestPerVisitCount(StepProblem, int)}; a cancelled search leaves out the counts it did not reach. */
    public static List<StepPlan> bestPerVisitCount(StepProblem problem, int mostVisits,
            PlanCancellation cancellation) {
        SearchSpace space = space(problem);
        VisitSearch search = new VisitSearch(space, cancellation::requested);
        List<StepPlan> plans = new ArrayList<>();
        for (int visits = 0; visits <= Math.min(mostVisits, space.groups()); visits++) {
            if (visits > 0 && cancellation.requested()) {
                break;
            }
            Optional<VisitSearch.Found> found = search.bestVisiting(visits);
            found.ifPresent(f -> plans.add(plan(problem, space, f)));
        }
        return List.copyOf(plans);
    }

    private static StepPlan plan(StepProblem problem, SearchSpace space, VisitSearch.Found found) {
        double[] turns = found.turns();
        double[] predicted = problem.predictedErrors(turns);
        double[] tolerances = problem.tolerances();
        double misfit = 0;
        for (int i = 0; i < predicted.length; i++) {
            double share = predicted[i] / tolerances[i];
            misfit += share * share;
        }
        Set<String> visits = new LinkedHashSet<>();
        double turning = 0;
        for (int j = 0; j < turns.length; j++) {
            if (turns[j] != 0) {
                visits.add(problem.adjusters().get(j).visit());
            }
            turning += space.price()[j] * Math.abs(turns[j]);
        }
        double objective = misfit + problem.pricePerVisit() * visits.size() + turning;
        return new StepPlan(turns, objective, misfit, predicted, visits, found.nodes(), found.proven());
    }

    static SearchSpace space(StepProblem problem) {
        double[] error = problem.errors();
        double[] tolerance = problem.tolerances();
        double[][] sensitivity = problem.sensitivityPerTurn();
        int n = problem.adjusters().size();
        double[][] column = new double[n][error.length];
        double[][] position = new double[n][];
        double[] price = new double[n];
        int[] group = new int[n];
        Map<String, Integer> groups = new LinkedHashMap<>();
        for (int j = 0; j < n; j++) {
            StepAdjuster adjuster = problem.adjusters().get(j);
            position[j] = adjuster.allowedTurns();
            price[j] = problem.pricePerTurn() * adjuster.effort();
            group[j] = groups.computeIfAbsent(adjuster.visit(), visit -> groups.size());
            for (int i = 0; i < error.length; i++) {
                column[j][i] = sensitivity[i][j] / tolerance[i];
            }
        }
        for (int i = 0; i < error.length; i++) {
            error[i] /= tolerance[i];
        }
        return new SearchSpace(error, column, position, price, group, groups.size(), problem.pricePerVisit());
    }
}
