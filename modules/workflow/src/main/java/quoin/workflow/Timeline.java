package quoin.workflow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/**
 * What happened to the car in the order it happened: the events that disturb readings, and how things stood at each reading.
 * Whatever is turned has its nut loosened: the locknuts are no longer tight after it.
 */
final class Timeline {

    /**
     * Something that disturbs readings.
     *
     * @param entry    entry that tells of it
     * @param what     row of the staleness table
     * @param axle     where; empty = the whole car
     * @param adjuster what was turned; empty = a condition changed
     * @param amount   turns or mm of shim; 0 for a condition
     * @param key      condition key; empty = an adjuster was turned
     * @param value    what the condition became
     */
    record Event(long entry, Disturbance what, Optional<Axle> axle, Optional<AdjusterId> adjuster, double amount, String key,
            String value) {
    }

    /**
     * How things stood when a reading was taken.
     *
     * @param settled settled since the last work on the car
     * @param signed  stages with a sign-off in force
     * @param asFound nothing had been turned yet
     */
    record Moment(boolean settled, Set<String> signed, boolean asFound) {
    }

    private final List<Event> events = new ArrayList<>();
    private final Map<Long, Moment> moments = new HashMap<>();
    private final Map<String, String> values = new HashMap<>();
    private final Map<String, Entry.SignOff> signOffs = new HashMap<>();
    private Set<String> signed = Set.of();
    private boolean settled;
    private boolean asFound = true;
    private long firstAdjustment;

    private Timeline() {
    }

    static Timeline of(Day day) {
        Timeline timeline = new Timeline();
        day.effective().forEach(timeline::take);
        return timeline;
    }

    private void take(Entry entry) {
        if (entry instanceof Entry.Reading) {
            moments.put(entry.number(), new Moment(settled, signed, asFound));
        } else if (entry instanceof Entry.Adjustment adjustment) {
            adjustment.turns().forEach(t -> take(entry.number(), t));
        } else if (entry instanceof Entry.Check check && check.subject().equals(ScaleCorrection.SUBJECT)) {
            events.add(new Event(check.number(), Disturbance.SCALES, Optional.empty(), Optional.empty(), 0, ScaleCorrection.SUBJECT + ".test", ""));
        } else if (entry instanceof Entry.Condition condition) {
            take(condition);
        } else if (entry instanceof Entry.SignOff signOff) {
            signOffs.put(entry.header().stage(), signOff);
            signed = Set.copyOf(signOffs.keySet());
        } else if (entry instanceof Entry.Reopened) {
            signOffs.remove(entry.header().stage());
            signed = Set.copyOf(signOffs.keySet());
        }
    }

    private void take(long entry, Entry.Turn turn) {
        if (turn.amount() == 0) {
            return;
        }
        settled = false;
        if (asFound) {
            firstAdjustment = entry;
        }
        asFound = false;
        values.remove(Conditions.LOCKNUTS);
        AdjusterId id = turn.adjuster();
        events.add(new Event(entry, Disturbance.of(id.kind()), Optional.of(id.corner().axle()), Optional.of(id), turn.amount(), "", ""));
    }

    private void take(Entry.Condition condition) {
        String before = values.put(condition.key(), condition.value());
        if (condition.key().equals(Conditions.SETTLED)) {
            settled = condition.value().equals(Conditions.YES);
        }
        disturbance(condition.key(), before, condition.value()).ifPresent(what -> {
            if (what == Disturbance.PADS || what == Disturbance.TYRES && !isPressure(condition.key())) {
                settled = false;
            }
            events.add(new Event(condition.number(), what, axle(condition.key()), Optional.empty(), 0, condition.key(),
                    condition.value()));
        });
    }

    /** What a condition entry disturbs. Recording again what holds already confirms it and disturbs nothing. */
    private static Optional<Disturbance> disturbance(String key, String before, String now) {
        if (key.equals(Conditions.SETTLED)) {
            return now.equals(Conditions.YES) ? Optional.empty() : Optional.of(Disturbance.MOVED);
        }
        if (key.equals(Conditions.BALLAST)) {
            return Optional.of(Disturbance.MASS);
        }
        if (before != null && sameValue(before, now)) {
            return Optional.empty();
        }
        if (isPressure(key) || key.equals(Conditions.TYRES)) {
            return Optional.of(Disturbance.TYRES);
        }
        if (isBar(key)) {
            return Optional.of(Disturbance.BAR);
        }
        return switch (key) {
            case Conditions.DRIVER, Conditions.FUEL -> Optional.of(Disturbance.MASS);
            case Conditions.PADS -> Optional.of(Disturbance.PADS);
            case Conditions.STEERING -> now.equals(Conditions.LOCKED) ? Optional.empty() : Optional.of(Disturbance.STEERING_FREED);
            case Conditions.LOCKNUTS -> now.equals(Conditions.YES) ? Optional.of(Disturbance.LOCKNUTS) : Optional.empty();
            default -> Optional.empty();
        };
    }

    static boolean isPressure(String key) {
        return key.equals(Conditions.PRESSURES) || key.startsWith("pressure.");
    }

    static boolean isBar(String key) {
        return axle(key).isPresent();
    }

    private static Optional<Axle> axle(String key) {
        for (Axle axle : Axle.values()) {
            if (Conditions.bar(axle).equals(key)) {
                return Optional.of(axle);
            }
        }
        return Optional.empty();
    }

    static boolean sameValue(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        try {
            return Double.parseDouble(one) == Double.parseDouble(other);
        } catch (NumberFormatException e) {
            return false;
        }
    }

    /** Every event, oldest first. */
    List<Event> events() {
        return events;
    }

    /** How things stood at the reading in this entry. */
    Moment at(long entry) {
        return moments.get(entry);
    }

    /** Settled since the last work on the car, as of the last entry. */
    boolean settledNow() {
        return settled;
    }

    /** The first entry in which something was turned. */
    OptionalLong firstAdjustment() {
        return asFound ? OptionalLong.empty() : OptionalLong.of(firstAdjustment);
    }

    /** The sign-off of a stage in force. */
    Optional<Entry.SignOff> signOff(String stage) {
        return Optional.ofNullable(signOffs.get(stage));
    }

    Optional<String> valueNow(String key) {
        return Optional.ofNullable(values.get(key));
    }
}
