package quoin.adjustment.bench;

import java.util.ArrayList;
import java.util.List;
import quoin.adjustment.Goal;
import quoin.adjustment.Learner;
import quoin.adjustment.LearningPrior;
import quoin.adjustment.NextStep;
import quoin.adjustment.NoisePrior;
import quoin.adjustment.ResponseBelief;
import quoin.adjustment.SettledReading;
import quoin.adjustment.StopRule;
import quoin.adjustment.TurnAdvice;
import quoin.car.Corner;

/**
 * One car worked on with learning for a fixed number of rounds, everything noted on the way, so that any stop rule can be
 * applied afterwards: the turns made do not depend on the stop rule.
 */
final class Trajectory {

    static final List<Goal> GOALS = List.of(Goal.cross(50, Session.CROSS_TOLERANCE),
            Goal.height(Corner.LF, 0, Session.HEIGHT_TOLERANCE), Goal.height(Corner.RF, 0, Session.HEIGHT_TOLERANCE),
            Goal.height(Corner.LR, 0, Session.HEIGHT_TOLERANCE), Goal.height(Corner.RR, 0, Session.HEIGHT_TOLERANCE));
    static final double[] STEPS = {Session.STEP, Session.STEP, Session.STEP, Session.STEP};

    /** Which readings are taken. */
    enum Readings {
        /** One settled reading a round. */
        ONE,
        /** A second settling, nothing turned, when the verdict of the first is close. */
        SECOND_WHEN_CLOSE,
        /** Always two settlings a round. */
        TWO,
        /** Read before the driver climbs in, and with him in. */
        DRIVER_OUT_AND_IN,
        /** Driver out and in as found; after that a second settling when the verdict is close. */
        DRIVER_OUT_THEN_SECOND
    }

    /**
     * The belief after one reading.
     *
     * @param round round, from 1
     * @param last whether this is the last reading of the round
     * @param now probability of inside
     * @param after the same after the best turns
     * @param twice the same after two rounds
     * @param inside the truth
     * @param extras extra readings so far (beyond one a round; the as-found reading is not a round)
     */
    record Point(int round, boolean last, double now, double after, double twice, boolean inside, int extras) {
    }

    /** Probabilities between which a verdict counts as close. */
    static final double CLOSE_LOW = 0.25;
    static final double CLOSE_HIGH = 0.93;

    private Trajectory() {
    }

    static List<Point> of(SimulatedCar car, SimulatedCar.Conditions conditions, NoisePrior noise, Readings readings,
            int rounds) {
        Session session = new Session(car, conditions);
        LearningPrior prior = car.prior(noise);
        List<SettledReading> history = new ArrayList<>();
        List<Point> out = new ArrayList<>();
        int extras = 0;
        if (readings == Readings.DRIVER_OUT_AND_IN || readings == Readings.DRIVER_OUT_THEN_SECOND) {
            history.add(session.read(false));
            extras++;
        }
        history.add(session.read(true));
        if (readings == Readings.TWO) {
            history.add(session.read(true));
            extras++;
        }
        ResponseBelief belief = Learner.learn(prior, history);
        TurnAdvice advice = belief.bestSteps(GOALS, STEPS);
        for (int round = 1; round <= rounds; round++) {
            session.turn(advice.steps().stream().mapToInt(Integer::intValue).toArray());
            if (readings == Readings.DRIVER_OUT_AND_IN) {
                history.add(session.read(false));
                extras++;
            }
            history.add(session.read(true));
            belief = Learner.learn(prior, history);
            advice = belief.bestSteps(GOALS, STEPS);
            boolean again = readings == Readings.TWO || (readings == Readings.SECOND_WHEN_CLOSE
                    || readings == Readings.DRIVER_OUT_THEN_SECOND)
                    && advice.probabilityNow() > CLOSE_LOW && advice.probabilityNow() < CLOSE_HIGH;
            out.add(point(belief, advice, round, !again, session.trulyInside(), extras));
            if (again) {
                history.add(session.read(true));
                extras++;
                belief = Learner.learn(prior, history);
                advice = belief.bestSteps(GOALS, STEPS);
                out.add(point(belief, advice, round, true, session.trulyInside(), extras));
            }
            if (advice.probabilityNow() > 0.985) {
                break;
            }
        }
        return out;
    }

    private static Point point(ResponseBelief belief, TurnAdvice advice, int round, boolean last, boolean inside,
            int extras) {
        NextStep next = new StopRule(0.99, 0, 2).next(belief, GOALS, STEPS, advice);
        return new Point(round, last, next.probabilityNow(), next.probabilityAfterRound(),
                next.probabilityAfterTwoRounds(), inside, extras);
    }
}
