package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LinearBeliefTest {

    /**
     * Wampler1 of the NIST Statistical Reference Datasets: y = 1 + x + x^2 + x^3 + x^4 + x^5, x = 0 ... 20; certified
     * coefficients are all 1. Inputs are scaled so that a finite prior stays vague.
     */
    @Test
    void withoutAPriorItIsLeastSquares() {
        List<LinearBelief.Observation> data = new ArrayList<>();
        for (int x = 0; x <= 20; x++) {
            double[] row = new double[6];
            double y = 0;
            for (int k = 0; k < 6; k++) {
                row[k] = Math.pow(x / 20.0, k);
                y += Math.pow(x, k);
            }
            data.add(new LinearBelief.Observation(row, y, 1));
        }
        double[] vague = {1e9, 1e9, 1e9, 1e9, 1e9, 1e9};
        LinearBelief fit = LinearBelief.of(new double[6], vague, data);
        for (int k = 0; k < 6; k++) {
            assertEquals(1, fit.mean(k) / Math.pow(20, k), 1e-4, "coefficient " + k);
        }
    }

    /** One coefficient by hand: prior 0.30 +- 0.06, seen 0.20 +- 0.06 for one turn: halfway, and 0.06 / sqrt 2. */
    @Test
    void onePriorAndOneObservationMeetInTheMiddle() {
        LinearBelief belief = LinearBelief.of(new double[] {0.30}, new double[] {0.06},
                List.of(new LinearBelief.Observation(new double[] {1}, 0.20, 0.06)));
        assertEquals(0.25, belief.mean(0), 1e-12);
        assertEquals(0.06 / Math.sqrt(2), belief.sd(0), 1e-12);
        assertEquals(2 * 0.06 / Math.sqrt(2), belief.sd(new double[] {2}), 1e-12);
    }

    @Test
    void aLargerMoveTeachesMore() {
        LinearBelief one = LinearBelief.of(new double[] {0.3, 0}, new double[] {0.1, 0.1},
                List.of(new LinearBelief.Observation(new double[] {1, 0}, 0.4, 0.05)));
        LinearBelief three = LinearBelief.of(new double[] {0.3, 0}, new double[] {0.1, 0.1},
                List.of(new LinearBelief.Observation(new double[] {3, 0}, 1.2, 0.05)));
        assertEquals(0.4, three.mean(0), 0.01);
        assertEquals(true, three.sd(0) < one.sd(0));
        assertEquals(0.1, three.sd(1), 1e-12, "what did not move teaches nothing");
    }

    @Test
    void aPriorWithoutWidthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> LinearBelief.of(new double[1], new double[1], List.of()));
        assertThrows(IllegalArgumentException.class, () -> new LinearBelief.Observation(new double[1], 1, 0));
    }

    @Test
    void whereNothingIsUnknownNothingIsUncertain() {
        assertEquals(0, LinearBelief.of(new double[0], new double[0], List.of()).sd(new double[0]));
    }
}
