package quoin.adjustment.learn;

import java.util.List;

/** The chance that every aim is met after whole steps at the adjusters, counted over scenarios. */
public final class ChanceTable {

    private static final double EXCESS_PRICE = 1e-2;

    private final double[][] base;
    private final double[][][] slope;
    private final int aims;

    /**
     * @param stepTurns turns of one step of each adjuster
     */
    public ChanceTable(Scenarios scenarios, List<Aim> wishes, double[] stepTurns) {
        aims = wishes.size();
        int n = scenarios.size();
        base = new double[n][aims];
        slope = new double[n][aims][stepTurns.length];
        for (int i = 0; i < n; i++) {
            double[] now = scenarios.truth(i);
            double[][] perTurn = scenarios.perTurn(i);
            double total = now[0] + now[1] + now[2] + now[3];
            for (int g = 0; g < aims; g++) {
                Aim aim = wishes.get(g);
                // adjusters leave the total as it is, so a share is linear in the steps too
                double unit = aim.tolerance() * (aim.ofTotal() ? total : 1);
                base[i][g] = (aim.value(now) - aim.target()) / aim.tolerance();
                for (int a = 0; a < stepTurns.length; a++) {
                    double sum = 0;
                    for (int r = 0; r < 8; r++) {
                        sum += aim.weights()[r] * perTurn[r][a];
                    }
                    slope[i][g][a] = sum * stepTurns[a] / unit;
                }
            }
        }
    }

    public int adjusters() {
        return slope[0][0].length;
    }

    /** Share of scenarios with every aim met. */
    public double chance(int[] steps) {
        int in = 0;
        for (int i = 0; i < base.length; i++) {
            if (worst(i, steps) <= 1) {
                in++;
            }
        }
        return (double) in / base.length;
    }

    /** Share of scenarios with aim g met. */
    public double chance(int[] steps, int g) {
        int in = 0;
        for (int i = 0; i < base.length; i++) {
            if (Math.abs(value(i, g, steps)) <= 1) {
                in++;
            }
        }
        return (double) in / base.length;
    }

    /** The chance, with a little of the mean excess taken off so that far-away steps still compare. */
    double score(int[] steps) {
        return score(steps, Double.NEGATIVE_INFINITY);
    }

    /** The same, given up as negative infinity as soon as it cannot exceed the floor any more. */
    double score(int[] steps, double floor) {
        double left = base.length;
        double least = floor * base.length;
        for (int i = 0; i < base.length; i++) {
            double w = worst(i, steps);
            left -= (w <= 1 ? 0 : 1) + EXCESS_PRICE * w;
            if (left <= least) {
                return Double.NEGATIVE_INFINITY;
            }
        }
        return left / base.length;
    }

    private double worst(int i, int[] steps) {
        double worst = 0;
        for (int g = 0; g < aims; g++) {
            worst = Math.max(worst, Math.abs(value(i, g, steps)));
        }
        return worst;
    }

    private double value(int i, int g, int[] steps) {
        double v = base[i][g];
        double[] s = slope[i][g];
        for (int a = 0; a < s.length; a++) {
            v += s[a] * steps[a];
        }
        return v;
    }

    /** Mean deviation of every aim after steps, in tolerances. */
    public double[] meanDeviation(int[] steps) {
        double[] m = new double[aims];
        for (int i = 0; i < base.length; i++) {
            for (int g = 0; g < aims; g++) {
                m[g] += value(i, g, steps) / base.length;
            }
        }
        return m;
    }

    /** Standard deviation of every aim after steps, in tolerances. */
    public double[] sdDeviation(int[] steps) {
        double[] mean = meanDeviation(steps);
        double[] v = new double[aims];
        for (int i = 0; i < base.length; i++) {
            for (int g = 0; g < aims; g++) {
                double d = value(i, g, steps) - mean[g];
                v[g] += d * d / base.length;
            }
        }
        for (int g = 0; g < aims; g++) {
            v[g] = Math.sqrt(v[g]);
        }
        return v;
    }

    /** Mean change of every aim per step, in tolerances. */
    double[][] meanSlope() {
        double[][] m = new double[aims][adjusters()];
        for (double[][] s : slope) {
            for (int g = 0; g < aims; g++) {
                for (int a = 0; a < m[g].length; a++) {
                    m[g][a] += s[g][a] / base.length;
                }
            }
        }
        return m;
    }
}
