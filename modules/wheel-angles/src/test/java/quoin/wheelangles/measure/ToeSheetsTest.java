package quoin.wheelangles.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quoin.wheelangles.measure.Sheets.measured;
import static quoin.wheelangles.measure.Sheets.sheet;
import static quoin.wheelangles.measure.Sheets.typed;
import static quoin.wheelangles.measure.Sheets.uncertainty;
import static quoin.wheelangles.measure.Sheets.value;
import static quoin.wheelangles.measure.Sheets.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** Cords, plates and angle gauge, as typed. */
class ToeSheetsTest {

    /** Gaps computed with another program: cords turned by 0.05 deg on the left, -0.03 deg on the right, tracks 1520 and 1470. */
    private static Map<String, String> skewed() {
        return typed("LF.front", "141.665863", "LF.rear", "140.668408", "RF.front", "141.265518", "RF.rear", "140.135070",
                "LR.front", "164.663959", "LR.rear", "163.001538", "RR.front", "164.598901", "RR.rear", "164.000427",
                "track.FRONT", "1520", "track.REAR", "1470", "chord.FRONT", "381", "chord.REAR", "381",
                "wheelbase.left", "2675", "wheelbase.right", "2675");
    }

    @Test
    void skewCordsAreCorrected() {
        Measured measured = measured(sheet("string-toe", skewed()));
        assertEquals(0.10, value(measured, ReadingKind.TOE, Corner.LF), 2e-7);
        assertEquals(0.14, value(measured, ReadingKind.TOE, Corner.RF), 2e-7);
        assertEquals(0.20, value(measured, ReadingKind.TOE, Corner.LR), 2e-7);
        assertEquals(0.06, value(measured, ReadingKind.TOE, Corner.RR), 2e-7);
        assertEquals(0.24, value(measured, "Front total"), 4e-7);
        assertEquals(0.26, value(measured, "Rear total"), 4e-7);
        assertEquals(-0.07, value(measured, "Thrust"), 4e-7);
        assertTrue(words(measured).contains("left cord skew 0.050°, farther from the car in front"), words(measured));
        assertTrue(words(measured).contains("right cord skew 0.030°"), words(measured));
        assertTrue(words(measured).contains("drives 0.07° to the right"), words(measured));
        assertTrue(words(measured).contains("+0.03° (LF) and +0.21° (RF)"), words(measured));
    }

    @Test
    void theJournalKeepsTheRawFiguresAndTheUncertainty() {
        Entry.Reading entry = (Entry.Reading) measured(sheet("string-toe", skewed())).entry(Header.draft("wheel-angles")).orElseThrow();
        assertEquals(4, entry.values().size(), "totals and thrust follow from the wheels");
        var measurement = entry.measured().orElseThrow();
        assertEquals("string-toe", measurement.method());
        assertEquals(Optional.of("141.665863"), measurement.raw("LF.front"));
        assertEquals(Optional.of("independent"), measurement.raw("cords"));
        assertEquals(Optional.of("mm"), measurement.raw("unit.LENGTH"));
        assertTrue(measurement.words().contains("left cord skew"), measurement.words());
        assertEquals(4, measurement.standardUncertainty().size());
    }

    /** The rule enters twice per wheel, and through the cord's angle by the hub gaps of both wheels of the side. */
    @Test
    void uncertaintyOfCordsByTheLawOfPropagation() {
        Map<String, String> texts = new HashMap<>(skewed());
        texts.put("step.RULE", "0.5");
        Measured measured = measured(sheet("string-toe", texts));
        double u = 0.5 / Math.sqrt(12);
        double edge = Math.hypot(1 / 381.0 - 1 / (2 * 2675.0), 1 / 381.0 + 1 / (2 * 2675.0));
        double other = Math.hypot(1 / (2 * 2675.0), 1 / (2 * 2675.0));
        assertEquals(Math.toDegrees(u * Math.hypot(edge, other)), uncertainty(measured, ReadingId.of(ReadingKind.TOE, Corner.LF)), 1e-5);
    }

    /** A cord 1 mm out over the wheelbase is 0.025 deg (common practice; 1/2380 rad). A parallel pair needs no tracks. */
    @Test
    void aParallelPairTurnedToTheCar() {
        double turn = 1 / 2380.0;
        Map<String, String> texts = typed("cords", "parallel", "wheelbase.left", "2380", "wheelbase.right", "2380");
        for (Corner corner : Corner.values()) {
            double side = corner.isLeft() ? 1 : -1;
            double hub = (corner.isFront() ? 140 : 150) + side * (corner.isFront() ? 1190 : -1190) * turn;
            texts.put(corner + ".front", Sheets.digits(hub + side * 186 * turn));
            texts.put(corner + ".rear", Sheets.digits(hub - side * 186 * turn));
        }
        Measured measured = measured(sheet("string-toe", texts));
        for (Corner corner : Corner.values()) {
            assertEquals(0, value(measured, ReadingKind.TOE, corner), 1e-6);
        }
        assertTrue(words(measured).contains("left cord skew 0.024°"), words(measured));
    }

    @Test
    void mirroredGapsGiveMirroredToe() {
        Map<String, String> mirrored = new HashMap<>(skewed());
        for (String wheel : new String[] {"F", "R"}) {
            for (String edge : new String[] {".front", ".rear"}) {
                mirrored.put("L" + wheel + edge, skewed().get("R" + wheel + edge));
                mirrored.put("R" + wheel + edge, skewed().get("L" + wheel + edge));
            }
        }
        Measured measured = measured(sheet("string-toe", mirrored));
        assertEquals(0.10, value(measured, ReadingKind.TOE, Corner.RF), 2e-7);
        assertEquals(0.06, value(measured, ReadingKind.TOE, Corner.LR), 2e-7);
        assertEquals(0.07, value(measured, "Thrust"), 4e-7);
    }

    @Test
    void halfATurnLaterTakesTheRunOutAway() {
        Map<String, String> texts = typed("cords", "square", "LR.front", "150", "LR.rear", "149", "LR.front2", "151", "LR.rear2", "149");
        Measured measured = measured(sheet("string-toe", texts));
        assertEquals(Math.toDegrees(Math.asin(1.5 / 372)), value(measured, ReadingKind.TOE, Corner.LR), 1e-9);
        assertTrue(words(measured).contains("run-out"), words(measured));
        assertEquals(1, measured.outcome().results().size(), "only what was read");
    }

    @Test
    void whatIsMissingOrWrongIsNamed() {
        Map<String, String> texts = new HashMap<>(skewed());
        texts.remove("RR.rear");
        Worksheet sheet = sheet("string-toe", texts);
        assertEquals(Optional.of("RR.rear"), sheet.check().missing());
        assertEquals("RR, Rear edge is not typed yet.", sheet.missingWords("RR.rear"));
        String problem = sheet.with("RR.rear", "14o").check().problems().get("RR.rear");
        assertTrue(problem.startsWith("RR, Rear edge: "), problem);
        String far = sheet.with("RR.rear", "640").check().problems().get("RR.front");
        assertTrue(far.contains("chord"), far);
        String step = sheet.with("RR.rear", "164").with("step.RULE", "0").check().problems().get("step.RULE");
        assertTrue(step.contains("greater than 0"), step);
    }

    @Test
    void whatIsReadAnewLeavesTheFormWhenRecorded() {
        Worksheet after = sheet("string-toe", skewed()).recorded();
        assertEquals("1520", after.texts().get("track.FRONT"));
        assertFalse(after.texts().containsKey("LF.front"));
    }

    /** 0.24 deg on plates of 500 mm are 2.09439 mm. */
    @Test
    void platesGiveTheTotal() {
        Measured total = measured(sheet("plate-toe", typed("front", "1400", "rear", "1402.09439", "plate", "500")));
        assertEquals(0.24, value(total, new ReadingId(ReadingKind.TOTAL_TOE, Axle.FRONT.name())), 1e-6);
        Measured equal = measured(sheet("plate-toe", typed("share", "equal", "axle", "REAR", "front", "1400", "rear", "1402.09439",
                "plate", "500")));
        assertEquals(0.12, value(equal, ReadingKind.TOE, Corner.LR), 1e-6);
        assertEquals(value(equal, ReadingKind.TOE, Corner.RR), value(equal, ReadingKind.TOE, Corner.LR));
        assertTrue(words(equal).contains("by cords"), words(equal));
        assertEquals(Optional.of("plate"), sheet("plate-toe", typed("front", "1400", "rear", "1402")).check().missing());
    }

    @Test
    void anglesAreTakenAsTyped() {
        Measured one = measured(sheet("angle-toe", typed("RF.toe", "-0°06'")));
        assertEquals(-0.1, value(one, ReadingKind.TOE, Corner.RF), 1e-12);
        Measured all = measured(sheet("angle-toe", typed("LF.toe", "0.10", "RF.toe", "0.14", "LR.toe", "0.20", "RR.toe", "0.06")));
        assertEquals(-0.07, value(all, "Thrust"), 1e-12);
        assertTrue(sheet("angle-toe", typed("RF.toe", "40")).check().problems().containsKey("RF.toe"));
    }
}
