package quoin.adjustment;

/**
 * The verdict on one goal.
 *
 * @param forecast value, uncertainty and probability
 * @param guardBand guard band, in the goal's unit
 * @param verdict inside, outside or too close to call
 */
public record GoalVerdict(GoalForecast forecast, double guardBand, Verdict.Answer verdict) {
}
