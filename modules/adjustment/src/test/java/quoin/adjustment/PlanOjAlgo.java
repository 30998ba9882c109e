package quoin.adjustment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The same problem put to ojAlgo 57.1.0 as integer quadratic programmes, one for each set of visits: uniform steps that
 * include zero, no price of turning. (Put as one programme with binary variables for the visits, ojAlgo declares OPTIMAL
 * positions of objective 10.82 to 12.36 on the contract example, depending on its settings, where 10.737 is attained; the
 * programmes without binaries it solves.)
 */
final class PlanOjAlgo {
    private PlanOjAlgo() {
    }

    /** The best positions over all sets of visits. */
    static double[] best(StepProblem problem, double stepTurns) {
        List<String> visits = new ArrayList<>(
                new LinkedHashSet<>(problem.adjusters().stream().map(StepAdjuster::visit).toList()));
        double[] best = null;
        for (int mask = 0; mask < 1 << visits.size(); mask++) {
            boolean[] free = new boolean[problem.adjusters().size()];
            for (int j = 0; j < free.length; j++) {
                free[j] = (mask >> visits.indexOf(problem.adjusters().get(j).visit()) & 1) != 0;
            }
            double[] turns = turns(problem, stepTurns, free);
            if (best == null
                    || PlanEnumeration.objective(problem, turns) < PlanEnumeration.objective(problem, best)) {
                best = turns;
            }
        }
        return best;
    }

    /** Least misfit with the given adjusters free and the others at rest, prices left aside. */
    static double[] turns(StepProblem problem, double stepTurns, boolean[] free) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        int n = problem.adjusters().size();
        Variable[] steps = new Variable[n];
        for (int j = 0; j < n; j++) {
            StepAdjuster adjuster = problem.adjusters().get(j);
            steps[j] = model.newVariable("steps" + j).integer()
                    .lower(free[j] ? Math.round(adjuster.minTurns() / stepTurns) : 0)
                    .upper(free[j] ? Math.round(adjuster.maxTurns() / stepTurns) : 0);
        }
        addMisfit(problem, stepTurns, model, steps);
        Optimisation.Result result = model.minimise();
        if (!result.getState().isOptimal()) {
            throw new IllegalStateException("ojAlgo ends with " + result.getState());
        }
        double[] turns = new double[n];
        Arrays.setAll(turns, j -> Math.rint(result.doubleValue(model.indexOf(steps[j]))) * stepTurns);
        return turns;
    }

    private static void addMisfit(StepProblem problem, double stepTurns, ExpressionsBasedModel model, Variable[] steps) {
        double[][] sensitivity = problem.sensitivityPerTurn();
        double[] errors = problem.errors();
        double[] tolerances = problem.tolerances();
        Expression misfit = model.newExpression("misfit").weight(1);
        for (int a = 0; a < steps.length; a++) {
            double linear = 0;
            for (int i = 0; i < errors.length; i++) {
                linear += 2 * sensitivity[i][a] * stepTurns * errors[i] / (tolerances[i] * tolerances[i]);
            }
            misfit.set(steps[a], linear);
            for (int b = 0; b < steps.length; b++) {
                double product = 0;
                for (int i = 0; i < errors.length; i++) {
                    product += sensitivity[i][a] * sensitivity[i][b] * Math.pow(stepTurns / tolerances[i], 2);
                }
                misfit.set(steps[a], steps[b], product);
            }
        }
    }
}
