package quoin.adjustment.learn;

/**
 * Linear least squares by Householder reflections (Golub and Van Loan, Matrix Computations, 4th ed., section 5.2):
 * no normal equations, so ill-conditioned problems keep their digits.
 */
final class LeastSquares {

    private final double[][] r;
    private final double[] solution;
    private final double residualSquares;

    private LeastSquares(double[][] r, double[] solution, double residualSquares) {
        this.r = r;
        this.solution = solution;
        this.residualSquares = residualSquares;
    }

    /**
     * Minimises |a x - b|. Both arguments are overwritten.
     *
     * @param a at least as many rows as columns, of full column rank
     * @param rows number of rows used
     * @throws IllegalArgumentException when the columns are linearly dependent
     */
    static LeastSquares solve(double[][] a, double[] b, int rows, int columns) {
        for (int k = 0; k < columns; k++) {
            double norm = 0;
            for (int i = k; i < rows; i++) {
                norm = Math.hypot(norm, a[i][k]);
            }
            if (!(norm > 0)) {
                throw new IllegalArgumentException("column " + k + " depends on those before it");
            }
            double alpha = a[k][k] > 0 ? -norm : norm;
            double v0 = a[k][k] - alpha;
            double beta = -1 / (alpha * v0);
            a[k][k] = v0;
            for (int j = k + 1; j < columns; j++) {
                double dot = 0;
                for (int i = k; i < rows; i++) {
                    dot += a[i][k] * a[i][j];
                }
                dot *= beta;
                for (int i = k; i < rows; i++) {
                    a[i][j] -= dot * a[i][k];
                }
            }
            double dot = 0;
            for (int i = k; i < rows; i++) {
                dot += a[i][k] * b[i];
            }
            dot *= beta;
            for (int i = k; i < rows; i++) {
                b[i] -= dot * a[i][k];
            }
            a[k][k] = alpha;
        }
        double[][] r = new double[columns][columns];
        for (int i = 0; i < columns; i++) {
            System.arraycopy(a[i], i, r[i], i, columns - i);
        }
        double squares = 0;
        for (int i = columns; i < rows; i++) {
            squares += b[i] * b[i];
        }
        return new LeastSquares(r, backward(r, b), squares);
    }

    /** Solves the upper triangular r x = b. */
    static double[] backward(double[][] r, double[] b) {
        int n = r.length;
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < n; j++) {
                sum -= r[i][j] * x[j];
            }
            x[i] = sum / r[i][i];
        }
        return x;
    }

    double[] solution() {
        return solution;
    }

    /** Sum of the squared residuals. */
    double residualSquares() {
        return residualSquares;
    }

    /** The triangular factor R: the inverse of R'R is the covariance for unit weights. */
    double[][] factor() {
        return r;
    }

    double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < r.length; i++) {
            sum += Math.log(Math.abs(r[i][i]));
        }
        return sum;
    }
}
