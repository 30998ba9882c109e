package quoin.suspension;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;

/**
 * Parameters of a suspension type as typed values. Lengths in mm, angles in deg; points have y outboard positive whatever
 * the side. Immutable.
 */
public final class ParameterValues {
    private final Map<String, double[]> figures;
    private final Map<String, String> choices;

    ParameterValues(Map<String, double[]> figures, Map<String, String> choices) {
        this.figures = new HashMap<>(figures);
        this.choices = Map.copyOf(choices);
    }

    /**
     * Reads what was typed. A blank text is the same as none. Never throws for what a person can type.
     *
     * @param description the type's parameters
     * @param texts       parameter key to text, as in {@link quoin.car.SuspensionChoice}
     */
    public static ParameterReading read(List<Parameter> description, Map<String, String> texts) {
        return ParameterText.read(description, texts);
    }

    /**
     * Takes figures that are numbers already, such as a program's.
     *
     * @param figures one figure for a number, length (mm) or angle (deg); three for a point (mm, y outboard) or direction
     * @param choices the choices made
     */
    public static ParameterReading of(List<Parameter> description, Map<String, double[]> figures, Map<String, String> choices) {
        return ParameterText.take(description, figures, choices);
    }

    public boolean has(String key) {
        return figures.containsKey(key) || choices.containsKey(key);
    }

    /** True where any key of a group is given: {@code pushrodRocker} for {@code pushrodRocker.rockerPivot}. */
    public boolean hasGroup(String group) {
        return figures.keySet().stream().anyMatch(k -> k.startsWith(group + "."))
                || choices.keySet().stream().anyMatch(k -> k.startsWith(group + "."));
    }

    /** A number, length or angle; empty where it was left blank. */
    public OptionalDouble number(String key) {
        double[] value = figures.get(key);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value[0]);
    }

    /** A number, length or angle, with what blank means. */
    public double numberOr(String key, double blank) {
        return number(key).orElse(blank);
    }

    /**
     * A point in mm or a direction.
     *
     * @throws InvalidInputException naming the key where it was left blank
     */
    public SpacePoint point(String key) {
        double[] value = figures.get(key);
        if (value == null) {
            throw InvalidInputException.missing(key);
        }
        return new SpacePoint(value[0], value[1], value[2]);
    }

    /**
     * A number that the geometry cannot do without.
     *
     * @throws InvalidInputException naming the key where it was left blank
     */
    public double required(String key) {
        return number(key).orElseThrow(() -> InvalidInputException.missing(key));
    }

    public Optional<String> choice(String key) {
        return Optional.ofNullable(choices.get(key));
    }

    /** The same values with one number, length or angle changed; for what-ifs. */
    public ParameterValues with(String key, double value) {
        Map<String, double[]> changed = new HashMap<>(figures);
        changed.put(key, new double[] {value});
        return new ParameterValues(changed, choices);
    }

    /** The same values with one point changed; for what-ifs. */
    public ParameterValues with(String key, SpacePoint value) {
        Map<String, double[]> changed = new HashMap<>(figures);
        changed.put(key, new double[] {value.xMm(), value.yMm(), value.zMm()});
        return new ParameterValues(changed, choices);
    }

    /** Keys that have a value, sorted. */
    public List<String> keys() {
        List<String> keys = new ArrayList<>(figures.keySet());
        keys.addAll(choices.keySet());
        keys.sort(null);
        return keys;
    }
}
