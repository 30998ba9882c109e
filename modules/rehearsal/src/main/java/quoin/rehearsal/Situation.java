package quoin.rehearsal;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/**
 * What was done to the car up to some entry of the day.
 *
 * @param turned      sum of the turns (or mm of shim) per adjuster
 * @param conditions  the entry that last set each condition
 * @param freed       bars that were off at some time, by the condition's key; their links are set afresh when joined
 * @param lastSettled number of the entry that last settled or disturbed the car; 0 = none
 * @param settled     true where the car was settled after the last turn
 */
record Situation(Map<AdjusterId, Double> turned, Map<String, Entry.Condition> conditions, Set<String> freed, long lastSettled,
        boolean settled) {

    static Situation of(Day day) {
        return upTo(day, Long.MAX_VALUE);
    }

    /** The situation right after an entry was recorded. */
    static Situation upTo(Day day, long entryNumber) {
        Map<AdjusterId, Double> turned = new TreeMap<>();
        Map<String, Entry.Condition> conditions = new HashMap<>();
        Set<String> freed = new HashSet<>();
        long last = 0;
        boolean settled = false;
        for (Entry entry : day.effective()) {
            if (entry.number() > entryNumber) {
                break;
            }
            if (entry instanceof Entry.Adjustment adjustment) {
                adjustment.turns().forEach(t -> turned.merge(t.adjuster(), t.amount(), Double::sum));
                last = entry.number();
                settled = false;
            } else if (entry instanceof Entry.Condition condition) {
                conditions.put(condition.key(), condition);
                if (condition.value().equals(Conditions.DISCONNECTED)) {
                    freed.add(condition.key());
                }
                if (condition.key().equals(Conditions.SETTLED)) {
                    last = entry.number();
                    settled = condition.value().equals(Conditions.YES);
                }
            }
        }
        return new Situation(turned, conditions, freed, last, settled);
    }

    double turned(AdjusterId adjuster) {
        return turned.getOrDefault(adjuster, 0.0);
    }

    Optional<Entry.Condition> condition(String key) {
        return Optional.ofNullable(conditions.get(key));
    }

    boolean is(String key, String value) {
        return condition(key).filter(c -> c.value().equals(value)).isPresent();
    }

    /** True unless the bar's link was taken off: a car is found with its bars joined. */
    boolean isJoined(Axle axle) {
        return !is(Conditions.bar(axle), Conditions.DISCONNECTED);
    }

    /** The entry that joined a bar which had been off; empty where it is as found. */
    Optional<Long> joinedAfresh(Axle axle) {
        String key = Conditions.bar(axle);
        return isJoined(axle) && freed.contains(key) ? condition(key).map(Entry::number) : Optional.empty();
    }
}
