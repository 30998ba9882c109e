package quoin.adjustment;

import java.util.List;

/**
 * The verdict on all goals together.
 *
 * @param goals one verdict per goal
 * @param probabilityInside probability that all goals are met, friction-free
 * @param verdict inside when that probability reaches the asked one, outside when the opposite does, else too close
 */
public record CarVerdict(List<GoalVerdict> goals, double probabilityInside, Verdict.Answer verdict) {

    public CarVerdict {
        goals = List.copyOf(goals);
    }
}
