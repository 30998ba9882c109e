package quoin.adjustment.bench;

import java.util.ArrayList;
import java.util.List;
import quoin.adjustment.GoalForecast;
import quoin.adjustment.Learner;
import quoin.adjustment.LearningPrior;
import quoin.adjustment.NoisePrior;
import quoin.adjustment.PlanSearch;
import quoin.adjustment.ResponseBelief;
import quoin.adjustment.SettledReading;
import quoin.adjustment.StepAdjuster;
import quoin.adjustment.StepProblem;

/** The reference strategies with a model: all corners at once, turns by the proven optimum for the mean. */
final class ModelStrategies {

    /** When such a strategy stops. */
    enum Stop {
        /** The last reading is inside. */
        READING,
        /** The estimate is inside: not to be claimed. */
        ESTIMATE,
        /** The estimate is inside by one standard uncertainty, every goal. */
        ESTIMATE_AND_SIGMA
    }

    private static final double[] STILL = new double[4];

    private ModelStrategies() {
    }

    /** The believed response as it was before the first reading; the state is the last reading. */
    static Run nominal(Session session, NoisePrior noise) {
        LearningPrior prior = session.car().prior(noise);
        SettledReading reading = session.read(true);
        double[][] slope = slope(Learner.learn(prior, List.of(reading)), HandStrategies.values(reading));
        for (int round = 1; round <= Run.LIMIT; round++) {
            turn(session, errors(HandStrategies.values(reading)), slope);
            reading = session.read(true);
            if (Session.inside(HandStrategies.values(reading))) {
                return new Run(round, session.trulyInside(), -1, 0);
            }
        }
        return HandStrategies.never(session);
    }

    /** Response and state by Bayesian update from the given prior. */
    static Run learning(Session session, LearningPrior prior, Stop stop) {
        List<SettledReading> history = new ArrayList<>();
        history.add(session.read(true));
        for (int round = 1; round <= Run.LIMIT; round++) {
            ResponseBelief belief = Learner.learn(prior, history);
            double[] mean = belief.predict(STILL).mean().stream().mapToDouble(Double::doubleValue).toArray();
            turn(session, errors(mean), slope(belief, mean));
            history.add(session.read(true));
            if (stops(stop, prior, history)) {
                return new Run(round, session.trulyInside(), -1, 0);
            }
        }
        return HandStrategies.never(session);
    }

    private static boolean stops(Stop stop, LearningPrior prior, List<SettledReading> history) {
        if (stop == Stop.READING) {
            return Session.inside(HandStrategies.values(history.get(history.size() - 1)));
        }
        double sigmas = stop == Stop.ESTIMATE ? 0 : 1;
        for (GoalForecast f : Learner.learn(prior, history).forecast(Trajectory.GOALS, STILL)) {
            if (Math.abs(f.mean() - f.goal().target()) + sigmas * f.sd() > f.goal().tolerance()) {
                return false;
            }
        }
        return true;
    }

    private static double[] errors(double[] readings) {
        return new double[] {Session.cross(readings) - 50, readings[4], readings[5], readings[6], readings[7]};
    }

    private static double[][] slope(ResponseBelief belief, double[] at) {
        List<List<Double>> r = belief.responsePerTurn();
        double total = at[0] + at[1] + at[2] + at[3];
        double[][] out = new double[5][4];
        for (int a = 0; a < 4; a++) {
            out[0][a] = 100 * (r.get(1).get(a) + r.get(2).get(a)) / total;
            for (int i = 0; i < 4; i++) {
                out[1 + i][a] = r.get(4 + i).get(a);
            }
        }
        return out;
    }

    private static void turn(Session session, double[] errors, double[][] slope) {
        List<StepAdjuster> adjusters = new ArrayList<>();
        for (String corner : List.of("LF", "RF", "LR", "RR")) {
            adjusters.add(StepAdjuster.stepping(corner, corner, Session.STEP, -40, 40));
        }
        double t = Session.HEIGHT_TOLERANCE;
        double[] turns = PlanSearch.best(new StepProblem(errors, new double[] {Session.CROSS_TOLERANCE, t, t, t, t}, slope,
                adjusters, 0, 1e-6)).turns();
        int[] quarters = new int[4];
        for (int i = 0; i < 4; i++) {
            quarters[i] = (int) Math.round(turns[i] / Session.STEP);
        }
        session.turn(quarters);
    }
}
