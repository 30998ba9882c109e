package quoin.adjustment.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What one reading can come to over whole steps, against trying everything. */
class StepReachTest {

    private static double everything(double error, double[][] contributions, int j) {
        if (j == contributions.length) {
            return error;
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (double c : contributions[j]) {
            double value = everything(error + c, contributions, j + 1);
            nearest = Math.abs(value) < Math.abs(nearest) ? value : nearest;
        }
        return nearest;
    }

    @Test
    void nothingIsNearerThanWhatIsFound() {
        Random random = new Random(8);
        int inside = 0;
        int outside = 0;
        long nodes = 0;
        for (int run = 0; run < 400; run++) {
            double[][] contributions = new double[1 + random.nextInt(4)][];
            for (int j = 0; j < contributions.length; j++) {
                contributions[j] = new double[1 + random.nextInt(6)];
                double step = random.nextGaussian();
                for (int k = 0; k < contributions[j].length; k++) {
                    contributions[j][k] = step * (k - random.nextInt(3));
                }
            }
            double error = 3 * random.nextGaussian();
            double halfWidth = 0.05 + 0.2 * random.nextDouble();
            double nearest = everything(error, contributions, 0);
            StepReach.Nearest found = StepReach.nearest(error, contributions, halfWidth);
            assertTrue(found.proven());
            nodes += found.nodes();
            if (Math.abs(nearest) <= halfWidth) {
                inside++;
                assertTrue(Math.abs(found.value()) <= halfWidth, "run " + run);
            } else {
                outside++;
                assertEquals(Math.abs(nearest), Math.abs(found.value()), 1e-12, "run " + run);
            }
        }
        assertTrue(inside > 80 && outside > 80, inside + " " + outside);
        assertTrue(nodes < 1.05 * 1584, "more partial sums than on the day this was written: " + nodes);
    }

    @Test
    void theEdgeOfTheBandIsInside() {
        assertEquals(0.5, StepReach.nearest(2.5, new double[][] {{0, -2, -4}}, 0.5).value());
        assertEquals(1, StepReach.nearest(3, new double[][] {{0, -2}}, 0.5).value());
        assertEquals(0.25, StepReach.nearest(0.25, new double[0][], 0.5).value(), "nothing to turn");
    }

    /** Twenty adjusters of unlike steps and a band that no sum will hit: too many to try, and it says so. */
    @Test
    void whatIsGivenUpIsNotProven() {
        double[][] contributions = new double[20][40];
        for (int j = 0; j < contributions.length; j++) {
            for (int k = 0; k < contributions[j].length; k++) {
                contributions[j][k] = Math.sqrt(2 + j) * (k - 20);
            }
        }
        StepReach.Nearest found = StepReach.nearest(Math.PI, contributions, 0);
        assertFalse(found.proven());
        assertTrue(Math.abs(found.value()) < 1e-3, "it comes near all the same: " + found.value());
        assertTrue(StepReach.nearest(Math.PI, contributions, 0.01).proven());
        double[][] fewer = {contributions[1], contributions[3], contributions[5], contributions[7], contributions[9]};
        StepReach.Nearest hard = StepReach.nearest(Math.PI, fewer, 1e-5);
        assertTrue(hard.proven() && Math.abs(hard.value()) <= 1e-5);
        assertTrue(hard.nodes() < 1.05 * 73_996, "more than on the day this was written: " + hard.nodes());
    }
}
