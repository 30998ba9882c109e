package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;

class SheetRunTest {

    @TempDir
    private Path folder;
    private final ByteArrayOutputStream error = new ByteArrayOutputStream();

    @BeforeEach
    void aDay() {
        try (Journal journal = Journal.create(folder.resolve("2026-05-02-1"), Ouzel23.car(), "Spring set-up")) {
            journal.append(new Entry.Note(Header.draft(""), "RF ring was dry"));
        }
    }

    @Test
    void writesPdfAndText() throws IOException {
        assertEquals(0, run("2026-05-02-1", "sheet.pdf", false), error.toString(StandardCharsets.UTF_8));
        assertEquals("%PDF-", new String(Files.readAllBytes(folder.resolve("sheet.pdf")), 0, 5, StandardCharsets.US_ASCII));
        assertEquals(0, run("2026-05-02-1/day.jsonl", "sheet.txt", false));
        assertTrue(Files.readString(folder.resolve("sheet.txt")).contains("RF ring was dry"));
        assertEquals(0, run("2026-05-02-1", "blank.PDF", true));
        assertEquals(0, run("2026-05-02-1", "day.csv", false));
        assertTrue(Files.readString(folder.resolve("day.csv")).contains("RF ring was dry"));
        assertEquals(0, run("2026-05-02-1", "day.json", false));
        assertTrue(Files.readString(folder.resolve("day.json")).contains("\"Spring set-up\""));
        assertEquals("", error.toString(StandardCharsets.UTF_8));
    }

    @Test
    void saysInOneLineWhatIsWrongAndWritesNothing() {
        assertEquals(2, run("2026-05-02-1", "sheet.docx", false));
        assertEquals(2, run("no-such-day", "sheet.pdf", false));
        assertEquals(2, run("2026-05-02-1", "no/such/folder/sheet.pdf", false));
        List<String> lines = error.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals(3, lines.size(), lines.toString());
        assertTrue(lines.get(0).contains("must end in one of"), lines.get(0));
        assertTrue(lines.get(1).startsWith("no-such-day: "), lines.get(1));
        assertTrue(lines.get(2).contains("make it first"), lines.get(2));
        assertFalse(Files.exists(folder.resolve("sheet.pdf")));
    }

    @Test
    void paperAndDecimalMarkAreChosen() throws IOException {
        assertEquals(0, run(new SheetRun.Wish("2026-05-02-1", "letter.pdf", SheetRun.Page.SHEET, "Letter", null)), said());
        assertEquals(0, run(new SheetRun.Wish("2026-05-02-1", "a4.pdf", SheetRun.Page.BLANK, "a4", null)), said());
        // 8.5 x 11 inch, and ISO 216, in points of 1/72 inch
        assertSize(8.5 * 72, 11 * 72, "letter.pdf");
        assertSize(210 / 25.4 * 72, 297 / 25.4 * 72, "a4.pdf");
        assertEquals(0, run(new SheetRun.Wish("2026-05-02-1", "day.csv", SheetRun.Page.SHEET, null, "comma")), said());
        assertTrue(Files.readString(folder.resolve("day.csv")).contains("entry;time;stage"), Files.readString(folder.resolve("day.csv")));
        assertEquals("", said());
    }

    @Test
    void anOptionThatDoesNotFitIsNamed() {
        assertEquals(2, run(new SheetRun.Wish("2026-05-02-1", "a.csv", SheetRun.Page.SHEET, "a4", null)));
        assertEquals(2, run(new SheetRun.Wish("2026-05-02-1", "a.pdf", SheetRun.Page.SHEET, "folio", null)));
        assertEquals(2, run(new SheetRun.Wish("2026-05-02-1", "a.pdf", SheetRun.Page.SHEET, null, "comma")));
        assertEquals(2, run(new SheetRun.Wish("2026-05-02-1", "a.csv", SheetRun.Page.SHEET, null, "dot")));
        assertEquals(2, run(new SheetRun.Wish("2026-05-02-1", "a.txt", SheetRun.Page.LAST_TIME, null, null)));
        assertEquals(2, run(new SheetRun.Wish("2026-05-02-1", "a.pdf", SheetRun.Page.LAST_TIME, null, null)));
        List<String> lines = said().lines().toList();
        assertEquals(List.of("a.csv: --paper goes with a .pdf only; leave it out", "a.pdf: --paper must be one of a4, letter, not folio",
                "a.pdf: --decimal goes with a .csv only; leave it out", "a.csv: --decimal must be point or comma, not dot",
                "a.txt: the name must end in .pdf", "2026-05-02-1: this car was not read on an earlier day of the same library"), lines);
        assertFalse(Files.exists(folder.resolve("a.pdf")) || Files.exists(folder.resolve("a.csv")));
    }

    private void assertSize(double widthPt, double heightPt, String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
            PDRectangle box = document.getPage(0).getMediaBox();
            assertEquals(widthPt, box.getWidth(), 0.1, file);
            assertEquals(heightPt, box.getHeight(), 0.1, file);
        }
    }

    private String said() {
        return error.toString(StandardCharsets.UTF_8);
    }

    private int run(String day, String file, boolean blank) {
        return run(new SheetRun.Wish(day, file, blank ? SheetRun.Page.BLANK : SheetRun.Page.SHEET, null, null));
    }

    private int run(SheetRun.Wish wish) {
        return new SheetRun(folder, List.of(), new PrintStream(error, true, StandardCharsets.UTF_8)).run(wish);
    }
}
