package quoin.workflow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.car.Axle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.quantities.Texts;
import quoin.workflow.spi.Requirement;

/** How the order of work says things; figures in base units. */
final class Words {

    private static final Texts TEXTS = Texts.of(Words.class);

    private static final Set<String> BARS = Set.of(Conditions.CONNECTED, Conditions.DISCONNECTED);

    private Words() {
    }

    static String figure(double value, ReadingKind kind) {
        return number("%." + decimals(kind) + "f", value) + unit(kind);
    }

    static String signed(double value, ReadingKind kind) {
        return number("%+." + decimals(kind) + "f", value) + unit(kind);
    }

    /** "62.0 mm +- 1.0". */
    static String target(Target target, ReadingKind kind) {
        return figure(target.value(), kind) + " \u00b1 " + number("%." + decimals(kind) + "f", target.tolerance());
    }

    private static String number(String format, double value) {
        String text = Texts.figure(format, value);
        return text.matches("[-+]0([.,]0+)?") ? text.substring(1) : text;
    }

    private static int decimals(ReadingKind kind) {
        return switch (kind) {
            case LOAD, HEIGHT, RAKE, TOTAL, SCALE_ZERO, PAD_HEIGHT -> 1;
            default -> 2;
        };
    }

    private static String unit(ReadingKind kind) {
        return switch (kind.unit()) {
            case KG -> " kg";
            case MM -> " mm";
            case DEG -> "\u00b0";
            case BAR -> " bar";
            case PERCENT -> " %";
        };
    }

    /** Readings gathered by kind: "heights front left, front right; LF, RF, LR, RR weight". */
    static String list(Collection<ReadingId> readings) {
        Map<ReadingKind, List<String>> byKind = new LinkedHashMap<>();
        for (ReadingId id : readings) {
            byKind.computeIfAbsent(id.kind(), k -> new ArrayList<>()).add(id.placeWords());
        }
        List<String> parts = new ArrayList<>();
        byKind.forEach((kind, places) -> parts.add(places.equals(List.of(ReadingId.CAR)) ? kind.words()
                : TEXTS.say("readings.of", kind.words(), joined(places))));
        return joined(parts);
    }

    static String joined(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        return TEXTS.say("list.and", String.join(", ", parts.subList(0, parts.size() - 1)), parts.get(parts.size() - 1));
    }

    /** The title of a stage within a sentence; some languages write a noun with a capital anywhere. */
    static String inSentence(String title) {
        return TEXTS.say("title.lower").equals("yes") ? title.toLowerCase(Locale.ROOT) : title;
    }

    /** An anti-roll bar by the key of its condition: "front bar". */
    static String bar(String key) {
        return TEXTS.say("bar." + (key.equals(Conditions.bar(Axle.FRONT)) ? Axle.FRONT : Axle.REAR));
    }

    /** The corner of a name, as the racer calls it; any other name as it is. */
    static String place(String name) {
        return new ReadingId(ReadingKind.PRESSURE, name).placeWords();
    }

    /** What was wrong when a reading was taken: "taken with the front bar connected". */
    static String takenWithout(Requirement requirement, Optional<String> then) {
        String key = requirement.key();
        if (Timeline.isBar(key)) {
            String bar = bar(key);
            return then.map(value -> BARS.contains(value) ? TEXTS.say("taken.barThen." + value, bar) : TEXTS.say("taken.barThen.other", bar, value))
                    .orElseGet(() -> TEXTS.say("taken.bar", bar));
        }
        return switch (key) {
            case Conditions.DRIVER -> TEXTS.say("taken.driver");
            case Conditions.DAMPERS -> TEXTS.say("taken.dampers");
            case Conditions.STEERING -> TEXTS.say("taken.steering");
            case Conditions.BRAKES -> TEXTS.say("taken.brakes");
            case Conditions.PADS -> TEXTS.say(then.isPresent() ? "taken.padsMoved" : "taken.pads");
            case Conditions.SCALES -> TEXTS.say("taken.scales");
            case Conditions.PRESSURES -> TEXTS.say("taken.pressures");
            case Conditions.SETTLED -> TEXTS.say("taken.settled");
            default -> TEXTS.say("taken.other", requirement.words());
        };
    }
}
