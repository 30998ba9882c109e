package quoin.adjustment.learn;

/**
 * A rigid body on four vertical springs, each a suspension (with an anti-roll bar across the axle) in series with a
 * tyre: the linear response of loads and heights. Derived; verified by energy minimisation.
 *
 * <p>Body plane z = q0 + q1 x + q2 y at the wheels. An offset e raises the corner, so the wheel force is
 * F = K (E e + S^-1 fr - B q) with S the suspension stiffness of the axle, K = (S^-1 + Kt^-1)^-1, E = S^-1 diag(kw),
 * fr the friction force, B rows (1, x, y). Equilibrium B' F = w gives q.
 *
 * @param x wheel places, mm forward
 * @param y wheel places, mm left
 * @param heightX height points, mm forward
 * @param heightY height points, mm left
 * @param tyre tyre rates, N/mm
 */
record FourSprings(double[] x, double[] y, double[] heightX, double[] heightY, double[] tyre) {

    /** Columns of {@link #response}: offsets of the four corners, mm. */
    static final int OFFSET = 0;
    /** Columns: added weight N, its moments N mm about y (times x) and about x (times y). */
    static final int LOAD = 4;
    /** Columns: friction force at the four suspensions, N at the wheel. */
    static final int FRICTION = 7;
    static final int COLUMNS = 11;
    static final int ROWS = 8;

    /**
     * Loads (rows 0-3, N) and heights (rows 4-7, mm) per unit of each column.
     *
     * @param rate wheel rates, N/mm
     * @param bar bar rates front and rear, N/mm
     */
    double[][] response(double[] rate, double[] bar) {
        double[][] stiffness = new double[4][4];
        double[][] give = new double[4][4];
        for (int axle = 0; axle < 2; axle++) {
            axle(axle * 2, rate, bar[axle], stiffness, give);
        }
        double[][] kb = new double[4][3];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                kb[i][0] += stiffness[i][j];
                kb[i][1] += stiffness[i][j] * x[j];
                kb[i][2] += stiffness[i][j] * y[j];
            }
        }
        double[][] inverse = inverse(normal(kb));
        double[][] out = new double[ROWS][COLUMNS];
        double[] drive = new double[4];
        for (int c = 0; c < 4; c++) {
            for (int i = 0; i < 4; i++) {
                drive[i] = give[i][c] * rate[c];
            }
            offsetColumn(out, OFFSET + c, drive, stiffness, kb, inverse);
            for (int i = 0; i < 4; i++) {
                drive[i] = give[i][c];
            }
            offsetColumn(out, FRICTION + c, drive, stiffness, kb, inverse);
        }
        for (int c = 0; c < 3; c++) {
            double[] q = {-inverse[0][c], -inverse[1][c], -inverse[2][c]};
            for (int i = 0; i < 4; i++) {
                out[i][LOAD + c] = -(kb[i][0] * q[0] + kb[i][1] * q[1] + kb[i][2] * q[2]);
            }
            heights(out, LOAD + c, q);
        }
        return out;
    }

    private void axle(int left, double[] rate, double bar, double[][] stiffness, double[][] give) {
        int right = left + 1;
        double a = rate[left] + bar;
        double d = rate[right] + bar;
        double det = a * d - bar * bar;
        give[left][left] = d / det;
        give[right][right] = a / det;
        give[left][right] = bar / det;
        give[right][left] = bar / det;
        double ca = give[left][left] + 1 / tyre[left];
        double cd = give[right][right] + 1 / tyre[right];
        double cb = give[left][right];
        double cdet = ca * cd - cb * cb;
        stiffness[left][left] = cd / cdet;
        stiffness[right][right] = ca / cdet;
        stiffness[left][right] = -cb / cdet;
        stiffness[right][left] = -cb / cdet;
    }

    private void offsetColumn(double[][] out, int column, double[] drive, double[][] stiffness, double[][] kb,
            double[][] inverse) {
        double[] moment = new double[3];
        for (int i = 0; i < 4; i++) {
            for (int m = 0; m < 3; m++) {
                moment[m] += kb[i][m] * drive[i];
            }
        }
        double[] q = new double[3];
        for (int m = 0; m < 3; m++) {
            q[m] = inverse[m][0] * moment[0] + inverse[m][1] * moment[1] + inverse[m][2] * moment[2];
        }
        for (int i = 0; i < 4; i++) {
            double force = -(kb[i][0] * q[0] + kb[i][1] * q[1] + kb[i][2] * q[2]);
            for (int j = 0; j < 4; j++) {
                force += stiffness[i][j] * drive[j];
            }
            out[i][column] = force;
        }
        heights(out, column, q);
    }

    private void heights(double[][] out, int column, double[] q) {
        for (int i = 0; i < 4; i++) {
            out[4 + i][column] = q[0] + q[1] * heightX[i] + q[2] * heightY[i];
        }
    }

    private double[][] normal(double[][] kb) {
        double[][] a = new double[3][3];
        for (int i = 0; i < 4; i++) {
            for (int m = 0; m < 3; m++) {
                a[0][m] += kb[i][m];
                a[1][m] += x[i] * kb[i][m];
                a[2][m] += y[i] * kb[i][m];
            }
        }
        return a;
    }

    private static double[][] inverse(double[][] a) {
        double[][] c = new double[3][3];
        for (int i = 0; i < 3; i++) {
            int i1 = (i + 1) % 3;
            int i2 = (i + 2) % 3;
            for (int j = 0; j < 3; j++) {
                int j1 = (j + 1) % 3;
                int j2 = (j + 2) % 3;
                c[j][i] = a[i1][j1] * a[i2][j2] - a[i1][j2] * a[i2][j1];
            }
        }
        double det = a[0][0] * c[0][0] + a[0][1] * c[1][0] + a[0][2] * c[2][0];
        for (double[] row : c) {
            for (int j = 0; j < 3; j++) {
                row[j] /= det;
            }
        }
        return c;
    }
}
