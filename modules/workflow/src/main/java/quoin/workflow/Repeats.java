package quoin.workflow;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
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
    private final Causes causes;
    private final ReadingUncertainty uncertainty;
    private final Map<ReadingKind, RepeatSpread> spreads = new EnumMap<>(ReadingKind.class);

    Repeats(Day day, Timeline timeline, Causes causes, ReadingUncertainty uncertainty) {
        this.day = day;
        this.timeline = timeline;
        this.causes = causes;
        this.uncertainty = uncertainty;
    }

    /** Values of a typed reading by entry that repeat the figure, its own first, newest first. */
    Map<Long, Double> of(Figure figure) {
        ReadingId reading = figure.reading();
        long since = causes.lastDisturbance(reading, figure.entry());
        double far = FAR * Math.sqrt(2) * uncertainty.of(reading, new double[] {figure.value()}, List.of(), figure.instrumentUncertainty());
        List<Figure> history = day.history(reading);
        Map<Long, Double> found = new LinkedHashMap<>();
        for (int i = history.size() - 1; i >= 0 && history.get(i).entry() >= since; i--) {
            Figure other = history.get(i);
            if (other.entry() <= figure.entry() && alike(other, figure) && Math.abs(other.value() - figure.value()) <= far) {
                found.put(other.entry(), other.value());
            }
        }
        return found;
    }

    /** The mean of a typed reading's repeats. */
    Measured mean(Figure figure) {
        List<Double> values = List.copyOf(of(figure).values());
        double mean = mean(values);
        double u = ofTyped(figure, mean, values);
        return new Measured(mean, u, values.size(), figure.entry());
    }

    /** Uncertainty of the mean of a typed reading's repeats, with the spread of everything of its kind that was read twice. */
    double ofTyped(Figure figure, double mean, List<Double> values) {
        RepeatSpread spread = spreads.computeIfAbsent(figure.reading().kind(), k -> RepeatSpread.of(day, k, this));
        return uncertainty.ofMean(figure.reading(), new double[] {mean}, spread.freedom() > 0 ? spread : RepeatSpread.NONE.with(values),
                figure.instrumentUncertainty(), values.size());
    }

    static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** Uncertainty of a derived reading whose parts are means. */
    double ofDerived(ReadingId reading, double[] parts, List<Double> together) {
        return uncertainty.ofMean(reading, parts, together, OptionalDouble.empty(), Math.max(1, together.size()));
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
