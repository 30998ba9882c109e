package quoin.workflow;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
import quoin.logbook.Entry;
import quoin.quantities.Texts;

/**
 * One nut, bolt or part that was loosened today and has to be tightened and ticked off: the nut of every adjuster that was
 * turned, the link bolts of every bar that was off, and what the racer added to the list. Whatever is loosened again after
 * its tick has to be ticked again. Where all nuts are recorded as tight at once, what is still open counts as ticked, with no torque.
 *
 * @param key       stable key of its tick, a condition of the day
 * @param adjuster  whose nut it is; empty = something else
 * @param words     what it is: "LF camber rod", "front bar link", or as the racer named it
 * @param loosened  entry that last loosened it
 * @param tick      entry of the tick that holds; empty = still open
 * @param torqueNm  torque recorded with the tick, N m; empty = none recorded
 * @param instead   what was said where there is no torque, such as "hand-tight, no torque known"; may be empty
 */
public record Loosened(String key, Optional<AdjusterId> adjuster, String words, long loosened, Optional<Long> tick,
        OptionalDouble torqueNm, String instead) {

    private static final Texts TEXTS = Texts.of(Loosened.class);

    /** Value of a tick without a torque. */
    public static final String TIGHT = "tight";
    /** Value of a part that the racer put on the list. */
    public static final String LOOSE = "loose";
    private static final String PREFIX = "tightened.";
    private static final String PART = "part.";

    /** True for the key of a tick or a part on this list. */
    public static boolean isTick(String key) {
        return key.startsWith(PREFIX);
    }

    /** What a tick is about: "LF camber rod", "front bar link", or as the racer named it. */
    public static String subject(String key) {
        String rest = key.substring(PREFIX.length());
        if (rest.startsWith(PART)) {
            return rest.substring(PART.length());
        }
        for (Axle axle : Axle.values()) {
            if (rest.equals(Conditions.bar(axle))) {
                return link(axle);
            }
        }
        try {
            return AdjusterId.parse(rest).words();
        } catch (IllegalArgumentException e) {
            return rest;
        }
    }

    private static String link(Axle axle) {
        return TEXTS.say("loose.barLink." + axle);
    }

    /** The key of a part the racer names. */
    public static String keyOfPart(String words) {
        return PREFIX + PART + words.strip();
    }

    private record Listed() implements Derivation<Map<String, Loosened>> {
        @Override
        public Map<String, Loosened> of(Day day) {
            return with(Map.of(), day.effective());
        }

        @Override
        public Map<String, Loosened> onward(Day earlier, Map<String, Loosened> known, Day day) {
            return with(known, day.beyond(earlier));
        }
    }

    /** Everything on the list, in the order in which it was first loosened. */
    public static List<Loosened> of(Day day) {
        return List.copyOf(day.derive(new Listed()).values());
    }

    private static Map<String, Loosened> with(Map<String, Loosened> known, List<Entry> more) {
        Map<String, Loosened> list = new LinkedHashMap<>(known);
        for (Entry entry : more) {
            if (entry instanceof Entry.Adjustment adjustment) {
                adjustment.turns().stream().filter(t -> t.amount() != 0).forEach(t -> loosen(list, PREFIX + t.adjuster(),
                        Optional.of(t.adjuster()), t.adjuster().words(), entry.number()));
            } else if (entry instanceof Entry.Condition condition) {
                take(list, condition);
            }
        }
        return list;
    }

    private static void take(Map<String, Loosened> list, Entry.Condition condition) {
        for (Axle axle : Axle.values()) {
            if (condition.key().equals(Conditions.bar(axle)) && condition.value().equals(Conditions.DISCONNECTED)) {
                loosen(list, PREFIX + condition.key(), Optional.empty(), link(axle), condition.number());
            }
        }
        if (condition.key().equals(Conditions.LOCKNUTS) && condition.value().equals(Conditions.YES)) {
            list.replaceAll((key, l) -> l.isTicked() ? l : l.ticked(condition));
        }
        if (!isTick(condition.key())) {
            return;
        }
        boolean part = condition.key().startsWith(PREFIX + PART);
        if (part && condition.value().equals(LOOSE)) {
            loosen(list, condition.key(), Optional.empty(), condition.key().substring((PREFIX + PART).length()), condition.number());
        } else if (condition.value().equals(Conditions.NO)) {
            list.computeIfPresent(condition.key(), (k, l) -> l.open(l.loosened()));
        } else {
            list.computeIfPresent(condition.key(), (k, l) -> l.ticked(condition));
        }
    }

    private static void loosen(Map<String, Loosened> list, String key, Optional<AdjusterId> adjuster, String words, long entry) {
        Loosened fresh = new Loosened(key, adjuster, words, entry, Optional.empty(), OptionalDouble.empty(), "");
        list.merge(key, fresh, (before, now) -> before.open(entry));
    }

    private Loosened open(long entry) {
        return new Loosened(key, adjuster, words, entry, Optional.empty(), OptionalDouble.empty(), "");
    }

    private Loosened ticked(Entry.Condition condition) {
        return new Loosened(key, adjuster, words, loosened, Optional.of(condition.number()), torque(condition.value()), condition.words());
    }

    /** Torque that the value of a tick tells, N m; empty where it tells none. */
    public static OptionalDouble torque(String value) {
        try {
            return OptionalDouble.of(Double.parseDouble(value));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    public boolean isTicked() {
        return tick.isPresent();
    }

    /** What is still open on a list. */
    public static List<Loosened> open(List<Loosened> list) {
        return list.stream().filter(l -> !l.isTicked()).toList();
    }
}
