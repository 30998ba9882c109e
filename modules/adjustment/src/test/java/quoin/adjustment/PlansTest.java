package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PlansTest {
    private static final PlanUncertainty SMALL = PlanUncertainty.constant(new double[][] {{0.01, 0}, {0, 0.01}});

    @Test
    void theFewestVisitsThatAreSureEnoughComeFirst() {
        PlanOptions options = Plans.offer(twoReadings(3, 2.2, 1), SMALL);
        assertEquals(3, options.options().size());
        assertEquals(List.of(0, 1, 2), options.options().stream().map(PlanOption::visits).toList());
        assertEquals(2, options.recommended().visits());
        assertEquals(PlanReason.Kind.FEWEST_VISITS, options.reason().kind());
        assertEquals("Fewest corners for 90 % certainty: visits two corners and ends inside tolerance with over 99 %"
                + "; fewer corners reach under 1 %.", options.reason().sentence());
        assertEquals(Optional.empty(), options.conflict());
        assertTrue(options.outOfReach().isEmpty());
    }

    @Test
    void nothingIsTurnedWhenAllIsInside() {
        PlanOptions options = Plans.offer(twoReadings(0.3, 0.2, 0.001), SMALL);
        assertEquals(0, options.recommended().visits());
        assertEquals(PlanReason.Kind.NOTHING_TO_TURN, options.reason().kind());
        assertTrue(options.options().get(1).worthTheVisits());
    }

    @Test
    void noisyReadingsGiveTheMostLikely() {
        PlanUncertainty noisy = PlanUncertainty.constant(new double[][] {{1, 0}, {0, 1}});
        PlanOptions options = Plans.offer(twoReadings(3, 2.2, 1), noisy);
        assertEquals(PlanReason.Kind.MOST_LIKELY, options.reason().kind());
        assertEquals(2, options.recommended().visits());
        assertEquals(0.45, options.reason().probability(), 0.03);
    }

    /** Contract example: the right rear height stays 2 mm low because the rod's range ends. */
    @Test
    void theContractExampleCannotBeMet() {
        double[][] covariance = new double[5][5];
        for (int i = 0; i < 5; i++) {
            covariance[i][i] = i == 0 ? 0.01 : 0.04;
        }
        StepProblem problem = PlanCases.contractExample();
        PlanOptions options = Plans.offer(problem, PlanUncertainty.constant(covariance));
        assertEquals(PlanReason.Kind.SMALLEST_ERRORS, options.reason().kind());
        assertEquals(PlanSearch.best(problem).turns()[3], options.recommended().plan().turns()[3]);
        assertEquals(10.73720686, options.recommended().plan().objective(), 1e-8);
        PlanConflict conflict = options.conflict().orElseThrow();
        assertTrue(conflict.readings().contains(4));
        assertTrue(conflict.adjustersAtEnd().contains("adjusterRR"));
        assertTrue(options.outOfReach().isEmpty(), "each reading alone could be met");
    }

    /** The proven distance lies below a grid over the ranges, and the point named attains it. */
    @Test
    @Tag("slow")
    void aConflictIsOneOnTheGridToo() {
        StepProblem problem = PlanCases.contractExample();
        double distance = PlanConflict.of(problem).orElseThrow().distance();
        double nearest = Double.POSITIVE_INFINITY;
        for (double a = -6; a <= 6; a += 0.4) {
            for (double b = -6; b <= 6; b += 0.4) {
                for (double c = -6; c <= 6; c += 0.4) {
                    for (double d = -6; d <= 6; d += 0.4) {
                        nearest = Math.min(nearest, outside(problem, new double[] {a, b, c, d}));
                    }
                }
            }
        }
        assertTrue(distance <= nearest + 1e-9, distance + " against " + nearest);
        assertEquals(distance, outside(problem, PlanConflict.of(problem).orElseThrow().turns()), 1e-6);
    }

    @Test
    void whatCannotBeReachedIsSaidWithTheReason() {
        List<StepAdjuster> adjusters = List.of(StepAdjuster.stepping("perchLF", "LF", 0.25, -1, 1),
                StepAdjuster.stepping("perchRF", "RF", 2, -4, 4), StepAdjuster.locked("perchLR", "LR"));
        double[][] sensitivity = {{1, 0.5, 3}, {0, 1.5, 0}, {0.001, 0, 5}, {1, 0, 0}};
        StepProblem problem = new StepProblem(new double[] {5, 1.5, 2, 0.9}, new double[] {0.5, 0.5, 1, 0.2},
                sensitivity, adjusters, 1, 0.001);
        List<PlanReach> reach = PlanReach.of(problem);
        assertEquals(PlanReach.Kind.RANGE_ENDS, reach.get(0).kind());
        assertEquals(2, reach.get(0).nearestError(), 1e-12);
        assertEquals(8, reach.get(0).highestError(), 1e-12);
        assertEquals(List.of("perchRF", "perchLF"), reach.get(0).adjustersAtEnd());
        assertEquals(PlanReach.Kind.STEPS_TOO_COARSE, reach.get(1).kind());
        assertEquals(1.5, Math.abs(reach.get(1).nearestError()), 1e-12);
        assertEquals(PlanReach.Kind.NOTHING_MOVES_IT, reach.get(2).kind());
        assertEquals(1.999, reach.get(2).nearestError(), 1e-12);
        assertEquals(PlanReach.Kind.IN_REACH, reach.get(3).kind());
        PlanOptions options = Plans.offer(problem, PlanUncertainty.constant(new double[4][4]));
        assertEquals(List.of(0, 1, 2), options.outOfReach().stream().map(PlanReach::reading).toList());
    }

    private static PlanReach reach(double error, double tolerance, StepAdjuster adjuster, double sensitivity) {
        return PlanReach.of(new StepProblem(new double[] {error}, new double[] {tolerance}, new double[][] {{sensitivity}},
                List.of(adjuster), 0, 0)).get(0);
    }

    /** On the edge of the tolerance is inside; a tenth of the tolerance over the whole range is what moves a reading. */
    @Test
    void theEdgesOfReach() {
        StepAdjuster coarse = StepAdjuster.stepping("a", "LF", 2, -4, 4);
        assertEquals(PlanReach.Kind.IN_REACH, reach(0.5, 0.5, StepAdjuster.locked("a", "LF"), 1).kind());
        assertEquals(PlanReach.Kind.IN_REACH, reach(5, 1, coarse, 1).kind(), "four down, one left");
        assertEquals(PlanReach.Kind.IN_REACH, reach(2.5, 0.5, coarse, 1).kind(), "by the step of two");
        assertEquals(PlanReach.Kind.NOTHING_MOVES_IT, reach(50, 10, coarse, 0.12).kind(), "0.96 of 10");
        assertEquals(PlanReach.Kind.RANGE_ENDS, reach(50, 10, coarse, 0.125).kind(), "a whole 1 of 10");
        assertEquals(PlanReach.Kind.RANGE_ENDS, reach(0.5, 0.1, coarse, 0.01).kind(), "0.08 of 0.1");
    }

    /** The whole is 8 mm from 10 to 18; a twentieth of that is worth naming. */
    @Test
    void onlyWhatMattersIsNamedAtItsEnd() {
        List<StepAdjuster> adjusters = List.of(StepAdjuster.stepping("most", "LF", 1, 0, 1), StepAdjuster.stepping("twentieth", "RF", 1, 0, 1),
                StepAdjuster.stepping("less", "LR", 1, 0, 1));
        StepProblem problem = new StepProblem(new double[] {10}, new double[] {1}, new double[][] {{7.2, 0.41, 0.39}}, adjusters, 0, 0);
        assertEquals(List.of("most", "twentieth"), PlanReach.of(problem).get(0).adjustersAtEnd());
    }

    /** Half a millimetre at the other corner lowers the objective, and the chance by next to nothing. */
    @Test
    void aVisitForLessThanFivePointsIsNotMade() {
        PlanUncertainty noisy = PlanUncertainty.constant(new double[][] {{1, 0}, {0, 1}});
        PlanOptions options = Plans.offer(twoReadings(3, 0.25, 0.01), noisy);
        assertEquals(PlanReason.Kind.MOST_LIKELY, options.reason().kind());
        assertEquals(1, options.recommended().visits());
        assertTrue(options.options().get(2).plan().objective() < options.options().get(1).plan().objective());
    }

    /** A second visit at an adjuster that moves nothing leaves the errors as large as they were. */
    @Test
    void aVisitThatChangesNothingIsNotWorthIt() {
        StepProblem problem = new StepProblem(new double[] {3}, new double[] {1}, new double[][] {{1, 0}}, twoReadings(3, 0, 1).adjusters(), 1, 0.001);
        List<PlanOption> options = Plans.offer(problem, PlanUncertainty.constant(new double[][] {{0.01}})).options();
        assertEquals(List.of(0, 1, 2), options.stream().map(PlanOption::visits).toList());
        assertFalse(options.get(2).worthTheVisits());
    }

    @Test
    void aPlanThatNeedsMoreVisitsThanPreferredIsStillOffered() {
        PlanOptions options = Plans.offer(twoReadings(3, 2.2, 1), SMALL, new PlanPreferences(0, 0.9),
                PlanCancellation.NEVER);
        assertEquals(List.of(0, 2), options.options().stream().map(PlanOption::visits).toList());
    }

    @Test
    void aVisitThatLeavesLargerErrorsIsNotWorthIt() {
        PlanOptions options = Plans.offer(twoReadings(3, 0, 1), SMALL);
        assertTrue(options.options().get(1).worthTheVisits());
        assertFalse(options.options().get(2).worthTheVisits());
        assertEquals(1, options.recommended().visits());
    }

    private static double outside(StepProblem problem, double[] turns) {
        double sum = 0;
        double[] predicted = problem.predictedErrors(turns);
        for (int i = 0; i < predicted.length; i++) {
            double excess = Math.max(0, Math.abs(predicted[i]) / problem.tolerances()[i] - 1);
            sum += excess * excess;
        }
        return Math.sqrt(sum);
    }

    private static StepProblem twoReadings(double first, double second, double pricePerVisit) {
        List<StepAdjuster> adjusters = List.of(StepAdjuster.stepping("perchLF", "LF", 0.25, -6, 6),
                StepAdjuster.stepping("perchRF", "RF", 0.25, -6, 6));
        return new StepProblem(new double[] {first, second}, new double[] {1, 1}, new double[][] {{1, 0}, {0, 1}},
                adjusters, pricePerVisit, 0.001);
    }
}
