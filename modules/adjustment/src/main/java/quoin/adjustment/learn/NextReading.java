package quoin.adjustment.learn;

import java.util.List;

/**
 * What one more settled reading would teach: the posterior that will hold after it, worked out before it is made
 * (preposterior analysis; Raiffa and Schlaifer, Applied Statistical Decision Theory, 1961, part I), by linear
 * regression of the goals on the readings over the scenarios.
 */
public final class NextReading {

    private static final int FORESEEN = 64;

    private final double[][] estimate;
    private final double[][] residual;
    private final double[] mean;

    /**
     * @param turns turns made before that reading
     */
    public NextReading(Posterior posterior, Scenarios scenarios, List<Aim> aims, double[] turns) {
        double[][] after = scenarios.after(turns);
        double[][] truth = scenarios.truthOf(after);
        double[][] noise = Fit.cholesky(posterior.readingCovariance(1));
        int n = after.length;
        int m = aims.size();
        double[][] goal = new double[n][m];
        double[][] reading = new double[n][8];
        for (int i = 0; i < n; i++) {
            double[] z = NormalPoints.point(n - 1 - i);
            for (int r = 0; r < 8; r++) {
                reading[i][r] = after[i][r];
                for (int k = 0; k <= r; k++) {
                    reading[i][r] += noise[r][k] * z[NormalPoints.DIMENSIONS - 1 - k];
                }
            }
            for (int g = 0; g < m; g++) {
                goal[i][g] = (aims.get(g).value(truth[i]) - aims.get(g).target()) / aims.get(g).tolerance();
            }
        }
        mean = centre(goal);
        centre(reading);
        estimate = regress(reading, goal);
        residual = new double[n][m];
        for (int i = 0; i < n; i++) {
            for (int g = 0; g < m; g++) {
                residual[i][g] = goal[i][g] - estimate[i][g];
            }
        }
    }

    /** Chance that all goals are met after that reading and a further turn as good as the one before it. */
    public double chanceAfterFurtherTurn() {
        return chance(mean);
    }

    /** Chance that after that reading, with nothing turned then, the probability of all goals met is at least p. */
    public double chanceOfReaching(double p) {
        int reached = 0;
        int stride = Math.max(1, estimate.length / FORESEEN);
        int looked = 0;
        for (int i = 0; i < estimate.length; i += stride) {
            double[] centre = mean.clone();
            for (int g = 0; g < centre.length; g++) {
                centre[g] += estimate[i][g];
            }
            looked++;
            reached += chance(centre) >= p ? 1 : 0;
        }
        return (double) reached / looked;
    }

    private double chance(double[] centre) {
        int in = 0;
        for (double[] r : residual) {
            boolean inside = true;
            for (int g = 0; g < centre.length && inside; g++) {
                inside = Math.abs(centre[g] + r[g]) <= 1;
            }
            in += inside ? 1 : 0;
        }
        return (double) in / residual.length;
    }

    private static double[] centre(double[][] rows) {
        double[] mean = new double[rows[0].length];
        for (double[] row : rows) {
            for (int k = 0; k < mean.length; k++) {
                mean[k] += row[k] / rows.length;
            }
        }
        for (double[] row : rows) {
            for (int k = 0; k < mean.length; k++) {
                row[k] -= mean[k];
            }
        }
        return mean;
    }

    /** Least squares of y on x, both centred, by normal equations on x scaled to unit length (well conditioned). */
    private static double[][] regress(double[][] x, double[][] y) {
        int n = x.length;
        int m = y[0].length;
        int r = x[0].length;
        double[] scale = new double[r];
        for (double[] row : x) {
            for (int k = 0; k < r; k++) {
                scale[k] += row[k] * row[k];
            }
        }
        double[][] a = new double[r][r];
        double[][] b = new double[r][m];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < r; k++) {
                double u = x[i][k] / Math.sqrt(scale[k]);
                for (int l = 0; l <= k; l++) {
                    a[k][l] += u * x[i][l] / Math.sqrt(scale[l]);
                }
                for (int g = 0; g < m; g++) {
                    b[k][g] += u * y[i][g];
                }
            }
        }
        double[][] l = Fit.cholesky(a);
        double[][] out = new double[n][m];
        for (int g = 0; g < m; g++) {
            double[] w = new double[r];
            for (int k = 0; k < r; k++) {
                w[k] = b[k][g];
                for (int j = 0; j < k; j++) {
                    w[k] -= l[k][j] * w[j];
                }
                w[k] /= l[k][k];
            }
            for (int k = r - 1; k >= 0; k--) {
                for (int j = k + 1; j < r; j++) {
                    w[k] -= l[j][k] * w[j];
                }
                w[k] /= l[k][k];
            }
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < r; k++) {
                    out[i][g] += w[k] * x[i][k] / Math.sqrt(scale[k]);
                }
            }
        }
        return out;
    }
}
