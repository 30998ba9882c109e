package quoin.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quoin.adjustment.LearningPrior;
import quoin.adjustment.ReadingCheck;
import quoin.adjustment.ReadingDoubt;
import quoin.adjustment.SettledReading;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.KilogramForce;
import quoin.workflow.spi.Finding;

/** Judges loads and heights as they are typed, before they are recorded. Recording is never refused. */
public final class ReadingChecks {

    private ReadingChecks() {
    }

    /**
     * What is doubtful in figures about to be recorded.
     *
     * @param day   the day so far
     * @param typed figures by reading, base units; others than loads and corner heights are not judged
     * @return findings, the likeliest cause first; empty where nothing is doubtful
     */
    public static List<Finding> of(Day day, Map<ReadingId, Double> typed) {
        List<Optional<ReadingId>> rows = rows(day.car());
        if (rows.stream().flatMap(Optional::stream).noneMatch(typed::containsKey)) {
            return List.of();
        }
        Optional<LegBelief> legs = LegBelief.of(day);
        LearningPrior prior = legs.map(l -> l.belief().prior()).orElseGet(() -> LegBelief.unread(day));
        List<AdjusterId> adjusters = legs.map(LegBelief::adjusters).orElseGet(() -> LegBelief.adjusters(day)).stream()
                .map(a -> a.id()).toList();
        List<SettledReading> stretch = afterRecording(day, typed, adjusters);
        SettledReading reading = stretch.isEmpty() ? null : stretch.get(stretch.size() - 1);
        List<SettledReading> before = stretch.isEmpty() ? List.of() : stretch.subList(0, stretch.size() - 1);
        if (reading == null || !holds(reading, rows, typed)) {
            reading = alone(rows, typed, adjusters.size());
            before = List.of();
        }
        return ReadingCheck.check(prior, before, reading).stream().map(d -> finding(d, rows)).toList();
    }

    /** The last stretch of the day as it would be with the figures recorded. */
    private static List<SettledReading> afterRecording(Day day, Map<ReadingId, Double> typed, List<AdjusterId> adjusters) {
        Day then = day.with(new Entry.Reading(new Header(day.revision() + 1, Instant.EPOCH, "check"), typed, Map.of(), Entry.Source.RACER));
        List<List<SettledReading>> stretches = RoundHistory.of(then, adjusters);
        return stretches.isEmpty() ? List.of() : stretches.get(stretches.size() - 1);
    }

    private static boolean holds(SettledReading reading, List<Optional<ReadingId>> rows, Map<ReadingId, Double> typed) {
        SettledReading figures = alone(rows, typed, 0);
        for (int row = 0; row < rows.size(); row++) {
            if (figures.figure(row).isPresent() && !figures.figure(row).equals(reading.figure(row))) {
                return false;
            }
        }
        return true;
    }

    private static SettledReading alone(List<Optional<ReadingId>> rows, Map<ReadingId, Double> typed, int adjusters) {
        List<OptionalDouble> figures = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            double unit = row < 4 ? KilogramForce.toNewtons(1) : 1;
            OptionalDouble value = rows.get(row).map(typed::get).map(v -> OptionalDouble.of(v * unit)).orElse(OptionalDouble.empty());
            figures.add(value);
        }
        return new SettledReading(Collections.nCopies(adjusters, 0.0), figures.subList(0, 4), figures.subList(4, 8),
                List.of(), 1);
    }

    /** Readings of the eight rows: loads, then corner heights. */
    private static List<Optional<ReadingId>> rows(Car car) {
        List<Optional<ReadingId>> rows = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            rows.add(Optional.of(ReadingId.of(ReadingKind.LOAD, corner)));
        }
        for (Corner corner : Corner.values()) {
            rows.add(car.heightPoint(corner).map(HeightPoint::reading));
        }
        return rows;
    }

    private static Optional<ReadingId> place(OptionalInt row, List<Optional<ReadingId>> rows) {
        return row.isPresent() ? rows.get(row.getAsInt()) : Optional.empty();
    }

    private static Finding finding(ReadingDoubt doubt, List<Optional<ReadingId>> rows) {
        Optional<ReadingId> about = place(doubt.row(), rows);
        OptionalDouble suggested = doubt.suggested();
        if (suggested.isPresent() && doubt.row().orElse(4) < 4) {
            suggested = OptionalDouble.of(suggested.getAsDouble() / KilogramForce.toNewtons(1));
        }
        return new Finding(switch (doubt.level()) {
            case INFO -> Finding.Level.INFO;
            case WARNING -> Finding.Level.WARNING;
            case ERROR -> Finding.Level.ERROR;
        }, doubt.words(), about, suggested, place(doubt.exchangedRow(), rows));
    }
}
