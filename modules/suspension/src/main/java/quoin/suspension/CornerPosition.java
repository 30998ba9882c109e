package quoin.suspension;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.mechanics.SpacePoint;

/**
 * One wheel at one position. Points are in the axes of the car: y to the left, so negative on the right.
 *
 * @param position     where it was asked to be
 * @param wheelCentre  wheel centre, mm; empty where the type has no geometry
 * @param contactPoint lowest point of a thin disc of the loaded radius, mm; empty where the type has no geometry
 * @param values       what is known of this position; an output that does not exist on this type is not in the map
 */
public record CornerPosition(WheelPosition position, Optional<SpacePoint> wheelCentre, Optional<SpacePoint> contactPoint,
        Map<CurveOutput, Double> values) {

    public CornerPosition {
        Objects.requireNonNull(position, "position");
        Objects.requireNonNull(wheelCentre, "wheelCentre");
        Objects.requireNonNull(contactPoint, "contactPoint");
        Map<CurveOutput, Double> copy = new EnumMap<>(CurveOutput.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
    }

    public OptionalDouble value(CurveOutput output) {
        Double value = values.get(output);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
