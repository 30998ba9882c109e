package quoin.workflow;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.car.Car;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.mechanics.MeasurementModel;

/**
 * How readings of one kind repeated today: every group of repeats at every corner, pooled (JCGM 100:2008, H.3.6 and 4.2.4). Two
 * weighings of four corners give four degrees of freedom where one corner alone gives one.
 *
 * @param squares  sum of squares about the mean of each group, base unit squared
 * @param freedom  readings less groups; 0 = nothing was read twice
 * @param greatest greatest difference within a group, base unit
 */
public record RepeatSpread(double squares, int freedom, double greatest) {

    static final RepeatSpread NONE = new RepeatSpread(0, 0, 0);
    private static final double COVERAGE = 0.95;

    /** The spread of a kind that is read at corners or points of height; none for any other. */
    public static RepeatSpread of(Day day, ReadingKind kind) {
        Car car = day.car();
        Timeline timeline = Timeline.of(day);
        return of(day, kind, new Repeats(day, timeline, new Causes(car, timeline, ExpectedMove.UNKNOWN), new ReadingUncertainty(car)));
    }

    static RepeatSpread of(Day day, ReadingKind kind, Repeats repeats) {
        List<ReadingId> readings = switch (kind) {
            case LOAD, CAMBER, CASTER -> day.car().cornerReadings(kind);
            case HEIGHT -> day.car().heightPoints().stream().map(HeightPoint::reading).toList();
            default -> List.of();
        };
        RepeatSpread all = NONE;
        for (ReadingId reading : readings) {
            List<Figure> history = day.history(reading);
            Set<Long> seen = new HashSet<>();
            for (int i = history.size() - 1; i >= 0; i--) {
                if (!seen.contains(history.get(i).entry())) {
                    Map<Long, Double> group = repeats.of(history.get(i));
                    all = all.with(group.entrySet().stream().filter(e -> seen.add(e.getKey())).map(Map.Entry::getValue).toList());
                }
            }
        }
        return all;
    }

    /** With one more group of repeats. */
    RepeatSpread with(List<Double> group) {
        if (group.size() < 2) {
            return this;
        }
        double mean = group.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double more = group.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        double range = Collections.max(group) - Collections.min(group);
        return new RepeatSpread(squares + more, freedom + group.size() - 1, Math.max(greatest, range));
    }

    /** Standard deviation of one settling and reading, base unit; empty where nothing was read twice. */
    public OptionalDouble standardDeviation() {
        return freedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / freedom));
    }

    /** Half-width that holds 95 of 100 readings as far as so few repeats can tell: Student's t times the standard deviation. */
    public OptionalDouble within95() {
        return freedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(new MeasurementModel.Result(0, Math.sqrt(squares / freedom),
                List.of(), OptionalDouble.of(freedom)).expandedUncertainty(COVERAGE));
    }
}
