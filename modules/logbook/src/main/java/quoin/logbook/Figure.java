package quoin.logbook;

import java.util.Map;
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
 */
public record Figure(ReadingId reading, double value, long entry, String stage, Map<String, String> conditions,
        Entry.Source source) {
    public Figure {
        conditions = Map.copyOf(conditions);
    }
}
