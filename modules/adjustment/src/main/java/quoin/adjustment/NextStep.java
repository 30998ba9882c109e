package quoin.adjustment;

/**
 * What to do next, with the numbers behind it.
 *
 * @param action stop, turn and read, or read once more
 * @param turns the best whole steps found (not to be made when the action is to stop or to read once more)
 * @param probabilityNow probability that all goals are met as the car stands
 * @param probabilityAfterRound the same after one more round
 * @param probabilityAfterTwoRounds the same after two more rounds, the second made with what the first taught
 * @param chanceReadingSettles chance that one more settled reading, nothing turned, brings the probability to the asked
 *     one
 * @param reason one sentence
 */
public record NextStep(Action action, TurnAdvice turns, double probabilityNow, double probabilityAfterRound,
        double probabilityAfterTwoRounds, double chanceReadingSettles, String reason) {

    /** The action. */
    public enum Action {
        /** Stop: probably inside. */
        STOP_INSIDE,
        /** Stop: another round gains less than the noise. */
        STOP_NO_GAIN,
        /** Turn, settle, read. */
        TURN,
        /** Settle and read once more before anything is turned. */
        READ_AGAIN
    }

    /** Whether the work on these goals ends. */
    public boolean stops() {
        return action == Action.STOP_INSIDE || action == Action.STOP_NO_GAIN;
    }
}
