package quoin.adjustment.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.junit.jupiter.api.Test;

/** A turned problem is the same problem: lengths stay (orthogonal transformations), whatever the rank. */
class TriangularFormTest {

    private static SearchSpace space(Random random, int rows, int n, boolean singular) {
        double[] error = random.doubles(rows, -3, 3).toArray();
        double[][] column = new double[n][];
        double[][] position = new double[n][];
        for (int j = 0; j < n; j++) {
            column[j] = random.doubles(rows, -1, 1).toArray();
            if (singular && j > 0) {
                double factor = random.nextGaussian();
                column[j] = Arrays.stream(column[0]).map(v -> factor * v).toArray();
            }
            position[j] = random.nextInt(4) == 0 ? new double[] {0} : new double[] {-1, 0, 2};
        }
        return new SearchSpace(error, column, position, new double[n], new int[n], 1, 0);
    }

    @Test
    void everyMisfitStaysWhatItWas() {
        Random random = new Random(6);
        for (int run = 0; run < 300; run++) {
            SearchSpace space = space(random, random.nextInt(7), 1 + random.nextInt(6), run % 3 == 0);
            int n = space.adjusters();
            int[] adjusters = random.ints(0, n).distinct().limit(1 + random.nextInt(n)).toArray();
            TriangularForm form = TriangularForm.of(space, adjusters);
            assertArrayEquals(Arrays.stream(adjusters).sorted().toArray(), Arrays.stream(form.order()).sorted().toArray());
            double[] turns = new double[n];
            double fixed = form.rest();
            double[] right = form.error().clone();
            for (int k = 0; k < adjusters.length; k++) {
                turns[form.order()[k]] = random.nextGaussian();
                for (int i = 0; i < right.length; i++) {
                    right[i] += form.matrix()[i][k] * turns[form.order()[k]];
                    assertTrue(i <= k || form.matrix()[i][k] == 0, "zero below the diagonal");
                }
            }
            double misfit = fixed + Arrays.stream(right).map(v -> v * v).sum();
            assertEquals(space.cost(turns), misfit, 1e-9 * (1 + misfit), "run " + run);
        }
    }

    /** The diagonal is, up to signs, that of Hipparchus' QR of the columns in the same order; the shortest step comes first. */
    @Test
    void theDiagonalIsThatOfALibrary() {
        SearchSpace space = new SearchSpace(new double[] {1, 2, 3, 4}, new double[][] {{3, 1, 0, 2}, {0.1, 0.1, 0, 0.1}, {1, -1, 2, 0}},
                new double[][] {{-1, 0, 1}, {-1, 0, 1}, {-0.1, 0, 0.1}}, new double[3], new int[3], 1, 0);
        TriangularForm form = TriangularForm.of(space, new int[] {0, 1, 2});
        assertArrayEquals(new int[] {1, 2, 0}, form.order(), "0.17, 0.24 and 3.74 long, times their steps");
        double[][] columns = new double[4][3];
        for (int k = 0; k < 3; k++) {
            for (int i = 0; i < 4; i++) {
                columns[i][k] = space.column()[form.order()[k]][i];
            }
        }
        double[][] r = new QRDecomposition(new Array2DRowRealMatrix(columns)).getR().getData();
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                assertEquals(Math.abs(r[i][k]), Math.abs(form.matrix()[i][k]), 1e-12);
            }
        }
    }
}
