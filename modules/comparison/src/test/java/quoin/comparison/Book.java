package quoin.comparison;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;

/** Days in memory. */
final class Book {

    static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);

    private final List<Entry> entries = new ArrayList<>();

    Book() {
        this(Ouzel23.car());
    }

    Book(Car car) {
        add(new Entry.CarDescribed(Header.draft(""), car));
    }

    Book add(Entry entry) {
        entries.add(entry.withHeader(new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(60L * entries.size()), entry.header().stage())));
        return this;
    }

    Book condition(String key, String value) {
        return add(new Entry.Condition(Header.draft("preparation"), key, value, ""));
    }

    Book read(Map<ReadingId, Double> values) {
        return add(new Entry.Reading(Header.draft("wheel-angles"), values, Map.of(), Entry.Source.RACER));
    }

    Book turn(AdjusterKind kind, Corner corner, double amount) {
        return add(new Entry.Adjustment(Header.draft(""), List.of(new Entry.Turn(new AdjusterId(kind, corner), amount, OptionalDouble.empty())), ""));
    }

    Book sign(String stage) {
        return add(new Entry.SignOff(Header.draft(stage), Optional.empty()));
    }

    Book note(String words) {
        return add(new Entry.Note(Header.draft(""), words));
    }

    int size() {
        return entries.size();
    }

    List<Entry> entries() {
        return entries;
    }

    Day day() {
        return Day.of(entries);
    }

    /** 600 kg, half on each axle and side. */
    static Map<ReadingId, Double> loads(double cross) {
        double diagonal = 3 * cross;
        return Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), 300 - diagonal, ReadingId.of(ReadingKind.LOAD, Corner.RF), diagonal,
                ReadingId.of(ReadingKind.LOAD, Corner.LR), diagonal, ReadingId.of(ReadingKind.LOAD, Corner.RR), 300 - diagonal);
    }

    static Map<ReadingId, Double> angles(double camber, double toe) {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            values.put(ReadingId.of(ReadingKind.CAMBER, corner), camber);
            values.put(ReadingId.of(ReadingKind.TOE, corner), toe);
        }
        return values;
    }
}
