package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.car.Corner;

/** The last value that can be and the first that cannot, of everything the planner and the learner are given. */
@ExtendWith(English.class)
class RefusalsTest {

    private static final double HAIR = 1e-9;
    private static final List<CornerSpring> CORNERS = List.of(CornerSpring.typed(0, 700, 30, 200), CornerSpring.typed(0, -700, 30, 200),
            CornerSpring.typed(-2300, 700, 40, 200), CornerSpring.typed(-2300, -700, 40, 200));
    private static final LiftAdjuster PERCH = new LiftAdjuster("p", Corner.LF, 1.5, "front", 0.03);

    private static Arguments edge(String named, Executable can, Executable cannot) {
        return Arguments.of(named, can, cannot);
    }

    private static CornerSpring spring(double wheel, double tyre, double sd) {
        return new CornerSpring(0, 0, 0, 0, wheel, tyre, sd);
    }

    private static NoisePrior noise(double... values) {
        return new NoisePrior(values[0], values[1], values[2], values[3], values[4]);
    }

    private static NoisePrior noiseWith(int at, double value) {
        double[] values = {1, 1, 1, 1, 1};
        values[at] = value;
        return noise(values);
    }

    private static StepProblem problem(double tolerance, double visit, double turn, String second) {
        return new StepProblem(new double[] {1}, new double[] {tolerance}, new double[][] {{1, 1}},
                List.of(StepAdjuster.locked("a", "LF"), StepAdjuster.locked(second, "RF")), visit, turn);
    }

    static Stream<Arguments> planner() {
        return Stream.of(
                edge("a.stepTurns", () -> StepAdjuster.stepping("a", "LF", 0.25, 0, 0), () -> StepAdjuster.stepping("a", "LF", 0, 0, 0)),
                edge("a.minTurns", () -> StepAdjuster.stepping("a", "LF", 0.25, 1, 1), () -> StepAdjuster.stepping("a", "LF", 0.25, 1.01, 1)),
                edge("a.maxTurns", () -> StepAdjuster.stepping("a", "LF", 0.25, 0.25, 0.3), () -> StepAdjuster.stepping("a", "LF", 0.25, 0.26, 0.49)),
                edge("a.stepTurns", () -> StepAdjuster.stepping("a", "LF", 1, 1, 100_000), () -> StepAdjuster.stepping("a", "LF", 1, 0, 100_000)),
                edge("a.allowedTurns", () -> new StepAdjuster("a", "LF", new double[] {0}, 0), () -> new StepAdjuster("a", "LF", new double[0], 0)),
                edge("a.allowedTurns", () -> new StepAdjuster("a", "LF", new double[] {0, HAIR}, 0), () -> new StepAdjuster("a", "LF", new double[] {0, 0}, 0)),
                edge("a.allowedTurns", () -> new StepAdjuster("a", "LF", new double[] {-1, 1}, 0),
                        () -> new StepAdjuster("a", "LF", new double[] {-1, Double.POSITIVE_INFINITY}, 0)),
                edge("a.effort", () -> StepAdjuster.locked("a", "LF").withEffort(0), () -> StepAdjuster.locked("a", "LF").withEffort(-HAIR)),
                edge("a.effort", () -> StepAdjuster.locked("a", "LF").withEffort(1), () -> StepAdjuster.locked("a", "LF").withEffort(Double.POSITIVE_INFINITY)),
                edge("tolerances[0]", () -> problem(HAIR, 0, 0, "b"), () -> problem(0, 0, 0, "b")),
                edge("pricePerVisit", () -> problem(1, 0, 0, "b"), () -> problem(1, -HAIR, 0, "b")),
                edge("pricePerTurn", () -> problem(1, 0, 0, "b"), () -> problem(1, 0, Double.POSITIVE_INFINITY, "b")),
                edge("two are named a", () -> problem(1, 0, 0, "b"), () -> problem(1, 0, 0, "a")),
                edge("mostVisits", () -> new PlanPreferences(0, 1), () -> new PlanPreferences(-1, 1)),
                edge("sureEnough", () -> new PlanPreferences(4, 1), () -> new PlanPreferences(4, 1 + HAIR)),
                edge("sureEnough", () -> new PlanPreferences(4, HAIR), () -> new PlanPreferences(4, 0)),
                edge("tolerance", () -> Goal.cross(50, HAIR), () -> Goal.cross(50, 0)),
                edge("probability", () -> new GuardBand(0.5 + HAIR), () -> new GuardBand(0.5)),
                edge("probability", () -> new GuardBand(1 - HAIR), () -> new GuardBand(1)),
                edge("enoughProbability", () -> new StopRule(0.5 + HAIR, 0, 1), () -> new StopRule(0.5, 0, 1)),
                edge("leastGain", () -> new StopRule(0.85, 0, 1), () -> new StopRule(0.85, -HAIR, 1)));
    }

    static Stream<Arguments> learner() {
        List<OptionalDouble> four = java.util.Collections.nCopies(4, OptionalDouble.empty());
        Stream<Arguments> noises = IntStream.range(0, 5).mapToObj(i -> edge(List.of("frictionSdN", "frictionLogSd", "heightSdMm", "heightLogSd",
                "scaleSdN").get(i), () -> noiseWith(i, HAIR), () -> noiseWith(i, 0)));
        return Stream.concat(noises, Stream.of(
                edge("wheelRateNPerMm", () -> spring(HAIR, 1, 1), () -> spring(0, 1, 1)),
                edge("wheelRateNPerMm", () -> spring(1e6, 1, 1), () -> spring(Double.POSITIVE_INFINITY, 1, 1)),
                edge("tyreRateNPerMm", () -> spring(1, Double.POSITIVE_INFINITY, 1), () -> spring(1, 0, 1)),
                edge("rateRelativeSd", () -> spring(1, 1, 2), () -> spring(1, 1, 2 + HAIR)),
                edge("rateRelativeSd", () -> spring(1, 1, HAIR), () -> spring(1, 1, 0)),
                edge("liftMmPerTurn", () -> new LiftAdjuster("p", Corner.LF, -1, "g", 1), () -> new LiftAdjuster("p", Corner.LF, 0, "g", 1)),
                edge("liftMmPerTurn", () -> new LiftAdjuster("p", Corner.LF, 1, "g", 1), () -> new LiftAdjuster("p", Corner.LF, Double.NaN, "g", 1)),
                edge("liftRelativeSd", () -> new LiftAdjuster("p", Corner.LF, 1, "g", 2), () -> new LiftAdjuster("p", Corner.LF, 1, "g", 2 + HAIR)),
                edge("liftRelativeSd", () -> new LiftAdjuster("p", Corner.LF, 1, "g", HAIR), () -> new LiftAdjuster("p", Corner.LF, 1, "g", 0)),
                edge("corners", () -> LearningPrior.of(CORNERS, List.of(PERCH)), () -> LearningPrior.of(CORNERS.subList(0, 3), List.of(PERCH))),
                edge("adjusters", () -> LearningPrior.of(CORNERS, List.of(PERCH)), () -> LearningPrior.of(CORNERS, List.of())),
                edge("barRatesNPerMm", () -> prior(2, 8, 1), () -> prior(1, 8, 1)),
                edge("exactResponse", () -> prior(2, 0, 1), () -> prior(2, 7, 1)),
                edge("exactResponse", () -> prior(2, 8, 1), () -> prior(2, 8, 2)),
                edge("loadsN and heightsMm", () -> new SettledReading(List.of(), four, four, List.of(), 1),
                        () -> new SettledReading(List.of(), four.subList(0, 3), four, List.of(), 1)),
                edge("loadsN and heightsMm", () -> new SettledReading(List.of(), four, four, List.of(), 1),
                        () -> new SettledReading(List.of(), four, four.subList(0, 3), List.of(), 1)),
                edge("settlings", () -> new SettledReading(List.of(), four, four, List.of(), 1),
                        () -> new SettledReading(List.of(), four, four, List.of(), 0)),
                edge("words", () -> doubt("x"), () -> doubt(" "))));
    }

    private static LearningPrior prior(int bars, int rows, int columns) {
        return new LearningPrior(CORNERS, List.of(PERCH), java.util.Collections.nCopies(bars, 0.0), NoisePrior.garage(),
                java.util.Collections.nCopies(rows, java.util.Collections.nCopies(columns, 1.0)));
    }

    private static ReadingDoubt doubt(String words) {
        return new ReadingDoubt(ReadingDoubt.Level.INFO, ReadingDoubt.Cause.TYPING, java.util.OptionalInt.empty(), words, OptionalDouble.empty());
    }

    @ParameterizedTest(name = "{index} {0}")
    @MethodSource({"planner", "learner"})
    void whatCannotBeIsRefusedByNameAndNothingElse(String named, Executable can, Executable cannot) {
        assertDoesNotThrow(can);
        String message = assertThrows(IllegalArgumentException.class, cannot).getMessage();
        assertTrue(message.contains(named), message);
    }

    @Test
    void stepsLieOnTheMultiplesOfTheStep() {
        assertArrayEquals(new double[] {-0.25, 0, 0.25}, StepAdjuster.stepping("a", "LF", 0.25, -0.3, 0.25).allowedTurns(), 1e-12);
        // 0.3 / 0.1 falls a hair short of three in binary
        assertArrayEquals(new double[] {0, 0.1, 0.2, 0.3}, StepAdjuster.stepping("a", "LF", 0.1, 0, 0.3).allowedTurns(), 1e-12);
        StepAdjuster stock = StepAdjuster.fromStock("s", "LF", 2, -0.5, 2);
        assertArrayEquals(new double[] {-0.5, 0, 2}, stock.allowedTurns(), 0);
        assertEquals(-0.5, stock.minTurns());
        assertEquals(2, stock.maxTurns());
        assertFalse(stock.isLocked());
        assertTrue(StepAdjuster.locked("a", "LF").isLocked());
        assertFalse(StepAdjuster.fromStock("s", "LF", 1).isLocked());
        assertTrue(StepAdjuster.fromStock("s", "LF", -0.0).isLocked(), "nothing down is nothing");
        assertFalse(new StepAdjuster("a", "LF", new double[] {1}, 1).isLocked(), "it must move");
    }

    /** Records that hold arrays are alike where what they hold is, and cannot be changed through what they give. */
    @Test
    void whatHoldsTheSameIsTheSame() {
        StepAdjuster one = StepAdjuster.stepping("a", "LF", 0.5, -1, 1);
        assertEquals(one, StepAdjuster.stepping("a", "LF", 0.5, -1, 1));
        assertEquals(one.hashCode(), StepAdjuster.stepping("a", "LF", 0.5, -1, 1).hashCode());
        for (StepAdjuster other : List.of(StepAdjuster.stepping("b", "LF", 0.5, -1, 1), StepAdjuster.stepping("a", "RF", 0.5, -1, 1),
                StepAdjuster.stepping("a", "LF", 1, -1, 1), one.withEffort(2))) {
            assertNotEquals(one, other);
        }
        one.allowedTurns()[0] = 99;
        assertEquals(-1, one.minTurns());
        StepProblem problem = problem(1, 2, 3, "b");
        assertEquals(problem, problem(1, 2, 3, "b"));
        assertEquals(problem.hashCode(), problem(1, 2, 3, "b").hashCode());
        for (StepProblem other : List.of(problem(2, 2, 3, "b"), problem(1, 3, 3, "b"), problem(1, 2, 4, "b"), problem(1, 2, 3, "c"))) {
            assertNotEquals(problem, other);
        }
        problem.errors()[0] = 99;
        problem.sensitivityPerTurn()[0][0] = 99;
        assertEquals(problem(1, 2, 3, "b"), problem);
        StepPlan plan = plan(1, 5);
        assertEquals(plan, plan(1, 5));
        assertEquals(plan.hashCode(), plan(1, 5).hashCode());
        assertNotEquals(plan, plan(2, 5));
        assertNotEquals(plan, plan(1, 6));
        plan.turns()[0] = 99;
        assertEquals(plan(1, 5), plan);
    }

    private static StepPlan plan(double turns, double objective) {
        return new StepPlan(new double[] {turns}, objective, 1, new double[] {0.5}, Set.of("LF"), 7, true);
    }

    @Test
    void goalsWeighTheReadings() {
        assertArrayEquals(new double[] {0, 100, 100, 0, 0, 0, 0, 0}, Goal.cross(50, 0.3).weights());
        assertArrayEquals(new double[] {100, 100, 0, 0, 0, 0, 0, 0}, new Goal(Goal.Kind.FRONT_PERCENT, Corner.LF, 45, 1).weights());
        assertArrayEquals(new double[] {100, 0, 100, 0, 0, 0, 0, 0}, new Goal(Goal.Kind.LEFT_PERCENT, Corner.LF, 50, 1).weights());
        assertArrayEquals(new double[] {0, 0, 0, 1, 0, 0, 0, 0}, Goal.load(Corner.RR, 1000, 5).weights());
        assertArrayEquals(new double[] {0, 0, 0, 0, 0, 1, 0, 0}, Goal.height(Corner.RF, 62, 1).weights());
        assertTrue(Goal.cross(50, 0.3).share());
        assertFalse(Goal.load(Corner.RR, 1000, 5).share());
        assertFalse(Goal.height(Corner.RR, 62, 1).share());
    }

    @Test
    void figuresAreFoundByTheirRow() {
        SettledReading reading = SettledReading.of(new double[] {0, 0}, new double[] {1, 2, 3, 4}, new double[] {5, 6, 7, 8});
        for (int row = 0; row < 8; row++) {
            assertEquals(row + 1, reading.figure(row).orElseThrow());
            SettledReading changed = reading.withFigure(row, 99);
            for (int other = 0; other < 8; other++) {
                assertEquals(other == row ? 99 : other + 1, changed.figure(other).orElseThrow());
            }
        }
        assertFalse(reading.turned());
        assertTrue(SettledReading.of(new double[] {0, -0.5}, new double[4], new double[4]).turned());
        assertEquals(3, reading.meanOf(3).settlings());
    }

    private static String reason(PlanReason.Kind kind, int visits, double chance, OptionalDouble fewer, OptionalDouble more) {
        return new PlanReason(kind, visits, chance, 0.9, fewer, more).sentence();
    }

    @Test
    void thePlanSaysWhyItIsOffered() {
        OptionalDouble none = OptionalDouble.empty();
        assertEquals("Leave it: with nothing turned it is inside tolerance with 93 %.", reason(PlanReason.Kind.NOTHING_TO_TURN, 0, 0.93, none, none));
        assertEquals("Fewest corners for 90 % certainty: visits two corners and ends inside tolerance with 95 %; fewer corners reach 60 %; more corners"
                + " reach over 99 %.", reason(PlanReason.Kind.FEWEST_VISITS, 2, 0.95, OptionalDouble.of(0.6), OptionalDouble.of(0.991)));
        assertEquals("Best chance: makes 5 visits and ends inside tolerance with 80 %, short of 90 %.",
                reason(PlanReason.Kind.MOST_LIKELY, 5, 0.8, none, none));
        assertTrue(reason(PlanReason.Kind.SMALLEST_ERRORS, 4, 0.001, OptionalDouble.of(0.02), OptionalDouble.of(0.01)).contains("(at best 2 %)"));
        assertTrue(reason(PlanReason.Kind.SMALLEST_ERRORS, 4, 0.001, none, none).contains("(at best under 1 %)"));
        assertTrue(reason(PlanReason.Kind.SMALLEST_ERRORS, 4, 0.01, none, none).contains("(at best 1 %)"));
        assertTrue(reason(PlanReason.Kind.SMALLEST_ERRORS, 4, 0.99, none, none).contains("(at best 99 %)"));
    }
}
