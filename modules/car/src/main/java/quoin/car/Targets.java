package quoin.car;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the racer sets the car to.
 *
 * @param readings  target and tolerance per reading, in insertion order; a reading that is not in the map has no target
 * @param crossGoal how the cross target is found; its tolerance is that of {@code cross.car} in the map
 */
public record Targets(Map<ReadingId, Target> readings, CrossGoal crossGoal) {

    public Targets {
        Objects.requireNonNull(crossGoal, "crossGoal");
        readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    }

    public Optional<Target> of(ReadingId reading) {
        return Optional.ofNullable(readings.get(reading));
    }

    /** A copy with one target set. */
    public Targets with(ReadingId reading, Target target) {
        Map<ReadingId, Target> copy = new LinkedHashMap<>(readings);
        copy.put(reading, target);
        return new Targets(copy, crossGoal);
    }

    public Targets with(CrossGoal goal) {
        return new Targets(readings, goal);
    }
}
