package quoin.adjustment;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What the planner solves. With t the turns, error = reading - target, and
 * {@code predicted_i = errors_i + sum_j sensitivityPerTurn_ij * t_j}, it minimises
 * <pre>sum_i (predicted_i / tolerances_i)^2 + pricePerVisit * visits + pricePerTurn * sum_j effort_j * |t_j|</pre>
 * where visits counts the different {@link StepAdjuster#visit visits} with a turn other than zero.
 * Example of the sign: a height 2 mm above target has error +2; an adjuster with +1 mm per turn removes it with t = -2.
 *
 * @param errors per reading, error before in the reading's unit
 * @param tolerances per reading, half-width of the band in the reading's unit, positive; 1 is the price of a reading just
 *        at its tolerance
 * @param sensitivityPerTurn {@code [reading][adjuster]}, change of the reading per turn
 * @param adjusters the adjusters, in the order of the columns
 * @param pricePerVisit price of a visit, not negative, no unit
 * @param pricePerTurn price of one turn, not negative, no unit. A small price keeps plans short; with none at all and more
 *        adjusters than readings the search may take long.
 */
public record StepProblem(double[] errors, double[] tolerances, double[][] sensitivityPerTurn,
        List<StepAdjuster> adjusters, double pricePerVisit, double pricePerTurn) {

    /** Checks and copies. */
    public StepProblem {
        adjusters = List.copyOf(adjusters);
        errors = finite(errors, "errors");
        tolerances = finite(tolerances, "tolerances");
        requireSize(tolerances.length, errors.length, "tolerances", "reading");
        requireSize(sensitivityPerTurn.length, errors.length, "sensitivityPerTurn", "reading");
        double[][] copy = new double[sensitivityPerTurn.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = finite(sensitivityPerTurn[i], "sensitivityPerTurn[" + i + "]");
            requireSize(copy[i].length, adjusters.size(), "sensitivityPerTurn[" + i + "]", "adjuster");
            if (tolerances[i] <= 0) {
                throw new IllegalArgumentException("tolerances[" + i + "]: must be positive");
            }
        }
        sensitivityPerTurn = copy;
        Set<String> ids = new HashSet<>();
        for (StepAdjuster adjuster : adjusters) {
            if (!ids.add(adjuster.id())) {
                throw new IllegalArgumentException("adjusters: two are named " + adjuster.id());
            }
        }
        requirePrice(pricePerVisit, "pricePerVisit");
        requirePrice(pricePerTurn, "pricePerTurn");
    }

    private static double[] finite(double[] values, String field) {
        Objects.requireNonNull(values, field + ": missing");
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(field + "[" + i + "]: must be a finite number");
            }
        }
        return values.clone();
    }

    private static void requireSize(int size, int wanted, String field, String per) {
        if (size != wanted) {
            throw new IllegalArgumentException(field + ": " + size + " entries; give one per " + per + ", " + wanted);
        }
    }

    private static void requirePrice(double price, String field) {
        if (!(price >= 0 && price < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(field + ": must be finite and not negative");
        }
    }

    @Override
    public double[] errors() {
        return errors.clone();
    }

    @Override
    public double[] tolerances() {
        return tolerances.clone();
    }

    @Override
    public double[][] sensitivityPerTurn() {
        return Arrays.stream(sensitivityPerTurn).map(double[]::clone).toArray(double[][]::new);
    }

    /** Errors after the given turns, in the readings' units. */
    public double[] predictedErrors(double[] turns) {
        double[] predicted = errors.clone();
        for (int i = 0; i < predicted.length; i++) {
            for (int j = 0; j < turns.length; j++) {
                predicted[i] += sensitivityPerTurn[i][j] * turns[j];
            }
        }
        return predicted;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StepProblem that && Arrays.equals(errors, that.errors)
                && Arrays.equals(tolerances, that.tolerances)
                && Arrays.deepEquals(sensitivityPerTurn, that.sensitivityPerTurn)
                && adjusters.equals(that.adjusters) && pricePerVisit == that.pricePerVisit
                && pricePerTurn == that.pricePerTurn;
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(errors), Arrays.hashCode(tolerances),
                Arrays.deepHashCode(sensitivityPerTurn), adjusters, pricePerVisit, pricePerTurn);
    }

    @Override
    public String toString() {
        return errors.length + " readings, " + adjusters;
    }
}
