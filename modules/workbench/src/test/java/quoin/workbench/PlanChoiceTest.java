package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.workflow.CornerMove;
import quoin.workflow.RoundPlan;

/** Plans offered by number of corners. */
class PlanChoiceTest {

    private static RoundPlan plan(double chance, Corner... corners) {
        List<CornerMove> moves = Stream.of(corners)
                .map(c -> new CornerMove(new AdjusterId(AdjusterKind.PERCH, c), 0.25, OptionalDouble.empty(), "2 notches up")).toList();
        return new RoundPlan(1, moves, Map.of(), OptionalDouble.of(chance), OptionalDouble.empty(), "", List.of(), List.of());
    }

    @Test
    void aPlanIsNamedByItsCornersAndItsChance() {
        assertEquals("LF RR  97 %", PlanChoice.words(plan(0.974, Corner.LF, Corner.RR)));
        assertEquals("none  62 %", PlanChoice.words(plan(0.62)));
    }

    @Test
    void hopelessPlansAreLeftOutButTheFirstStays() {
        RoundPlan first = plan(0.005, Corner.LF);
        RoundPlan good = plan(0.9, Corner.LF, Corner.RR);
        assertEquals(List.of(first, good), PlanChoice.worthShowing(List.of(first, plan(0.0001), good)));
    }
}
