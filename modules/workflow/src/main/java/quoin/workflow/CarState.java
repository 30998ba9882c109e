package quoin.workflow;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Day;

/**
 * A car as it was read at one moment, or as it should be.
 *
 * @param day       id of the day; empty for targets
 * @param readings  every reading known then
 * @param targets   where the state is what should be: the wanted values, and no readings
 * @param positions thread length or shim thickness of every adjuster that was ever measured, mm
 */
public record CarState(String day, Map<ReadingId, Measured> readings, Map<ReadingId, Target> targets, Map<AdjusterId, Double> positions) {

    public CarState {
        Objects.requireNonNull(day, "day");
        readings = Map.copyOf(readings);
        targets = Map.copyOf(targets);
        positions = Map.copyOf(positions);
    }

    /** The car after an entry of a day. */
    public static CarState at(String dayId, Day day, long entry) {
        return new CarState(dayId, new ReadingsAt(day).at(entry), Map.of(), positions(day, entry));
    }

    /** What the targets of a day ask for. */
    public static CarState targets(Day day) {
        Map<ReadingId, Target> wanted = new TreeMap<>(day.targets().readings());
        CrossAim.of(day).ifPresent(t -> wanted.put(ReadingId.ofCar(ReadingKind.CROSS), t));
        return new CarState("", Map.of(), wanted, Map.of());
    }

    /** One reading; empty where it was not known. */
    public Optional<Measured> reading(ReadingId id) {
        return Optional.ofNullable(readings.get(id));
    }

    public boolean isTarget() {
        return !targets.isEmpty();
    }

    private static Map<AdjusterId, Double> positions(Day day, long entry) {
        Map<AdjusterId, Double> positions = new TreeMap<>();
        Car car = day.car();
        for (Corner corner : Corner.values()) {
            for (Adjuster adjuster : car.corners().get(corner).adjusters()) {
                day.lengthMm(adjuster.id(), adjuster.beganMm(), adjuster.setting().mmPerUnit(), entry)
                        .ifPresent(mm -> positions.put(adjuster.id(), mm));
            }
        }
        return positions;
    }
}
