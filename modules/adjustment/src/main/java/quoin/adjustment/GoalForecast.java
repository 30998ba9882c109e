package quoin.adjustment;

/**
 * A goal's friction-free value as believed.
 *
 * @param goal the goal
 * @param mean most credible value, in the goal's unit
 * @param sd standard uncertainty, same unit
 * @param probabilityInside probability that the value lies within the tolerance
 */
public record GoalForecast(Goal goal, double mean, double sd, double probabilityInside) {
}
