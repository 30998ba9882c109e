package quoin.logbook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import quoin.car.AdjusterId;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.logbook.file.CarJson;
import quoin.logbook.file.Fields;
import quoin.logbook.file.FormatException;
import quoin.logbook.file.Names;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/** Entries as JSON objects and back, one writer and one reader per kind. */
final class EntryJson {
    private static final Texts TEXTS = Texts.of(EntryJson.class);

    /** Whole numbers up to here are exact in every JSON reader. */
    private static final long MOST = 1L << 53;
    private static final Names<Entry.Source> SOURCES = Names.of(Map.of("racer", Entry.Source.RACER,
            "practice-car", Entry.Source.PRACTICE_CAR));

    /** One kind of entry: its stable name in files, how it is written and how it is read. */
    private record Kind<E extends Entry>(String name, Class<E> type, BiConsumer<E, ObjectNode> writer,
            BiFunction<Header, Fields, E> reader) {

        boolean write(Entry entry, ObjectNode node) {
            if (!type.isInstance(entry)) {
                return false;
            }
            node.put("kind", name);
            writeHeader(entry.header(), node);
            writer.accept(type.cast(entry), node);
            return true;
        }
    }

    private static final List<Kind<?>> KINDS = List.of(
            new Kind<>("reading", Entry.Reading.class, EntryJson::writeReading, EntryJson::readReading),
            new Kind<>("bump-steer", Entry.BumpSteer.class, MeasurementJson::writePoints, MeasurementJson::readBumpSteer),
            new Kind<>("check", Entry.Check.class, MeasurementJson::writeCheck, MeasurementJson::readCheck),
            new Kind<>("adjustment", Entry.Adjustment.class, EntryJson::writeAdjustment, EntryJson::readAdjustment),
            new Kind<>("condition", Entry.Condition.class,
                    (e, n) -> n.put("key", e.key()).put("value", e.value()).put("words", e.words()),
                    (h, f) -> new Entry.Condition(h, f.text("key"), f.text("value"), words(f))),
            new Kind<>("target", Entry.TargetSet.class,
                    (e, n) -> n.put("reading", e.reading().toString()).put("value", e.target().value())
                            .put("tolerance", e.target().tolerance()),
                    (h, f) -> new Entry.TargetSet(h, f.parsed("reading", ReadingId::parse),
                            new Target(f.number("value"), f.number("tolerance")))),
            new Kind<>("goal", Entry.GoalSet.class, (e, n) -> n.put("goal", CarJson.CROSS_GOALS.text(e.goal())),
                    (h, f) -> new Entry.GoalSet(h, f.parsed("goal", CarJson.CROSS_GOALS::read))),
            new Kind<>("response-taken-over", Entry.ResponseTakenOver.class, EntryJson::writeResponse, EntryJson::readResponse),
            new Kind<>("note", Entry.Note.class, (e, n) -> n.put("words", e.words()),
                    (h, f) -> new Entry.Note(h, f.text("words"))),
            new Kind<>("sign-off", Entry.SignOff.class, (e, n) -> e.waived().ifPresent(w -> n.put("waived", w)),
                    (h, f) -> new Entry.SignOff(h, f.optionalText("waived"))),
            new Kind<>("reopened", Entry.Reopened.class, (e, n) -> n.put("words", e.words()),
                    (h, f) -> new Entry.Reopened(h, words(f))),
            new Kind<>("correction", Entry.Correction.class, EntryJson::writeCorrection, EntryJson::readCorrection),
            new Kind<>("day-closed", Entry.DayClosed.class,
                    EntryJson::writeClosed,
                    (h, f) -> new Entry.DayClosed(h, f.optionalText("outOfOrder"), f.texts("notProved", w -> w))),
            new Kind<>("car", Entry.CarDescribed.class, (e, n) -> n.set("car", CarJson.write(e.car())),
                    (h, f) -> new Entry.CarDescribed(h, CarJson.read(f.object("car")))));

    private EntryJson() {
    }

    static ObjectNode write(Entry entry) {
        if (entry instanceof Entry.Unknown unknown) {
            return StrictJson.read(unknown.raw().getBytes(StandardCharsets.UTF_8));
        }
        ObjectNode node = StrictJson.object();
        for (Kind<?> kind : KINDS) {
            if (kind.write(entry, node)) {
                return node;
            }
        }
        throw new IllegalStateException(entry.getClass() + " has no form in files; give it one");
    }

    /**
     * Reads an entry; one of an unknown kind becomes {@link Entry.Unknown}.
     *
     * @param raw the text the fields were read from
     * @throws IllegalArgumentException where a known kind holds something it must not
     */
    static Entry read(Fields in, String raw) {
        Header header = readHeader(in);
        String name = in.text("kind");
        for (Kind<?> kind : KINDS) {
            if (kind.name().equals(name)) {
                return kind.reader().apply(header, in);
            }
        }
        return new Entry.Unknown(header, name, raw);
    }

    /** Reads what every kind of entry has. */
    static Header readHeader(Fields in) {
        return new Header(in.whole("number", 1, MOST), in.parsed("time", Instant::parse), in.optionalText("stage").orElse(""));
    }

    private static void writeHeader(Header header, ObjectNode node) {
        node.put("number", header.number()).put("time", header.time().toString());
        if (!header.stage().isEmpty()) {
            node.put("stage", header.stage());
        }
    }

    private static void writeClosed(Entry.DayClosed entry, ObjectNode node) {
        entry.outOfOrder().ifPresent(w -> node.put("outOfOrder", w));
        entry.notProved().forEach(w -> node.withArray("notProved").add(w));
    }

    private static String words(Fields in) {
        return in.optionalText("words").orElse("");
    }

    private static void writeReading(Entry.Reading entry, ObjectNode node) {
        ObjectNode values = node.putObject("values");
        entry.values().forEach((id, value) -> values.put(id.toString(), value));
        if (!entry.typed().isEmpty()) {
            ObjectNode typed = node.putObject("typed");
            entry.typed().forEach((id, text) -> typed.put(id.toString(), text));
        }
        node.put("source", SOURCES.text(entry.source()));
        entry.measured().ifPresent(m -> MeasurementJson.write(m, node.putObject("measured")));
    }

    private static Entry.Reading readReading(Header header, Fields in) {
        Map<ReadingId, Double> values = new TreeMap<>();
        in.object("values");
        in.forEach("values", (key, all) -> values.put(ReadingId.parse(key), all.number(key)));
        Map<ReadingId, String> typed = new TreeMap<>();
        in.forEach("typed", (key, all) -> typed.put(ReadingId.parse(key), all.text(key)));
        return new Entry.Reading(header, values, typed, in.parsed("source", SOURCES::read),
                in.optionalObject("measured").map(MeasurementJson::read));
    }

    private static void writeResponse(Entry.ResponseTakenOver entry, ObjectNode node) {
        node.put("fromDay", entry.fromDay()).put("learntOn", entry.learntOn().toString()).put("loadKg", entry.loadKg());
        node.putArray("effects");
        entry.effects().forEach(e -> node.withArray("effects").addObject().put("key", e.key()).put("described", e.described())
                .put("value", e.value()).put("uncertainty", e.uncertainty()));
    }

    private static Entry.ResponseTakenOver readResponse(Header header, Fields in) {
        return new Entry.ResponseTakenOver(header, in.text("fromDay"), in.parsed("learntOn", Instant::parse), in.number("loadKg"),
                in.list("effects", e -> new Entry.ResponseTakenOver.Effect(e.text("key"), e.number("described"), e.number("value"),
                        e.number("uncertainty"))));
    }

    private static void writeAdjustment(Entry.Adjustment entry, ObjectNode node) {
        for (Entry.Turn turn : entry.turns()) {
            ObjectNode written = node.withArray("turns").addObject().put("adjuster", turn.adjuster().toString())
                    .put("amount", turn.amount());
            turn.lengthMm().ifPresent(mm -> written.put("lengthMm", mm));
        }
        node.put("words", entry.words());
    }

    private static Entry.Adjustment readAdjustment(Header header, Fields in) {
        return new Entry.Adjustment(header, in.list("turns", t -> new Entry.Turn(t.parsed("adjuster", AdjusterId::parse),
                t.number("amount"), t.optionalNumber("lengthMm"))), words(in));
    }

    private static void writeCorrection(Entry.Correction entry, ObjectNode node) {
        node.put("corrects", entry.corrects());
        entry.replacement().ifPresent(r -> node.set("replacement", write(r)));
        node.put("words", entry.words());
    }

    private static Entry.Correction readCorrection(Header header, Fields in) {
        Optional<Entry> replacement = in.optionalObject("replacement")
                .map(r -> read(r, new String(StrictJson.line(r.node()), StandardCharsets.UTF_8)));
        return new Entry.Correction(header, in.whole("corrects", 1, MOST), replacement, words(in));
    }

    /** The text of a line, refused where it is not UTF-8. */
    static String text(byte[] line) {
        String text = new String(line, StandardCharsets.UTF_8);
        if (text.indexOf('\uFFFD') >= 0 && !Arrays.equals(text.getBytes(StandardCharsets.UTF_8), line)) {
            throw new FormatException(TEXTS.phrase("notUtfText"));
        }
        return text;
    }
}
