package quoin.workflow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.workflow.spi.Requirement;

/** How the order of work says things; figures in base units. */
final class Words {

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
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("[-+]0(\\.0+)?") ? text.substring(1) : text;
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
            byKind.computeIfAbsent(id.kind(), k -> new ArrayList<>()).add(id.place());
        }
        List<String> parts = new ArrayList<>();
        byKind.forEach((kind, places) -> parts.add(places.equals(List.of(ReadingId.CAR)) ? kind.words()
                : kind.words() + " " + joined(places)));
        return joined(parts);
    }

    static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static String joined(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        return String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }

    /** What was wrong when a reading was taken: "taken with the front bar connected". */
    static String takenWithout(Requirement requirement, Optional<String> then) {
        String key = requirement.key();
        if (Timeline.isBar(key)) {
            String bar = key.replace('-', ' ');
            return then.isPresent() ? "taken with the " + bar + " " + then.get() : "taken before the " + bar + " was taken off";
        }
        return switch (key) {
            case Conditions.DRIVER -> "taken with the driver out";
            case Conditions.DAMPERS -> "taken before the dampers were set soft";
            case Conditions.STEERING -> "taken with the steering free";
            case Conditions.BRAKES -> "taken with the brakes on";
            case Conditions.PADS -> then.isPresent() ? "taken after the pads were moved" : "taken before the pads were levelled";
            case Conditions.SCALES -> "taken before the scales were zeroed";
            case Conditions.PRESSURES -> "taken before the tyre pressures were set";
            case Conditions.SETTLED -> "taken before the car was settled";
            default -> "taken before this was done: " + requirement.words();
        };
    }
}
