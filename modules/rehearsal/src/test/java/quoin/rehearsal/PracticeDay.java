package quoin.rehearsal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterId;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.Shares;

/** A day with a practice car, for the tests. */
final class PracticeDay {

    final PracticeCar car;
    private final List<Entry> entries = new ArrayList<>();

    PracticeDay(PracticeCar car) {
        this.car = car;
        add(new Entry.CarDescribed(Header.draft(""), car.car()));
    }

    /** Driver in, pads levelled, bar off, scales zeroed, settled. */
    static PracticeDay ready(PracticeCar car) {
        return new PracticeDay(car).set(Conditions.DRIVER, Conditions.IN).set(Conditions.PADS, Conditions.LEVELLED)
                .set("front-bar", Conditions.DISCONNECTED).set(Conditions.SCALES, Conditions.ZEROED).settle();
    }

    private PracticeDay add(Entry entry) {
        entries.add(entry.withHeader(new Header(entries.size() + 1, Instant.EPOCH, "corner-weights")));
        return this;
    }

    PracticeDay set(String key, String value) {
        return add(new Entry.Condition(Header.draft(""), key, value, ""));
    }

    PracticeDay settle() {
        return set(Conditions.SETTLED, Conditions.YES);
    }

    PracticeDay turn(String adjuster, double amount) {
        return add(new Entry.Adjustment(Header.draft(""), List.of(new Entry.Turn(AdjusterId.parse(adjuster), amount, OptionalDouble.empty())), ""));
    }

    /** Withdraws the last entry. */
    PracticeDay undo() {
        return add(new Entry.Correction(Header.draft(""), entries.size(), Optional.empty(), "undo"));
    }

    PracticeDay note() {
        return add(new Entry.Note(Header.draft(""), "looked"));
    }

    Day day() {
        return Day.of(entries);
    }

    private static PerCorner<Double> corners(Map<ReadingId, Double> values, ReadingKind kind) {
        return PerCorner.of(c -> values.get(ReadingId.of(kind, c)));
    }

    PerCorner<Double> read(ReadingKind kind) {
        return corners(car.read(day(), car.car().cornerReadings(kind)), kind);
    }

    PerCorner<Double> exact(ReadingKind kind) {
        return corners(car.exact(day(), car.car().cornerReadings(kind)), kind);
    }

    Shares shares() {
        return Shares.of(exact(ReadingKind.LOAD));
    }

    PerCorner<Double> heights() {
        Map<ReadingId, Double> heights = car.exact(day(), car.car().heightReadings());
        return PerCorner.of(c -> heights.get(car.car().heightPoint(c).orElseThrow().reading()));
    }

    /** Everything exact, by name. */
    Map<String, Double> everything() {
        Map<String, Double> all = new LinkedHashMap<>();
        for (ReadingKind kind : List.of(ReadingKind.LOAD, ReadingKind.CAMBER, ReadingKind.TOE)) {
            Arrays.stream(Corner.values()).forEach(c -> all.put(kind + " " + c, exact(kind).get(c)));
        }
        Arrays.stream(Corner.values()).forEach(c -> all.put("height " + c, heights().get(c)));
        return all;
    }
}
