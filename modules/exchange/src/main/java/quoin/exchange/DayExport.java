package quoin.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.car.Setting;
import quoin.exchange.table.CsvStyle;
import quoin.exchange.table.CsvTable;
import quoin.exchange.table.CsvTable.Cell;
import quoin.logbook.Day;
import quoin.logbook.DiskTrouble;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.logbook.Measurement;

/**
 * A day for other programs.
 *
 * <p>CSV: one row per figure, corrections applied, with the columns {@code entry, time, stage, record, name, place, value, unit,
 * length_mm, typed, source, words}. {@code record} is reading, adjustment, check, condition or note. Values are in base units: kg, mm,
 * deg, bar; an adjustment in turns of its thread or mm of shim, plus as the adjuster's sign says. {@code length_mm} is a thread
 * length measured after the turn; a check has its subject as name and its result as place. {@code time} is UTC, ISO 8601.
 *
 * <p>JSON: {@code {"quoin": "day-export", "format": 1, "day": first line, "entries": [every line as written]}}; a line that
 * cannot be read stands there as {@code {"damaged": text}}.
 */
@Messages({
    "# {0} - what went wrong", "export.unreadable=the day cannot be read ({0}); check the disk"})
public final class DayExport {

    /** Names of the columns of the CSV. */
    public static final List<String> COLUMNS = List.of("entry", "time", "stage", "record", "name", "place", "value", "unit",
            "length_mm", "typed", "source", "words");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int FORMAT = 1;

    private DayExport() {
    }

    /**
     * The day as CSV.
     *
     * @param decimalComma true for 160,2 and a semicolon between cells; false for 160.2 and a comma
     * @throws JournalException where the day cannot be read
     */
    public static byte[] csv(Path dayFolder, boolean decimalComma) {
        try (Journal journal = Journal.openReadOnly(dayFolder)) {
            return csv(journal.day(), decimalComma ? CsvStyle.COMMA : CsvStyle.POINT);
        }
    }

    static byte[] csv(Day day, CsvStyle style) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Reading reading) {
                reading.values().forEach((id, value) -> rows.add(reading(reading, id, value)));
            } else if (entry instanceof Entry.Adjustment adjustment) {
                adjustment.turns().forEach(turn -> rows.add(turn(day, adjustment, turn)));
            } else if (entry instanceof Entry.Condition c) {
                rows.add(row(entry, "condition", c.key(), "", List.of(CsvTable.text(c.value()), CsvTable.text(""), CsvTable.text(""),
                        CsvTable.text(""), CsvTable.text(""), CsvTable.text(c.words()))));
            } else if (entry instanceof Entry.Check check) {
                check.results().forEach((key, value) -> rows.add(row(entry, "check", check.subject(), key, List.of(CsvTable.number(value),
                        CsvTable.text(""), CsvTable.text(""), CsvTable.text(""), CsvTable.text(""), CsvTable.text(how(check.measured()))))));
            } else if (entry instanceof Entry.Note note) {
                rows.add(row(entry, "note", "", "", List.of(CsvTable.text(""), CsvTable.text(""), CsvTable.text(""), CsvTable.text(""),
                        CsvTable.text(""), CsvTable.text(note.words()))));
            }
        }
        return CsvTable.write(COLUMNS, rows, style);
    }

    private static List<Cell> row(Entry entry, String record, String name, String place, List<Cell> rest) {
        List<Cell> cells = new ArrayList<>(List.of(CsvTable.number(entry.number()), CsvTable.text(entry.header().time().toString()),
                CsvTable.text(entry.header().stage()), CsvTable.text(record), CsvTable.text(name), CsvTable.text(place)));
        cells.addAll(rest);
        return cells;
    }

    private static String how(Measurement measured) {
        return (measured.method() + " " + measured.words()).strip();
    }

    private static List<Cell> reading(Entry.Reading entry, ReadingId id, double value) {
        String source = entry.source() == Entry.Source.RACER ? "racer" : "practice-car";
        return row(entry, "reading", id.kind().key(), id.place(), List.of(CsvTable.number(value),
                CsvTable.text(id.kind().unit().name().toLowerCase(Locale.ROOT)), CsvTable.text(""),
                CsvTable.text(entry.typed().getOrDefault(id, "")), CsvTable.text(source),
                CsvTable.text(entry.measured().map(DayExport::how).orElse(""))));
    }

    private static List<Cell> turn(Day day, Entry.Adjustment entry, Entry.Turn turn) {
        boolean shim = day.car().adjuster(turn.adjuster()).map(a -> a.setting() instanceof Setting.Shims).orElse(false);
        Cell length = turn.lengthMm().isPresent() ? CsvTable.number(turn.lengthMm().getAsDouble()) : CsvTable.text("");
        return row(entry, "adjustment", turn.adjuster().kind().key(), turn.adjuster().corner().name(),
                List.of(CsvTable.number(turn.amount()), CsvTable.text(shim ? "mm" : "turn"), length, CsvTable.text(""),
                        CsvTable.text(""), CsvTable.text(entry.words())));
    }

    /**
     * The whole day as one JSON document, corrected and unknown entries included.
     *
     * @throws JournalException where the day cannot be read
     */
    public static byte[] json(Path dayFolder) {
        Path file = dayFolder.resolve(Journal.FILE);
        try (Journal journal = Journal.openReadOnly(dayFolder)) {
            ObjectNode whole = JSON.createObjectNode();
            whole.put("quoin", "day-export").put("format", FORMAT);
            ArrayNode entries = JSON.createArrayNode();
            boolean first = true;
            for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n")) {
                if (line.isBlank()) {
                    continue;
                }
                if (first) {
                    whole.set("day", node(line));
                } else {
                    entries.add(node(line));
                }
                first = false;
            }
            whole.set("entries", entries);
            latest(journal, whole);
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(whole);
        } catch (IOException e) {
            throw new UncheckedIOException(Bundle.export_unreadable(DiskTrouble.of(e)), e);
        }
    }

    /** What was read last, for scripts that only want that; computed, not part of the day's file. */
    private static void latest(Journal journal, ObjectNode whole) {
        if (journal.entries().stream().noneMatch(Entry.CarDescribed.class::isInstance)) {
            return;
        }
        Day day = journal.day();
        ObjectNode latest = whole.putObject("latest");
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Reading reading) {
                for (Map.Entry<ReadingId, Double> one : reading.values().entrySet()) {
                    latest.putObject(one.getKey().toString()).put("value", one.getValue())
                            .put("unit", one.getKey().kind().unit().name().toLowerCase(Locale.ROOT)).put("entry", entry.number());
                }
            }
        }
    }

    private static JsonNode node(String line) {
        try {
            return JSON.readTree(line);
        } catch (JsonProcessingException e) {
            return JSON.createObjectNode().put("damaged", line);
        }
    }
}
