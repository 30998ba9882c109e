package quoin.suspension;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import quoin.car.AdjusterKind;

/**
 * How the angles of one wheel answer, linear about the design position. Example: with -0.02 deg of camber per mm of
 * travel, a body that sinks 3 mm at this wheel gains 0.06 deg of negative camber.
 *
 * @param perMmTravel       per mm that this wheel's centre rises relative to the body
 * @param perMmTravelAcross per mm that the other wheel of the axle rises; {@link AngleChange#NONE} unless an axle joins them
 * @param adjusters         per unit of each adjuster: a turn of thread, a mm of shim. Plus is the adjuster kind's plus
 */
public record AngleResponse(AngleChange perMmTravel, AngleChange perMmTravelAcross,
        Map<AdjusterKind, AdjusterEffect> adjusters) {

    public AngleResponse {
        Objects.requireNonNull(perMmTravel, "perMmTravel");
        Objects.requireNonNull(perMmTravelAcross, "perMmTravelAcross");
        Map<AdjusterKind, AdjusterEffect> copy = new EnumMap<>(AdjusterKind.class);
        copy.putAll(adjusters);
        adjusters = Collections.unmodifiableMap(copy);
    }

    /** Nothing known: nothing moves. */
    public static AngleResponse unknown() {
        return new AngleResponse(AngleChange.NONE, AngleChange.NONE, Map.of());
    }

    /** The effect of one unit; {@link AdjusterEffect#NONE} where nothing is known about this adjuster. */
    public AdjusterEffect of(AdjusterKind kind) {
        return adjusters.getOrDefault(kind, AdjusterEffect.NONE);
    }

    /** Whether anything is known about this adjuster. */
    public boolean knows(AdjusterKind kind) {
        return adjusters.containsKey(kind);
    }
}
