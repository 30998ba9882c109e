package quoin.setupsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workflow.OrderOfWork;

class SheetEntryTest {

    private final Day day = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car())));
    private final SheetEntry sheet = new SheetEntry(new DaySnapshot(day, new OrderOfWork(List.of(new FullStage())).status(day), DisplayUnits.usual()));

    @Test
    void theFieldsFollowThePaper() {
        assertEquals(ReadingId.of(ReadingKind.LOAD, Corner.LF), sheet.readings().get(0));
        assertEquals(ReadingId.of(ReadingKind.LOAD, Corner.RF), sheet.readings().get(sheet.at(Corner.LF).size()));
        assertEquals(sheet.readings().size(), sheet.readings().stream().distinct().count());
    }

    @Test
    void whatIsFilledIsRecordedAndWhatIsBlankIsNot() {
        List<String> texts = blanks();
        texts.set(0, "160,2 kg");
        texts.set(2, "-2°15'");
        assertEquals(List.of(), sheet.problems(texts, ""));
        List<Entry> entries = sheet.entries(texts, "  wet; RF ring stiff ");
        Entry.Reading reading = (Entry.Reading) entries.get(0);
        assertEquals(2, reading.values().size());
        assertEquals(160.2, reading.values().get(sheet.readings().get(0)), 1e-9);
        assertEquals(-2.25, reading.values().get(sheet.readings().get(2)), 1e-9);
        assertEquals("corner-weights", reading.header().stage());
        assertTrue(((Entry.Note) entries.get(1)).words().endsWith("wet; RF ring stiff"));
    }

    @Test
    void whatCannotBeReadIsNamed() {
        assertEquals(1, sheet.problems(blanks(), " ").size());
        List<String> texts = blanks();
        texts.set(0, "heavy");
        texts.set(1, "62");
        List<String> problems = sheet.problems(texts, "");
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).startsWith("LF weight: "), problems.toString());
    }

    private List<String> blanks() {
        return new ArrayList<>(Collections.nCopies(sheet.readings().size(), ""));
    }
}
