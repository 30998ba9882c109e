package quoin.logbook.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrictJsonTest {

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "3", "[]", "null", "{", "{\"a\":1,\"a\":2}", "{\"a\":{\"b\":1,\"b\":1}}", "{\"a\":NaN}",
        "{\"a\":Infinity}", "{\"a\":1}{\"b\":2}", "{\"a\":1} x", "{'a':1}", "{a:1}", "{\"a\":1,}", "{\"a\":01}", "/**/{}", "\u0000\u0000"})
    void refusesWhatIsNoPlainObject(String text) {
        assertThrows(FormatException.class, () -> read(text));
    }

    @Test
    void refusesWhatHasNoEnd() {
        assertThrows(FormatException.class, () -> read("{\"a\":".repeat(30) + "1" + "}".repeat(30)));
        assertThrows(FormatException.class, () -> read("{\"a\":" + "9".repeat(100) + "}"));
        assertThrows(FormatException.class, () -> read("{\"a\":\"" + "x".repeat(StrictJson.MAX_BYTES) + "\"}"));
        assertThrows(FormatException.class, () -> read("{\"" + "k".repeat(600) + "\":1}"));
        assertThrows(FormatException.class, () -> StrictJson.read(new byte[] {'{', '"', (byte) 0xff, '"', ':', '1', '}'}));
    }

    @Test
    void writesWhatItReads() {
        String text = "{\"a\":0.1,\"b\":[{\"c\":\"\\n\"}],\"d\":true}";
        assertEquals(text, new String(StrictJson.line(read(text)), StandardCharsets.UTF_8));
    }

    private static com.fasterxml.jackson.databind.node.ObjectNode read(String text) {
        return StrictJson.read(text.getBytes(StandardCharsets.UTF_8));
    }
}
