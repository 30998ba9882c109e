package quoin.adjustment.search;

/**
 * {@code |error + columns * t|^2} turned by Householder reflections into {@code |R * t' + c|^2 + rest} with R upper
 * trapezoidal and t' a permutation of t. At each step the shortest remaining column (scaled by its own step) goes to the
 * front, so that the variable fixed first by a search from the back weighs most (sorted QR: Wuebben et al., Electronics
 * Letters 37, 2001). Orthogonal, hence safe for matrices of any rank.
 *
 * @param order {@code order[k]} is the adjuster behind variable k
 * @param matrix {@code [row][variable]}, zero below the diagonal, min(rows, variables) rows
 * @param error right-hand side, same rows
 * @param rest squared length of what no variable can change
 */
record TriangularForm(int[] order, double[][] matrix, double[] error, double rest) {

    static TriangularForm of(SearchSpace space, int[] adjusters) {
        int n = adjusters.length;
        int m = space.rows();
        int[] order = adjusters.clone();
        double[][] work = new double[n + 1][];
        for (int k = 0; k < n; k++) {
            work[k] = space.column()[order[k]].clone();
        }
        work[n] = space.error().clone();
        int steps = Math.min(m, n);
        for (int k = 0; k < steps; k++) {
            int shortest = shortestFrom(k, work, order, space);
            swap(work, order, k, shortest);
            reflect(work, k);
        }
        double[][] matrix = new double[steps][n];
        for (int i = 0; i < steps; i++) {
            for (int k = i; k < n; k++) {
                matrix[i][k] = work[k][i];
            }
        }
        double rest = 0;
        for (int i = steps; i < m; i++) {
            rest += work[n][i] * work[n][i];
        }
        return new TriangularForm(order, matrix, java.util.Arrays.copyOf(work[n], steps), rest);
    }

    private static int shortestFrom(int k, double[][] work, int[] order, SearchSpace space) {
        int shortest = k;
        double least = Double.POSITIVE_INFINITY;
        for (int c = k; c < order.length; c++) {
            double[] allowed = space.position()[order[c]];
            double step = (allowed[allowed.length - 1] - allowed[0]) / Math.max(1, allowed.length - 1);
            double length = Math.abs(step) * tail(work[c], k);
            if (length < least) {
                least = length;
                shortest = c;
            }
        }
        return shortest;
    }

    private static void swap(double[][] work, int[] order, int a, int b) {
        double[] column = work[a];
        work[a] = work[b];
        work[b] = column;
        int adjuster = order[a];
        order[a] = order[b];
        order[b] = adjuster;
    }

    private static void reflect(double[][] work, int k) {
        double[] v = work[k];
        double length = tail(v, k);
        if (length == 0) {
            return;
        }
        double diagonal = v[k] > 0 ? -length : length;
        double head = v[k] - diagonal;
        double scale = -1 / (diagonal * head);
        for (int c = k + 1; c < work.length; c++) {
            double[] column = work[c];
            double dot = head * column[k];
            for (int i = k + 1; i < column.length; i++) {
                dot += v[i] * column[i];
            }
            dot *= scale;
            column[k] -= dot * head;
            for (int i = k + 1; i < column.length; i++) {
                column[i] -= dot * v[i];
            }
        }
        v[k] = diagonal;
    }

    private static double tail(double[] column, int from) {
        double sum = 0;
        for (int i = from; i < column.length; i++) {
            sum += column[i] * column[i];
        }
        return Math.sqrt(sum);
    }
}
