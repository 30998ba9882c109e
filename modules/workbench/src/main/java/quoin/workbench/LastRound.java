package quoin.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterId;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Figure;
import quoin.workflow.Derived;
import quoin.workflow.Predicted;

/**
 * The last round of perches and pushrods: what was to be expected of what was really turned, beside what was then read.
 *
 * @param turned    what was turned, in the order recorded
 * @param predicted what every reading was to become
 * @param measured  what was read since; readings not read since are left out
 */
@Messages({
    "round.asPredicted=as predicted",
    "# {0} - amount", "round.higher={0} more than predicted",
    "# {0} - amount", "round.lower={0} less than predicted",})
record LastRound(Map<AdjusterId, Double> turned, Map<ReadingId, Predicted> predicted, Map<ReadingId, Double> measured) {

    /** Predicts what turns do, from a day as it stood before them. */
    @FunctionalInterface
    interface Forecast {
        Map<ReadingId, Predicted> of(Day before, Map<AdjusterId, Double> turns);
    }

    /** The last round of a day; empty where nothing of the spring legs was turned or nothing could be predicted. */
    static Optional<LastRound> of(Day day, Forecast forecast) {
        List<Entry.Adjustment> last = lastTurns(day);
        if (last.isEmpty()) {
            return Optional.empty();
        }
        long first = last.get(0).number();
        Map<AdjusterId, Double> turns = new LinkedHashMap<>();
        last.forEach(a -> a.turns().forEach(t -> turns.merge(t.adjuster(), t.amount(), Double::sum)));
        Day before = Day.of(day.effective().stream().filter(e -> e.number() < first).toList());
        Map<ReadingId, Predicted> predicted = forecast.of(before, turns);
        if (predicted.isEmpty()) {
            return Optional.empty();
        }
        long end = last.get(last.size() - 1).number();
        Map<ReadingId, Double> measured = new LinkedHashMap<>();
        predicted.keySet().forEach(id -> Derived.value(day.car(), id, part -> since(day, part, end)).ifPresent(v -> measured.put(id, v)));
        return Optional.of(new LastRound(turns, predicted, measured));
    }

    private static OptionalDouble since(Day day, ReadingId id, long end) {
        Optional<Figure> figure = day.latest(id).filter(f -> f.entry() > end);
        return figure.isPresent() ? OptionalDouble.of(figure.get().value()) : OptionalDouble.empty();
    }

    /** The last adjustments of spring legs with no reading of loads or heights between them, oldest first. */
    private static List<Entry.Adjustment> lastTurns(Day day) {
        List<Entry.Adjustment> turns = new ArrayList<>();
        List<Entry> entries = day.effective();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (entry instanceof Entry.Reading && !turns.isEmpty()) {
                break;
            }
            if (entry instanceof Entry.Adjustment adjustment
                    && adjustment.turns().stream().anyMatch(t -> t.adjuster().kind().isSpringLeg())) {
                turns.add(0, adjustment);
            }
        }
        return turns;
    }

    /** What the difference of a reading says: within twice the uncertainty of the prediction it came out as predicted. */
    String word(ReadingId reading, ReadingFormat format) {
        Double read = measured.get(reading);
        if (read == null) {
            return "–";
        }
        Predicted was = predicted.get(reading);
        double off = read - was.predicted();
        String amount = format.text(reading, Math.abs(off));
        if (Math.abs(off) <= 2 * was.uncertainty() || amount.equals(format.text(reading, 0))) {
            return Bundle.round_asPredicted();
        }
        return off > 0 ? Bundle.round_higher(amount) : Bundle.round_lower(amount);
    }
}
