package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Figure;

/**
 * What the car read at any moment of a day, each reading the mean of its repeats with the uncertainty of that mean. Order and
 * tolerances play no part here: it is what was read.
 */
public final class ReadingsAt {

    private final Day day;
    private final Car car;
    private final Repeats repeats;

    public ReadingsAt(Day day) {
        this.day = day;
        this.car = day.car();
        this.repeats = new Repeats(day);
    }

    /** Every typed reading of the day and every derived one, as known after an entry; what was not read by then is left out. */
    public Map<ReadingId, Measured> at(long entry) {
        Map<ReadingId, Measured> all = new TreeMap<>();
        Stream.concat(day.readings().stream(), Derived.all(car).stream()).forEach(id -> at(id, entry).ifPresent(m -> all.put(id, m)));
        return all;
    }

    /** One reading as known after an entry; empty where it, or a part of it, was not read by then. */
    public Optional<Measured> at(ReadingId reading, long entry) {
        if (!reading.kind().isDerived()) {
            return day.latestAt(reading, entry).map(repeats::mean);
        }
        List<ReadingId> parts = Derived.parts(car, reading);
        List<Figure> figures = parts.stream().flatMap(p -> day.latestAt(p, entry).stream()).toList();
        if (parts.isEmpty() || figures.size() < parts.size()) {
            return Optional.empty();
        }
        List<Measured> means = figures.stream().map(repeats::mean).toList();
        double[] values = means.stream().mapToDouble(Measured::value).toArray();
        List<Double> together = together(reading, figures);
        OptionalDouble value = Derived.formula(reading.kind(), values);
        long last = means.stream().mapToLong(Measured::entry).max().orElseThrow();
        return value.isEmpty() ? Optional.empty() : Optional.of(repeats.derived(reading, value.getAsDouble(), figures, values, together, last));
    }

    /** Values of a derived reading where all its parts were read in one entry. */
    private List<Double> together(ReadingId reading, List<Figure> figures) {
        List<Map<Long, Double>> columns = figures.stream().map(repeats::of).toList();
        List<Double> found = new ArrayList<>();
        for (Long entry : columns.get(0).keySet()) {
            if (columns.stream().allMatch(c -> c.containsKey(entry))) {
                Derived.formula(reading.kind(), columns.stream().mapToDouble(c -> c.get(entry)).toArray()).ifPresent(found::add);
            }
        }
        return found;
    }
}
