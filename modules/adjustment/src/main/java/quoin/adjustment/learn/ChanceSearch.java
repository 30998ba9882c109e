package quoin.adjustment.learn;

/**
 * Whole steps with the greatest chance of meeting every aim: the least-squares answer for the mean car, rounded, then
 * the best of its neighbours, again and again until none is better. The answer is a local optimum of the chance; the
 * start from the mean car makes it the global one unless the chances are flat.
 */
public final class ChanceSearch {

    private static final int ROUNDS = 25;

    private ChanceSearch() {
    }

    /**
     * @param lowest fewest steps allowed at each adjuster (negative down), at most 0
     * @param highest most steps allowed, at least 0
     */
    public static int[] best(ChanceTable table, int[] lowest, int[] highest) {
        int m = table.adjusters();
        int[] at = rounded(table, lowest, highest);
        double score = table.score(at);
        int[] still = new int[m];
        double stay = table.score(still);
        if (stay >= score) {
            at = still;
            score = stay;
        }
        for (int round = 0; round < ROUNDS; round++) {
            int[] next = neighbour(table, at, score, lowest, highest);
            if (next == null) {
                break;
            }
            at = next;
            score = table.score(at);
        }
        return at;
    }

    private static int[] rounded(ChanceTable table, int[] lowest, int[] highest) {
        int m = table.adjusters();
        double[][] slope = table.meanSlope();
        double[] miss = table.meanDeviation(new int[m]);
        double[][] a = new double[slope.length + m][m];
        double[] b = new double[slope.length + m];
        for (int g = 0; g < slope.length; g++) {
            a[g] = slope[g].clone();
            b[g] = -miss[g];
        }
        for (int i = 0; i < m; i++) {
            a[slope.length + i][i] = 1e-3;
        }
        double[] x = LeastSquares.solve(a, b, a.length, m).solution();
        int[] at = new int[m];
        for (int i = 0; i < m; i++) {
            at[i] = (int) Math.max(lowest[i], Math.min(highest[i], Math.round(x[i])));
        }
        return at;
    }

    /** The best of the neighbours one step away: every combination up to four adjusters, pairs beyond; null if none. */
    private static int[] neighbour(ChanceTable table, int[] at, double score, int[] lowest, int[] highest) {
        int m = at.length;
        int limit = m <= 4 ? m : 2;
        int[] best = null;
        double bestScore = score + 1e-12;
        int codes = (int) Math.pow(3, m);
        for (int code = 0; code < codes; code++) {
            int[] tried = at.clone();
            int changed = 0;
            boolean allowed = true;
            int c = code;
            for (int i = 0; i < m; i++) {
                int d = c % 3 - 1;
                c /= 3;
                tried[i] += d;
                changed += d == 0 ? 0 : 1;
                allowed &= tried[i] >= lowest[i] && tried[i] <= highest[i];
            }
            if (changed > 0 && changed <= limit && allowed) {
                double s = table.score(tried, bestScore);
                if (s > bestScore) {
                    bestScore = s;
                    best = tried;
                }
            }
        }
        return best;
    }
}
