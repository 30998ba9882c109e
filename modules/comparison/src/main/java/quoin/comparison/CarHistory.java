package quoin.comparison;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import quoin.car.AdjusterId;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.CarState;
import quoin.workflow.Loosened;
import quoin.workflow.Measured;
import quoin.workflow.StateComparison;

/**
 * All days of a car, oldest first.
 *
 * @param days each with what it ended with
 */
public record CarHistory(List<Past> days) {

    public CarHistory {
        days = days.stream().sorted(Comparator.comparing(Past::begun)).toList();
    }

    /**
     * One day.
     *
     * @param id     its id
     * @param title  what the racer calls it, such as the place
     * @param begun  when it was begun
     * @param driver as the car names him; may be blank
     * @param tyres  set fitted, as recorded last; may be blank
     * @param notes  notes and remarks of the day, one after the other
     * @param closed whether the day was closed
     * @param last   what was read last
     * @param target target per reading at the end of the day
     */
    public record Past(String id, String title, Instant begun, String driver, String tyres, String notes, boolean closed, CarState last,
            Map<ReadingId, Target> target) {

        /** A day as its entries tell it. */
        public static Past of(String id, String title, Instant begun, Day day) {
            StringBuilder notes = new StringBuilder();
            for (Entry entry : day.effective()) {
                String words = entry instanceof Entry.Note note ? note.words()
                        : entry instanceof Entry.Adjustment a ? a.words()
                        : entry instanceof Entry.Condition c && !Loosened.isTick(c.key()) ? c.words() : "";
                if (!words.isBlank()) {
                    notes.append(notes.isEmpty() ? "" : "; ").append(words.strip());
                }
            }
            return new Past(id, title, begun, day.driver(), day.condition(Conditions.TYRES).orElse(""), notes.toString(),
                    day.closed().isPresent(), CarState.at(id, day, day.revision()), CarState.targets(day).targets());
        }

        /** True where every word sought is in its title, date, driver, tyres or notes, whatever its case. */
        boolean fits(String sought) {
            String all = String.join(" ", id, title, driver, tyres, notes).toLowerCase(Locale.ROOT);
            return List.of(sought.toLowerCase(Locale.ROOT).strip().split("\\s+")).stream().allMatch(all::contains);
        }
    }

    /** The days in which every word sought is found; all where nothing is sought. */
    public CarHistory search(String sought) {
        return sought.isBlank() ? this : new CarHistory(days.stream().filter(d -> d.fits(sought)).toList());
    }

    /**
     * One reading of one day in a trend.
     *
     * @param begun  of the day
     * @param value  with which the day ended
     * @param target then in force; empty = none
     */
    public record Point(Instant begun, String title, Measured value, Optional<Target> target) {
    }

    /** A reading over the days that have it. */
    public List<Point> trend(ReadingId reading) {
        List<Point> points = new ArrayList<>();
        days.forEach(d -> d.last().reading(reading).ifPresent(m -> points.add(new Point(d.begun(), d.title(), m,
                Optional.ofNullable(d.target().get(reading))))));
        return points;
    }

    /** Readings that any day has, those of the comparison first. */
    public List<ReadingId> readings() {
        return days.stream().flatMap(d -> StateComparison.of(d.last(), d.last(), StateComparison.Part.ALL).lines().stream())
                .map(StateComparison.Line::reading).distinct().sorted(StateComparison.ORDERED).toList();
    }

    /** Adjusters whose position any day knows. */
    public Set<AdjusterId> adjusters() {
        Set<AdjusterId> found = new TreeSet<>();
        days.forEach(d -> found.addAll(d.last().positions().keySet()));
        return found;
    }

    /** Where an adjuster stood at the end of each day, mm; empty on days that do not know it. */
    public List<OptionalDouble> positions(AdjusterId adjuster) {
        return days.stream().map(d -> d.last().positions().get(adjuster)).map(mm -> mm == null ? OptionalDouble.empty() : OptionalDouble.of(mm))
                .toList();
    }
}
