package quoin.adjustment;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;

/**
 * A plan: whole steps of every adjuster and what they are predicted to do.
 *
 * @param turns one per adjuster of the problem, each an allowed position
 * @param objective misfit + price of visits + price of turning, see {@link StepProblem}
 * @param misfit sum over the readings of (predicted error / tolerance)^2
 * @param predictedErrors per reading, error (reading - target) after the turns, in the reading's unit
 * @param visits the visits made, in the order of the adjusters
 * @param nodes values tried and relaxations solved by the search, a measure of the work
 * @param proven true when no allowed plan (with the asked number of visits) is better; false only for the best so far of a
 *        cancelled search
 */
public record StepPlan(double[] turns, double objective, double misfit, double[] predictedErrors, Set<String> visits,
        long nodes, boolean proven) {

    /** Copies. */
    public StepPlan {
        turns = turns.clone();
        predictedErrors = predictedErrors.clone();
        visits = Collections.unmodifiableSet(new LinkedHashSet<>(visits));
    }

    @Override
    public double[] turns() {
        return turns.clone();
    }

    @Override
    public double[] predictedErrors() {
        return predictedErrors.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StepPlan that && Arrays.equals(turns, that.turns) && objective == that.objective
                && misfit == that.misfit && Arrays.equals(predictedErrors, that.predictedErrors)
                && visits.equals(that.visits) && nodes == that.nodes && proven == that.proven;
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(turns), objective, misfit, Arrays.hashCode(predictedErrors), visits, nodes,
                proven);
    }

    @Override
    public String toString() {
        return "turns " + Arrays.toString(turns) + ", objective " + objective + ", visits " + visits;
    }
}
