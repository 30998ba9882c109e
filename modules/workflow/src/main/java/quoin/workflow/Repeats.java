package quoin.workflow;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Figure;

/**
 * Which readings repeat one another: those taken with nothing between them that disturbs them, settled alike, under the same
 * conditions. One that lies far from the last is a slip or another car and not a repeat.
 */
final class Repeats {

    /** Standard uncertainties of a difference beyond which a reading is no repeat (common practice, no source). */
    private static final double FAR = 5;

    private final Day day;
    private final Timeline timeline;
    private final ReadingUncertainty uncertainty;
    private final LoadErrors loads;
    private final Map<ReadingKind, RepeatSpread> spreads = new EnumMap<>(ReadingKind.class);
    private final Map<ReadingId, Map<Long, Map<Long, Double>>> known = new HashMap<>();

    Repeats(Day day) {
        this.day = day;
        this.timeline = Timeline.of(day);
        this.uncertainty = ReadingUncertainty.of(day);
        this.loads = new LoadErrors(day);
    }

    /** Values of a typed reading by entry that repeat the figure, its own first, newest first. */
    Map<Long, Double> of(Figure figure) {
        return known.computeIfAbsent(figure.reading(), r -> new HashMap<>()).computeIfAbsent(figure.entry(), e -> find(figure));
    }

    private Map<Long, Double> find(Figure figure) {
        ReadingId reading = figure.reading();
        long since = timeline.lastDisturbance(reading, figure.entry());
        double far = FAR * Math.sqrt(2) * uncertainty.of(reading, new double[] {figure.value()}, List.of(), figure.instrumentUncertainty());
        List<Figure> history = day.history(reading);
        Map<Long, Double> found = new LinkedHashMap<>();
        for (int i = day.countAt(reading, figure.entry()) - 1; i >= 0 && history.get(i).entry() >= since; i--) {
            Figure other = history.get(i);
            if (other.entry() <= figure.entry() && alike(other, figure) && Math.abs(other.value() - figure.value()) <= far) {
                found.put(other.entry(), other.value());
            }
        }
        return found;
    }

    /** The mean of a typed reading's repeats. */
    Measured mean(Figure figure) {
        return mean(figure, List.copyOf(of(figure).values()));
    }

    /** The mean of some values that repeat the figure. */
    Measured mean(Figure figure, List<Double> values) {
        double mean = mean(values);
        return new Measured(mean, ofTyped(figure, mean, values), values.size(), figure.entry(), loads.of(figure, mean));
    }

    /** Uncertainty of the mean of a typed reading's repeats, with the spread of everything of its kind that was read twice. */
    private double ofTyped(Figure figure, double mean, List<Double> values) {
        RepeatSpread spread = spreads.computeIfAbsent(figure.reading().kind(), k -> RepeatSpread.of(day, k));
        return uncertainty.ofMean(figure.reading(), new double[] {mean}, spread.freedom() > 0 ? spread : RepeatSpread.NONE.with(values),
                figure.instrumentUncertainty(), values.size());
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /**
     * A derived reading whose parts are means. What is made of loads has the spread of all whole weighings of the day, and what the
     * scales leave uncertain; the latter once, however many readings the mean is taken of.
     *
     * @param figures  the figures of its parts
     * @param parts    their means, in the same order
     * @param together its values where all parts were read in one entry, in the same state of the car
     */
    Measured derived(ReadingId reading, double value, List<Figure> figures, double[] parts, List<Double> together, long entry) {
        int count = Math.max(1, together.size());
        if (!LoadErrors.isMadeOfLoads(reading.kind())) {
            double u = uncertainty.ofMean(reading, parts, RepeatSpread.NONE.with(together), OptionalDouble.empty(), count);
            return new Measured(value, u, count, entry);
        }
        LoadErrors.Scales scales = loads.of(reading.kind(), figures, parts);
        RepeatSpread pooled = spreads.computeIfAbsent(reading.kind(), k -> RepeatSpread.ofWeighings(day, k));
        double u = uncertainty.ofMean(reading, parts, pooled.freedom() > 0 ? pooled : RepeatSpread.NONE.with(together),
                OptionalDouble.of(scales.stepsUncertainty()), count);
        return new Measured(value, Math.hypot(u, scales.lasting().uncertainty()), count, entry, scales.lasting());
    }

    /** Settled weighings of all four corners in one entry, the newest at one of these figures of LF, those together that repeat it. */
    List<List<double[]>> weighings(List<Figure> first) {
        List<List<double[]>> groups = new ArrayList<>();
        Set<Long> seen = new HashSet<>();
        for (int i = first.size() - 1; i >= 0; i--) {
            long entry = first.get(i).entry();
            List<Map<Long, Double>> columns = new ArrayList<>();
            for (Corner corner : Corner.values()) {
                columns.add(day.latestAt(ReadingId.of(ReadingKind.LOAD, corner), entry).filter(f -> f.entry() == entry).map(this::of)
                        .orElse(Map.of()));
            }
            List<double[]> group = new ArrayList<>();
            for (Long at : columns.get(0).keySet()) {
                if (timeline.at(at).settled() && columns.stream().allMatch(c -> c.containsKey(at)) && seen.add(at)) {
                    group.add(columns.stream().mapToDouble(c -> c.get(at)).toArray());
                }
            }
            groups.add(group);
        }
        return groups;
    }

    private boolean alike(Figure one, Figure other) {
        return one.entry() == other.entry() || timeline.at(one.entry()).settled() == timeline.at(other.entry()).settled()
                && (one.conditions() == other.conditions() || setting(one).equals(setting(other)));
    }

    /** Conditions that may move a reading; ticks of nuts and parts, and what was looked at on the car, do not. */
    private static Map<String, String> setting(Figure figure) {
        return figure.conditions().entrySet().stream().filter(e -> !e.getKey().equals(Conditions.LOCKNUTS) && !Loosened.isTick(e.getKey())
                        && !CarCheck.isItem(e.getKey()) && !e.getKey().equals(Conditions.PLACE))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
