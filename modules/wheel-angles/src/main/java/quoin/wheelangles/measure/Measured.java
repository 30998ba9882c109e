package quoin.wheelangles.measure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;

/**
 * A measurement that can be recorded.
 *
 * @param method              stable name of the way of measuring
 * @param raw                 what was typed and chosen, per key
 * @param outcome             what follows
 * @param standardUncertainty of each result from the steps of the instruments, base unit; empty = none
 */
public record Measured(String method, Map<String, String> raw, Outcome outcome, List<OptionalDouble> standardUncertainty) {

    /** The entry for the journal; empty where nothing of it is recorded. */
    public Optional<Entry> entry(Header header) {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        Map<ReadingId, Double> uncertainty = new LinkedHashMap<>();
        for (int i = 0; i < outcome.results().size(); i++) {
            Outcome.Result result = outcome.results().get(i);
            OptionalDouble u = standardUncertainty.get(i);
            result.reading().ifPresent(id -> {
                values.put(id, result.value());
                u.ifPresent(v -> uncertainty.put(id, v));
            });
        }
        Measurement measurement = new Measurement(method, raw, outcome.words(), uncertainty);
        if (outcome.curve().isPresent()) {
            Outcome.Curve curve = outcome.curve().get();
            return Optional.of(new Entry.BumpSteer(header, curve.corner(), curve.points(), measurement));
        }
        return values.isEmpty() ? Optional.empty()
                : Optional.of(new Entry.Reading(header, values, Map.of(), Entry.Source.RACER, Optional.of(measurement)));
    }
}
