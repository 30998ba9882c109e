package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;
import quoin.adjustment.learn.NextReading;

/** When to stop, on a car that reads exactly at its targets again and again. */
@ExtendWith(English.class)
class StopRuleTest {

    private static final StopRule NEVER_READS_AGAIN = new StopRule(0.85, 0.10, 2);

    private final SimulatedCar car = new SimulatedCar(5, Conditions.FULL_NOISE);

    private SettledReading reading(double crossOff, double heightOff) {
        double quarter = car.massKg * SimulatedCar.G / 4;
        double d = 2 * quarter * crossOff / 100;
        return SettledReading.of(new double[4], new double[] {quarter - d, quarter + d, quarter + d, quarter - d},
                new double[] {heightOff, heightOff, heightOff, heightOff});
    }

    private ResponseBelief after(NoisePrior noise, SettledReading reading, int times) {
        return Learner.learn(car.prior(noise), java.util.Collections.nCopies(times, reading));
    }

    private static NextStep next(StopRule rule, ResponseBelief belief) {
        return rule.next(belief, LearningGoals.GOALS, LearningGoals.QUARTERS);
    }

    @Test
    void farOutMeansTurn() {
        NextStep step = next(StopRule.USUAL, after(NoisePrior.garage(), reading(3, 8), 1));
        assertEquals(NextStep.Action.TURN, step.action());
        assertFalse(step.stops());
        assertTrue(step.turns().turnsAnything());
        assertTrue(step.probabilityNow() < 0.01 && step.probabilityAfterRound() > 0.05, step.toString());
        assertTrue(step.reason().startsWith("turn: inside with 0 % now"), step.reason());
    }

    /** One reading dead on target: its estimate is inside, the car may well not be. */
    @Test
    void neverStopsOnABareEstimate() {
        ResponseBelief belief = after(NoisePrior.garage(), reading(0, 0), 1);
        for (GoalForecast f : belief.forecast(LearningGoals.GOALS, new double[4])) {
            assertEquals(f.goal().target(), f.mean(), f.goal().tolerance() / 2, "the estimate is inside");
        }
        NextStep step = next(StopRule.USUAL, belief);
        assertTrue(step.probabilityNow() < 0.85, step.toString());
        assertFalse(step.stops());
    }

    @Test
    void asksForOneMoreSettledReadingWhenThatSettlesIt() {
        ResponseBelief belief = after(NoisePrior.garage(), reading(0.05, 0.1), 2);
        double now = belief.probabilityInside(LearningGoals.GOALS);
        NextStep step = next(new StopRule(now + 0.02, 0, 0.2), belief);
        assertEquals(NextStep.Action.READ_AGAIN, step.action());
        assertTrue(step.chanceReadingSettles() >= 0.2, step.toString());
        assertTrue(step.reason().contains("a second reading settles it with a chance of"), step.reason());
        NextStep without = next(new StopRule(now + 0.02, 0, 2), belief);
        assertEquals(NextStep.Action.TURN, without.action(), "never where the chance asked is above 1");
    }

    @Test
    void aSingleReadingThatAsksForNoTurnIsReadOnceMore() {
        NextStep step = next(StopRule.USUAL, after(NoisePrior.garage(), reading(0, 0), 1));
        assertEquals(NextStep.Action.READ_AGAIN, step.action());
        assertFalse(step.turns().turnsAnything());
        assertTrue(step.reason().startsWith("one more settled reading: by a single reading inside with"), step.reason());
    }

    @Test
    void stopsWhenProbablyInside() {
        NextStep step = next(StopRule.USUAL, after(NoisePrior.wellSettled(), reading(0, 0), 4));
        assertEquals(NextStep.Action.STOP_INSIDE, step.action());
        assertTrue(step.probabilityNow() >= 0.85);
        assertTrue(step.stops());
    }

    /** After a turn, with less to gain than asked for, the noise is the limit. */
    @Test
    void stopsWhenTheNextRoundGainsLessThanTheNoise() {
        ResponseBelief belief = onceTurned();
        NextStep step = next(NEVER_READS_AGAIN, belief);
        assertTrue(step.probabilityNow() < 0.85, step.toString());
        double gain = Math.max(step.probabilityAfterRound() - step.probabilityNow(),
                (step.probabilityAfterTwoRounds() - step.probabilityNow()) / 2);
        assertEquals(gain < 0.10 ? NextStep.Action.STOP_NO_GAIN : NextStep.Action.TURN, step.action());
        assertEquals(NextStep.Action.STOP_NO_GAIN, next(new StopRule(0.85, 0.9, 2), belief).action());
        assertEquals(NextStep.Action.TURN, next(new StopRule(0.999, 0, 2), belief).action());
    }

    /** Nothing was turned yet: small promise is no reason to leave the car as found while a turn still helps. */
    @Test
    void asFoundIsNotWhereTheNoiseStopsIt() {
        ResponseBelief belief = after(NoisePrior.garage(), reading(0.5, 1.5), 1);
        NextStep step = next(new StopRule(0.85, 0.99, 2), belief);
        assertEquals(NextStep.Action.TURN, step.action());
    }

    private static NextStep judged(StopRule rule, ResponseBelief belief, double now, double after, Integer... steps) {
        return rule.next(belief, LearningGoals.GOALS, LearningGoals.QUARTERS, new TurnAdvice(List.of(steps), now, after));
    }

    private static void assertJudged(NextStep.Action action, StopRule rule, ResponseBelief belief, double now, double after, Integer... steps) {
        NextStep step = judged(rule, belief, now, after, steps);
        assertEquals(action, step.action(), step.toString());
    }

    private ResponseBelief onceTurned() {
        SettledReading r = reading(0, 0);
        return Learner.learn(car.prior(NoisePrior.garage()), List.of(reading(0.1, 0.3),
                new SettledReading(List.of(0.0, 0.25, 0.0, 0.0), r.loadsN(), r.heightsMm(), List.of(), 1)));
    }

    @Test
    void whatWasAskedIsEnough() {
        ResponseBelief belief = after(NoisePrior.garage(), reading(0.5, 1.5), 1);
        NextStep enough = judged(StopRule.USUAL, belief, 0.85, 0.9, 1, 0, 0, 0);
        assertEquals(NextStep.Action.STOP_INSIDE, enough.action());
        assertEquals("inside with a probability of 85 %; 85 % was asked", enough.reason());
        assertJudged(NextStep.Action.TURN, NEVER_READS_AGAIN, belief, 0.84, 0.97, 1, 0, 0, 0);
        assertEquals("turn: inside with 23 % now, 47 % after the turns", judged(NEVER_READS_AGAIN, belief, 0.23, 0.47, 1, 0, 0, 0).reason());
    }

    /** A single reading is read again for a gain below 0.125 where the chance is more than 0.25, or where no turn helps. */
    @Test
    void aSingleReadingIsReadAgainForALittleGain() {
        StopRule rule = new StopRule(0.75, 0.125, 1);
        ResponseBelief once = after(NoisePrior.garage(), reading(0.5, 1.5), 1);
        assertJudged(NextStep.Action.READ_AGAIN, rule, once, 0.5, 0.5625, 1, 0, 0, 0);
        assertJudged(NextStep.Action.TURN, rule, once, 0.5, 0.625, 1, 0, 0, 0);
        assertJudged(NextStep.Action.TURN, rule, once, 0.25, 0.3125, 1, 0, 0, 0);
        assertJudged(NextStep.Action.READ_AGAIN, rule, once, 0.26, 0.3125, 1, 0, 0, 0);
        assertJudged(NextStep.Action.TURN, rule, once, 0.1, 0.11, 1, 0, 0, 0);
        assertJudged(NextStep.Action.READ_AGAIN, rule, once, 0.1, 0.1, 0, 0, 0, 0);
        assertJudged(NextStep.Action.TURN, rule, after(NoisePrior.garage(), reading(0.5, 1.5), 2), 0.5, 0.5625, 1, 0, 0, 0);
    }

    /** What two rounds promise counts half for each; it is the chance after the turns proposed, read, and others as good. */
    @Test
    void theGainIsThatOfARound() {
        ResponseBelief belief = onceTurned();
        double[] turns = {0.5, 0, -0.25, 0};
        double twice = new NextReading(belief.posterior(), belief.scenarios(), ResponseBelief.aims(LearningGoals.GOALS), turns).chanceAfterFurtherTurn();
        double now = twice / 4;
        NextStep step = judged(NEVER_READS_AGAIN, belief, now, now, 2, 0, -1, 0);
        assertEquals(twice, step.probabilityAfterTwoRounds());
        double half = (twice - now) / 2;
        assertJudged(NextStep.Action.TURN, new StopRule(0.85, half * 0.99, 2), belief, now, now, 2, 0, -1, 0);
        assertJudged(NextStep.Action.STOP_NO_GAIN, new StopRule(0.85, half * 1.01, 2), belief, now, now, 2, 0, -1, 0);
        NextStep better = judged(new StopRule(0.995, 0.25, 2), belief, 0.74, 0.99, 2, 0, -1, 0);
        assertEquals(0.99, better.probabilityAfterTwoRounds());
        assertJudged(NextStep.Action.TURN, new StopRule(0.99, 0.25, 2), belief, 0.5, 0.75, 2, 0, -1, 0);
    }

    @Test
    void aRuleOutsideReasonIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new StopRule(0.5, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new StopRule(1, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new StopRule(0.9, -0.1, 1));
    }
}
