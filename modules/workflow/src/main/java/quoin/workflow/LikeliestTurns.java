package quoin.workflow;

import java.util.List;
import quoin.adjustment.Goal;
import quoin.adjustment.StepAdjuster;
import quoin.adjustment.TurnAdvice;
import quoin.car.Setting;
import quoin.logbook.Day;

/**
 * Whole steps with the best chance of meeting every goal, one adjuster a corner, within what the threads leave.
 *
 * @param legs      what is believed
 * @param goals     the goals
 * @param stepTurns turns of one step of each adjuster
 * @param advice    steps of each adjuster, and the chances as the car stands and after them
 */
record LikeliestTurns(LegBelief legs, List<Goal> goals, double[] stepTurns, TurnAdvice advice) {

    static LikeliestTurns of(Day day, LegBelief legs, List<Goal> goals) {
        List<StepAdjuster> steps = RoundPlanner.oneACorner(RoundPlanner.steps(day, legs));
        int n = steps.size();
        double[] stepTurns = new double[n];
        int[] lowest = new int[n];
        int[] highest = new int[n];
        for (int i = 0; i < n; i++) {
            stepTurns[i] = ((Setting.Thread) legs.adjusters().get(i).setting()).turnsPerStep();
            if (!steps.get(i).isLocked()) {
                lowest[i] = (int) Math.round(steps.get(i).minTurns() / stepTurns[i]);
                highest[i] = (int) Math.round(steps.get(i).maxTurns() / stepTurns[i]);
            }
        }
        return new LikeliestTurns(legs, goals, stepTurns, legs.belief().bestSteps(goals, stepTurns, lowest, highest));
    }

    /** Turns of each adjuster. */
    double[] turns() {
        double[] turns = new double[stepTurns.length];
        for (int i = 0; i < turns.length; i++) {
            turns[i] = advice.steps().get(i) * stepTurns[i];
        }
        return turns;
    }

    /** Chance that every goal is met after other turns, by the same belief. */
    double probabilityAfter(double[] turns) {
        return legs.belief().probabilityInside(goals, turns);
    }
}
