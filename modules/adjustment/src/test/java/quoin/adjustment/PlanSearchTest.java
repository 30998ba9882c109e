package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
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

    /** Duplicate adjusters and a price of nothing: the smaller turn, then the positive one, then the earlier adjuster. */
    @Test
    void tiesAreBrokenAsDocumented() {
        List<StepAdjuster> adjusters = List.of(StepAdjuster.stepping("a", "A", 1, -3, 3),
                StepAdjuster.stepping("b", "B", 1, -3, 3), StepAdjuster.stepping("c", "C", 1, -3, 3));
        StepProblem same = new StepProblem(new double[] {2}, new double[] {1}, new double[][] {{1, -1, 1}}, adjusters, 0, 0);
        assertArrayEquals(new double[] {0, 0, -2}, PlanSearch.best(same).turns());
        StepProblem signs = new StepProblem(new double[] {0.5}, new double[] {1}, new double[][] {{0, 0, -1}},
                List.of(adjusters.get(0), adjusters.get(1), StepAdjuster.stepping("c", "C", 1, 0, 1)), 0, 0);
        assertArrayEquals(new double[] {0, 0, 0}, PlanSearch.best(signs).turns());
        StepProblem opposite = new StepProblem(new double[] {0}, new double[] {1}, new double[][] {{1}},
                List.of(new StepAdjuster("a", "A", new double[] {-1, 1}, 1)), 1, 1);
        assertArrayEquals(new double[] {1}, PlanSearch.best(opposite).turns());
    }

    @Test
    void adjustersThatMoveNothingStay() {
        StepProblem problem = PlanCases.fourByFive(new double[5], 0.25, 6);
        StepProblem dead = new StepProblem(new double[] {1, 2}, new double[] {1, 1}, new double[2][4],
                problem.adjusters(), 0, 0);
        StepPlan plan = PlanSearch.best(dead);
        assertArrayEquals(new double[4], plan.turns());
        assertEquals(5, plan.objective(), 1e-12);
        assertTrue(plan.nodes() < 1300, "of five million: " + plan.nodes());
    }

    @Test
    void aCancelledSearchHandsBackTheBestSoFarAndSaysSo() {
        StepProblem hard = PlanCases.denseLattice(12);
        int[] asked = {0};
        StepPlan plan = PlanSearch.best(hard, () -> ++asked[0] > 3);
        assertEquals(4, asked[0], "asked until it says so");
        assertTrue(plan.nodes() >= 4 * 1024 - 4, "once in 1024 looks: " + plan.nodes());
        assertFalse(plan.proven());
        assertEquals(PlanEnumeration.objective(hard, plan.turns()), plan.objective(), 1e-9);
        assertTrue(plan.nodes() < 10_000);
    }

    /** What is there before the next count is begun is handed back. */
    @Test
    void aCancelledListOfPlansHoldsTheCountsReached() {
        int[] asked = {0};
        List<StepPlan> plans = PlanSearch.bestPerVisitCount(PlanCases.contractExample(), 4, () -> ++asked[0] > 2);
        assertEquals(List.of(0, 1, 2), plans.stream().map(plan -> plan.visits().size()).toList());
        assertEquals(List.of(0), PlanSearch.bestPerVisitCount(PlanCases.contractExample(), 4, () -> true).stream()
                .map(plan -> plan.visits().size()).toList(), "nothing turned needs no search");
    }

    /** A turn that gains less than the rounding error is not made, where the adjuster must move anyhow. */
    @Test
    void whatCannotBeToldApartIsDecidedByTheTurns() {
        StepProblem flat = new StepProblem(new double[] {1, 3e-9}, new double[] {1, 1}, new double[][] {{0}, {-1e-9}},
                List.of(new StepAdjuster("a", "A", new double[] {1, 2, 3, 4, 5}, 1)), 0, 0);
        assertArrayEquals(new double[] {1}, PlanSearch.best(flat).turns());
    }

    @Test
    void misuseNamesTheField() {
        double[][] sensitivity = {{1, 1, 1, 1}};
        List<StepAdjuster> four = PlanCases.contractExample().adjusters();
        assertMessage("tolerances[0]: must be positive",
                () -> new StepProblem(new double[1], new double[1], sensitivity, four, 1, 0));
        assertMessage("sensitivityPerTurn: 1 entries; give one per reading, 2",
                () -> new StepProblem(new double[2], new double[] {1, 1}, sensitivity, four, 1, 0));
        assertMessage("tolerances: 2 entries; give one per reading, 1",
                () -> new StepProblem(new double[1], new double[] {1, 1}, sensitivity, four, 1, 0));
        assertMessage("sensitivityPerTurn[0]: 4 entries; give one per adjuster, 3",
                () -> new StepProblem(new double[1], new double[] {1}, sensitivity, four.subList(0, 3), 1, 0));
        assertMessage("pricePerVisit: must be finite and not negative",
                () -> new StepProblem(new double[1], new double[] {1}, sensitivity, four, -1, 0));
        assertMessage("errors[0]: must be a finite number",
                () -> new StepProblem(new double[] {Double.NaN}, new double[] {1}, sensitivity, four, 1, 0));
        assertMessage("a.minTurns: must be finite and not above maxTurns",
                () -> StepAdjuster.stepping("a", "LF", 0.25, 2, 1));
        assertMessage("a.maxTurns: no whole step lies between minTurns and maxTurns",
                () -> StepAdjuster.stepping("a", "LF", 0.25, 0.1, 0.2));
    }

    private static void assertMessage(String message, org.junit.jupiter.api.function.Executable misuse) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, misuse).getMessage());
    }
}
