package quoin.adjustment.search;

/**
 * Minimises {@code t' G t + 2 h' t + sum_j price_j |t_j|} over {@code low <= t <= high} by a primal active-set method
 * (Nocedal and Wright, Numerical Optimization, 2nd ed., section 16.5, with zero as one more place where a variable may be
 * held). G is symmetric positive semidefinite; pivots that vanish are lifted by 1e-13 of their diagonal, so a singular G
 * gives one of its minimisers to that precision. One object serves many solves of the same G; it is not for two threads.
 */
public final class BoxedLeastSquares {
    private static final double LIFT = 1e-13;

    private final double[][] gram;
    private final double[] price;
    private final double[] low;
    private final double[] high;
    private final boolean[] free;
    private final double[] side;
    private final double[] slope;
    private final int[] index;
    private final double[] step;
    private final double[][] factor;

    /** Shares the arrays: {@code gram[j][j]}, {@code price[j] >= 0}, {@code low[j] <= high[j]}. */
    public BoxedLeastSquares(double[][] gram, double[] price, double[] low, double[] high) {
        int n = gram.length;
        this.gram = gram;
        this.price = price;
        this.low = low;
        this.high = high;
        free = new boolean[n];
        side = new double[n];
        slope = new double[n];
        index = new int[n];
        step = new double[n];
        factor = new double[n][n];
    }

    /**
     * Solves for the first {@code n} variables, the others being absent.
     *
     * @param h linear term, halved
     * @param t start, anywhere inside the bounds; the minimiser on return
     * @return Newton steps taken: one at most where the start is the minimiser, 6 n + 12 where it was given up
     */
    public int solve(int n, double[] h, double[] t) {
        start(n, h, t);
        int limit = 6 * n + 12;
        boolean settled = freeCount(n) == 0;
        for (int round = 0; round < limit; round++) {
            if (settled && !release(n, t)) {
                return round;
            }
            settled = move(n, t);
        }
        return limit;
    }

    private void start(int n, double[] h, double[] t) {
        for (int j = 0; j < n; j++) {
            t[j] = Math.min(high[j], Math.max(low[j], t[j]));
            boolean kink = t[j] == 0 && price[j] > 0;
            free[j] = t[j] > low[j] && t[j] < high[j] && !kink;
            side[j] = Math.signum(t[j]);
        }
        for (int j = 0; j < n; j++) {
            double sum = h[j];
            double[] row = gram[j];
            for (int i = 0; i < n; i++) {
                sum += row[i] * t[i];
            }
            slope[j] = sum;
        }
    }

    private int freeCount(int n) {
        int count = 0;
        for (int j = 0; j < n; j++) {
            if (free[j]) {
                index[count++] = j;
            }
        }
        return count;
    }

    /** Frees the held variable that falls most steeply; false when none does. */
    private boolean release(int n, double[] t) {
        int steepest = -1;
        double most = 0;
        double direction = 0;
        for (int j = 0; j < n; j++) {
            if (free[j]) {
                continue;
            }
            double scale = 1e-12 * (Math.abs(price[j]) + Math.sqrt(gram[j][j]));
            double up = t[j] < high[j] ? -2 * slope[j] - (t[j] >= 0 ? price[j] : -price[j]) : 0;
            double down = t[j] > low[j] ? 2 * slope[j] - (t[j] <= 0 ? price[j] : -price[j]) : 0;
            double fall = Math.max(up, down);
            if (fall > scale && fall > most) {
                most = fall;
                steepest = j;
                direction = up >= down ? 1 : -1;
            }
        }
        if (steepest < 0) {
            return false;
        }
        free[steepest] = true;
        side[steepest] = t[steepest] == 0 ? direction : Math.signum(t[steepest]);
        return true;
    }

    /** One Newton step on the free variables, cut at the first bound or zero; true when it was not cut. */
    private boolean move(int n, double[] t) {
        int count = freeCount(n);
        newtonStep(count);
        double length = 1;
        int blocking = -1;
        double stop = 0;
        for (int a = 0; a < count; a++) {
            int j = index[a];
            double d = step[a];
            if (d == 0) {
                continue;
            }
            double edge = d > 0 ? high[j] : low[j];
            if (price[j] > 0 && d * side[j] < 0 && edge * d > 0) {
                edge = 0;
            }
            double reach = (edge - t[j]) / d;
            if (reach < length) {
                length = Math.max(0, reach);
                blocking = j;
                stop = edge;
            }
        }
        for (int a = 0; a < count; a++) {
            int j = index[a];
            double before = t[j];
            t[j] = j == blocking ? stop : before + length * step[a];
            double change = t[j] - before;
            for (int i = 0; i < n; i++) {
                slope[i] += gram[i][j] * change;
            }
        }
        if (blocking < 0) {
            return true;
        }
        free[blocking] = false;
        return count == 1;
    }

    /** Solves G_FF d = -(slope + price * side / 2) by Cholesky with lifted pivots. */
    private void newtonStep(int count) {
        for (int a = 0; a < count; a++) {
            double[] row = factor[a];
            double[] from = gram[index[a]];
            for (int b = 0; b <= a; b++) {
                double sum = from[index[b]];
                double[] other = factor[b];
                for (int c = 0; c < b; c++) {
                    sum -= row[c] * other[c];
                }
                if (b < a) {
                    row[b] = sum / other[b];
                } else {
                    row[a] = Math.sqrt(Math.max(sum, LIFT * from[index[a]] + Double.MIN_NORMAL));
                }
            }
            double sum = -(slope[index[a]] + 0.5 * price[index[a]] * side[index[a]]);
            for (int c = 0; c < a; c++) {
                sum -= row[c] * step[c];
            }
            step[a] = sum / row[a];
        }
        for (int a = count - 1; a >= 0; a--) {
            double sum = step[a];
            for (int b = a + 1; b < count; b++) {
                sum -= factor[b][a] * step[b];
            }
            step[a] = sum / factor[a][a];
        }
    }
}
