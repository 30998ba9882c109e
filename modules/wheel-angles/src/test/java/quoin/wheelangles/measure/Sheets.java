package quoin.wheelangles.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.quantities.UnitPreferences;
import quoin.rehearsal.Ouzel23;

/** Forms filled as a racer would, on a day of the demo car: wheelbase 2380, tracks 1440 and 1420, chords 372 mm. */
final class Sheets {

    private Sheets() {
    }

    static Day day(Entry... more) {
        List<Entry> entries = new ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car())));
        for (Entry entry : more) {
            entries.add(entry.withHeader(new Header(entries.size() + 1, Instant.EPOCH, "")));
        }
        return Day.of(entries);
    }

    static Worksheet sheet(String method, Map<String, String> texts) {
        return sheet(method, texts, day());
    }

    static Worksheet sheet(String method, Map<String, String> texts, Day day) {
        Method found = Method.all().stream().filter(m -> m.id().equals(method)).findFirst().orElseThrow();
        return new Worksheet(found, new Setting(day), UnitPreferences.metric(), texts);
    }

    /** As many digits as a field takes. */
    static String digits(double value) {
        return String.format(Locale.ROOT, "%.9f", value);
    }

    /** "LF.front", "140", ... */
    static Map<String, String> typed(String... keysAndTexts) {
        Map<String, String> texts = new HashMap<>();
        for (int i = 0; i < keysAndTexts.length; i += 2) {
            texts.put(keysAndTexts[i], keysAndTexts[i + 1]);
        }
        return texts;
    }

    static Measured measured(Worksheet sheet) {
        Worksheet.Check check = sheet.check();
        assertEquals(Map.of(), check.problems());
        assertEquals(Optional.empty(), check.missing());
        return check.measured().orElseThrow();
    }

    static double value(Measured measured, ReadingKind kind, Corner corner) {
        return value(measured, ReadingId.of(kind, corner));
    }

    static double value(Measured measured, ReadingId id) {
        return measured.outcome().results().stream().filter(r -> r.reading().equals(Optional.of(id))).findFirst().orElseThrow().value();
    }

    static double value(Measured measured, String name) {
        return measured.outcome().results().stream().filter(r -> r.name().startsWith(name)).findFirst().orElseThrow().value();
    }

    static double uncertainty(Measured measured, ReadingId id) {
        List<Outcome.Result> results = measured.outcome().results();
        for (int i = 0; i < results.size(); i++) {
            if (results.get(i).reading().equals(Optional.of(id))) {
                return measured.standardUncertainty().get(i).orElseThrow();
            }
        }
        throw new AssertionError(id + " is no result");
    }

    static String words(Measured measured) {
        return String.join("; ", measured.outcome().remarks().stream().map(Outcome.Remark::words).toList());
    }
}
