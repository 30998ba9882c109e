package quoin.adjustment.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The general quadratic programmes of the literature are put as their duals, which are programmes over a box:
 * minimise x'Gx/2 + c'x subject to Ax >= b (or = b) has the dual minimise l'(A G^-1 A')l/2 - (b + A G^-1 c)'l over
 * l >= 0 (or l free), and x = G^-1 (A'l - c).
 */
class BoxedLeastSquaresTest {
    private static final double MANY = 1e9;
    private static final double[] UNITS = {1, 1e-5, 1e5};

    /** Nocedal and Wright, Numerical Optimization, example 16.4: x = (1.4, 1.7), f = 0.8, first multiplier 0.8. */
    @Test
    void nocedalWrightExample164() {
        double[][] inverse = {{0.5, 0}, {0, 0.5}};
        double[] c = {-2, -5};
        double[][] a = {{1, -2}, {-1, -2}, {-1, 2}, {1, 0}, {0, 1}};
        double[] b = {-2, -6, -2, 0, 0};
        double[] multipliers = dual(inverse, c, a, b, 0);
        double[] x = primal(inverse, c, a, multipliers);
        assertArrayEquals(new double[] {1.4, 1.7}, x, 1e-9);
        assertArrayEquals(new double[] {0.8, 0, 0, 0, 0}, multipliers, 1e-9);
        assertEquals(0.8, Math.pow(x[0] - 1, 2) + Math.pow(x[1] - 2.5, 2), 1e-9);
    }

    /** Nocedal and Wright, example 16.2 (equalities): x = (2, -1, 1), multipliers (3, -2). */
    @Test
    void nocedalWrightExample162() {
        double[][] inverse = inverse3(new double[][] {{6, 2, 1}, {2, 5, 2}, {1, 2, 4}});
        double[] c = {-8, -3, -3};
        double[][] a = {{1, 0, 1}, {0, 1, 1}};
        double[] multipliers = dual(inverse, c, a, new double[] {3, 0}, -MANY);
        assertArrayEquals(new double[] {3, -2}, multipliers, 1e-9);
        assertArrayEquals(new double[] {2, -1, 1}, primal(inverse, c, a, multipliers), 1e-9);
    }

    /** Goldfarb and Idnani, Mathematical Programming 27, 1983, the example spread with its codes. */
    @Test
    void goldfarbIdnaniExample() {
        double[][] inverse = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        double[] c = {0, -5, 0};
        double[][] a = {{-4, -3, 0}, {2, 1, 0}, {0, -2, 1}};
        double[] x = primal(inverse, c, a, dual(inverse, c, a, new double[] {-8, 2, 0}, 0));
        assertArrayEquals(new double[] {10.0 / 21, 22.0 / 21, 44.0 / 21}, x, 1e-9);
        assertEquals(-50.0 / 21, 0.5 * (x[0] * x[0] + x[1] * x[1] + x[2] * x[2]) - 5 * x[1], 1e-9);
    }

    @Test
    void randomProblemsMeetTheConditionsOfOptimality() {
        Random random = new Random(3);
        for (int run = 0; run < 5000; run++) {
            int n = 1 + random.nextInt(9);
            int m = 1 + random.nextInt(9);
            double unit = UNITS[run % UNITS.length];
            double[][] rows = new double[m][n];
            double[] low = new double[n];
            double[] high = new double[n];
            double[] price = new double[n];
            double[] h = new double[n];
            double[] t = new double[n];
            double[][] gram = new double[n][n];
            for (double[] row : rows) {
                double error = 5 * unit * random.nextGaussian();
                for (int j = 0; j < n; j++) {
                    row[j] = unit * random.nextGaussian();
                    h[j] += row[j] * error;
                }
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        gram[i][j] += row[i] * row[j];
                    }
                }
            }
            for (int j = 0; j < n; j++) {
                low[j] = random.nextInt(4) == 0 ? 0 : -3 * random.nextDouble();
                high[j] = random.nextInt(4) == 0 ? low[j] : low[j] + 4 * random.nextDouble();
                price[j] = random.nextBoolean() ? 0 : unit * unit * random.nextDouble();
                t[j] = switch (random.nextInt(4)) {
                    case 0 -> low[j];
                    case 1 -> high[j];
                    case 2 -> Math.max(low[j], Math.min(high[j], 0));
                    default -> low[j] + (high[j] - low[j]) * random.nextDouble();
                };
            }
            BoxedLeastSquares problem = new BoxedLeastSquares(gram, price, low, high);
            assertTrue(problem.solve(n, h, t) < 6 * n + 12, "run " + run);
            for (int j = 0; j < n; j++) {
                double slope = h[j];
                for (int i = 0; i < n; i++) {
                    slope += gram[j][i] * t[i];
                }
                double up = 2 * slope + (t[j] >= 0 ? price[j] : -price[j]);
                double down = -2 * slope + (t[j] <= 0 ? price[j] : -price[j]);
                assertTrue(t[j] >= low[j] && t[j] <= high[j]);
                assertTrue(t[j] == high[j] || up > -1e-6 * unit * unit, "run " + run);
                assertTrue(t[j] == low[j] || down > -1e-6 * unit * unit, "run " + run);
            }
            assertTrue(m == 1 || problem.solve(n, h, t.clone()) <= 1, "from the minimiser there is no way to go, run " + run);
        }
    }

    /** From nothing turned, all free and without prices, one step is the whole way; with a price the way is by way of zero. */
    @Test
    void aStartInsideTheBoundsIsLeftAtOnce() {
        double[][] gram = {{2, 1, 0}, {1, 3, 1}, {0, 1, 2}};
        double[] low = {-9, -9, -9};
        double[] high = {9, 9, 9};
        double[] h = {-3, -5, -3};
        for (double from : new double[] {0, -2}) {
            double[] t = {from, from, from};
            assertEquals(1, new BoxedLeastSquares(gram, new double[3], low, high).solve(3, h, t));
            assertArrayEquals(new double[] {1, 1, 1}, t, 1e-12);
        }
        double[] stays = new double[3];
        assertEquals(0, new BoxedLeastSquares(gram, new double[] {11, 11, 11}, low, high).solve(3, h, stays));
        assertArrayEquals(new double[3], stays);
    }

    private static double[] dual(double[][] inverse, double[] c, double[][] a, double[] b, double lowest) {
        int m = a.length;
        double[][] gram = new double[m][m];
        double[] h = new double[m];
        double[] low = new double[m];
        double[] high = new double[m];
        Arrays.fill(low, lowest);
        Arrays.fill(high, MANY);
        for (int i = 0; i < m; i++) {
            double[] left = multiply(inverse, a[i]);
            for (int j = 0; j < m; j++) {
                gram[i][j] = 0.5 * dot(left, a[j]);
            }
            h[i] = -0.5 * (b[i] + dot(left, c));
        }
        double[] multipliers = new double[m];
        new BoxedLeastSquares(gram, new double[m], low, high).solve(m, h, multipliers);
        return multipliers;
    }

    private static double[] primal(double[][] inverse, double[] c, double[][] a, double[] multipliers) {
        double[] right = new double[c.length];
        for (int k = 0; k < c.length; k++) {
            right[k] = -c[k];
            for (int i = 0; i < a.length; i++) {
                right[k] += a[i][k] * multipliers[i];
            }
        }
        return multiply(inverse, right);
    }

    private static double[] multiply(double[][] matrix, double[] vector) {
        double[] product = new double[matrix.length];
        Arrays.setAll(product, i -> dot(matrix[i], vector));
        return product;
    }

    private static double dot(double[] one, double[] two) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * two[i];
        }
        return sum;
    }

    private static double[][] inverse3(double[][] m) {
        return new org.hipparchus.linear.LUDecomposition(new org.hipparchus.linear.Array2DRowRealMatrix(m)).getSolver()
                .getInverse().getData();
    }
}
