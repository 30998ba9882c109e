package quoin.wheelangles.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quoin.wheelangles.measure.Sheets.measured;
import static quoin.wheelangles.measure.Sheets.sheet;
import static quoin.wheelangles.measure.Sheets.typed;
import static quoin.wheelangles.measure.Sheets.uncertainty;
import static quoin.wheelangles.measure.Sheets.value;
import static quoin.wheelangles.measure.Sheets.words;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;

/** Diagonals, dials, turns; and what holds for every form. */
class OtherSheetsTest {

    private static Map<String, String> rectangle() {
        return typed("track.FRONT", "1440", "track.REAR", "1440", "wheelbase.left", "2380", "wheelbase.right", "2380",
                "diagonal.LF-RR", Sheets.digits(Math.hypot(1440, 2380)), "diagonal.RF-LR", Sheets.digits(Math.hypot(1440, 2380)));
    }

    @Test
    void aRectangleHasNoSetback() {
        Measured measured = measured(sheet("diagonals", rectangle()));
        assertEquals(0, value(measured, new ReadingId(ReadingKind.SETBACK, Axle.FRONT.name())), 1e-9);
        assertEquals(2380, value(measured, new ReadingId(ReadingKind.WHEELBASE, ReadingId.LEFT)), 1e-9);
    }

    /** 4 mm over 1380 are 0.17 deg (common practice): the front axle turned, the rear one square. */
    @Test
    void theLeftWheelAhead() {
        double half = Math.sqrt(1380 * 1380 - 16) / 2;
        Map<String, String> read = typed("track.FRONT", "1380", "track.REAR", "1380",
                "wheelbase.left", Sheets.digits(Math.hypot(2382, half - 690)), "wheelbase.right", Sheets.digits(Math.hypot(2378, half - 690)),
                "diagonal.LF-RR", Sheets.digits(Math.hypot(2382, half + 690)), "diagonal.RF-LR", Sheets.digits(Math.hypot(2378, half + 690)));
        Measured measured = measured(sheet("diagonals", read));
        assertEquals(4, value(measured, new ReadingId(ReadingKind.SETBACK, Axle.FRONT.name())), 1e-6);
        assertEquals(0, value(measured, new ReadingId(ReadingKind.SETBACK, Axle.REAR.name())), 1e-6);
        assertEquals(0.166, value(measured, "Front, as an angle"), 5e-4);
        assertTrue(words(measured).contains("left wheelbase is 4.0 mm longer"), words(measured));
        assertTrue(words(measured).contains("bent"), words(measured));
        assertTrue(uncertainty(measured, new ReadingId(ReadingKind.SETBACK, Axle.FRONT.name())) > 0.1);
    }

    @Test
    void aMisreadDiagonalIsTold() {
        Measured measured = measured(sheet("diagonals", rectangle()).with("diagonal.LF-RR", "2799"));
        assertTrue(words(measured).contains("misread"), words(measured));
        assertTrue(sheet("diagonals", rectangle()).with("diagonal.LF-RR", "278.2").check().problems().containsKey("diagonal.LF-RR"));
    }

    @Test
    void dialsMakeACurveOfTheirOwn() {
        Worksheet sheet = sheet("bump-steer", typed("wheel", "RR", "spacing", "250", "front.2", "0.10", "rear.2", "0.35",
                "front.4", "0", "rear.4", "0", "front.6", "-0.05", "rear.6", "-0.30"));
        Measured measured = measured(sheet);
        Entry.BumpSteer entry = assertInstanceOf(Entry.BumpSteer.class, measured.entry(Header.draft("wheel-angles")).orElseThrow());
        assertEquals(Corner.RR, entry.corner());
        assertEquals(List.of(-20.0, 0.0, 20.0), entry.points().stream().map(Entry.BumpSteer.Point::travelMm).toList());
        assertEquals(Math.toDegrees(Math.asin(0.25 / 250)), entry.points().get(2).toeInChangeDeg(), 1e-12);
        assertEquals("250", entry.measured().raw("spacing").orElseThrow());
        assertTrue(words(measured).contains("bump turns the wheel in"), words(measured));
        assertTrue(sheet.with("travel.4", "5").check().problems().get("travel.2").contains("0 mm"));
    }

    /** Outer 10 deg on 2300 by 1380 mm: 100 % is 11.15 inside. */
    @Test
    void toeOutOnTurns() {
        Map<String, String> read = typed("left.LF", "11.155", "left.RF", "10", "right.RF", "10.4", "right.LF", "10", "track", "1380", "wheelbase", "2300");
        Measured measured = measured(sheet("turn-toe-out", read));
        assertEquals(1.155, value(measured, new ReadingId(ReadingKind.TURN_TOE_OUT, ReadingId.LEFT)), 1e-9);
        assertEquals(100, value(measured, "Of Ackermann, left"), 0.1);
        assertTrue(words(measured).contains("off centre"), words(measured));
    }

    @Test
    void everyFormNamesItsFieldsOnceAndStartsWithoutAProblem() {
        for (Method method : Method.all()) {
            Worksheet sheet = sheet(method.id(), Map.of());
            Worksheet.Check check = sheet.check();
            assertEquals(Map.of(), check.problems(), method.id());
            assertTrue(check.measured().isEmpty(), method.id());
            assertFalse(sheet.missingWords(check.missing().orElseThrow()).isEmpty(), method.id());
            for (Choice choice : method.choices()) {
                for (Choice.Option option : choice.options()) {
                    List<Field> fields = sheet.with(choice.key(), option.key()).tables().stream().flatMap(Table::fields).toList();
                    Set<String> keys = new HashSet<>();
                    Set<String> names = new HashSet<>();
                    fields.forEach(f -> assertTrue(keys.add(f.key()) && names.add(f.name()), method.id() + " twice: " + f.key() + ", " + f.name()));
                }
            }
            assertFalse(method.caution().isBlank());
        }
    }

    @Test
    void inchesAreReadAsInches() {
        UnitPreferences inches = UnitPreferences.metric().withUnit(Unit.IN);
        Worksheet sheet = new Worksheet(new PlumbLineCamber(), new Setting(Sheets.day()), inches,
                typed("LF.top", "1 1/2", "LF.bottom", "1 17/32", "chord.FRONT", "14"));
        assertEquals(Math.toDegrees(Math.asin(1 / 32.0 / 14)), value(measured(sheet), ReadingKind.CAMBER, Corner.LF), 1e-9);
        Field chord = sheet.tables().stream().flatMap(Table::fields).filter(f -> f.key().equals("chord.REAR")).findFirst().orElseThrow();
        assertEquals("14.6457", sheet.text(chord), "372 mm");
        assertEquals("in", measured(sheet).raw().get("unit.LENGTH"));
    }
}
