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

    private int run(String day, String file, boolean blank) {
        return new SheetRun(folder, List.of(), new PrintStream(error, true, StandardCharsets.UTF_8)).run(day, file, blank);
    }
}
