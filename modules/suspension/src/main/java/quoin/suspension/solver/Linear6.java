package quoin.suspension.solver;

/** Six linear equations, by elimination with row exchange. Mutable, for one walker. */
final class Linear6 {
    private static final int N = 6;

    private final double[] a = new double[N * N];
    private final double[] inverse = new double[N];
    private final int[] order = new int[N];

    /**
     * Takes a matrix apart.
     *
     * @param matrix row by row; its last three columns are divided by the scale
     * @return its determinant; 0 where it is singular
     */
    double decompose(double[] matrix, double scale) {
        double perScale = 1 / scale;
        for (int i = 0; i < N * N; i += N) {
            a[i] = matrix[i];
            a[i + 1] = matrix[i + 1];
            a[i + 2] = matrix[i + 2];
            a[i + 3] = perScale * matrix[i + 3];
            a[i + 4] = perScale * matrix[i + 4];
            a[i + 5] = perScale * matrix[i + 5];
        }
        double determinant = 1;
        for (int k = 0; k < N; k++) {
            if (exchange(k)) {
                determinant = -determinant;
            }
            double head = a[k * N + k];
            determinant *= head;
            if (head == 0 || Double.isNaN(head)) {
                return 0;
            }
            inverse[k] = 1 / head;
            for (int i = k + 1; i < N; i++) {
                double factor = a[i * N + k] * inverse[k];
                a[i * N + k] = factor;
                for (int j = k + 1; j < N; j++) {
                    a[i * N + j] -= factor * a[k * N + j];
                }
            }
        }
        return determinant;
    }

    /** Brings the largest head of a column up; true where rows were exchanged. */
    private boolean exchange(int k) {
        int pivot = k;
        double largest = Math.abs(a[k * N + k]);
        for (int i = k + 1; i < N; i++) {
            double size = Math.abs(a[i * N + k]);
            if (size > largest) {
                largest = size;
                pivot = i;
            }
        }
        order[k] = pivot;
        if (pivot == k) {
            return false;
        }
        for (int j = 0; j < N; j++) {
            double kept = a[k * N + j];
            a[k * N + j] = a[pivot * N + j];
            a[pivot * N + j] = kept;
        }
        return true;
    }

    /** Solves in place, with the last three unknowns divided by the scale of {@link #decompose}. */
    void solve(double[] b, double scale) {
        for (int k = 0; k < N; k++) {
            double kept = b[k];
            b[k] = b[order[k]];
            b[order[k]] = kept;
        }
        for (int i = 1; i < N; i++) {
            double sum = b[i];
            for (int j = 0; j < i; j++) {
                sum -= a[i * N + j] * b[j];
            }
            b[i] = sum;
        }
        for (int i = N - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < N; j++) {
                sum -= a[i * N + j] * b[j];
            }
            b[i] = sum * inverse[i];
        }
        double perScale = 1 / scale;
        b[3] *= perScale;
        b[4] *= perScale;
        b[5] *= perScale;
    }
}
