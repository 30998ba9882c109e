package quoin.adjustment;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The same problem put to ojAlgo as a mixed integer quadratic programme; uniform steps that include zero only. */
final class PlanOjAlgo {
    private PlanOjAlgo() {
    }

    /** The positions ojAlgo finds, or null when it does not claim an optimum. */
    static double[] turns(StepProblem problem, double stepTurns) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        int n = problem.adjusters().size();
        Variable[] steps = new Variable[n];
        Map<String, Variable> visits = new LinkedHashMap<>();
        for (int j = 0; j < n; j++) {
            StepAdjuster adjuster = problem.adjusters().get(j);
            long low = Math.round(adjuster.minTurns() / stepTurns);
            long high = Math.round(adjuster.maxTurns() / stepTurns);
            steps[j] = model.newVariable("steps" + j).integer().lower(low).upper(high);
            Variable visit = visits.computeIfAbsent(adjuster.visit(),
                    name -> model.newVariable("visit" + name).binary().weight(problem.pricePerVisit()));
            Variable size = model.newVariable("size" + j).lower(0).upper(Math.max(high, -low))
                    .weight(problem.pricePerTurn() * adjuster.effort() * stepTurns);
            model.newExpression("up" + j).set(size, 1).set(steps[j], -1).lower(0);
            model.newExpression("down" + j).set(size, 1).set(steps[j], 1).lower(0);
            model.newExpression("visited" + j).set(size, 1).set(visit, -Math.max(high, -low)).upper(0);
        }
        addMisfit(problem, stepTurns, model, steps);
        Optimisation.Result result = model.minimise();
        if (!result.getState().isOptimal()) {
            return null;
        }
        double[] turns = new double[n];
        for (int j = 0; j < n; j++) {
            BigDecimal value = result.get(model.indexOf(steps[j]));
            turns[j] = Math.rint(value.doubleValue()) * stepTurns;
        }
        return turns;
    }

    private static void addMisfit(StepProblem problem, double stepTurns, ExpressionsBasedModel model, Variable[] steps) {
        double[][] sensitivity = problem.sensitivityPerTurn();
        double[] errors = problem.errors();
        double[] tolerances = problem.tolerances();
        Expression misfit = model.newExpression("misfit").weight(1);
        for (int a = 0; a < steps.length; a++) {
            double linear = 0;
            for (int b = 0; b < steps.length; b++) {
                double product = 0;
                for (int i = 0; i < errors.length; i++) {
                    double one = sensitivity[i][a] * stepTurns / tolerances[i];
                    product += one * sensitivity[i][b] * stepTurns / tolerances[i];
                    linear += b == 0 ? 2 * one * errors[i] / tolerances[i] : 0;
                }
                misfit.set(steps[a], steps[b], product);
            }
            misfit.set(steps[a], linear);
        }
    }
}
