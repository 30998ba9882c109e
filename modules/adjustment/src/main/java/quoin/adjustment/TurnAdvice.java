package quoin.adjustment;

import java.util.List;

/**
 * Whole steps that give the best chance.
 *
 * @param steps steps of each adjuster, positive raises
 * @param probabilityNow probability that all goals are met as the car stands
 * @param probabilityAfter probability that all goals are met after the steps
 */
public record TurnAdvice(List<Integer> steps, double probabilityNow, double probabilityAfter) {

    /** Whether anything is to be turned. */
    public boolean turnsAnything() {
        return steps.stream().anyMatch(s -> s != 0);
    }
}
