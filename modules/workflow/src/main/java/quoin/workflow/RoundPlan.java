package quoin.workflow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import quoin.car.Corner;
import quoin.car.ReadingId;

/**
 * What to turn in the next round and what every reading will become.
 *
 * @param revision            revision of the day it was made from; an older one is out of date
 * @param moves               in walking order of the corners; empty where nothing is to be turned
 * @param predicted           by reading: loads, shares and heights, each as read and as predicted
 * @param probabilityInside   probability that every target of the plan is met afterwards; empty where the spread of the
 *                            readings is not known yet
 * @param probabilityNow      the same as the car stands
 * @param why                 one line: why this plan is first
 * @param notReachable        what no turning can bring to target, in words with the remedy
 * @param assumed             what was assumed, in words
 */
public record RoundPlan(long revision, List<CornerMove> moves, Map<ReadingId, Predicted> predicted,
        OptionalDouble probabilityInside, OptionalDouble probabilityNow, String why, List<String> notReachable,
        List<String> assumed) {

    public RoundPlan {
        moves = List.copyOf(moves);
        predicted = Collections.unmodifiableMap(new LinkedHashMap<>(predicted));
        notReachable = List.copyOf(notReachable);
        assumed = List.copyOf(assumed);
    }

    /** Corners to be visited, each once, in walking order. */
    public List<Corner> visits() {
        List<Corner> corners = new ArrayList<>();
        moves.forEach(m -> {
            if (!corners.contains(m.adjuster().corner())) {
                corners.add(m.adjuster().corner());
            }
        });
        return corners;
    }
}
