package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Against ojAlgo's integer quadratic programming, on problems of real size. */
class PlanOjAlgoTest {
    @Test
    void contractExample() {
        assertAgrees(withoutPriceOfTurning(PlanCases.contractExample(), 1), 0.25);
    }

    @Test
    void fourAdjustersAndFiveReadings() {
        Random random = new Random(8);
        for (int run = 0; run < 10; run++) {
            StepProblem problem = PlanBenchCases.four(random, PlanBenchCases.Kind.CAR, 0.25, 6);
            assertAgrees(withoutPriceOfTurning(problem, 1), 0.25);
        }
    }

    /** Here ojAlgo declares positions OPTIMAL that are not, so it can only bear witness from one side. */
    @Test
    @Tag("slow")
    void eightAdjustersAndEightReadings() {
        Random random = new Random(9);
        for (int run = 0; run < 4; run++) {
            StepProblem problem = withoutPriceOfTurning(
                    PlanBenchCases.eight(random, PlanBenchCases.Kind.CHANCE, 0.25, 6), 0);
            boolean[] free = {true, true, true, true, true, true, true, true};
            double theirs = PlanEnumeration.objective(problem, PlanOjAlgo.turns(problem, 0.25, free));
            double ours = PlanSearch.best(problem).objective();
            assertTrue(ours <= theirs + 1e-9, () -> "ojAlgo found " + theirs + ", the search " + ours);
        }
    }

    private static void assertAgrees(StepProblem problem, double stepTurns) {
        double theirs = PlanEnumeration.objective(problem, PlanOjAlgo.best(problem, stepTurns));
        double ours = PlanSearch.best(problem).objective();
        assertEquals(theirs, ours, 1e-9 * (1 + theirs));
    }

    private static StepProblem withoutPriceOfTurning(StepProblem problem, double pricePerVisit) {
        return new StepProblem(problem.errors(), problem.tolerances(), problem.sensitivityPerTurn(), problem.adjusters(),
                pricePerVisit, 0);
    }
}
