package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;

class PlanSearchPropertiesTest {
    private static final double ROUNDING = 1e-9;

    @Property(tries = 400)
    void oneMoreAdjusterIsNeverWorse(@ForAll long seed) {
        StepProblem all = PlanCases.random(new Random(seed));
        int last = all.adjusters().size() - 1;
        if (Arrays.stream(all.adjusters().get(last).allowedTurns()).noneMatch(t -> t == 0)) {
            return;
        }
        double[][] fewer = Arrays.stream(all.sensitivityPerTurn()).map(row -> Arrays.copyOf(row, last))
                .toArray(double[][]::new);
        StepProblem without = new StepProblem(all.errors(), all.tolerances(), fewer, all.adjusters().subList(0, last),
                all.pricePerVisit(), all.pricePerTurn());
        assertNotWorse(PlanSearch.best(without), PlanSearch.best(all));
    }

    @Property(tries = 400)
    void morePositionsAreNeverWorse(@ForAll long seed, @ForAll @DoubleRange(min = -3, max = 3) double another) {
        StepProblem narrow = PlanCases.random(new Random(seed));
        List<StepAdjuster> wider = new ArrayList<>();
        for (StepAdjuster adjuster : narrow.adjusters()) {
            TreeSet<Double> positions = new TreeSet<>();
            for (double t : adjuster.allowedTurns()) {
                positions.add(t);
            }
            positions.add(another + 0.0);
            double[] allowed = positions.stream().mapToDouble(Double::doubleValue).toArray();
            wider.add(new StepAdjuster(adjuster.id(), adjuster.visit(), allowed, adjuster.effort()));
        }
        assertNotWorse(PlanSearch.best(narrow), PlanSearch.best(with(narrow, wider, narrow.sensitivityPerTurn())));
    }

    /** Bounds, thread left, shims in stock: whatever the errors, a plan holds positions that the adjuster allows. */
    @Property(tries = 400)
    void noPlanLeavesWhatIsAllowed(@ForAll long seed, @ForAll @DoubleRange(min = 1, max = 1000) double farOff) {
        StepProblem drawn = PlanCases.random(new Random(seed));
        double[] errors = Arrays.stream(drawn.errors()).map(e -> e * farOff).toArray();
        StepProblem problem = new StepProblem(errors, drawn.tolerances(), drawn.sensitivityPerTurn(), drawn.adjusters(),
                drawn.pricePerVisit(), drawn.pricePerTurn());
        List<StepPlan> plans = new ArrayList<>(PlanSearch.bestPerVisitCount(problem, 4));
        plans.add(PlanSearch.best(problem));
        for (StepPlan plan : plans) {
            double[] turns = plan.turns();
            for (int j = 0; j < turns.length; j++) {
                double turned = turns[j];
                assertTrue(Arrays.stream(problem.adjusters().get(j).allowedTurns()).anyMatch(t -> t == turned),
                        problem.adjusters().get(j).id() + " turned " + turned);
            }
        }
    }

    @Property(tries = 400)
    void theUnitOfAReadingDoesNotMatter(@ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 100) double unit) {
        StepProblem problem = PlanCases.random(new Random(seed));
        double[][] sensitivity = problem.sensitivityPerTurn();
        double[] errors = problem.errors();
        double[] tolerances = problem.tolerances();
        for (int i = 0; i < errors.length; i += 2) {
            errors[i] *= unit;
            tolerances[i] *= unit;
            for (int j = 0; j < sensitivity[i].length; j++) {
                sensitivity[i][j] *= unit;
            }
        }
        StepPlan scaled = PlanSearch.best(new StepProblem(errors, tolerances, sensitivity, problem.adjusters(),
                problem.pricePerVisit(), problem.pricePerTurn()));
        assertEquals(PlanSearch.best(problem).objective(), scaled.objective(), ROUNDING * (1 + scaled.objective()));
    }

    @Property(tries = 400)
    void theUnitOfATurnDoesNotMatter(@ForAll long seed) {
        StepProblem problem = PlanCases.random(new Random(seed));
        double[][] sensitivity = problem.sensitivityPerTurn();
        List<StepAdjuster> quarters = new ArrayList<>();
        for (StepAdjuster adjuster : problem.adjusters()) {
            double[] allowed = Arrays.stream(adjuster.allowedTurns()).map(t -> 4 * t).toArray();
            quarters.add(new StepAdjuster(adjuster.id(), adjuster.visit(), allowed, adjuster.effort() / 4));
        }
        for (double[] row : sensitivity) {
            Arrays.setAll(row, j -> row[j] / 4);
        }
        double[] turns = PlanSearch.best(problem).turns();
        double[] quarterTurns = PlanSearch.best(with(problem, quarters, sensitivity)).turns();
        if (problem.pricePerTurn() > 0) {
            assertArrayEquals(Arrays.stream(turns).map(t -> 4 * t).toArray(), quarterTurns);
        }
        Arrays.setAll(quarterTurns, j -> quarterTurns[j] / 4);
        double objective = PlanEnumeration.objective(problem, turns);
        assertEquals(objective, PlanEnumeration.objective(problem, quarterTurns), ROUNDING * (1 + objective));
    }

    @Property(tries = 400)
    void theOrderOfTheAdjustersDoesNotMatter(@ForAll long seed) {
        StepProblem problem = PlanCases.random(new Random(seed));
        List<StepAdjuster> reversed = new ArrayList<>(problem.adjusters());
        Collections.reverse(reversed);
        double[][] sensitivity = problem.sensitivityPerTurn();
        for (double[] row : sensitivity) {
            double[] before = row.clone();
            Arrays.setAll(row, j -> before[before.length - 1 - j]);
        }
        double objective = PlanSearch.best(problem).objective();
        assertEquals(objective, PlanSearch.best(with(problem, reversed, sensitivity)).objective(),
                ROUNDING * (1 + objective));
    }

    @Property(tries = 200)
    @Tag("slow")
    void noAllowedPlanIsBetterAtRealSize(@ForAll long seed) {
        Random random = new Random(seed);
        PlanBenchCases.Kind[] kinds = PlanBenchCases.Kind.values();
        StepProblem problem = PlanBenchCases.eight(random, kinds[random.nextInt(kinds.length)], 0.125, 10);
        StepPlan best = PlanSearch.best(problem);
        double[] neighbour = best.turns();
        for (int run = 0; run < 300; run++) {
            int j = random.nextInt(neighbour.length);
            double[] allowed = problem.adjusters().get(j).allowedTurns();
            neighbour[j] = random.nextInt(4) == 0 ? 0 : allowed[random.nextInt(allowed.length)];
            assertTrue(best.objective() <= PlanEnumeration.objective(problem, neighbour) + ROUNDING);
            if (random.nextInt(3) == 0) {
                neighbour = best.turns();
            }
        }
        assertEquals(PlanEnumeration.objective(problem, best.turns()), best.objective(), ROUNDING);
    }

    private static StepProblem with(StepProblem problem, List<StepAdjuster> adjusters, double[][] sensitivity) {
        return new StepProblem(problem.errors(), problem.tolerances(), sensitivity, adjusters, problem.pricePerVisit(),
                problem.pricePerTurn());
    }

    private static void assertNotWorse(StepPlan fewer, StepPlan more) {
        assertTrue(more.objective() <= fewer.objective() + ROUNDING * (1 + fewer.objective()));
    }
}
