package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineOfFiguresTest {
    private static List<OptionalDouble> line(Object... values) {
        return Stream.of(values).map(v -> v == null ? OptionalDouble.empty() : OptionalDouble.of(((Number) v).doubleValue()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"107,9 93,2 122,8 146,2", "107.9\t93.2\t122.8\t146.2", "107,9;93,2;122,8;146,2", "107,9; 93,2; 122,8; 146,2;",
        "107.9, 93.2, 122.8, 146.2", "107,9, 93,2, 122,8, 146,2", "107,9 | 93,2 | 122,8 | 146,2", "  107,9   93,2 122,8\u00A0146,2 ",
        "107,9kg 93,2 kg 122,8KG 146,2"})
    void fourFigures(String typed) {
        assertEquals(line(107.9, 93.2, 122.8, 146.2), Quantities.parseLine(typed, Unit.KG));
    }

    @ParameterizedTest
    @ValueSource(strings = {"107,9 - 122,8 .", "107,9 / 122,8 ?", "107,9;;122,8;-", "107,9 — 122,8 –", "107.9, -, 122.8, /"})
    void notRead(String typed) {
        assertEquals(line(107.9, null, 122.8, null), Quantities.parseLine(typed, Unit.KG));
    }

    @Test
    void anglesFractionsAndSigns() {
        assertEquals(line(-1.5, -1.25, -0.5, 0.75), Quantities.parseLine("-1°30' -1°15' -30' +45'", Unit.DEG));
        assertEquals(line(-1.5, 20.0), Quantities.parseLine("-1° 30' 20", Unit.DEG));
        assertEquals(line(30.1625, 31.75), Quantities.parseLine("1 3/16 1 1/4", Unit.IN));
        assertEquals(line(25.4, 4.7625), Quantities.parseLine("1; 3/16", Unit.IN));
        assertEquals(line(1828.8, 2133.6), Quantities.parseLine("6' 7'", Unit.MM));
        assertEquals(line(1058, 980), Quantities.parseLine("1\u00A0058 980", Unit.N));
        assertEquals(line(null, 2.0), Quantities.parseLine("; 2", Unit.MM));
        assertEquals(line((Object) null), Quantities.parseLine("-", Unit.MM));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "90,101,146,132", "107.9,93.2,122.8,146.2", "107,9,,93,2", "107 abc", "- x", "1;2;3 lb/in", "--5", "5-6"})
    void refused(String typed) {
        assertThrows(QuantityFormatException.class, () -> Quantities.parseLine(typed, Unit.KG));
    }

    @Test
    void aListWithCommasOnlyIsToldWhatToDo() {
        QuantityFormatException e = assertThrows(QuantityFormatException.class,
                () -> Quantities.parseLine("107,9,93,2", Unit.KG));
        assertEquals("\"107,9,93,2\" has more than one decimal mark; put a space or a semicolon between figures, and no mark"
                + " between thousands", e.getMessage());
        assertEquals(5, e.position());
    }

    @Test
    void tooManyFigures() {
        assertEquals(64, Quantities.parseLine("1 ".repeat(64), Unit.KG).size());
        assertThrows(QuantityFormatException.class, () -> Quantities.parseLine("1 ".repeat(65), Unit.KG));
    }
}
