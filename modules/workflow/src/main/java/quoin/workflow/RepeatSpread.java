package quoin.workflow;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
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

    /**
     * How one reading repeated.
     *
     * @param closed of the readings before the last disturbance: nothing will repeat them any more
     * @param from   index of the first reading after it
     * @param open   of the readings since
     */
    private record OfReading(RepeatSpread closed, int from, RepeatSpread open) {

        static final OfReading UNREAD = new OfReading(NONE, 0, NONE);

        /**
         * With the readings from an index on; whenever the car was disturbed between two, the older ones are done with.
         *
         * @param among the spread among readings with nothing between them that disturbs them
         */
        OfReading with(Day day, ReadingId reading, int next, Function<List<Figure>, RepeatSpread> among) {
            List<Figure> history = day.history(reading);
            if (next == history.size()) {
                return this;
            }
            Timeline timeline = Timeline.of(day);
            RepeatSpread done = closed;
            int begin = from;
            for (int i = Math.max(1, next); i < history.size(); i++) {
                if (timeline.lastDisturbance(reading, history.get(i).entry()) > history.get(i - 1).entry()) {
                    done = done.and(among.apply(history.subList(begin, i)));
                    begin = i;
                }
            }
            return new OfReading(done, begin, among.apply(history.subList(begin, history.size())));
        }

        RepeatSpread all() {
            return closed.and(open);
        }
    }

    private record OfKind(ReadingKind kind) implements Derivation<Map<ReadingId, OfReading>> {
        @Override
        public Map<ReadingId, OfReading> of(Day day) {
            return onward(day, Map.of(), id -> 0);
        }

        @Override
        public Map<ReadingId, OfReading> onward(Day earlier, Map<ReadingId, OfReading> known, Day day) {
            return onward(day, known, id -> earlier.history(id).size());
        }

        private Map<ReadingId, OfReading> onward(Day day, Map<ReadingId, OfReading> known, ToIntFunction<ReadingId> taken) {
            Repeats repeats = new Repeats(day);
            Map<ReadingId, OfReading> all = new TreeMap<>(known);
            readings(day.car(), kind).forEach(id -> all.put(id, known.getOrDefault(id, OfReading.UNREAD)
                    .with(day, id, taken.applyAsInt(id), figures -> among(figures, repeats))));
            return all;
        }

        /** The newest first, with all that repeats it. */
        private static RepeatSpread among(List<Figure> undisturbed, Repeats repeats) {
            RepeatSpread all = NONE;
            Set<Long> seen = new HashSet<>();
            for (int i = undisturbed.size() - 1; i > 0; i--) {
                if (!seen.contains(undisturbed.get(i).entry())) {
                    Map<Long, Double> group = repeats.of(undisturbed.get(i));
                    all = all.with(group.entrySet().stream().filter(e -> seen.add(e.getKey())).map(Map.Entry::getValue).toList());
                }
            }
            return all;
        }
    }

    private record OfWeighings(ReadingKind kind) implements Derivation<OfReading> {
        private static final ReadingId FIRST = ReadingId.of(ReadingKind.LOAD, Corner.LF);

        @Override
        public OfReading of(Day day) {
            return onward(day, OfReading.UNREAD, 0);
        }

        @Override
        public OfReading onward(Day earlier, OfReading known, Day day) {
            return onward(day, known, earlier.history(FIRST).size());
        }

        private OfReading onward(Day day, OfReading known, int taken) {
            Repeats repeats = new Repeats(day);
            return known.with(day, FIRST, taken, figures -> among(repeats.weighings(figures)));
        }

        private RepeatSpread among(List<List<double[]>> groups) {
            RepeatSpread all = NONE;
            for (List<double[]> group : groups) {
                all = all.with(group.stream().map(four -> Derived.formula(kind, four)).filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble).toList());
            }
            return all;
        }
    }

    private static List<ReadingId> readings(Car car, ReadingKind kind) {
        return switch (kind) {
            case LOAD, CAMBER, CASTER -> car.cornerReadings(kind);
            case HEIGHT -> car.heightPoints().stream().map(HeightPoint::reading).toList();
            default -> List.of();
        };
    }

    /** The spread of a kind that is read at corners or points of height; none for any other. */
    public static RepeatSpread of(Day day, ReadingKind kind) {
        RepeatSpread all = NONE;
        for (OfReading one : day.derive(new OfKind(kind)).values()) {
            all = all.and(one.all());
        }
        return all;
    }

    /** The spread of a kind that is made of the four loads, over all whole weighings of the day. */
    static RepeatSpread ofWeighings(Day day, ReadingKind kind) {
        return day.derive(new OfWeighings(kind)).all();
    }

    private RepeatSpread and(RepeatSpread other) {
        return new RepeatSpread(squares + other.squares, freedom + other.freedom, Math.max(greatest, other.greatest));
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
