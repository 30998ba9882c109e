package quoin.exchange.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {

    /** The examples of RFC 4180, section 2, rules 1, 5, 6 and 7. */
    @Test
    void readsTheExamplesOfTheStandard() {
        assertEquals(List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx")), read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
        assertEquals(List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx")), read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"));
        assertEquals(List.of(List.of("aaa", "b \r\nbb", "ccc"), List.of("zzz", "yyy", "xxx")), read("\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"));
        assertEquals(List.of(List.of("aaa", "b\"bb", "ccc")), read("\"aaa\",\"b\"\"bb\",\"ccc\""));
    }

    @Test
    void writesAsTheStandardSays() {
        byte[] bytes = CsvTable.write(List.of("a", "b"), List.of(List.of(CsvTable.text("x,\"y\"\r\nz"), CsvTable.number(-1.5))), CsvStyle.POINT);
        assertEquals("\uFEFFa,b\r\n\"x,\"\"y\"\"\r\nz\",-1.5\r\n", new String(bytes, StandardCharsets.UTF_8));
        bytes = CsvTable.write(List.of("a"), List.of(List.of(CsvTable.number(160.2)), List.of(CsvTable.number(1e-7))), CsvStyle.COMMA);
        assertEquals("\uFEFFa\r\n160,2\r\n0,0000001\r\n", new String(bytes, StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+49 170", "-2 notches", "@SUM(A1)", "'quoted", "'=x", "\t=1", "\r=1", "plain", "", "a=b", "=cmd|'/c calc'!A1"})
    void formulasAreInertAndComeBackUnchanged(String words) {
        for (CsvStyle style : CsvStyle.values()) {
            byte[] bytes = CsvTable.write(List.of("first", "words"), List.of(List.of(CsvTable.text("x"), CsvTable.text(words))), style);
            List<List<String>> rows = CsvTable.read(bytes);
            assertEquals(words, rows.get(1).get(1));
            String cell = new String(bytes, StandardCharsets.UTF_8).split("\r\n", 2)[1].substring(2).replaceFirst("^\"", "");
            assertTrue(cell.isBlank() || "=+-@\t\r".indexOf(cell.charAt(0)) < 0, "a spreadsheet would compute " + cell);
        }
    }

    @ParameterizedTest
    @EnumSource(CsvStyle.class)
    void umlautsSurvive(CsvStyle style) {
        byte[] bytes = CsvTable.write(List.of("Höhe; Länge, \uD83C\uDFC1", "b"), List.of(), style);
        assertEquals("Höhe; Länge, \uD83C\uDFC1", CsvTable.read(bytes).get(0).get(0));
    }

    @Test
    void readsWhatSpreadsheetsSave() {
        assertEquals(List.of("Höhe", "LF"), CsvTable.read("Höhe;LF\n1,5;2".getBytes(Charset.forName("windows-1252"))).get(0));
        assertEquals(List.of("1,5", "2"), CsvTable.read("Höhe\tLF\n1,5\t2\n\n\n".getBytes(StandardCharsets.UTF_8)).get(1));
    }

    @Test
    void refusesWhatIsNoTable() {
        assertThrows(IllegalArgumentException.class, () -> read(""));
        assertThrows(IllegalArgumentException.class, () -> read("\u0000\u0001PK"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> read("a,\"b\nc")).getMessage().contains("quotation marks"));
    }

    private static List<List<String>> read(String text) {
        return CsvTable.read(text.getBytes(StandardCharsets.UTF_8));
    }
}
