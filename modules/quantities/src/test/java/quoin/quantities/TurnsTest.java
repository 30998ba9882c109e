package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurnsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"2 turns + 3 notches|12|27", "2t 3n|12|27", "2t3n|12|27", "2 1/4|12|27",
        "2¼ turns|8|18", "-3n|12|-3", "− 3 notches|12|-3", "5 flats|6|5", "5F|6|5", "1 turn|6|6", "-1 1/2|6|-9", "-2T 3 N|12|-27",
        "1/2 turn|8|4", "0|6|0", "-0|6|0", "+2 clicks|10|2", "3n 1t|12|15", "15n|12|15", "2,5|12|30", "1 turn + 1/2 flat|6|6.5",
        "2 turns\u00A03 steps|4|11"})
    void isRead(String typed, int stepsPerTurn, double steps) {
        assertEquals(steps, Turns.parse(typed, stepsPerTurn) * stepsPerTurn, 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"~~|nothing", "-|missing", "turns|not understood", "2t + |missing",
        "-2t + 3n|contradict", "2t - 3n|not understood", "2 3|typed twice", "3n 4n|typed twice", "2 mm|neither turns nor steps",
        "1001|more than 1000", "13000n|more than 1000", "NaN|not understood", "2t;3n|not understood", "++2|not understood", "2t 3n 4|typed twice"})
    void isRefused(String typed, String problem) {
        QuantityFormatException e = assertThrows(QuantityFormatException.class, () -> Turns.parse(typed, 12));
        assertTrue(e.problem().contains(problem), e::getMessage);
        assertTrue(e.position() >= 0 && e.position() <= typed.length());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2.25|12|notch|2 turns + 3 notches", "-2.25|12|notch|2 turns + 3 notches", "1|12|notch|1 turn",
        "0.0833333333333|12|notch|1 notch", "0.41666666666|12|notch|5 notches", "0|12|notch|0 notches", "1.25|6|flat|1 turn + 1.5 flats",
        "1.5|1|flat|1.5 turns", "1|1|flat|1 turn", "0.9999999|6|flat|1 turn", "10|6|flat|10 turns", "0.5|4|quarter turn|2 quarter turns"})
    void text(double turns, int stepsPerTurn, String step, String shown) {
        assertEquals(shown, Turns.text(turns, stepsPerTurn, step));
    }

    @Test
    void textWithDecimalComma() {
        assertEquals("1 turn + 1,5 flats", Turns.text(1.25, 6, "flat", DecimalMark.COMMA));
    }

    @Test
    void nearestSteps() {
        assertEquals(27, Turns.nearestSteps(2.25, 12));
        assertEquals(-27, Turns.nearestSteps(-2.25, 12));
        assertEquals(7, Turns.nearestSteps(7 / 12.0, 12));
        assertEquals(-2, Turns.nearestSteps(-1.5 / 6, 6));
        assertEquals(0, Turns.nearestSteps(-0.0, 6));
    }

    /** Pitch over six: one flat of a 3/8-24 rod end (ASME B1.1, 24 threads per inch) is 25.4/24/6 = 0.176389 mm. */
    @Test
    void oneFlatOfARodEnd() {
        double pitchMm = Quantities.parse("1/24 in", Unit.MM);
        assertEquals(1.058333, pitchMm, 5e-7);
        assertEquals(0.176389, pitchMm * Turns.parse("1 flat", 6), 5e-7);
    }

    @Test
    void misuseIsNamed() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> Turns.parse("1", 0));
        assertEquals("stepsPerTurn: 0; give at least 1 step in a turn", e.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Turns.text(Double.NaN, 6, "flat"));
        assertThrows(IllegalArgumentException.class, () -> Turns.nearestSteps(Double.NEGATIVE_INFINITY, 6));
    }
}
