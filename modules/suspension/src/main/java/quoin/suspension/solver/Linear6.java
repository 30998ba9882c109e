package quoin.suspension.solver;

/** Six linear equations, by elimination with row exchange. Mutable, for one walker. */
final class Linear6 {
    private static final int N = 6;

    private final double[] a = new double[N * N];
    private final int[] order = new int[N];
    private double determinant;

    /**
     * Takes a matrix apart.
     *
     * @param matrix row by row; its last three columns are divided by the scale
     * @return its determinant
     */
    double decompose(double[] matrix, double scale) {
        for (int i = 0; i < N * N; i++) {
            a[i] = i % N < 3 ? matrix[i] : matrix[i] / scale;
        }
        determinant = 1;
        for (int k = 0; k < N; k++) {
            int pivot = k;
            for (int i = k + 1; i < N; i++) {
                if (Math.abs(a[i * N + k]) > Math.abs(a[pivot * N + k])) {
                    pivot = i;
                }
            }
            order[k] = pivot;
            if (pivot != k) {
                exchange(k, pivot);
                determinant = -determinant;
            }
            double head = a[k * N + k];
            determinant *= head;
            if (head == 0 || Double.isNaN(head)) {
                return 0;
            }
            for (int i = k + 1; i < N; i++) {
                double factor = a[i * N + k] / head;
                a[i * N + k] = factor;
                for (int j = k + 1; j < N; j++) {
                    a[i * N + j] -= factor * a[k * N + j];
                }
            }
        }
        return determinant;
    }

    private void exchange(int one, int other) {
        for (int j = 0; j < N; j++) {
            double kept = a[one * N + j];
            a[one * N + j] = a[other * N + j];
            a[other * N + j] = kept;
        }
    }

    double determinant() {
        return determinant;
    }

    /** Solves in place, with the last three unknowns divided by the scale of {@link #decompose}. */
    void solve(double[] b, double scale) {
        for (int k = 0; k < N; k++) {
            double kept = b[k];
            b[k] = b[order[k]];
            b[order[k]] = kept;
        }
        for (int i = 1; i < N; i++) {
            for (int j = 0; j < i; j++) {
                b[i] -= a[i * N + j] * b[j];
            }
        }
        for (int i = N - 1; i >= 0; i--) {
            for (int j = i + 1; j < N; j++) {
                b[i] -= a[i * N + j] * b[j];
            }
            b[i] /= a[i * N + i];
        }
        for (int i = 3; i < N; i++) {
            b[i] /= scale;
        }
    }
}
