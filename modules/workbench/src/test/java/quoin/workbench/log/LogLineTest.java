package quoin.workbench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workbench.TestCars;

/** Which lines of the log are struck through. */
class LogLineTest {

    private static final ReadingId LF = ReadingId.of(ReadingKind.LOAD, Corner.LF);

    private static List<LogLine> lines(Day day) {
        LogLines model = new LogLines();
        model.show(Optional.of(day));
        assertEquals(day.written().size(), model.getSize());
        return IntStream.range(0, model.getSize()).mapToObj(model::getElementAt).toList();
    }

    private static List<Long> struck(TestCars day) {
        return lines(day.build()).stream().filter(LogLine::struck).map(l -> l.entry().number()).sorted().toList();
    }

    @Test
    void newestComesFirst() {
        TestCars day = TestCars.day().read(Map.of(LF, 160.0)).read(Map.of(LF, 161.0));
        assertEquals(List.of(3L, 2L, 1L), lines(day.build()).stream().map(l -> l.entry().number()).toList());
        assertEquals(List.of(), struck(day));
    }

    @Test
    void aCorrectedEntryKeepsItsOldFigureStruckThrough() {
        TestCars day = TestCars.day().read(Map.of(LF, 106.0));
        day.add("", h -> new Entry.Correction(h, 2, Optional.of(new Entry.Reading(h, Map.of(LF, 160.0), Map.of(), Entry.Source.RACER)), "swapped"));
        assertEquals(List.of(2L), struck(day));
        LogLine old = lines(day.build()).get(1);
        assertEquals(106.0, ((Entry.Reading) old.entry()).values().get(LF));
        assertFalse(old.canWithdraw());
    }

    @Test
    void withdrawingTheCorrectionBringsTheEntryBack() {
        TestCars day = TestCars.day().read(Map.of(LF, 160.0)).withdraw(2, "undo");
        assertEquals(List.of(2L), struck(day));
        day.withdraw(3, "redo");
        assertEquals(List.of(3L), struck(day));
    }

    @Test
    void aLineIsFoundByTheNumberOfItsEntry() {
        LogLines model = new LogLines();
        model.show(Optional.of(TestCars.day().read(Map.of(LF, 160.0)).withdraw(2, "undo").build()));
        assertEquals(OptionalInt.of(0), model.indexOf(3));
        assertEquals(OptionalInt.of(2), model.indexOf(1));
        assertEquals(OptionalInt.empty(), model.indexOf(-1));
        assertEquals(OptionalInt.empty(), model.indexOf(4));
        model.show(Optional.empty());
        assertEquals(0, model.getSize());
    }

    @Test
    void theOpeningEntryCannotBeWithdrawn() {
        assertFalse(lines(TestCars.day().build()).get(0).canWithdraw());
    }
}
