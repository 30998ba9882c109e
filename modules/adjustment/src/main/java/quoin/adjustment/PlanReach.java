package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import quoin.adjustment.search.StepReach;

/**
 * How near to its target one reading can be brought, the other readings left aside.
 *
 * @param reading index of the reading in the problem
 * @param kind whether it can come inside tolerance, and if not, why
 * @param lowestError lowest error (reading - target) over all positions within the ranges, in the reading's unit
 * @param highestError highest error likewise
 * @param nearestError where in reach: the error nearest to zero in the continuous range; otherwise the nearest that can
 *        be had
 * @param adjustersAtEnd for {@link Kind#RANGE_ENDS}: the adjusters whose range ends on the way to the target, largest
 *        effect first; otherwise empty
 */
public record PlanReach(int reading, Kind kind, double lowestError, double highestError, double nearestError,
        List<String> adjustersAtEnd) {

    /** What stands in the way. */
    public enum Kind {
        /** It can be brought inside tolerance. */
        IN_REACH,
        /** All adjusters together move it by less than a tenth of its tolerance over their whole ranges. */
        NOTHING_MOVES_IT,
        /** The ranges end before it is inside tolerance. */
        RANGE_ENDS,
        /** The ranges suffice, but no combination of whole steps lands inside tolerance. */
        STEPS_TOO_COARSE
    }

    private static final double HARDLY_MOVED = 0.1;
    private static final double WORTH_NAMING = 0.05;

    /** Copies. */
    public PlanReach {
        adjustersAtEnd = List.copyOf(adjustersAtEnd);
    }

    /** The reach of every reading, in the order of the problem. */
    public static List<PlanReach> of(StepProblem problem) {
        double[] errors = problem.errors();
        double[] tolerances = problem.tolerances();
        double[][] sensitivity = problem.sensitivityPerTurn();
        List<PlanReach> all = new ArrayList<>();
        for (int i = 0; i < errors.length; i++) {
            all.add(of(problem.adjusters(), i, errors[i], tolerances[i], sensitivity[i]));
        }
        return List.copyOf(all);
    }

    private static PlanReach of(List<StepAdjuster> adjusters, int reading, double error, double tolerance,
            double[] sensitivity) {
        double low = error;
        double high = error;
        for (int j = 0; j < sensitivity.length; j++) {
            double down = sensitivity[j] * adjusters.get(j).minTurns();
            double up = sensitivity[j] * adjusters.get(j).maxTurns();
            low += Math.min(down, up);
            high += Math.max(down, up);
        }
        double nearest = low > 0 ? low : Math.min(high, 0);
        if (Math.abs(nearest) > tolerance) {
            boolean unmoved = high - low < HARDLY_MOVED * tolerance;
            return new PlanReach(reading, unmoved ? Kind.NOTHING_MOVES_IT : Kind.RANGE_ENDS, low, high, nearest,
                    unmoved ? List.of() : movers(adjusters, sensitivity, high - low));
        }
        double[][] contributions = new double[sensitivity.length][];
        for (int j = 0; j < sensitivity.length; j++) {
            double perTurn = sensitivity[j];
            contributions[j] = java.util.Arrays.stream(adjusters.get(j).allowedTurns()).map(t -> perTurn * t).toArray();
        }
        StepReach.Nearest inSteps = StepReach.nearest(error, contributions, tolerance);
        if (inSteps.proven() && Math.abs(inSteps.value()) > tolerance) {
            return new PlanReach(reading, Kind.STEPS_TOO_COARSE, low, high, inSteps.value(), List.of());
        }
        return new PlanReach(reading, Kind.IN_REACH, low, high, nearest, List.of());
    }

    private static List<String> movers(List<StepAdjuster> adjusters, double[] sensitivity, double whole) {
        record Mover(String id, double span) {
        }
        List<Mover> movers = new ArrayList<>();
        for (int j = 0; j < sensitivity.length; j++) {
            StepAdjuster adjuster = adjusters.get(j);
            double span = Math.abs(sensitivity[j]) * (adjuster.maxTurns() - adjuster.minTurns());
            if (span >= WORTH_NAMING * whole) {
                movers.add(new Mover(adjuster.id(), span));
            }
        }
        movers.sort((one, two) -> Double.compare(two.span(), one.span()));
        return movers.stream().map(Mover::id).toList();
    }
}
