package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;

/** When to stop, on a car that reads exactly at its targets again and again. */
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
        List<SettledReading> history = new ArrayList<>(List.of(reading(0.1, 0.3)));
        SettledReading r = reading(0, 0);
        history.add(new SettledReading(List.of(0.0, 0.25, 0.0, 0.0), r.loadsN(), r.heightsMm(), List.of(), 1));
        ResponseBelief belief = Learner.learn(car.prior(NoisePrior.garage()), history);
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

    @Test
    void aRuleOutsideReasonIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new StopRule(0.5, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new StopRule(1, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new StopRule(0.9, -0.1, 1));
    }
}
