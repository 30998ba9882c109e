package quoin.exchange.incoming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.exchange.table.CsvTable;
import quoin.quantities.DecimalMark;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DisplayUnits;
import quoin.workbench.ReadingFormat;

class ReadingTableTest {

    private final Car car = Ouzel23.car();

    @Test
    void oneColumnAReading() {
        ReadingTable.Understood read = read("date;LF weight [kg];RF weight;Weight LR;load.RR;Camber RF;LF height\n"
                + "1.5.;160,2;170,4;150;157,6;-2°15';62,5\n2.5.;161;;;;;\n");
        assertEquals(List.of(), read.problems());
        assertEquals(2, read.settings().size());
        Map<ReadingId, Double> first = read.settings().get(0);
        assertEquals(160.2, first.get(ReadingId.of(ReadingKind.LOAD, Corner.LF)), 1e-9);
        assertEquals(157.6, first.get(ReadingId.of(ReadingKind.LOAD, Corner.RR)), 1e-9);
        assertEquals(-2.25, first.get(ReadingId.of(ReadingKind.CAMBER, Corner.RF)), 1e-9);
        assertEquals(62.5, first.get(car.heightPoint(Corner.LF).orElseThrow().reading()), 1e-9);
        assertEquals(Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), 161.0), read.settings().get(1));
    }

    @Test
    void oneFigureARow() {
        ReadingTable.Understood read = read("what,where,value,unit\nweight,LF,353.2,lb\ntoe,RR,0.1,deg\nheight,LF,2 15/32,in\n");
        assertEquals(List.of(), read.problems());
        Map<ReadingId, Double> all = read.settings().get(0);
        // 1 lb = 0.45359237 kg exactly, 1 in = 25.4 mm exactly (NIST SP 811)
        assertEquals(353.2 * 0.45359237, all.get(ReadingId.of(ReadingKind.LOAD, Corner.LF)), 1e-6);
        assertEquals(0.1, all.get(ReadingId.of(ReadingKind.TOE, Corner.RR)), 1e-9);
        assertEquals((2 + 15 / 32.0) * 25.4, all.get(car.heightPoint(Corner.LF).orElseThrow().reading()), 1e-9);
    }

    /** 1 lb = 0.45359237 kg exactly, 1 in = 25.4 mm exactly, 1 psi = 0.068947572931684 bar (NIST SP 811). */
    @Test
    void aHeadingBringsTheUnitOfItsColumn() {
        Map<ReadingId, Double> all = read("LF weight (lb);RF weight, lb;LR weight lb;RR weight [kg];LF pressure psi;LF height in;RF height;LR toe in\n"
                + "353,2;375,7;330 kg;157,6;20;2 15/32;62,5;0,1\n").settings().get(0);
        assertEquals(353.2 * 0.45359237, all.get(ReadingId.of(ReadingKind.LOAD, Corner.LF)), 1e-6);
        assertEquals(375.7 * 0.45359237, all.get(ReadingId.of(ReadingKind.LOAD, Corner.RF)), 1e-6);
        assertEquals(330, all.get(ReadingId.of(ReadingKind.LOAD, Corner.LR)), 1e-9, "a cell's own unit goes before");
        assertEquals(157.6, all.get(ReadingId.of(ReadingKind.LOAD, Corner.RR)), 1e-9);
        assertEquals(20 * 0.068947572931684, all.get(ReadingId.of(ReadingKind.PRESSURE, Corner.LF)), 1e-6);
        assertEquals((2 + 15 / 32.0) * 25.4, all.get(car.heightPoint(Corner.LF).orElseThrow().reading()), 1e-9);
        assertEquals(62.5, all.get(car.heightPoint(Corner.RF).orElseThrow().reading()), 1e-9);
        assertEquals(null, all.get(ReadingId.of(ReadingKind.TOE, Corner.LR)), "inches or inwards: the racer says what it is");
    }

    @Test
    void wordsBehindAReadingThatAreNoUnitStayWithoutEffect() {
        Map<ReadingId, Double> all = read("LF weight (driver in);RF weight, second\n160;170\n").settings().get(0);
        assertEquals(Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), 160.0, ReadingId.of(ReadingKind.LOAD, Corner.RF), 170.0), all);
        assertEquals(List.of(ColumnUse.IGNORED), table("LF weight yesterday\n160\n").guess());
    }

    /** What scales write out: four columns that are called after their corners. */
    @Test
    void columnsNamedAfterTheCornersAloneAreWeights() {
        Map<ReadingId, Double> all = read("time,LF,RF (lb),LR,RR\n10:05,160.2,375.7,150,157.6\n").settings().get(0);
        assertEquals(4, all.size());
        assertEquals(160.2, all.get(ReadingId.of(ReadingKind.LOAD, Corner.LF)), 1e-9);
        assertEquals(375.7 * 0.45359237, all.get(ReadingId.of(ReadingKind.LOAD, Corner.RF)), 1e-6);
        assertTrue(table("LF,RF,LR\n1,2,3\n").guess().stream().allMatch(ColumnUse.IGNORED::equals), "three of them may be anything");
        assertEquals(0, read("reading,LF,RF,LR,RR\ncamber,-1,-1,-2,-2\n").figures(), "rows that say what they hold are no weights");
    }

    @Test
    void whatIsNotUnderstoodIsNamedWithItsRow() {
        ReadingTable.Understood read = read("what,where,value\nweight,XX,1\nweight,LF,heavy\nweight,RF,170\nweight,RF,171\n=cmd,LF,3\n");
        assertEquals(1, read.figures());
        assertEquals(4, read.problems().size(), read.problems().toString());
        assertTrue(read.problems().get(0).startsWith("Row 2: \"weight XX\""), read.problems().toString());
        assertTrue(read.problems().get(1).startsWith("Row 3, LF weight"), read.problems().toString());
        assertTrue(read.problems().get(2).startsWith("Row 5"), read.problems().toString());
    }

    @Test
    void aColumnNobodyKnowsIsLeftOutUntilItIsNamed() {
        ReadingTable table = table("Gewicht VL;Notiz\n160,2;trocken\n");
        assertEquals(List.of(ColumnUse.IGNORED, ColumnUse.IGNORED), table.guess());
        assertEquals(0, table.read(table.guess()).figures());
        List<ColumnUse> uses = new ArrayList<>(table.guess());
        uses.set(0, new ColumnUse.OneReading(ReadingId.of(ReadingKind.LOAD, Corner.LF)));
        assertEquals(Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), 160.2), table.read(uses).settings().get(0));
        assertEquals("160,2", table.sample(0));
    }

    private ReadingTable.Understood read(String text) {
        ReadingTable table = table(text);
        return table.read(table.guess());
    }

    private ReadingTable table(String text) {
        DisplayUnits units = DisplayUnits.usual();
        boolean comma = text.contains(";");
        return new ReadingTable(CsvTable.read(text.getBytes(StandardCharsets.UTF_8)), car, new ReadingFormat(car, new DisplayUnits(
                units.preferences().withDecimalMark(comma ? DecimalMark.COMMA : DecimalMark.POINT), true)));
    }
}
