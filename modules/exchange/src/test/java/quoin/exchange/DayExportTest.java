package quoin.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.car.ReadingId;
import quoin.exchange.incoming.ReadingTable;
import quoin.exchange.table.CsvTable;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DisplayUnits;
import quoin.workbench.ReadingFormat;

class DayExportTest {

    @TempDir
    private Path root;

    private Path day() {
        Library library = Days.library(root);
        return library.days("ouzel-23").get(0).folder();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theCsvHoldsEveryFigureThatCounts(boolean comma) {
        List<List<String>> rows = CsvTable.read(DayExport.csv(day(), comma));
        assertEquals(DayExport.COLUMNS, rows.get(0));
        String mark = comma ? "," : ".";
        assertTrue(rows.stream().anyMatch(r -> r.subList(3, 8).equals(List.of("reading", "load", "RR", "157" + mark + "6", "kg"))), rows.toString());
        assertTrue(rows.stream().anyMatch(r -> r.subList(3, 9).equals(List.of("adjustment", "perch", "RF", "-0" + mark + "375", "turn", "61" + mark + "6"))), rows.toString());
        assertTrue(rows.stream().noneMatch(r -> r.contains("999")), "a corrected figure does not count");
        assertTrue(rows.stream().anyMatch(r -> r.get(11).equals("=cmd|'/c calc'!A1; <b>stiff</b>, \"dry\"\nring")), rows.toString());
    }

    /** Out and in again: the readings of the table are those of the day. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whatWasExportedCanBeImported(boolean comma) {
        Path day = day();
        ReadingTable table = new ReadingTable(CsvTable.read(DayExport.csv(day, comma)), Ouzel23.car(),
                new ReadingFormat(Ouzel23.car(), DisplayUnits.usual()));
        ReadingTable.Understood understood = table.read(table.guess());
        assertEquals(List.of(), understood.problems());
        List<Map<ReadingId, Double>> expected = new ArrayList<>();
        try (Journal journal = Journal.openReadOnly(day)) {
            for (Entry entry : journal.day().effective()) {
                if (entry instanceof Entry.Reading reading) {
                    expected.add(reading.values());
                }
            }
        }
        assertEquals(expected, understood.settings().stream().map(TreeMap::new).toList());
    }

    @Test
    void theJsonHoldsEveryLine() throws IOException {
        Path day = day();
        Files.writeString(day.resolve(Journal.FILE), "{\"kind\":\"from-tomorrow\",\"number\":90,\"time\":\"2026-05-02T08:00:00Z\",\"x\":[1]}\nnot json\n",
                StandardOpenOption.APPEND);
        JsonMapper json = JsonMapper.builder().build();
        JsonNode whole = json.readTree(DayExport.json(day));
        List<String> lines = Files.readAllLines(day.resolve(Journal.FILE));
        assertEquals(json.readTree(lines.get(0)), whole.get("day"));
        assertEquals(lines.size() - 1, whole.get("entries").size());
        for (int i = 1; i < lines.size() - 1; i++) {
            assertEquals(json.readTree(lines.get(i)), whole.get("entries").get(i - 1));
        }
        assertEquals("not json", whole.get("entries").get(lines.size() - 2).get("damaged").asText());
        assertEquals(157.6, whole.get("latest").get("load.RR").get("value").asDouble());
        try (Journal journal = Journal.openReadOnly(day)) {
            Day folded = journal.day();
            assertEquals(folded.latest(ReadingId.parse("camber.LF")).orElseThrow().value(), whole.get("latest").get("camber.LF").get("value").asDouble());
        }
    }
}
