package quoin.adjustment;

import java.util.Arrays;
import java.util.Objects;
import java.util.TreeSet;

/**
 * An adjuster that moves in whole steps, as the planner sees it: the positions it may be brought to, counted from where it
 * stands. The unit is the adjuster's own (turns of a perch, mm of shim) and the sensitivities of a {@link StepProblem} are
 * per that unit; the javadoc says "turns" for short.
 *
 * @param id name of the adjuster, unique in a problem, e.g. {@code "perchLF"}
 * @param visit what has to be walked to, usually the corner, e.g. {@code "LF"}; adjusters with the same visit share its price
 * @param allowedTurns allowed positions from where it stands, ascending, no doubles, at least one; 0 is "leave it"
 * @param effort how much one unit counts in the price of turning, 1 for a turn; not negative
 */
public record StepAdjuster(String id, String visit, double[] allowedTurns, double effort) {
    private static final double ROUNDING = 1e-9;
    private static final int MOST_POSITIONS = 100_000;

    /** Checks and copies. */
    public StepAdjuster {
        Objects.requireNonNull(id, "id: name the adjuster");
        Objects.requireNonNull(visit, "visit: name the corner to be visited");
        if (allowedTurns.length == 0) {
            throw new IllegalArgumentException(id + ".allowedTurns: empty; give 0 to lock the adjuster");
        }
        allowedTurns = allowedTurns.clone();
        for (int i = 0; i < allowedTurns.length; i++) {
            if (!Double.isFinite(allowedTurns[i]) || i > 0 && allowedTurns[i] <= allowedTurns[i - 1]) {
                throw new IllegalArgumentException(id + ".allowedTurns: must be finite and ascending without doubles");
            }
        }
        if (!(effort >= 0 && effort < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(id + ".effort: must be finite and not negative");
        }
    }

    /**
     * Whole multiples of a step within a range, both ends included.
     *
     * @param stepTurns the step (1/8 for eight notches a turn), positive
     * @param minTurns furthest down from where it stands (thread left), at most {@code maxTurns}
     * @param maxTurns furthest up from where it stands
     */
    public static StepAdjuster stepping(String id, String visit, double stepTurns, double minTurns, double maxTurns) {
        if (!(stepTurns > 0) || !Double.isFinite(stepTurns)) {
            throw new IllegalArgumentException(id + ".stepTurns: must be positive");
        }
        if (!Double.isFinite(minTurns) || !Double.isFinite(maxTurns) || minTurns > maxTurns) {
            throw new IllegalArgumentException(id + ".minTurns: must be finite and not above maxTurns");
        }
        double first = Math.ceil(minTurns / stepTurns - ROUNDING);
        double last = Math.floor(maxTurns / stepTurns + ROUNDING);
        if (last < first) {
            throw new IllegalArgumentException(id + ".maxTurns: no whole step lies between minTurns and maxTurns");
        }
        if (last - first >= MOST_POSITIONS) {
            throw new IllegalArgumentException(id + ".stepTurns: more than " + MOST_POSITIONS
                    + " steps between minTurns and maxTurns; narrow the range");
        }
        double[] allowed = new double[(int) (last - first) + 1];
        for (int i = 0; i < allowed.length; i++) {
            allowed[i] = (first + i) * stepTurns + 0.0;
        }
        return new StepAdjuster(id, visit, allowed, 1);
    }

    /** Positions that the user's own stock makes possible, in any order, doubles allowed; 0 (leave it) is added. */
    public static StepAdjuster fromStock(String id, String visit, double... offsets) {
        TreeSet<Double> positions = new TreeSet<>();
        positions.add(0.0);
        for (double offset : offsets) {
            positions.add(offset + 0.0);
        }
        return new StepAdjuster(id, visit, positions.stream().mapToDouble(Double::doubleValue).toArray(), 1);
    }

    /** An adjuster the user will not touch. */
    public static StepAdjuster locked(String id, String visit) {
        return new StepAdjuster(id, visit, new double[] {0}, 1);
    }

    /** The same adjuster with another effort per unit. */
    public StepAdjuster withEffort(double effortPerUnit) {
        return new StepAdjuster(id, visit, allowedTurns, effortPerUnit);
    }

    @Override
    public double[] allowedTurns() {
        return allowedTurns.clone();
    }

    /** Lowest allowed position. */
    public double minTurns() {
        return allowedTurns[0];
    }

    /** Highest allowed position. */
    public double maxTurns() {
        return allowedTurns[allowedTurns.length - 1];
    }

    /** True when it has nowhere to go but where it stands. */
    public boolean isLocked() {
        return allowedTurns.length == 1 && allowedTurns[0] == 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StepAdjuster that && id.equals(that.id) && visit.equals(that.visit)
                && Arrays.equals(allowedTurns, that.allowedTurns) && effort == that.effort;
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, visit, Arrays.hashCode(allowedTurns), effort);
    }

    @Override
    public String toString() {
        return id + " at " + visit + ", " + allowedTurns.length + " positions from " + minTurns() + " to " + maxTurns();
    }
}
