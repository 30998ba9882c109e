package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quoin.adjustment.PlanCancellation;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.spi.Stage;

/** A round that is left half done goes on at the same corner, also on another evening. */
class RoundUnderwayTest {

    private static final Stage WEIGHTS = PlainStage.day().stream().filter(s -> s.id().equals("corner-weights")).findFirst().orElseThrow();

    private final List<Entry> entries = new ArrayList<>();
    private RoundPlan plan;

    @BeforeEach
    void weigh() {
        entries.add(new Entry.CarDescribed(next(), RoundPlannerTest.car(false, Map.of())));
        entries.add(new Entry.Reading(next(), RoundPlannerTest.readings(new PerCorner<>(90.0, 101.0, 146.0, 132.0),
                new PerCorner<>(63.5, 60.0, 71.5, 69.5)), Map.of(), Entry.Source.RACER));
        plan = plans(day()).get(0);
        assertTrue(plan.moves().size() >= 2, "the plan visits more than one corner");
    }

    private Header next() {
        return new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(entries.size()), "corner-weights");
    }

    private Day day() {
        return Day.of(entries);
    }

    private static List<RoundPlan> plans(Day day) {
        return RoundPlanner.options(day, PlanCancellation.NEVER);
    }

    private void turn(CornerMove move, double turns) {
        entries.add(new Entry.Adjustment(next(), List.of(new Entry.Turn(move.adjuster(), turns, OptionalDouble.empty())), ""));
    }

    private Optional<RoundPlan> rest() {
        return RoundUnderway.of(day(), WEIGHTS).flatMap(u -> u.rest(day(), plans(u.before()), RoundUnderwayTest::plans));
    }

    @Test
    void nothingTurnedNothingUnderway() {
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS));
    }

    @Test
    void eachCornerDoneLeavesTheOthers() {
        for (int done = 0; done < plan.moves().size() - 1; done++) {
            turn(plan.moves().get(done), plan.moves().get(done).turns());
            RoundPlan rest = rest().orElseThrow();
            assertEquals(plan.moves().subList(done + 1, plan.moves().size()), rest.moves());
            assertEquals(plan.predicted(), rest.predicted());
            assertEquals(day().revision(), rest.revision());
        }
        turn(plan.moves().get(plan.moves().size() - 1), plan.moves().get(plan.moves().size() - 1).turns());
        assertEquals(Optional.empty(), rest());
    }

    @Test
    void settlingEndsTheRound() {
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        entries.add(new Entry.Condition(next(), Conditions.SETTLED, Conditions.YES, ""));
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS));
    }

    @Test
    void climbingOutDoesNotEndIt() {
        entries.add(new Entry.Condition(next(), Conditions.DRIVER, Conditions.OUT, ""));
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        assertTrue(rest().isPresent());
    }

    /** Two turns too far on the first corner: what is left brings the car to the same figures as the plan did. */
    @Test
    void whatWasTurnedOtherwiseChangesTheRest() {
        CornerMove first = plan.moves().get(0);
        double further = first.turns() + Math.copySign(2, first.turns());
        turn(first, further);
        RoundPlan rest = rest().orElseThrow();
        assertFalse(rest.moves().equals(plan.moves().subList(1, plan.moves().size())), "the plan takes the other turn in");
        rest.predicted().forEach((reading, predicted) -> predicted.target().ifPresent(target -> assertEquals(
                target.value(), predicted.predicted(), 1.3 * target.tolerance(), reading.words())));
    }

    @Test
    void aWithdrawnTurnWasNotDone() {
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        entries.add(new Entry.Correction(next(), entries.size(), Optional.empty(), "undo"));
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS));
    }

    @Test
    void itTellsHowFarTheRoundIsAndFromWhere() {
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        RoundUnderway underway = RoundUnderway.of(day(), WEIGHTS).orElseThrow();
        assertEquals(2, underway.before().revision(), "the day as it was read");
        assertEquals(Map.of(plan.moves().get(0).adjuster(), plan.moves().get(0).turns()), underway.done());
        RoundPlan rest = rest().orElseThrow();
        assertEquals("1 of " + plan.moves().size() + " adjusters of this round are done; then settle the car and read.", rest.why());
        assertEquals(plan.probabilityInside(), rest.probabilityInside());
    }

    @Test
    void turnedInTwoGoesIsTurnedOnce() {
        CornerMove first = plan.moves().get(0);
        turn(first, first.turns() - 0.125);
        turn(first, 0.125);
        assertEquals(plan.moves().subList(1, plan.moves().size()), rest().orElseThrow().moves());
        turn(first, -first.turns());
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS), "all turned back");
    }

    @Test
    void workOfAnotherStageIsNoneOfThisRound() {
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        entries.add(new Entry.Adjustment(next(), List.of(new Entry.Turn(new AdjusterId(AdjusterKind.TOE_LINK, Corner.LF), 0.5, OptionalDouble.empty())), ""));
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS));
    }

    @Test
    void withoutAPlanThereIsNoRest() {
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS).flatMap(u -> u.rest(day(), List.of(), RoundUnderwayTest::plans)));
        assertEquals(Optional.empty(), RoundUnderway.of(Day.of(entries.subList(0, 1)), WEIGHTS));
    }

    /** A plan is a list, not an order: the second corner first leaves the first. */
    @Test
    void cornersMayBeDoneInAnyOrder() {
        CornerMove second = plan.moves().get(1);
        turn(second, second.turns());
        RoundPlan rest = rest().orElseThrow();
        assertEquals(plan.moves().stream().filter(m -> !m.equals(second)).toList(), rest.moves());
        assertTrue(rest.why().startsWith("1 of "), rest.why());
    }

    /** Where something else was turned and all is right now, nothing is left of the round. */
    @Test
    void aPlanWithNothingToTurnIsNoRest() {
        turn(plan.moves().get(0), plan.moves().get(0).turns() + 1);
        RoundPlan nothing = new RoundPlan(3, List.of(), Map.of(), OptionalDouble.empty(), OptionalDouble.empty(), "", List.of(), List.of());
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS).flatMap(u -> u.rest(day(), plans(u.before()), d -> List.of(nothing))));
        assertEquals(Optional.empty(), RoundUnderway.of(day(), WEIGHTS).flatMap(u -> u.rest(day(), plans(u.before()), d -> List.of())));
    }

    /** A weighing put right while the round is under way is put right in the plan that is followed, too; a turn put right is not before it. */
    @Test
    void aCorrectedReadingIsCorrectedInThePlanBefore() {
        turn(plan.moves().get(0), plan.moves().get(0).turns());
        Entry right = new Entry.Reading(next(), RoundPlannerTest.readings(new PerCorner<>(91.0, 100.0, 145.0, 133.0),
                new PerCorner<>(63.5, 60.0, 71.5, 69.5)), Map.of(), Entry.Source.RACER);
        entries.add(new Entry.Correction(next(), 2, Optional.of(right), "misread"));
        Entry turned = new Entry.Adjustment(next(), List.of(new Entry.Turn(plan.moves().get(0).adjuster(), 1, OptionalDouble.empty())), "");
        entries.add(new Entry.Correction(next(), 3, Optional.of(turned), "it was one turn"));
        Day before = RoundUnderway.of(day(), WEIGHTS).orElseThrow().before();
        assertEquals(91, before.latest(DayBook.load(Corner.LF)).orElseThrow().value());
        assertEquals(1, before.corrections().size());
    }
}
