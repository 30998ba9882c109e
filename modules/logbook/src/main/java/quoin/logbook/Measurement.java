package quoin.logbook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import quoin.car.ReadingId;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * How figures were got where they were not read directly: the method, everything that was read for it, and what that is
 * good for. The figures can be computed again from it.
 *
 * @param method              stable name of the method, such as "string-toe"; one this program does not know is kept
 * @param raw                 what was read and chosen, text as typed under a stable key such as "LF.front"; in the order of the form
 * @param words               what the method says of the result, such as "right cord skew 0.075 deg"; may be empty
 * @param standardUncertainty standard uncertainty (JCGM 100:2008) of a figure from the steps of the instruments alone, in the base
 *                            unit of its kind; a figure that is not in the map has none of its own
 */
public record Measurement(String method, Map<String, String> raw, String words, Map<ReadingId, Double> standardUncertainty) {
    private static final Texts TEXTS = Texts.of(Measurement.class);

    public Measurement {
        if (method.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("measurementNeedsAMethod"));
        }
        raw = Collections.unmodifiableMap(new LinkedHashMap<>(raw));
        words = words.strip();
        standardUncertainty = Collections.unmodifiableMap(new TreeMap<>(standardUncertainty));
        standardUncertainty.forEach((id, u) -> {
            if (!(u > 0) || u.isInfinite()) {
                throw new NotTakenException(TEXTS.phrase("uncertaintyMustBeGreater", id.words()));
            }
        });
    }

    public Optional<String> raw(String key) {
        return Optional.ofNullable(raw.get(key));
    }

    /** Standard uncertainty of one figure; empty where it has none of its own. */
    public OptionalDouble uncertaintyOf(ReadingId reading) {
        Double u = standardUncertainty.get(reading);
        return u == null ? OptionalDouble.empty() : OptionalDouble.of(u);
    }
}
