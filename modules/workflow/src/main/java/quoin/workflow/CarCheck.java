package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.quantities.Texts;

/**
 * The list of what is looked at on the car before the day. Each item is a condition of its own: found good, or left open with
 * a reason. An item of the racer's own carries its words in its key.
 */
public final class CarCheck {

    private static final Texts TEXTS = Texts.of(CarCheck.class);

    /** What is found good. */
    public static final String GOOD = Conditions.YES;
    /** What is left open; the words say why. */
    public static final String OPEN = "open";
    /** An own item that was taken off the list again. */
    public static final String GONE = "gone";

    private static final String PREFIX = "check.";
    private static final String OWN = PREFIX + "own.";

    /**
     * One item as it was last recorded.
     *
     * @param key    of its condition
     * @param name   what is looked at
     * @param value  {@link #GOOD} or {@link #OPEN}
     * @param reason why it was left open; may be empty
     */
    public record Item(String key, String name, String value, String reason) {

        /** "left open in the check of the car: rear damper (new one ordered)". */
        public String words() {
            return reason.isBlank() ? TEXTS.say("check.open", name) : TEXTS.say("check.openWhy", name, reason);
        }
    }

    private CarCheck() {
    }

    /** Key of an item of the program's own list. */
    public static String key(String id) {
        return PREFIX + id;
    }

    /** Key of an item the racer adds. */
    public static String ownKey(String name) {
        return OWN + name.strip();
    }

    /** True for a condition that is an item of the list. */
    public static boolean isItem(String conditionKey) {
        return conditionKey.startsWith(PREFIX);
    }

    /** Words of an own item; empty for one of the program's. */
    public static Optional<String> ownName(String key) {
        return key.startsWith(OWN) ? Optional.of(key.substring(OWN.length())) : Optional.empty();
    }

    /** Everything recorded today, in the order in which it was first recorded. */
    public static List<Item> recorded(Day day) {
        Map<String, Item> items = new LinkedHashMap<>();
        for (Entry.Condition c : day.conditions()) {
            if (isItem(c.key())) {
                String name = ownName(c.key()).orElse(c.key().substring(PREFIX.length()).replace('-', ' '));
                items.put(c.key(), new Item(c.key(), name, c.value(), c.words()));
            }
        }
        items.values().removeIf(i -> i.value().equals(GONE));
        return new ArrayList<>(items.values());
    }

    /** What was left open and not found good since. */
    public static List<Item> leftOpen(Day day) {
        return recorded(day).stream().filter(i -> i.value().equals(OPEN)).toList();
    }
}
