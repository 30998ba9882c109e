package quoin.exchange;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;

/** A library with one car and two days, for the tests. */
final class Days {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-02T08:00:00Z"), ZoneOffset.UTC);

    private Days() {
    }

    static Library library(Path root) {
        return library(root, Ouzel23.car());
    }

    static Library library(Path root, Car car) {
        Library library = new Library(root, CLOCK);
        library.save(car);
        for (String title : List.of("Spring", "Summer")) {
            try (Journal day = library.createDay(car, title)) {
                fill(day);
            }
        }
        return library;
    }

    private static void fill(Journal day) {
        Header weights = Header.draft("corner-weights");
        day.append(new Entry.Condition(weights, Conditions.DRIVER, Conditions.IN, ""));
        day.append(new Entry.Reading(weights, Map.of(load(Corner.LF), 160.2, load(Corner.RF), 170.4, load(Corner.LR), 150.0,
                load(Corner.RR), 999.0), Map.of(load(Corner.LF), "160,2"), Entry.Source.RACER));
        day.append(new Entry.Correction(weights, 3, Optional.of(new Entry.Reading(new Header(3, CLOCK.instant(), "corner-weights"), Map.of(load(Corner.LF), 160.2,
                load(Corner.RF), 170.4, load(Corner.LR), 150.0, load(Corner.RR), 157.6), Map.of(), Entry.Source.RACER)), "typed wrong"));
        day.append(new Entry.Reading(Header.draft("wheel-angles"), Map.of(ReadingId.of(ReadingKind.CAMBER, Corner.LF), -2.15,
                ReadingId.of(ReadingKind.TOE, Corner.LF), 0.0625), Map.of(), Entry.Source.RACER));
        day.append(new Entry.Adjustment(weights, List.of(new Entry.Turn(AdjusterId.parse("perch.RF"), -0.375, OptionalDouble.of(61.6))), "dry"));
        day.append(new Entry.Note(Header.draft(""), "=cmd|'/c calc'!A1; <b>stiff</b>, \"dry\"\nring"));
    }

    static ReadingId load(Corner corner) {
        return ReadingId.of(ReadingKind.LOAD, corner);
    }
}
