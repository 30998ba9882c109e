package quoin.adjustment.learn;

import java.util.List;

/**
 * The most probable parameters for one level of noise, by Gauss-Newton over the whole history, with the Gaussian
 * (Laplace) approximation round them.
 */
final class Fit {

    private static final double STEP = 1e-5;
    private static final int ITERATIONS = 8;
    /** A fall of chi-squared too small to matter. */
    private static final double ENOUGH = 3e-3;
    private static final double LOOSE_LOAD_N = 5000;
    private static final double LOOSE_HEIGHT_MM = 500;

    /**
     * Outcome of one fit.
     *
     * @param p most probable parameters
     * @param factor triangular factor R of the inverse covariance R'R
     * @param logEvidence log probability of the readings, up to a constant common to all noise levels and suspects
     */
    record Result(double[] p, double[][] factor, double logEvidence) {
    }

    private final CarModel model;
    private final List<Settling> history;
    private final Suspect suspect;
    private final Predictor predictor;
    private final double[] mean;
    private final double[] sd;
    private final int n;

    Fit(CarModel model, List<Settling> history, Suspect suspect) {
        this.model = model;
        this.history = history;
        this.suspect = suspect;
        predictor = new Predictor(model, history, suspect);
        n = predictor.parameters();
        mean = new double[n];
        sd = new double[n];
        prior();
    }

    private void prior() {
        for (int i = 0; i < 4; i++) {
            sd[i] = model.rateSd()[i];
        }
        for (int g = 0; g < model.groupSd().length; g++) {
            sd[CarModel.LIFT + g] = model.groupSd()[g];
        }
        for (int i = 0; i < 4; i++) {
            mean[model.loadAt() + i] = first(i);
            sd[model.loadAt() + i] = LOOSE_LOAD_N;
        }
        mean[model.heightAt()] = first(4);
        for (int i = 0; i < 3; i++) {
            sd[model.heightAt() + i] = LOOSE_HEIGHT_MM;
        }
        if (suspect.free()) {
            mean[n - 1] = suspect.mean();
            sd[n - 1] = suspect.sd();
        }
    }

    private double first(int row) {
        for (Settling s : history) {
            if (s.present()[row]) {
                return s.values()[row];
            }
        }
        return 0;
    }

    /** The prior means: where a fit may start. */
    double[] start() {
        return mean.clone();
    }

    Result run(double[] start, NoiseLevel noise) {
        double[] p = start.clone();
        double[][][] whitener = whitener(p, noise);
        double cost = cost(p, predictor.predict(p), whitener);
        for (int it = 0; it < ITERATIONS; it++) {
            double[] step = solve(p, whitener).solution();
            double length = 1;
            double[] next = moved(p, step, length);
            double nextCost = cost(next, predictor.predict(next), whitener);
            while (nextCost > cost + 1e-9 && length > 0.02) {
                length /= 2;
                next = moved(p, step, length);
                nextCost = cost(next, predictor.predict(next), whitener);
            }
            double gain = cost - nextCost;
            p = next;
            cost = nextCost;
            if (gain < ENOUGH) {
                break;
            }
        }
        LeastSquares at = solve(p, whitener);
        double log = -cost / 2 - at.logDeterminant();
        for (double[][] w : whitener) {
            for (int i = 0; i < w.length; i++) {
                log -= Math.log(w[i][i]);
            }
        }
        for (double s : sd) {
            log -= Math.log(s);
        }
        return new Result(p, at.factor(), log);
    }

    private static double[] moved(double[] p, double[] step, double length) {
        double[] next = p.clone();
        for (int i = 0; i < p.length; i++) {
            next[i] += length * step[i];
        }
        return next;
    }

    private LeastSquares solve(double[] p, double[][][] whitener) {
        int rows = n;
        for (Settling s : history) {
            rows += count(s.present());
        }
        double[][] a = new double[rows][n];
        double[] b = new double[rows];
        for (int i = 0; i < n; i++) {
            a[i][i] = 1 / sd[i];
            b[i] = (mean[i] - p[i]) / sd[i];
        }
        double[][] base = predictor.predict(p);
        double[][][] slope = slopes(p, base);
        int row = n;
        for (int r = 0; r < base.length; r++) {
            Settling s = history.get(r);
            int first = row;
            for (int i = 0; i < 8; i++) {
                if (s.present()[i]) {
                    for (int k = 0; k < n; k++) {
                        a[row][k] = slope[k][r][i];
                    }
                    b[row++] = s.values()[i] - base[r][i];
                }
            }
            forward(whitener[r], a, b, first);
        }
        return LeastSquares.solve(a, b, rows, n);
    }

    private double[][][] slopes(double[] p, double[][] base) {
        double[][][] slope = new double[n][][];
        for (int k = 0; k < n; k++) {
            if (k >= model.loadAt() && k < model.parameters()) {
                slope[k] = linearSlope(k, base.length);
                continue;
            }
            double[] q = p.clone();
            q[k] += STEP;
            slope[k] = predictor.predict(q);
            for (int r = 0; r < base.length; r++) {
                for (int i = 0; i < 8; i++) {
                    slope[k][r][i] = (slope[k][r][i] - base[r][i]) / STEP;
                }
            }
        }
        return slope;
    }

    private double[][] linearSlope(int k, int readings) {
        double[] unit = new double[n];
        unit[k] = 1;
        double[] one = model.asFound(unit);
        double[][] out = new double[readings][];
        java.util.Arrays.fill(out, one);
        return out;
    }

    /** Solves L x = row block in place, L lower triangular. */
    private static void forward(double[][] l, double[][] a, double[] b, int first) {
        for (int i = 0; i < l.length; i++) {
            double[] target = a[first + i];
            for (int j = 0; j < i; j++) {
                double f = l[i][j];
                double[] source = a[first + j];
                for (int k = 0; k < target.length; k++) {
                    target[k] -= f * source[k];
                }
                b[first + i] -= f * b[first + j];
            }
            for (int k = 0; k < target.length; k++) {
                target[k] /= l[i][i];
            }
            b[first + i] /= l[i][i];
        }
    }

    private double[][][] whitener(double[] p, NoiseLevel noise) {
        double[][] response = predictor.response(p);
        double[][][] out = new double[history.size()][][];
        for (int r = 0; r < out.length; r++) {
            Settling s = history.get(r);
            out[r] = cholesky(pick(noise.covariance(response, s.settlings()), s.present()));
        }
        return out;
    }

    private double cost(double[] p, double[][] predicted, double[][][] whitener) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double z = (p[i] - mean[i]) / sd[i];
            sum += z * z;
        }
        for (int r = 0; r < predicted.length; r++) {
            for (double z : whitened(history.get(r), predicted[r], whitener[r])) {
                sum += z * z;
            }
        }
        return sum;
    }

    private static double[] whitened(Settling s, double[] predicted, double[][] l) {
        double[] z = new double[l.length];
        int row = 0;
        for (int i = 0; i < 8; i++) {
            if (s.present()[i]) {
                double v = s.values()[i] - predicted[i];
                for (int j = 0; j < row; j++) {
                    v -= l[row][j] * z[j];
                }
                z[row] = v / l[row][row];
                row++;
            }
        }
        return z;
    }

    private static int count(boolean[] present) {
        int c = 0;
        for (boolean b : present) {
            c += b ? 1 : 0;
        }
        return c;
    }

    private static double[][] pick(double[][] full, boolean[] present) {
        int m = count(present);
        double[][] out = new double[m][m];
        int a = 0;
        for (int i = 0; i < 8; i++) {
            if (!present[i]) {
                continue;
            }
            int b = 0;
            for (int j = 0; j < 8; j++) {
                if (present[j]) {
                    out[a][b++] = full[i][j];
                }
            }
            a++;
        }
        return out;
    }

    static double[][] cholesky(double[][] a) {
        int m = a.length;
        double[][] l = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = a[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
            }
        }
        return l;
    }
}
