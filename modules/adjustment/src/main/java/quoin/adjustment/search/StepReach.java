package quoin.adjustment.search;

/**
 * The value nearest to a band that one reading can take over whole steps: depth-first over the adjusters that move it,
 * largest first, leaving out what the remaining ranges cannot bring nearer.
 */
public final class StepReach {
    private static final long MOST_NODES = 200_000;

    private final double[][] contribution;
    private final double[] restLow;
    private final double[] restHigh;
    private final double halfWidth;
    private double nearest = Double.NaN;
    private long nodes;

    private StepReach(double[][] contribution, double halfWidth) {
        this.contribution = contribution;
        this.halfWidth = halfWidth;
        int n = contribution.length;
        restLow = new double[n + 1];
        restHigh = new double[n + 1];
        for (int j = n - 1; j >= 0; j--) {
            double[] values = contribution[j];
            restLow[j] = restLow[j + 1] + values[0];
            restHigh[j] = restHigh[j + 1] + values[values.length - 1];
        }
    }

    /**
     * Nearest value found.
     *
     * @param value a value the reading can take; any value inside the band when there is one
     * @param proven false when the search was given up before it could tell
     * @param nodes partial sums looked at, a measure of the work
     */
    public record Nearest(double value, boolean proven, long nodes) {
    }

    /**
     * Searches; stops at the first value inside the band.
     *
     * @param error error before
     * @param contributions {@code [adjuster]}, what each allowed position adds to the error, any order
     * @param halfWidth the band is -halfWidth to +halfWidth
     */
    public static Nearest nearest(double error, double[][] contributions, double halfWidth) {
        double[][] sorted = new double[contributions.length][];
        for (int j = 0; j < sorted.length; j++) {
            sorted[j] = java.util.Arrays.stream(contributions[j]).sorted().distinct().toArray();
        }
        java.util.Arrays.sort(sorted, (one, two) -> Double.compare(step(two), step(one)));
        StepReach reach = new StepReach(sorted, halfWidth);
        reach.descend(0, error);
        return new Nearest(reach.nearest, reach.nodes < MOST_NODES || reach.done(), reach.nodes);
    }

    private static double step(double[] sorted) {
        return (sorted[sorted.length - 1] - sorted[0]) / sorted.length;
    }

    private boolean done() {
        return Math.abs(nearest) <= halfWidth;
    }

    private void descend(int adjuster, double value) {
        if (done() || ++nodes > MOST_NODES) {
            return;
        }
        if (adjuster == contribution.length) {
            if (!(Math.abs(value) >= Math.abs(nearest))) {
                nearest = value;
            }
            return;
        }
        double[] values = contribution[adjuster];
        double wanted = -value - (restLow[adjuster + 1] + restHigh[adjuster + 1]) / 2;
        int at = java.util.Arrays.binarySearch(values, wanted);
        int right = at >= 0 ? at : -at - 1;
        int left = right - 1;
        while ((left >= 0 || right < values.length) && !done() && nodes <= MOST_NODES) {
            boolean upward = left < 0 || right < values.length && values[right] - wanted <= wanted - values[left];
            double next = value + values[upward ? right++ : left--];
            double low = next + restLow[adjuster + 1];
            double high = next + restHigh[adjuster + 1];
            double atBest = low > 0 ? low : high < 0 ? -high : 0;
            if (!(atBest >= Math.abs(nearest))) {
                descend(adjuster + 1, next);
            }
        }
    }
}
