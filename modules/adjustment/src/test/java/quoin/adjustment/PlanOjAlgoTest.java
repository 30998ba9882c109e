package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against ojAlgo's mixed integer quadratic programming, on problems of real size. */
class PlanOjAlgoTest {
    @Test
    void contractExample() {
        assertAgrees(PlanCases.contractExample(), 0.25);
    }

    @Test
    void fourAdjustersAndFiveReadings() {
        Random random = new Random(8);
        for (int run = 0; run < 20; run++) {
            assertAgrees(PlanBenchCases.four(random, PlanBenchCases.Kind.CAR, 0.25, 6), 0.25);
        }
    }

    private static void assertAgrees(StepProblem problem, double stepTurns) {
        double[] turns = PlanOjAlgo.turns(problem, stepTurns);
        assertNotNull(turns);
        double theirs = PlanEnumeration.objective(problem, turns);
        double ours = PlanSearch.best(problem).objective();
        assertTrue(ours <= theirs + 1e-9, () -> "ojAlgo found " + theirs + ", the search " + ours);
        assertEquals(theirs, ours, 1e-3 * theirs, "ojAlgo's own gap is 1e-4 or so");
    }
}
