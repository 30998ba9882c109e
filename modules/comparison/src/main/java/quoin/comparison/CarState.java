package quoin.comparison;

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
import quoin.car.Setting;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.CrossAim;
import quoin.workflow.Measured;
import quoin.workflow.ReadingsAt;

/**
 * A car as it was read at one moment, or as it should be.
 *
 * @param day       id of the day; empty for targets
 * @param readings  every reading known then
 * @param targets   where the state is what should be: the wanted values, and no readings
 * @param positions thread length or shim thickness of every adjuster that was measured at the start, mm
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
        Map<AdjusterId, Double> turned = new TreeMap<>();
        for (Entry e : day.effective()) {
            if (e.number() <= entry && e instanceof Entry.Adjustment adjustment) {
                adjustment.turns().forEach(t -> turned.merge(t.adjuster(), t.amount(), Double::sum));
            }
        }
        Map<AdjusterId, Double> positions = new TreeMap<>();
        Car car = day.car();
        for (Corner corner : Corner.values()) {
            for (Adjuster adjuster : car.corners().get(corner).adjusters()) {
                double perUnit = adjuster.setting() instanceof Setting.Thread thread ? thread.mmPerTurn() : 1;
                adjuster.startMm().ifPresent(start -> positions.put(adjuster.id(),
                        start + perUnit * turned.getOrDefault(adjuster.id(), 0.0)));
            }
        }
        return positions;
    }
}
