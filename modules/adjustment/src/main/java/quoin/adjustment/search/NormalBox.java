package quoin.adjustment.search;

import java.util.SplittableRandom;

/**
 * Probability that a multivariate normal vector lies in a box: Genz's sequential conditioning (Genz and Bretz, Computation
 * of Multivariate Normal and t Probabilities, 2009, sections 4.1 and 4.2) on randomly shifted Richtmyer lattices with the
 * baker's transformation. The seed is fixed, so the same question has the same answer. The covariance may be singular:
 * a row determined by earlier ones narrows the interval of the last variable it hangs on.
 */
public final class NormalBox {
    private static final int SHIFTS = 8;
    private static final int FIRST_POINTS = 256;
    private static final int MOST_POINTS = 8192;
    private static final double WANTED = 2e-4;
    private static final double DETERMINED = 1e-10;
    private static final double SURE = 1e-9;
    private static final long SEED = 0x51ED270B;

    private final int n;
    private final int rank;
    private final double[][] factor;
    private final double[] lower;
    private final double[] upper;
    private final int[][] boundTo;
    private final double[] generator;
    private final double[] y;

    /**
     * Probability and its standard error.
     *
     * @param value 0 to 1
     * @param standardError of the numerical integration; 0 where the answer is exact
     */
    public record Probability(double value, double standardError) {
    }

    /**
     * Probability of {@code lower <= mean + noise <= upper} in every row.
     *
     * @param covariance symmetric, positive semidefinite
     */
    public static Probability probability(double[] mean, double[][] covariance, double[] lower, double[] upper) {
        int[] uncertain = new int[mean.length];
        int n = 0;
        for (int i = 0; i < mean.length; i++) {
            if (Math.sqrt(covariance[i][i]) > SURE * (upper[i] - lower[i])) {
                uncertain[n++] = i;
            } else if (mean[i] < lower[i] || mean[i] > upper[i]) {
                return new Probability(0, 0);
            }
        }
        double[] a = new double[n];
        double[] b = new double[n];
        double[][] correlation = new double[n][n];
        for (int p = 0; p < n; p++) {
            int i = uncertain[p];
            double deviation = Math.sqrt(covariance[i][i]);
            a[p] = (lower[i] - mean[i]) / deviation;
            b[p] = (upper[i] - mean[i]) / deviation;
            for (int q = 0; q < n; q++) {
                int j = uncertain[q];
                correlation[p][q] = covariance[i][j] / (deviation * Math.sqrt(covariance[j][j]));
            }
        }
        return new NormalBox(correlation, a, b).integrate();
    }

    private NormalBox(double[][] correlation, double[] a, double[] b) {
        n = a.length;
        lower = a;
        upper = b;
        factor = new double[n][n];
        y = new double[n];
        rank = factorise(correlation);
        boundTo = new int[rank][];
        attachDeterminedRows();
        generator = richtmyer(rank);
    }

    /** Cholesky with the row of least conditional probability next (section 4.1.3); returns the numerical rank. */
    private int factorise(double[][] work) {
        for (int k = 0; k < n; k++) {
            int next = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int i = k; i < n; i++) {
                double variance = conditionalVariance(work, i, k);
                if (variance > DETERMINED) {
                    double shift = dot(factor[i], y, k);
                    double deviation = Math.sqrt(variance);
                    double share = between((lower[i] - shift) / deviation, (upper[i] - shift) / deviation);
                    if (share < least) {
                        least = share;
                        next = i;
                    }
                }
            }
            if (next < 0) {
                return k;
            }
            exchange(work, k, next);
            double pivot = Math.sqrt(conditionalVariance(work, k, k));
            factor[k][k] = pivot;
            for (int i = k + 1; i < n; i++) {
                factor[i][k] = (work[i][k] - dot(factor[i], factor[k], k)) / pivot;
            }
            double shift = dot(factor[k], y, k);
            y[k] = truncatedMean((lower[k] - shift) / pivot, (upper[k] - shift) / pivot);
        }
        return n;
    }

    private double conditionalVariance(double[][] work, int i, int k) {
        return work[i][i] - dot(factor[i], factor[i], k);
    }

    private void exchange(double[][] work, int k, int other) {
        swap(lower, k, other);
        swap(upper, k, other);
        double[] row = factor[k];
        factor[k] = factor[other];
        factor[other] = row;
        row = work[k];
        work[k] = work[other];
        work[other] = row;
        for (double[] columns : work) {
            swap(columns, k, other);
        }
    }

    private static void swap(double[] values, int a, int b) {
        double value = values[a];
        values[a] = values[b];
        values[b] = value;
    }

    /** A row has length one, so there is a variable that it hangs on. */
    private void attachDeterminedRows() {
        for (int k = 0; k < rank; k++) {
            int count = 0;
            int[] rows = new int[n - rank];
            for (int i = rank; i < n; i++) {
                int last = rank - 1;
                while (Math.abs(factor[i][last]) < 1e-7) {
                    last--;
                }
                if (last == k) {
                    rows[count++] = i;
                }
            }
            boundTo[k] = java.util.Arrays.copyOf(rows, count);
        }
    }

    private static double[] richtmyer(int dimensions) {
        double[] generator = new double[dimensions];
        int prime = 1;
        for (int k = 0; k < dimensions; k++) {
            do {
                prime++;
            } while (!isPrime(prime));
            generator[k] = Math.sqrt(prime);
        }
        return generator;
    }

    private static boolean isPrime(int number) {
        for (int d = 2; d * d <= number; d++) {
            if (number % d == 0) {
                return false;
            }
        }
        return true;
    }

    private Probability integrate() {
        if (rank == 0) {
            return new Probability(1, 0);
        }
        if (rank == 1) {
            return new Probability(along(new double[] {0.5}), 0);
        }
        Probability result = new Probability(0, Double.POSITIVE_INFINITY);
        for (int points = FIRST_POINTS; points <= MOST_POINTS && result.standardError() > WANTED; points *= 4) {
            result = integrate(points);
        }
        return result;
    }

    private Probability integrate(int points) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] shift = new double[rank];
        double[] w = new double[rank];
        double sum = 0;
        double squares = 0;
        for (int s = 0; s < SHIFTS; s++) {
            for (int k = 0; k < rank; k++) {
                shift[k] = random.nextDouble();
            }
            double mean = 0;
            for (int p = 1; p <= points; p++) {
                for (int k = 0; k < rank; k++) {
                    w[k] = Math.abs(2 * ((p * generator[k] + shift[k]) % 1) - 1);
                }
                mean += (along(w) - mean) / p;
            }
            sum += mean;
            squares += mean * mean;
        }
        double mean = sum / SHIFTS;
        double variance = Math.max(0, squares / SHIFTS - mean * mean) / (SHIFTS - 1);
        return new Probability(Math.min(1, mean), Math.sqrt(variance));
    }

    /** Product of the conditional interval probabilities along one point of the unit cube. */
    private double along(double[] w) {
        double product = 1;
        for (int k = 0; k < rank; k++) {
            double shift = dot(factor[k], y, k);
            double a = (lower[k] - shift) / factor[k][k];
            double b = (upper[k] - shift) / factor[k][k];
            for (int i : boundTo[k]) {
                double slope = factor[i][k];
                double known = dot(factor[i], y, k);
                double one = (lower[i] - known) / slope;
                double two = (upper[i] - known) / slope;
                a = Math.max(a, Math.min(one, two));
                b = Math.min(b, Math.max(one, two));
            }
            double share = a < b ? between(a, b) : 0;
            product *= share;
            if (product == 0) {
                return 0;
            }
            if (k < rank - 1) {
                y[k] = inside(a, b, share, w[k]);
            }
        }
        return product;
    }

    private static double between(double a, double b) {
        return a > 0 ? Normal.cumulative(-a) - Normal.cumulative(-b) : Normal.cumulative(b) - Normal.cumulative(a);
    }

    /** The value with the share {@code w} of the interval below it, taken in the lower tail for precision. */
    private static double inside(double a, double b, double share, double w) {
        double value = a > 0 ? -Normal.quantile(Normal.cumulative(-b) + (1 - w) * share)
                : Normal.quantile(Normal.cumulative(a) + w * share);
        return Math.min(b, Math.max(a, value));
    }

    private static double truncatedMean(double a, double b) {
        double share = between(a, b);
        if (share < 1e-12) {
            return a > 0 ? a : b;
        }
        return (Math.exp(-0.5 * a * a) - Math.exp(-0.5 * b * b)) / Math.sqrt(2 * Math.PI) / share;
    }

    private static double dot(double[] one, double[] two, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += one[i] * two[i];
        }
        return sum;
    }
}
