package quoin.adjustment;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** Tries every combination of allowed positions: slow, plain, and independent of the search. */
final class PlanEnumeration {
    private final StepProblem problem;
    private final double[] bestVisiting;
    private double best = Double.POSITIVE_INFINITY;

    private PlanEnumeration(StepProblem problem) {
        this.problem = problem;
        bestVisiting = new double[problem.adjusters().size() + 1];
        Arrays.fill(bestVisiting, Double.POSITIVE_INFINITY);
    }

    static PlanEnumeration of(StepProblem problem) {
        PlanEnumeration all = new PlanEnumeration(problem);
        all.enumerate(0, new double[problem.adjusters().size()]);
        return all;
    }

    double best() {
        return best;
    }

    double bestVisiting(int visits) {
        return visits < bestVisiting.length ? bestVisiting[visits] : Double.POSITIVE_INFINITY;
    }

    double objective(double[] turns) {
        return objective(problem, turns);
    }

    static double objective(StepProblem problem, double[] turns) {
        double sum = 0;
        for (int i = 0; i < problem.errors().length; i++) {
            double predicted = problem.errors()[i];
            for (int j = 0; j < turns.length; j++) {
                predicted += problem.sensitivityPerTurn()[i][j] * turns[j];
            }
            sum += Math.pow(predicted / problem.tolerances()[i], 2);
        }
        for (int j = 0; j < turns.length; j++) {
            sum += problem.pricePerTurn() * problem.adjusters().get(j).effort() * Math.abs(turns[j]);
        }
        return sum + problem.pricePerVisit() * visits(problem, turns);
    }

    static int visits(StepProblem problem, double[] turns) {
        Set<String> visits = new HashSet<>();
        for (int j = 0; j < turns.length; j++) {
            if (turns[j] != 0) {
                visits.add(problem.adjusters().get(j).visit());
            }
        }
        return visits.size();
    }

    private void enumerate(int adjuster, double[] turns) {
        if (adjuster == turns.length) {
            double objective = objective(turns);
            best = Math.min(best, objective);
            int visits = visits(problem, turns);
            bestVisiting[visits] = Math.min(bestVisiting[visits], objective);
            return;
        }
        for (double allowed : problem.adjusters().get(adjuster).allowedTurns()) {
            turns[adjuster] = allowed;
            enumerate(adjuster + 1, turns);
        }
        turns[adjuster] = 0;
    }
}
