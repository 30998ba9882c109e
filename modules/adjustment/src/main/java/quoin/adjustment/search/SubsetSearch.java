package quoin.adjustment.search;

import java.util.function.BooleanSupplier;

/**
 * Proven best positions when exactly one given set of groups is visited: depth-first enumeration of the triangular form,
 * values of each variable tried from the relaxed optimum outwards (Schnorr and Euchner, Math. Programming 66, 1994), on
 * three lower bounds: the residual already fixed, the supporting plane of the parent's relaxation, and the node's own
 * relaxation to boxes with the price of turning included.
 *
 * <p>The relaxation enters only through its dual: for any y, {@code |b + A t|^2 >= 2 y'(b + A t) - |y|^2}, which splits
 * into one-dimensional minima over the boxes. The bound therefore holds however well or badly the relaxation was solved,
 * for any rank.
 */
final class SubsetSearch {
    private static final double SAME_TURNS = 1e-9;

    private final SearchSpace space;
    private final Incumbent incumbent;
    private final int visits;
    private final int[] order;
    private final double[][] matrix;
    private final int rows;
    private final double rest;
    private final double[][] position;
    private final double[] price;
    private final double[] low;
    private final double[] high;
    private final double[] leastTurns;
    private final int[] group;
    private final boolean[] closesGroup;
    private final int[] moved;
    private final BoxedLeastSquares relaxation;

    /** One row per number of open variables. */
    private final double[][] error;
    private final double[][] relaxed;
    private final double[][] dual;
    private final double[] planeBase;
    private final double[] planeSlope;
    private final double[] bound;
    private final double[] linear;
    private final double[] turns;

    private final BooleanSupplier cancelled;
    private long nodes;
    private boolean stopped;

    SubsetSearch(SearchSpace space, int[] adjusters, int visits, Incumbent incumbent, BooleanSupplier cancelled) {
        this.space = space;
        this.incumbent = incumbent;
        this.visits = visits;
        this.cancelled = cancelled;
        TriangularForm form = TriangularForm.of(space, adjusters);
        int n = adjusters.length;
        order = form.order();
        matrix = form.matrix();
        rows = matrix.length;
        rest = form.rest();
        position = new double[n][];
        price = new double[n];
        low = new double[n];
        high = new double[n];
        leastTurns = new double[n + 1];
        group = new int[n];
        closesGroup = new boolean[n];
        moved = new int[space.groups()];
        describeVariables(n);
        relaxation = new BoxedLeastSquares(gram(n), price, low, high);
        error = new double[n + 1][n];
        System.arraycopy(form.error(), 0, error[n], 0, rows);
        relaxed = new double[n + 1][n];
        dual = new double[n + 1][n];
        planeBase = new double[n + 1];
        planeSlope = new double[n + 1];
        bound = new double[n + 1];
        linear = new double[n];
        turns = new double[space.adjusters()];
        relax(n, rest);
    }

    private void describeVariables(int n) {
        for (int k = 0; k < n; k++) {
            int j = order[k];
            position[k] = space.position()[j];
            price[k] = space.price()[j];
            low[k] = position[k][0];
            high[k] = position[k][position[k].length - 1];
            double least = low[k] > 0 ? low[k] : high[k] < 0 ? -high[k] : 0;
            leastTurns[k + 1] = leastTurns[k] + least;
            group[k] = space.group()[j];
            closesGroup[k] = true;
            for (int i = 0; i < k; i++) {
                closesGroup[k] &= group[i] != group[k];
            }
        }
    }

    private double[][] gram(int n) {
        double[][] gram = new double[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b <= a; b++) {
                double sum = 0;
                for (int i = 0; i < rows && i <= b; i++) {
                    sum += matrix[i][a] * matrix[i][b];
                }
                gram[a][b] = sum;
                gram[b][a] = sum;
            }
        }
        return gram;
    }

    /** Lower bound of the objective over all positions of this set, price of visits included. */
    double lowerBound() {
        return bound[order.length] + space.visitPrice() * visits;
    }

    /** Values tried and relaxations solved so far. */
    long nodes() {
        return nodes;
    }

    /** Offers the incumbent everything that may come before it; false when stopped by the cancellation. */
    boolean run() {
        int n = order.length;
        if (n == 0) {
            look();
            incumbent.offer(turns, visits);
        } else if (!hopeless(bound[n], leastTurns[n])) {
            descend(n, rest, 0, 0);
        }
        return !stopped;
    }

    /** Counts a value tried or a relaxation solved, and asks now and then whether to stop. */
    private boolean look() {
        if ((++nodes & 0x3ff) == 0 && cancelled.getAsBoolean()) {
            stopped = true;
        }
        return !stopped;
    }

    private double limit() {
        return incumbent.objective() + 2 * incumbent.resolution() - space.visitPrice() * visits;
    }

    private boolean hopeless(double lowerBound, double turnsAtLeast) {
        double limit = limit();
        return lowerBound > limit || lowerBound > limit - 4 * incumbent.resolution()
                && turnsAtLeast > incumbent.totalTurns() + SAME_TURNS && visits >= incumbent.visits();
    }

    /** Fixes variable {@code open - 1} at each value worth trying; variables below it stay open. */
    private void descend(int open, double fixedMisfit, double fixedPrice, double fixedTurns) {
        int k = open - 1;
        double[] allowed = position[k];
        double centre = relaxed[open][k];
        int right = firstFrom(allowed, centre);
        int left = right - 1;
        while (!stopped && (left >= 0 || right < allowed.length)) {
            boolean upward = left < 0 || right < allowed.length && allowed[right] - centre <= centre - allowed[left];
            double value = allowed[upward ? right++ : left--];
            boolean goOn = attempt(open, value, upward ? 1 : -1, fixedMisfit, fixedPrice, fixedTurns);
            if (!goOn && upward) {
                right = allowed.length;
            } else if (!goOn) {
                left = -1;
            }
        }
    }

    /** Tries one value; false when it and every value further out in this direction is out of the question. */
    private boolean attempt(int open, double value, int direction, double fixedMisfit, double fixedPrice,
            double fixedTurns) {
        if (!look()) {
            return false;
        }
        int k = open - 1;
        double limit = limit();
        double turning = price[k] * Math.abs(value);
        double turningOutward = value * direction >= 0 ? price[k] : -price[k];
        double plane = planeBase[open] + planeSlope[open] * value + turning;
        if (plane > limit) {
            return planeSlope[open] * direction + turningOutward < 0;
        }
        double residual = 0;
        double outward = turningOutward;
        if (k < rows) {
            residual = error[open][k] + matrix[k][k] * value;
            outward += 2 * residual * matrix[k][k] * direction;
        }
        double misfit = fixedMisfit + residual * residual;
        double priced = fixedPrice + turning;
        if (misfit + priced > limit) {
            return outward < 0;
        }
        if (value == 0 && closesGroup[k] && moved[group[k]] == 0) {
            return true;
        }
        turns[order[k]] = value;
        double spent = fixedTurns + Math.abs(value);
        if (k == 0) {
            incumbent.offer(turns, visits);
            return true;
        }
        look();
        fix(open, value);
        relax(k, misfit + priced);
        if (bound[k] > limit) {
            return outward + 2 * slopeOf(k, k) * direction < 0;
        }
        if (!hopeless(bound[k], spent + leastTurns[k])) {
            moved[group[k]] += value != 0 ? 1 : 0;
            descend(k, misfit, priced, spent);
            moved[group[k]] -= value != 0 ? 1 : 0;
        }
        return true;
    }

    private void fix(int open, double value) {
        int k = open - 1;
        double[] before = error[open];
        double[] after = error[k];
        for (int i = 0; i < k && i < rows; i++) {
            after[i] = before[i] + matrix[i][k] * value;
        }
        System.arraycopy(relaxed[open], 0, relaxed[k], 0, k);
    }

    /** Relaxes the {@code open} first variables to their boxes and leaves bound, dual and supporting plane behind. */
    private void relax(int open, double fixed) {
        double[] b = error[open];
        double[] t = relaxed[open];
        double[] y = dual[open];
        int live = Math.min(open, rows);
        for (int j = 0; j < open; j++) {
            double sum = 0;
            for (int i = 0; i <= j && i < live; i++) {
                sum += matrix[i][j] * b[i];
            }
            linear[j] = sum;
        }
        relaxation.solve(open, linear, t);
        double value = fixed;
        for (int i = 0; i < live; i++) {
            double residual = b[i];
            for (int j = i; j < open; j++) {
                residual += matrix[i][j] * t[j];
            }
            y[i] = residual;
            value += residual * (2 * b[i] - residual);
        }
        for (int j = 0; j < open; j++) {
            double slope = 2 * slopeOf(open, j);
            double least = Math.min(slope * low[j] + price[j] * Math.abs(low[j]),
                    slope * high[j] + price[j] * Math.abs(high[j]));
            if (low[j] < 0 && high[j] > 0) {
                least = Math.min(least, 0);
            }
            if (j == open - 1) {
                planeBase[open] = value;
                planeSlope[open] = slope;
            }
            value += least;
        }
        bound[open] = value;
    }

    /** Column {@code j} times the dual of the relaxation of the {@code open} first variables. */
    private double slopeOf(int open, int j) {
        double[] y = dual[open];
        double sum = 0;
        int live = Math.min(open, rows);
        for (int i = 0; i <= j && i < live; i++) {
            sum += matrix[i][j] * y[i];
        }
        return sum;
    }

    private static int firstFrom(double[] ascending, double value) {
        int from = java.util.Arrays.binarySearch(ascending, value);
        return from >= 0 ? from : -from - 1;
    }
}
