package quoin.adjustment;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * What is believed of the coefficients of y = sum_k c_k x_k: a normal prior corrected by observations (conjugate Bayesian
 * linear regression, standard text-book result). With a vague prior it is ordinary least squares.
 */
public final class LinearBelief {

    private final double[] mean;
    private final RealMatrix covariance;

    private LinearBelief(double[] mean, RealMatrix covariance) {
        this.mean = mean;
        this.covariance = covariance;
    }

    /**
     * One observation.
     *
     * @param x  inputs, one per coefficient
     * @param y  what was observed
     * @param sd its standard uncertainty, greater than 0
     */
    public record Observation(double[] x, double y, double sd) {
        public Observation {
            x = x.clone();
            if (!(sd > 0)) {
                throw new IllegalArgumentException("sd of an observation must be greater than 0; got " + sd);
            }
        }

        @Override
        public double[] x() {
            return x.clone();
        }
    }

    /**
     * The posterior.
     *
     * @param priorMean    what was believed before, one per coefficient
     * @param priorSd      its standard uncertainties, greater than 0, independent of each other
     * @param observations any number, each with as many inputs as there are coefficients
     */
    public static LinearBelief of(double[] priorMean, double[] priorSd, List<Observation> observations) {
        int n = priorMean.length;
        double[][] precision = new double[n][n];
        double[] pull = new double[n];
        for (int k = 0; k < n; k++) {
            if (!(priorSd[k] > 0)) {
                throw new IllegalArgumentException("priorSd[" + k + "] must be greater than 0; got " + priorSd[k]);
            }
            precision[k][k] = 1 / (priorSd[k] * priorSd[k]);
            pull[k] = priorMean[k] * precision[k][k];
        }
        for (Observation seen : observations) {
            double[] x = seen.x();
            double weight = 1 / (seen.sd() * seen.sd());
            for (int i = 0; i < n; i++) {
                pull[i] += weight * x[i] * seen.y();
                for (int j = 0; j <= i; j++) {
                    precision[i][j] += weight * x[i] * x[j];
                    // Mirrored, not computed again: sums that nearly cancel would differ by their rounding.
                    precision[j][i] = precision[i][j];
                }
            }
        }
        if (n == 0) {
            return new LinearBelief(new double[0], null);
        }
        CholeskyDecomposition factor = new CholeskyDecomposition(new Array2DRowRealMatrix(precision, false), 1e-9, 0);
        return new LinearBelief(factor.getSolver().solve(new ArrayRealVector(pull, false)).toArray(),
                factor.getSolver().getInverse());
    }

    /** Most credible coefficient. */
    public double mean(int k) {
        return mean[k];
    }

    /** Standard uncertainty of a coefficient. */
    public double sd(int k) {
        return Math.sqrt(covariance.getEntry(k, k));
    }

    /** Standard uncertainty of sum_k c_k x_k for the inputs given. */
    public double sd(double[] x) {
        if (x.length == 0) {
            return 0;
        }
        ArrayRealVector vector = new ArrayRealVector(x);
        return Math.sqrt(Math.max(0, covariance.operate(vector).dotProduct(vector)));
    }
}
