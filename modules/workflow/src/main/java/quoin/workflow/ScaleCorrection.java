package quoin.workflow;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.stream.Stream;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Measurement;

/**
 * What the scales were found to show for a true kilogram, and the readings put right by it. A reading keeps what the display
 * showed and which test it was corrected by; a later test leaves it as it is.
 *
 * @param factors  shown over true, per corner the scale stands at
 * @param standard standard uncertainty of each factor
 * @param related  correlation of the factors, row by row, LF RF LR RR
 * @param entry    the entry of the test
 * @param source   names the test among those of all days
 */
public record ScaleCorrection(PerCorner<Double> factors, PerCorner<Double> standard, List<List<Double>> related, long entry, String source) {

    /** Subject of the check that holds the factors, under {@code factor.LF} and {@code u.LF} and so on. */
    public static final String SUBJECT = "scales";
    /** Method of a reading that was corrected. */
    public static final String METHOD = "scale-factors";
    private static final String TEST = "; test of entry ";
    private static final String TEST_KEY = "test";

    public ScaleCorrection {
        related = List.copyOf(related);
    }

    /** Key of a corner's factor in the check. */
    public static String factorKey(Corner corner) {
        return "factor." + corner;
    }

    /** Key of the uncertainty of a corner's factor in the check. */
    public static String uncertaintyKey(Corner corner) {
        return "u." + corner;
    }

    /** Key of the correlation of two corners' factors in the check; the order of the two does not matter. */
    public static String correlationKey(Corner one, Corner other) {
        return one.ordinal() < other.ordinal() ? "r." + one + "." + other : "r." + other + "." + one;
    }

    /** The correction in force; empty where the scales were not tested today. */
    public static Optional<ScaleCorrection> of(Day day) {
        return day.check(SUBJECT).flatMap(ScaleCorrection::of);
    }

    /** What a check found; empty where it is none of the scales. Factors whose correlation it does not state are independent. */
    static Optional<ScaleCorrection> of(Entry.Check check) {
        if (!check.subject().equals(SUBJECT) || check.results().keySet().stream().noneMatch(k -> k.startsWith("factor."))) {
            return Optional.empty();
        }
        List<List<Double>> related = Stream.of(Corner.values()).map(one -> Stream.of(Corner.values())
                .map(other -> one == other ? Double.valueOf(1) : check.result(correlationKey(one, other)).orElse(0)).toList()).toList();
        return Optional.of(new ScaleCorrection(PerCorner.of(k -> check.result(factorKey(k)).orElse(1)),
                PerCorner.of(k -> check.result(uncertaintyKey(k)).orElse(0)), related, check.number(),
                check.number() + "@" + check.header().time()));
    }

    /** Number of the entry of the test a reading was put right by; empty where it was not. */
    static Optional<Long> test(Entry.Reading reading) {
        return reading.measured().filter(m -> m.method().equals(METHOD)).map(m -> m.raw(TEST_KEY)
                .orElseGet(() -> m.words().substring(m.words().lastIndexOf(' ') + 1))).filter(n -> n.matches("\\d{1,18}")).map(Long::valueOf);
    }

    /** Relative standard uncertainty of the factor of a corner's scale. */
    double relative(Corner corner) {
        return standard.get(corner) / factors.get(corner);
    }

    /** Relative covariance of the factors of two corners' scales. */
    double relativeCovariance(Corner one, Corner other) {
        return related.get(one.ordinal()).get(other.ordinal()) * relative(one) * relative(other);
    }

    /**
     * The reading with its loads put right; as it is where it holds none, or where it says already how it was measured.
     *
     * @param stepKg step of the displays, kg
     */
    public Entry.Reading applied(Entry.Reading reading, double stepKg) {
        if (reading.measured().isPresent() || reading.values().keySet().stream().noneMatch(id -> id.kind() == ReadingKind.LOAD)) {
            return reading;
        }
        Map<ReadingId, Double> values = new TreeMap<>(reading.values());
        Map<String, String> raw = new LinkedHashMap<>();
        Map<ReadingId, Double> uncertainty = new TreeMap<>();
        for (Corner corner : Corner.values()) {
            ReadingId load = ReadingId.of(ReadingKind.LOAD, corner);
            Double read = reading.values().get(load);
            if (read != null) {
                double right = read / factors.get(corner);
                values.put(load, right);
                raw.put(load.toString(), Double.toString(read));
                uncertainty.put(load, Math.hypot(stepKg / Math.sqrt(12), right * relative(corner)));
            }
        }
        String words = words(raw, Long.toString(entry));
        raw.put(TEST_KEY, Long.toString(entry));
        return new Entry.Reading(reading.header(), values, reading.typed(), reading.source(),
                Optional.of(new Measurement(METHOD, raw, words, uncertainty)));
    }

    /** Kept in the file and read again by {@link #retyped}: the same in every language. */
    private static String words(Map<String, String> raw, String test) {
        StringJoiner shown = new StringJoiner(", ");
        for (Corner corner : Corner.values()) {
            String read = raw.get(ReadingId.of(ReadingKind.LOAD, corner).toString());
            if (read != null) {
                shown.add(String.format(Locale.ROOT, "%s %.1f kg", corner, Double.parseDouble(read)));
            }
        }
        return "the scales showed " + shown + TEST + test;
    }

    /**
     * A corrected reading in which the displays were misread: the same test puts other figures right.
     *
     * @param shown what the displays really showed, per load, kg
     */
    public static Entry.Reading retyped(Entry.Reading reading, Map<ReadingId, Double> shown) {
        Measurement old = reading.measured().filter(m -> m.method().equals(METHOD))
                .orElseThrow(() -> new IllegalArgumentException("the reading was not put right by a test of the scales"));
        Map<ReadingId, Double> values = new TreeMap<>(reading.values());
        Map<String, String> raw = new LinkedHashMap<>(old.raw());
        shown.forEach((load, kg) -> {
            double before = Double.parseDouble(old.raw(load.toString()).orElseThrow());
            values.put(load, kg * reading.values().get(load) / before);
            raw.put(load.toString(), Double.toString(kg));
        });
        String test = Long.toString(test(reading).orElseThrow());
        return new Entry.Reading(reading.header(), values, reading.typed(), reading.source(),
                Optional.of(new Measurement(METHOD, raw, words(raw, test), old.standardUncertainty())));
    }

    /** What the display showed for a corrected load; empty where the reading was not corrected. */
    public static Optional<Double> shown(Entry.Reading reading, ReadingId load) {
        return reading.measured().filter(m -> m.method().equals(METHOD)).flatMap(m -> m.raw(load.toString())).map(Double::valueOf);
    }
}
