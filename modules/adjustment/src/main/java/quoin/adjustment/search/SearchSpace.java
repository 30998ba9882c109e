package quoin.adjustment.search;

/**
 * The planner's problem on plain arrays, tolerances already divided out: minimise
 * {@code |error + sum_j column[j] * t_j|^2 + sum_j price[j] * |t_j| + visitPrice * (groups with a t_j != 0)} over
 * {@code t_j} in {@code position[j]}. Arrays are shared, not copied; nobody writes to them.
 *
 * @param error one entry per row, error before in units of its tolerance
 * @param column {@code [adjuster][row]}, change of the row per unit of the adjuster, in units of the tolerance
 * @param position {@code [adjuster]}, the allowed positions, ascending, at least one
 * @param price {@code [adjuster]}, price per unit of {@code |t_j|}, not negative
 * @param group {@code [adjuster]}, index of the visit the adjuster belongs to
 * @param groups number of visits
 * @param visitPrice price of a visit, not negative
 */
public record SearchSpace(double[] error, double[][] column, double[][] position, double[] price, int[] group,
        int groups, double visitPrice) {

    /** Number of adjusters. */
    public int adjusters() {
        return column.length;
    }

    /** Number of readings. */
    public int rows() {
        return error.length;
    }

    /** Misfit and price of turning (without the price of visits) at the given positions. */
    public double cost(double[] turns) {
        double cost = 0;
        for (int i = 0; i < error.length; i++) {
            double residual = error[i];
            for (int j = 0; j < turns.length; j++) {
                residual += column[j][i] * turns[j];
            }
            cost += residual * residual;
        }
        for (int j = 0; j < turns.length; j++) {
            cost += price[j] * Math.abs(turns[j]);
        }
        return cost;
    }

    /**
     * Two objectives nearer than this count as equal: 2e-14 of the square of the longest residual vector the ranges
     * permit, some twenty times the rounding error of {@link #cost}.
     */
    public double resolution() {
        double longest = norm(error);
        double turning = 0;
        for (int j = 0; j < column.length; j++) {
            double[] allowed = position[j];
            double reach = Math.max(Math.abs(allowed[0]), Math.abs(allowed[allowed.length - 1]));
            longest += norm(column[j]) * reach;
            turning += price[j] * reach;
        }
        return 2e-14 * (longest * longest + turning + groups * visitPrice) + Double.MIN_NORMAL;
    }

    /** True when the adjuster may stay where it is. */
    public boolean mayRest(int adjuster) {
        for (double allowed : position[adjuster]) {
            if (allowed == 0) {
                return true;
            }
        }
        return false;
    }

    /** True when the adjuster has an allowed position other than where it is. */
    public boolean mayMove(int adjuster) {
        return position[adjuster].length > 1 || position[adjuster][0] != 0;
    }

    private static double norm(double[] vector) {
        double sum = 0;
        for (double v : vector) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }
}
