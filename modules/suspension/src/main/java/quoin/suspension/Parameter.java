package quoin.suspension;

import java.util.List;
import java.util.Objects;

/**
 * One figure, point or choice that a suspension type asks for. Forms, files and checks follow from it.
 *
 * @param key      stable key that files and calculator requests use, such as {@code links.tie.inboard}; dots group
 * @param label    what the form calls it, in the trade's words
 * @param help     one sentence: what it is, where to measure, which way is plus
 * @param kind     what is typed
 * @param unit     unit shown beside the field, such as "deg/mm"; empty for choices and plain numbers
 * @param required false where it may be left blank
 * @param choices  keys to choose from; empty unless the kind is a choice
 */
public record Parameter(String key, String label, String help, Kind kind, String unit, boolean required,
        List<String> choices) {

    /** What is typed into a field. */
    public enum Kind {
        /** A plain number in the parameter's unit. */
        NUMBER,
        /** A length, stored in mm; may carry its own unit. */
        LENGTH,
        /** An angle, stored in deg; may carry its own unit. */
        ANGLE,
        /** Three figures in mm: x forward, y outboard from the centre line (the same for both sides), z up from the road. */
        POINT,
        /** As a point, of a part that the whole axle has once: y is to the left of the centre line for both sides. */
        AXLE_POINT,
        /** Three figures, a direction of any length in the axes of a point. */
        DIRECTION,
        /** One of the choices. */
        CHOICE
    }

    public Parameter {
        if (key.isBlank() || label.isBlank()) {
            throw new IllegalArgumentException("a parameter needs a key and a label");
        }
        Objects.requireNonNull(help, "help");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
        choices = List.copyOf(choices);
        if ((kind == Kind.CHOICE) == choices.isEmpty()) {
            throw new IllegalArgumentException(key + ": choices belong to a choice, and to nothing else");
        }
    }

    public static Parameter number(String key, String label, String unit, String help) {
        return new Parameter(key, label, help, Kind.NUMBER, unit, true, List.of());
    }

    public static Parameter length(String key, String label, String help) {
        return new Parameter(key, label, help, Kind.LENGTH, "mm", true, List.of());
    }

    public static Parameter angle(String key, String label, String help) {
        return new Parameter(key, label, help, Kind.ANGLE, "deg", true, List.of());
    }

    public static Parameter point(String key, String label, String help) {
        return new Parameter(key, label, help, Kind.POINT, "mm", true, List.of());
    }

    public static Parameter axlePoint(String key, String label, String help) {
        return new Parameter(key, label, help, Kind.AXLE_POINT, "mm", true, List.of());
    }

    public static Parameter direction(String key, String label, String help) {
        return new Parameter(key, label, help, Kind.DIRECTION, "", true, List.of());
    }

    public static Parameter choice(String key, String label, String help, List<String> choices) {
        return new Parameter(key, label, help, Kind.CHOICE, "", true, choices);
    }

    /** The same parameter, that may be left blank. */
    public Parameter optional() {
        return new Parameter(key, label, help, kind, unit, false, choices);
    }
}
