package quoin.logbook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.file.Fields;

/** A measurement as part of an entry's JSON object. */
final class MeasurementJson {

    private MeasurementJson() {
    }

    static void write(Measurement measured, ObjectNode node) {
        node.put("method", measured.method());
        ObjectNode raw = node.putObject("raw");
        measured.raw().forEach(raw::put);
        if (!measured.words().isEmpty()) {
            node.put("words", measured.words());
        }
        if (!measured.standardUncertainty().isEmpty()) {
            ObjectNode uncertainty = node.putObject("standardUncertainty");
            measured.standardUncertainty().forEach((id, u) -> uncertainty.put(id.toString(), u));
        }
    }

    static Measurement read(Fields in) {
        Map<String, String> raw = new LinkedHashMap<>();
        in.forEach("raw", (key, all) -> raw.put(key, all.text(key)));
        Map<ReadingId, Double> uncertainty = new TreeMap<>();
        in.forEach("standardUncertainty", (key, all) -> uncertainty.put(ReadingId.parse(key), all.number(key)));
        return new Measurement(in.text("method"), raw, in.optionalText("words").orElse(""), uncertainty);
    }

    static void writePoints(Entry.BumpSteer entry, ObjectNode node) {
        node.put("corner", entry.corner().name());
        for (Entry.BumpSteer.Point point : entry.points()) {
            node.withArray("points").addObject().put("travelMm", point.travelMm()).put("toeInChangeDeg", point.toeInChangeDeg());
        }
        write(entry.measured(), node.putObject("measured"));
    }

    static Entry.BumpSteer readBumpSteer(Header header, Fields in) {
        return new Entry.BumpSteer(header, in.parsed("corner", Corner::valueOf), in.list("points",
                p -> new Entry.BumpSteer.Point(p.number("travelMm"), p.number("toeInChangeDeg"))), read(in.object("measured")));
    }

    static void writeCheck(Entry.Check entry, ObjectNode node) {
        node.put("subject", entry.subject());
        ObjectNode results = node.putObject("results");
        entry.results().forEach(results::put);
        write(entry.measured(), node.putObject("measured"));
    }

    static Entry.Check readCheck(Header header, Fields in) {
        Map<String, Double> results = new LinkedHashMap<>();
        in.object("results");
        in.forEach("results", (key, all) -> results.put(key, all.number(key)));
        return new Entry.Check(header, in.text("subject"), results, read(in.object("measured")));
    }
}
