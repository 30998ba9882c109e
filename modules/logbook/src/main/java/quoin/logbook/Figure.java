package quoin.logbook;

import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import quoin.car.ReadingId;

/**
 * One value of one reading with where it came from.
 *
 * @param reading    what was read
 * @param value      base-unit value
 * @param entry      number of the entry that holds it
 * @param stage      stage it was recorded in
 * @param conditions conditions in force when it was read
 * @param source     who read it
 * @param instrumentUncertainty standard uncertainty from the steps of the instruments, base unit, where the way of measuring
 *                   gives one of its own; empty = that of the car's instruments
 */
public record Figure(ReadingId reading, double value, long entry, String stage, Map<String, String> conditions,
        Entry.Source source, OptionalDouble instrumentUncertainty) {
    public Figure {
        Objects.requireNonNull(instrumentUncertainty, "instrumentUncertainty");
        conditions = Map.copyOf(conditions);
    }
}
