package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlanSearchTest {
    @Test
    void contractExampleIsReproduced() {
        StepPlan plan = PlanSearch.best(PlanCases.contractExample());
        assertArrayEquals(new double[] {1.5, -2.5, 2.25, 6}, plan.turns());
        assertEquals(10.73720686, plan.objective(), 1e-8);
        double[] targets = {50, 55.8, 55.8, 63.4, 63.4};
        double[] expected = {50.1714954354, 56.7866672533, 54.999748234, 63.1146391666, 61.3277201473};
        for (int i = 0; i < targets.length; i++) {
            assertEquals(expected[i], targets[i] + plan.predictedErrors()[i], 1e-9);
        }
        assertEquals(Set.of("LF", "RF", "LR", "RR"), plan.visits());
        assertTrue(plan.proven());
    }

    @Test
    void everyRandomCaseEqualsFullEnumeration() {
        Random random = new Random(20240517);
        for (int run = 0; run < 3000; run++) {
            StepProblem problem = PlanCases.random(random);
            PlanEnumeration all = PlanEnumeration.of(problem);
            StepPlan best = PlanSearch.best(problem);
            assertEquals(all.best(), best.objective(), 1e-10 * (1 + all.best()), () -> "best of " + problem);
            assertEquals(best.objective(), all.objective(best.turns()), 1e-10 * (1 + all.best()));
            List<StepPlan> perCount = PlanSearch.bestPerVisitCount(problem, 8);
            int found = 0;
            for (int visits = 0; visits <= 8; visits++) {
                double expected = all.bestVisiting(visits);
                if (Double.isFinite(expected)) {
                    StepPlan plan = perCount.get(found++);
                    assertEquals(visits, plan.visits().size());
                    assertEquals(expected, plan.objective(), 1e-10 * (1 + expected));
                }
            }
            assertEquals(found, perCount.size());
        }
    }
}
