package quoin.adjustment.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/**
 * The closed response against the equations of statics as they stand: four suspension travels, four wheel forces and the
 * plane of the body, eleven unknowns, solved by Hipparchus. Force of a suspension: rate times (travel + offset) + friction +
 * bar times the difference of the travels; travel + force / tyre rate + height of the body = 0; the forces carry the weight.
 */
class FourSpringsTest {
    private static final double[] X = {0, 15, -2380, -2395};
    private static final double[] Y = {730, -715, 690, -705};
    private static final double[] HEIGHT_X = {-300, -280, -2200, -2150};
    private static final double[] HEIGHT_Y = {350, -340, 310, -330};
    private static final double[] TYRE = {180, 210, 230, 250};
    private static final double[] RATE = {42, 55, 68, 60};
    private static final double[] BAR = {18, 7};

    /** Loads and heights for offsets, added weight with its moments, and friction, in the order of the columns. */
    private static double[] solved(double[] rate, double[] bar, double[] drive) {
        double[][] a = new double[11][11];
        double[] b = new double[11];
        for (int i = 0; i < 4; i++) {
            int other = i ^ 1;
            // travel i: 0-3, force i: 4-7, plane: 8-10
            a[i][4 + i] = 1;
            a[i][i] = -(rate[i] + bar[i / 2]);
            a[i][other] = bar[i / 2];
            b[i] = rate[i] * drive[FourSprings.OFFSET + i] + drive[FourSprings.FRICTION + i];
            double[] plane = {1, X[i], Y[i]};
            a[4 + i][i] = 1;
            a[4 + i][4 + i] = 1 / TYRE[i];
            for (int m = 0; m < 3; m++) {
                a[4 + i][8 + m] = plane[m];
                a[8 + m][4 + i] = plane[m];
            }
        }
        for (int m = 0; m < 3; m++) {
            b[8 + m] = drive[FourSprings.LOAD + m];
        }
        double[] u = new LUDecomposition(new Array2DRowRealMatrix(a)).getSolver().solve(new ArrayRealVector(b)).toArray();
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            out[i] = u[4 + i];
            out[4 + i] = u[8] + u[9] * HEIGHT_X[i] + u[10] * HEIGHT_Y[i];
        }
        return out;
    }

    @Test
    void everyColumnIsThatOfStatics() {
        FourSprings springs = new FourSprings(X, Y, HEIGHT_X, HEIGHT_Y, TYRE);
        for (double[] bar : new double[][] {{0, 0}, BAR}) {
            double[][] response = springs.response(RATE, bar);
            for (int column = 0; column < FourSprings.COLUMNS; column++) {
                double[] drive = new double[FourSprings.COLUMNS];
                drive[column] = 1;
                double[] expected = solved(RATE, bar, drive);
                for (int row = 0; row < FourSprings.ROWS; row++) {
                    assertEquals(expected[row], response[row][column], 1e-9 * (1 + Math.abs(expected[row])), "row " + row + " column " + column);
                }
            }
        }
    }

    /** Stands in place of tyres: nothing gives below the wheel. */
    @Test
    void standsDoNotGive() {
        double[] rigid = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[][] stands = new FourSprings(X, Y, HEIGHT_X, HEIGHT_Y, rigid).response(RATE, BAR);
        double[] stiff = {1e9, 1e9, 1e9, 1e9};
        double[][] almost = new FourSprings(X, Y, HEIGHT_X, HEIGHT_Y, stiff).response(RATE, BAR);
        for (int row = 0; row < FourSprings.ROWS; row++) {
            assertEquals(almost[row][0], stands[row][0], 1e-4);
        }
    }
}
