package quoin.workbench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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
import quoin.logbook.Header;
import quoin.logbook.Measurement;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workbench.TestCars;
import quoin.workflow.OrderOfWork;

/** Correcting an entry whose figures were computed from others. */
class EditedEntryTest {

    private static final ReadingId LF = ReadingId.of(ReadingKind.CAMBER, Corner.LF);
    private static final ReadingId RF = ReadingId.of(ReadingKind.CAMBER, Corner.RF);
    private static final Measurement GAUGE = new Measurement("gauge-camber", Map.of("LF.gauge", "-2.3", "RF.gauge", "-2.1"), "floor falls 0.10°",
            Map.of(LF, 0.05, RF, 0.05));

    private final DaySnapshot day = snapshot(TestCars.day().add("wheel-angles", h -> new Entry.Reading(h, Map.of(LF, -2.2, RF, -2.0), Map.of(),
            Entry.Source.RACER, Optional.of(GAUGE))).build());

    private static DaySnapshot snapshot(Day day) {
        return new DaySnapshot(day, new OrderOfWork(List.of()).status(day), DisplayUnits.usual());
    }

    private Entry.Reading with(Entry.Reading reading, String lf, String rf) {
        return (Entry.Reading) EditedEntry.of(reading, day).orElseThrow().with(List.of(lf, rf), day);
    }

    @Test
    void aFigureTypedOverAComputedOneKeepsWhatWasReadForIt() {
        Entry.Reading old = (Entry.Reading) day.day().effective().get(1);
        List<String> shown = EditedEntry.of(old, day).orElseThrow().fields().stream().map(EditedEntry.Field::text).toList();
        assertEquals(Optional.of(GAUGE), with(old, shown.get(0), shown.get(1)).measured(), "nothing typed, nothing changed");
        Entry.Reading right = with(old, "-2.5", shown.get(1));
        assertEquals(-2.5, right.values().get(LF));
        Measurement kept = right.measured().orElseThrow();
        assertEquals("gauge-camber", kept.method());
        assertEquals(Optional.of("-2.3"), kept.raw("LF.gauge"));
        assertEquals(Optional.of("-2.2"), kept.raw(EditedEntry.COMPUTED + LF));
        assertTrue(kept.words().startsWith("floor falls 0.10°; LF camber corrected by hand, computed -2.2"), kept.words());
        Entry.Reading again = with(right, "-2.6", shown.get(1));
        assertEquals(Optional.of("-2.2"), again.measured().orElseThrow().raw(EditedEntry.COMPUTED + LF), "the first computed figure stays");
    }

    @Test
    void aFigureTakenOutTakesItsUncertaintyWithIt() {
        Entry.Reading left = with((Entry.Reading) day.day().effective().get(1), "", "-2.1");
        assertEquals(Map.of(RF, -2.1), left.values());
        assertEquals(Map.of(RF, 0.05), left.measured().orElseThrow().standardUncertainty());
    }

    private static Entry.Condition condition(String key, String value) {
        return new Entry.Condition(Header.draft("preparation"), key, value, "");
    }

    @Test
    void aFigureOfAConditionIsReadAsOne() {
        EditedEntry fuel = EditedEntry.of(condition(Conditions.FUEL, "20"), day).orElseThrow();
        assertEquals("Fuel, kg", fuel.fields().get(0).name());
        assertEquals("20.5", ((Entry.Condition) fuel.with(List.of("20,5"), day)).value());
        assertEquals("19.958", ((Entry.Condition) fuel.with(List.of("44 lb"), day)).value(), "44 lb of 0.45359237 kg");
        for (String wrong : List.of("full", "-3", "20 mm", "")) {
            String problem = assertThrows(IllegalArgumentException.class, () -> fuel.with(List.of(wrong), day)).getLocalizedMessage();
            assertTrue(problem.startsWith("Fuel, kg: "), problem);
        }
    }

    /** Its values are keys of the file, which nobody knows by heart; and the practice car belongs to the day. */
    @Test
    void aStateIsOnlyWithdrawn() {
        assertTrue(EditedEntry.of(condition(Conditions.BRAKES, Conditions.FREE), day).isEmpty());
        assertTrue(EditedEntry.of(condition(Conditions.REHEARSAL, "23"), day).isEmpty());
        assertEquals("wet set", EditedEntry.of(condition(Conditions.TYRES, "wet set"), day).orElseThrow().fields().get(0).text());
    }
}
