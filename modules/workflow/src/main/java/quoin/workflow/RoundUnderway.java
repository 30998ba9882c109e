package quoin.workflow;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import quoin.car.AdjusterId;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.quantities.Texts;
import quoin.workflow.spi.Stage;

/**
 * A round that is half done: some corners were turned since the last reading and the car was not settled yet. It is read
 * from the entries alone, so a day that is opened again on another evening goes on at the same corner.
 *
 * @param before the day as it stood before the first turn of the round: what the plan was made from
 * @param done   what was turned since, by adjuster
 */
public record RoundUnderway(Day before, Map<AdjusterId, Double> done) {

    private static final Texts TEXTS = Texts.of(RoundUnderway.class);

    /** Turns that differ by less are the same turn. */
    private static final double SAME_TURN = 1e-6;

    public RoundUnderway {
        done = Map.copyOf(done);
    }

    /** The round under way in a stage; empty where nothing was turned since its last reading, or the car is settled again. */
    public static Optional<RoundUnderway> of(Day day, Stage stage) {
        Map<AdjusterId, Double> done = new LinkedHashMap<>();
        long first = Long.MAX_VALUE;
        boolean read = false;
        List<Entry> entries = day.effective();
        for (int i = entries.size() - 1; i >= 0 && !read; i--) {
            Entry entry = entries.get(i);
            if (entry instanceof Entry.Adjustment adjustment) {
                if (adjustment.turns().stream().anyMatch(t -> !stage.adjusters().contains(t.adjuster().kind()))) {
                    return Optional.empty();
                }
                adjustment.turns().forEach(t -> done.merge(t.adjuster(), t.amount(), Double::sum));
                first = entry.number();
            } else if (entry instanceof Entry.Reading reading) {
                read = reading.values().keySet().stream().anyMatch(stage.readings(day.car())::contains);
            } else if (entry instanceof Entry.Condition condition && !condition.key().equals(Conditions.DRIVER)) {
                return Optional.empty();
            }
        }
        done.values().removeIf(turned -> Math.abs(turned) < SAME_TURN);
        return read && !done.isEmpty() ? Optional.of(new RoundUnderway(asOf(day, first), done)) : Optional.empty();
    }

    private static Day asOf(Day day, long number) {
        return Day.of(day.written().stream().filter(e -> e.number() < number
                || e instanceof Entry.Correction correction && correction.corrects() < number).toList());
    }

    /**
     * What is left to turn: the rest of the plan that was followed or, where something else was turned than it said, the plan
     * from the car as it should stand now.
     *
     * @param day     the day now
     * @param offered the plans at {@link #before}
     * @param anew    makes plans from the day now, with what was turned taken into account
     * @return moves in walking order, never empty; empty where every corner of the plan is done
     */
    public Optional<RoundPlan> rest(Day day, List<RoundPlan> offered, Function<Day, List<RoundPlan>> anew) {
        if (offered.isEmpty()) {
            return Optional.empty();
        }
        Optional<RoundPlan> followed = offered.stream().filter(this::isFollowed).findFirst();
        RoundPlan plan = followed.orElse(offered.get(0));
        List<CornerMove> left = plan.moves().stream().filter(m -> !done.containsKey(m.adjuster())).toList();
        if (left.isEmpty()) {
            return Optional.empty();
        }
        return followed.isPresent() ? Optional.of(resting(day, plan, left))
                : anew.apply(day).stream().findFirst().filter(p -> !p.moves().isEmpty());
    }

    /** True where all that was turned is what the plan said. */
    private boolean isFollowed(RoundPlan plan) {
        return done.entrySet().stream().allMatch(turned -> Math.abs(turned.getValue() - planned(plan, turned.getKey())) < SAME_TURN);
    }

    private static double planned(RoundPlan plan, AdjusterId adjuster) {
        return plan.moves().stream().filter(m -> m.adjuster().equals(adjuster)).mapToDouble(CornerMove::turns).findFirst().orElse(0);
    }

    private RoundPlan resting(Day day, RoundPlan plan, List<CornerMove> left) {
        String why = TEXTS.say("round.done", plan.moves().size() - left.size(), plan.moves().size());
        return new RoundPlan(day.revision(), left, plan.predicted(), plan.probabilityInside(), plan.probabilityNow(), why,
                plan.notReachable(), plan.assumed());
    }
}
