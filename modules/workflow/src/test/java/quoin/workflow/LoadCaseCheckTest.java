package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.LoadCase;
import quoin.car.PerAxle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.workflow.spi.Finding;

class LoadCaseCheckTest {

    private static final List<ReadingId> LOADS = Stream.of(Corner.values()).map(DayBook::load).toList();

    private static DayBook book() {
        LoadCase loadCase = new LoadCase("Kim", OptionalDouble.of(20), PerAxle.both(OptionalDouble.of(1.4)));
        return new DayBook(DayBook.car().withLoadCase(loadCase));
    }

    private static List<String> words(DayBook book) {
        return LoadCaseCheck.of(book.day(), LOADS).stream().map(Finding::words).toList();
    }

    @Test
    void theLoadCaseItselfIsNothingToTell() {
        DayBook book = book().condition(Conditions.FUEL, "20").condition(Conditions.DRIVER_NAME, "kim").read("preparation", pressures(1.4))
                .read("corner-weights", DayBook.loads(50));
        assertEquals(List.of(), words(book));
    }

    @Test
    void fuelAtTheTimeOfTheReadingCounts() {
        DayBook book = book().condition(Conditions.FUEL, "12").read("corner-weights", DayBook.loads(50)).condition(Conditions.FUEL, "20");
        assertEquals(1, words(book).size(), words(book).toString());
        assertTrue(words(book).get(0).startsWith("Weight read in another load case: 12.0 kg of fuel on board, the load case says 20.0 kg"), words(book).toString());
        assertEquals(List.of(), words(book.read("corner-weights", DayBook.loads(50))));
    }

    @Test
    void anotherDriverIsTold() {
        DayBook book = book().condition(Conditions.DRIVER_NAME, "Sandbags").read("corner-weights", DayBook.loads(50));
        assertTrue(words(book).get(0).contains("Sandbags was in the seat, the load case says Kim"), words(book).toString());
    }

    @Test
    void aSoftTyreIsTold() {
        DayBook book = book().read("preparation", Map.of(ReadingId.of(ReadingKind.PRESSURE, Corner.RR), 1.3)).read("corner-weights", DayBook.loads(50));
        assertEquals(1, words(book).size());
        assertTrue(words(book).get(0).contains("RR at 1.30 bar, the load case says 1.40 bar"), words(book).toString());
    }

    @Test
    void whatIsNotStatedIsNotChecked() {
        DayBook book = new DayBook().condition(Conditions.FUEL, "12").condition(Conditions.DRIVER_NAME, "Sandbags")
                .read("corner-weights", DayBook.loads(50));
        assertEquals(List.of(), words(book));
    }

    private static Map<ReadingId, Double> pressures(double bar) {
        return Map.of(ReadingId.of(ReadingKind.PRESSURE, Corner.LF), bar, ReadingId.of(ReadingKind.PRESSURE, Corner.RR), bar + 0.02);
    }

    /** Half a litre is within the gauge; so is twice what a pressure gauge is read to (common practice, no source). */
    @Test
    void withinTheGaugeIsTheSameLoadCase() {
        DayBook book = book().condition(Conditions.FUEL, "20.5").read("corner-weights", DayBook.loads(50));
        assertEquals(List.of(), words(book));
        assertEquals(1, words(book.condition(Conditions.FUEL, "20.6").read("corner-weights", DayBook.loads(50))).size());
        assertEquals(List.of(), words(book.condition(Conditions.FUEL, "half full").read("corner-weights", DayBook.loads(50))), "no figure to compare");
    }

    /** Pads and pressures have no load case; what several kinds of reading depart in is told once. */
    @Test
    void onlyWhatTheDriverSitsOnHasALoadCase() {
        DayBook book = book().condition(Conditions.FUEL, "12").read("preparation", pressures(1.4)).read("final-recheck", DayBook.everything());
        assertEquals(List.of(), LoadCaseCheck.of(book.day(), List.of(ReadingId.of(ReadingKind.PRESSURE, Corner.LF))));
        List<Finding> told = LoadCaseCheck.of(book.day(), List.of(DayBook.height(Corner.LF), DayBook.load(Corner.LF), DayBook.load(Corner.RF)));
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).words().startsWith("Weight and height read in another load case: 12.0 kg"), told.toString());
    }
}
