package quoin.adjustment.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.mechanics.MeasurementModel;

/**
 * Certified values of the National Institute of Standards and Technology, Statistical Reference Datasets, linear
 * regression (https://www.itl.nist.gov/div898/strd/lls/lls.shtml).
 */
class LeastSquaresTest {

    /** Norris: y, x. Lower level of difficulty, observed data (ozone monitors, J. Norris, NIST). */
    private static final double[] NORRIS = {0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5,
        668.5, 666.3, 998.5, 996.3, 449.1, 448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5, 668.8, 666.9,
        339.3, 338.0, 448.9, 447.5, 10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8, 888.8, 887.6, 119.6, 120.2, 0.3, 0.3,
        0.6, 0.3, 557.6, 556.8, 339.3, 339.1, 888.0, 887.2, 998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2,
        668.4, 669.1, 449.2, 448.9, 0.2, 0.5};

    /** Longley: y, six predictors. Higher level of difficulty, observed data (J. W. Longley, JASA 62, 1967, 819-841). */
    private static final double[] LONGLEY = {60323, 83.0, 234289, 2356, 1590, 107608, 1947, 61122, 88.5, 259426, 2325, 1456,
        108632, 1948, 60171, 88.2, 258054, 3682, 1616, 109773, 1949, 61187, 89.5, 284599, 3351, 1650, 110929, 1950, 63221, 96.2,
        328975, 2099, 3099, 112075, 1951, 63639, 98.1, 346999, 1932, 3594, 113270, 1952, 64989, 99.0, 365385, 1870, 3547, 115094,
        1953, 63761, 100.0, 363112, 3578, 3350, 116219, 1954, 66019, 101.2, 397469, 2904, 3048, 117388, 1955, 67857, 104.6,
        419180, 2822, 2857, 118734, 1956, 68169, 108.4, 442769, 2936, 2798, 120445, 1957, 66513, 110.8, 444546, 4681, 2637,
        121950, 1958, 68655, 112.6, 482704, 3813, 2552, 123366, 1959, 69564, 114.2, 502601, 3931, 2514, 125368, 1960, 69331,
        115.7, 518173, 4806, 2572, 127852, 1961, 70551, 116.9, 554894, 4007, 2827, 130081, 1962};

    @Test
    void norris() {
        Fitted fit = fit(NORRIS, 1);
        assertClose(new double[] {-0.262323073774029, 1.00211681802045}, fit.b(), 1e-12);
        assertClose(new double[] {0.232818234301152, 0.429796848199937e-3}, fit.sd(), 1e-12);
        assertEquals(26.6173985294224, fit.residualSquares(), 26.6 * 1e-12);
    }

    @Test
    void longley() {
        Fitted fit = fit(LONGLEY, 6);
        assertClose(new double[] {-3482258.63459582, 15.0618722713733, -0.358191792925910e-1, -2.02022980381683,
            -1.03322686717359, -0.511041056535807e-1, 1829.15146461355}, fit.b(), 1e-8);
        assertClose(new double[] {890420.383607373, 84.9149257747669, 0.334910077722432e-1, 0.488399681651699,
            0.214274163161675, 0.226073200069370, 455.478499142212}, fit.sd(), 1e-8);
    }

    /** Wampler1: y = 1 + x + ... + x^5 for x = 0 .. 20; every coefficient is 1, no residual (R. H. Wampler, JASA 65, 1970). */
    @Test
    void wampler1() {
        double[] rows = new double[21 * 6];
        for (int x = 0; x <= 20; x++) {
            for (int p = 1; p <= 5; p++) {
                rows[x * 6 + p] = Math.pow(x, p);
                rows[x * 6] += Math.pow(x, p);
            }
            rows[x * 6] += 1;
        }
        Fitted fit = fit(rows, 5);
        assertClose(new double[] {1, 1, 1, 1, 1, 1}, fit.b(), 1e-8);
        assertEquals(0, fit.residualSquares(), 1e-12);
    }

    /**
     * Misra1a: y = b1 (1 - exp(-b2 x)), lower level of difficulty, from the first start of the set; data from memory. The
     * linear solution inside Gauss-Newton's method, as the fit of a car uses it.
     */
    @Test
    void misra1aByGaussNewton() {
        double[] y = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};
        double[] x = {77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
        double[] b = {250, 0.0005};
        LeastSquares last = null;
        for (int step = 0; step < 30; step++) {
            double[][] a = new double[x.length][];
            double[] missing = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                double decay = Math.exp(-b[1] * x[i]);
                a[i] = new double[] {1 - decay, b[0] * x[i] * decay};
                missing[i] = y[i] - b[0] * (1 - decay);
            }
            last = LeastSquares.solve(a, missing, x.length, 2);
            b[0] += last.solution()[0];
            b[1] += last.solution()[1];
        }
        assertClose(new double[] {2.3894212918E+02, 5.5015643181E-04}, b, 1e-10);
        assertEquals(1.2455138894E-01, last.residualSquares(), 1e-11);
    }

    /** JCGM 100:2008 H.3, calibration of a thermometer by a straight line from 20 degrees; data from memory. */
    @Test
    void gumH3ThermometerLine() {
        double[] at = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] correction = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        double[] rows = new double[2 * at.length];
        for (int i = 0; i < at.length; i++) {
            rows[2 * i] = correction[i];
            rows[2 * i + 1] = at[i] - 20;
        }
        Fitted fit = fit(rows, 1);
        assertEquals(-0.171204, fit.b()[0], 6e-7);
        assertEquals(0.002183, fit.b()[1], 6e-7);
        assertEquals(0.002878, fit.sd()[0], 6e-7);
        assertEquals(0.000668, fit.sd()[1], 6e-7);
        assertEquals(0.003498, Math.sqrt(fit.residualSquares() / 9), 6e-7);
        double[][] correlation = {{1, fit.correlation()}, {fit.correlation(), 1}};
        assertEquals(-0.930430, fit.correlation(), 6e-6);
        MeasurementModel.Result at30 = new MeasurementModel(line -> line[0] + 10 * line[1]).evaluate(List.of(
                MeasurementModel.Input.of(fit.b()[0], fit.sd()[0]), MeasurementModel.Input.of(fit.b()[1], fit.sd()[1])),
                correlation);
        assertEquals(-0.149377, at30.value(), 6e-7);
        assertEquals(0.004139, at30.standardUncertainty(), 6e-7);
    }

    @Test
    void dependentColumnsAreRefused() {
        double[][] a = {{1, 0}, {1, 0}, {1, 0}};
        assertThrows(IllegalArgumentException.class, () -> LeastSquares.solve(a, new double[] {1, 2, 3}, 3, 2));
    }

    /** correlation of the first two coefficients. */
    private record Fitted(double[] b, double[] sd, double residualSquares, double correlation) {
    }

    /** Fits y on an intercept and the predictors; rows hold y first. */
    private static Fitted fit(double[] rows, int predictors) {
        int n = rows.length / (predictors + 1);
        int m = predictors + 1;
        double[][] a = new double[n][m];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = rows[i * m];
            a[i][0] = 1;
            System.arraycopy(rows, i * m + 1, a[i], 1, predictors);
        }
        LeastSquares fit = LeastSquares.solve(a, y, n, m);
        double variance = fit.residualSquares() / (n - m);
        double[] sd = new double[m];
        double[][] columns = new double[m][];
        for (int k = 0; k < m; k++) {
            double[] unit = new double[m];
            unit[k] = 1;
            // column k of R^-T squared is the k-th diagonal of (R'R)^-1
            columns[k] = rowOfInverse(fit.factor(), unit);
            sd[k] = Math.sqrt(variance * product(columns[k], columns[k]));
        }
        return new Fitted(fit.solution(), sd, fit.residualSquares(),
                variance * product(columns[0], columns[1]) / (sd[0] * sd[1]));
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] rowOfInverse(double[][] r, double[] unit) {
        double[] x = new double[unit.length];
        for (int i = 0; i < x.length; i++) {
            double sum = unit[i];
            for (int j = 0; j < i; j++) {
                sum -= r[j][i] * x[j];
            }
            x[i] = sum / r[i][i];
        }
        return x;
    }

    private static void assertClose(double[] expected, double[] actual, double relative) {
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], actual[i], Math.abs(expected[i]) * relative, "value " + i);
        }
    }
}
