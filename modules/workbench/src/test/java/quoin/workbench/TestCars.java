package quoin.workbench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;

/** Days of the demo car for tests, built entry by entry. */
public final class TestCars {

    private final List<Entry> entries = new ArrayList<>();

    private TestCars() {
    }

    public static Car car() {
        return Ouzel23.car();
    }

    public static TestCars day() {
        TestCars day = new TestCars();
        return day.add("", h -> new Entry.CarDescribed(h, car()));
    }

    public TestCars add(String stage, Function<Header, Entry> entry) {
        entries.add(entry.apply(new Header(entries.size() + 1L, Instant.parse("2026-04-11T08:00:00Z").plusSeconds(60L * entries.size()), stage)));
        return this;
    }

    public TestCars read(Map<ReadingId, Double> values) {
        return add("corner-weights", h -> new Entry.Reading(h, values, Map.of(), Entry.Source.RACER));
    }

    public TestCars withdraw(long number, String words) {
        return add("", h -> new Entry.Correction(h, number, Optional.empty(), words));
    }

    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    public Day build() {
        return Day.of(entries);
    }
}
