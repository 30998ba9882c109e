package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import quoin.adjustment.PlanCancellation;
import quoin.adjustment.PlanSearch;
import quoin.adjustment.StepAdjuster;
import quoin.adjustment.StepPlan;
import quoin.adjustment.StepProblem;
import quoin.car.Corner;

/**
 * The best whole steps for given errors, tolerances and sensitivities. An adjuster is named by what it is and its corner
 * ({@code perchLF}); ranges are given per corner, or per adjuster where a corner has two.
 */
final class AdjustmentPlanCalculation implements Calculation {
    @Override
    public String name() {
        return "adjustment-plan";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        List<String> adjusters = in.texts("adjusters");
        List<Corner> corners = new ArrayList<>();
        for (int j = 0; j < adjusters.size(); j++) {
            corners.add(cornerOf(adjusters.get(j), in.path("adjusters") + "[" + j + "]"));
        }
        List<String> rows = in.texts("sensitivityRows");
        double[] targets = perReading(in.object("targets"), rows, false);
        double[] tolerances = perReading(in.object("tolerances"), rows, true);
        double[] errors = in.numbers("errorBefore", rows.size());
        double[][] matrix = in.matrix("sensitivityMatrix_per_turn", rows.size(), adjusters.size());
        List<StepAdjuster> steps = steps(in, adjusters, corners);
        StepProblem problem = new StepProblem(errors, tolerances, matrix, steps, in.notNegative("cornerPenalty"),
                in.notNegative("turnPenalty_per_turn"));
        return () -> result(PlanSearch.best(problem, PlanCancellation.NEVER), rows, targets, adjusters, corners);
    }

    private static Corner cornerOf(String adjuster, String path) {
        for (Corner corner : Corner.values()) {
            if (adjuster.endsWith(corner.name())) {
                return corner;
            }
        }
        throw new RefusedException(path, "must end with its corner, LF, RF, LR or RR: " + adjuster);
    }

    private static double[] perReading(Fields in, List<String> rows, boolean positive) {
        return rows.stream().mapToDouble(row -> positive ? in.positive(row) : in.number(row)).toArray();
    }

    private static List<StepAdjuster> steps(Fields in, List<String> adjusters, List<Corner> corners) {
        double quantum = in.positive("quantum_turns");
        Fields least = in.object("minTurns");
        Fields most = in.object("maxTurns");
        for (Corner corner : Corner.values()) {
            least.allow(corner.name());
            most.allow(corner.name());
        }
        List<StepAdjuster> steps = new ArrayList<>();
        for (int j = 0; j < adjusters.size(); j++) {
            String key = least.has(adjusters.get(j)) || most.has(adjusters.get(j)) ? adjusters.get(j)
                    : corners.get(j).name();
            double min = least.number(key);
            double max = most.number(key);
            if (Math.ceil(min / quantum - 1e-9) > Math.floor(max / quantum + 1e-9)) {
                throw new RefusedException(least.path(key), "no whole step lies between it and " + most.path(key));
            }
            steps.add(stepping(in, adjusters.get(j), corners.get(j), quantum, min, max));
        }
        return steps;
    }

    private static StepAdjuster stepping(Fields in, String id, Corner corner, double quantum, double min, double max) {
        try {
            return StepAdjuster.stepping(id, corner.name(), quantum, min, max);
        } catch (IllegalArgumentException e) {
            throw new RefusedException(in.path("quantum_turns"), e.getMessage());
        }
    }

    private static ObjectNode result(StepPlan plan, List<String> rows, double[] targets, List<String> adjusters,
            List<Corner> corners) {
        boolean onePerCorner = corners.stream().distinct().count() == corners.size();
        ObjectNode turns = Results.object();
        ObjectNode perAdjuster = Results.object();
        for (int j = 0; j < adjusters.size(); j++) {
            turns.put(onePerCorner ? corners.get(j).name() : adjusters.get(j), plan.turns()[j]);
            perAdjuster.put(adjusters.get(j), plan.turns()[j]);
        }
        ObjectNode predicted = Results.object();
        for (int i = 0; i < rows.size(); i++) {
            predicted.put(rows.get(i), targets[i] + plan.predictedErrors()[i]);
        }
        ObjectNode node = Results.object();
        node.set("bestTurns", turns);
        node.set("bestTurnsPerAdjuster", perAdjuster);
        node.put("bestObjective", plan.objective());
        node.set("predictedByLinearModel", predicted);
        return node;
    }
}
