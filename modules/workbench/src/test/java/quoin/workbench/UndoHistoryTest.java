package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/** Undo and redo as the entries tell them. */
class UndoHistoryTest {

    private static final ReadingId LF = ReadingId.of(ReadingKind.LOAD, Corner.LF);

    private static TestCars twoReadings() {
        return TestCars.day().read(Map.of(LF, 160.0)).read(Map.of(LF, 161.0));
    }

    private static Optional<Long> toUndo(List<Entry> entries) {
        return UndoHistory.of(entries).toUndo().map(Entry::number);
    }

    private static Optional<Long> toRedo(List<Entry> entries) {
        return UndoHistory.of(entries).toRedo().map(Entry::number);
    }

    private static double lf(TestCars day) {
        return Day.of(day.entries()).latest(LF).orElseThrow().value();
    }

    @Test
    void theOpeningEntryStays() {
        assertTrue(toUndo(TestCars.day().entries()).isEmpty());
    }

    /** Without it the practice car would stop to give readings when the day is opened again. */
    @Test
    void whatMakesTheDayARehearsalStays() {
        TestCars day = TestCars.day().add("", h -> new Entry.Condition(h, Conditions.REHEARSAL, "23", ""));
        assertTrue(toUndo(day.entries()).isEmpty());
        assertEquals(Optional.of(3L), toUndo(day.read(Map.of(LF, 160.0)).entries()));
    }

    @Test
    void undoGoesBackAndRedoForward() {
        TestCars day = twoReadings().withdraw(3, UndoHistory.UNDO);
        assertEquals(160.0, lf(day));
        assertEquals(Optional.of(2L), toUndo(day.entries()));
        assertEquals(Optional.of(3L), toRedo(day.entries()));
        day.withdraw(UndoHistory.of(day.entries()).undoneBy().orElseThrow(), UndoHistory.REDO);
        assertEquals(161.0, lf(day));
        assertEquals(Optional.of(3L), toUndo(day.entries()));
        assertTrue(toRedo(day.entries()).isEmpty());
    }

    @Test
    void undoUndoRedoRedoEndsWhereItBegan() {
        TestCars day = twoReadings().withdraw(3, UndoHistory.UNDO).withdraw(2, UndoHistory.UNDO);
        assertTrue(Day.of(day.entries()).latest(LF).isEmpty());
        day.withdraw(UndoHistory.of(day.entries()).undoneBy().orElseThrow(), UndoHistory.REDO);
        assertEquals(160.0, lf(day));
        day.withdraw(UndoHistory.of(day.entries()).undoneBy().orElseThrow(), UndoHistory.REDO);
        assertEquals(161.0, lf(day));
        day.withdraw(toUndo(day.entries()).orElseThrow(), UndoHistory.UNDO);
        assertEquals(160.0, lf(day));
    }

    @Test
    void aNewEntryEndsRedo() {
        TestCars day = twoReadings().withdraw(3, UndoHistory.UNDO).read(Map.of(LF, 162.0));
        assertTrue(toRedo(day.entries()).isEmpty());
        assertEquals(Optional.of(5L), toUndo(day.entries()));
    }

    @Test
    void aCorrectionOfTheRacerIsUndoneAsOneStep() {
        TestCars day = twoReadings();
        day.add("corner-weights", h -> new Entry.Correction(h, 3, Optional.of(new Entry.Reading(h, Map.of(LF, 165.0), Map.of(),
                Entry.Source.RACER)), "misread"));
        assertEquals(165.0, lf(day));
        day.withdraw(toUndo(day.entries()).orElseThrow(), UndoHistory.UNDO);
        assertEquals(161.0, lf(day));
        day.withdraw(UndoHistory.of(day.entries()).undoneBy().orElseThrow(), UndoHistory.REDO);
        assertEquals(165.0, lf(day));
    }
}
