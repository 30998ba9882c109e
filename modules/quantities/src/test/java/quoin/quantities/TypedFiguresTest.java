package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type, and what it is: expected values by hand or from the exact unit definitions. Column separator is |. */
class TypedFiguresTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', ignoreLeadingAndTrailingWhitespace = true, value = {
        "107,9 | MM | 107.9", "107.9 | MM | 107.9", "~  108,3 ~ | MM | 108.3", "~\u00A0108,3\u202F~ | MM | 108.3",
        ".5 | MM | 0.5", ",5 | MM | 0.5", "5. | MM | 5", "0,175 | MM | 0.175", "+0,3 | MM | 0.3", "1,2345 | MM | 1.2345",
        "1\u00A0234,5 | MM | 1234.5", "1\u2009234 | MM | 1234", "1\u202F234\u202F567 | N | 1234567", "240\u00A0lb | KGF | 1067.57318766252",
        "-3 | MM | -3", "\u22123 | MM | -3", "\u20133 | MM | -3", "- 3 | MM | -3", "-0 | MM | 0", "-0,0 | DEG | 0",
        "3/16in | MM | 4.7625", "1 3/16\" | MM | 30.1625", "2-3/8 | IN | 60.325", "-2-3/8 | IN | -60.325", "1/16 in | MM | 1.5875",
        "½ | IN | 12.7", "1½ | IN | 38.1", "1 ¼\" | MM | 31.75", "⅜ | IN | 9.525", "3⁄16in | MM | 4.7625", "3/16'' | MM | 4.7625",
        "2ft 3in | MM | 685.8", "2' 3\" | MM | 685.8", "2'3 | MM | 685.8", "5' 6 1/2\" | MM | 1689.1", "7 ft | MM | 2133.6",
        "2.3m | MM | 2300", "23 CM | MM | 230", "12.5 in. | MM | 317.5",
        "-1°30' | DEG | -1.5", "-1 deg 30 min | DEG | -1.5", "1°30′ | DEG | 1.5", "1°30 | DEG | 1.5", "1º 30’ | DEG | 1.5",
        "-0°34' | DEG | -0.5666666666666667", "\u22120\u00B034\u2032 | DEG | -0.5666666666666667", "30' | DEG | 0.5",
        "-1°30' | ARCMIN | -1.5", "30 | ARCMIN | 0.5", "1°30'36\" | DEG | 1.51", "-1,5 | DEG | -1.5", "2.5 degrees | DEG | 2.5",
        "240lb | KG | 108.8621688", "240lb | KGF | 1067.57318766252", "100 kg | N | 980.665", "2500 lb | KG | 1133.980925",
        "11st 4lb | KG | 71.66759446", "350# | LBF | 1556.877565341175", "500 g | KG | 0.5", "1kg 200g | KG | 1.2",
        "350 lb/in | N_PER_MM | 61.29439233626673", "350LB/IN | N_PER_MM | 61.29439233626673", "350 lbs / inch | N_PER_MM | 61.29439233626673",
        "500 lbf/in | N_PER_MM | 87.56341762323819", "10 kg/mm | N_PER_MM | 98.0665", "25000 N/m | N_PER_MM | 25", "60 n/mm | LBF_PER_IN | 60",
        "0.5psi | BAR | 0.0344737864658418", "25 PSI | BAR | 1.72368932329209", "172 kPa | PSI | 1.72", "1,6 bar | PSI | 1.6",
        "20 l | LITRE | 20", "5 gal | GAL_US | 18.92705892", "5 gal | GAL_IMP | 22.73045", "5 US gal | LITRE | 18.92705892",
        "5 gal (imp) | LITRE | 22.73045", "20 °C | DEG_F | 20", "68°F | DEG_C | 20", "-40 f | DEG_C | -40", "32° | DEG_F | 0",
        "20 N m | N_M | 20", "20Nm | N_M | 20", "20 N·m | N_M | 20", "10 ft-lb | N_M | 13.558179483314", "10 lbf ft | N_M | 13.558179483314",
        "2 1/4 turns | TURN | 2.25", "52,7 % | PERCENT | 52.7", "50 | PERCENT | 50", "0.62 | ONE | 0.62"})
    void isRead(String typed, Unit assumed, double base) {
        assertEquals(base, Quantities.parse(typed, assumed), Math.abs(base) * 1e-13);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', ignoreLeadingAndTrailingWhitespace = false, value = {
        "~~|MM|0|nothing", "~   ~|MM|3|nothing", "-|MM|1|missing", "abc|MM|0|not a figure", "NaN|MM|0|not a figure", "∞|MM|0|not a figure",
        "Infinity|MM|0|not a figure", "1.234,5|MM|5|more than one decimal mark", "1,234.5|MM|5|more than one decimal mark",
        "1.2.3|MM|3|more than one decimal mark", "1,234,567|MM|5|more than one decimal mark", "1,234|MM|0|thousands or decimals",
        "12,345 mm|MM|0|thousands or decimals", "107 93|MM|4|two figures", "--5|MM|1|not a figure", "1 5/4|MM|0|not less than one",
        "3/0|MM|0|zero", "3/16/2|MM|4|not understood", "1.5 3/4|MM|4|two figures", "5-|MM|1|not understood", "2-3|MM|1|not understood",
        "1e3|MM|1|not a unit", "5 furlongs|MM|2|not a unit", "5 kg|MM|2|is for a mass, but a length is wanted",
        "2 mm|DEG|2|is for a length, but an angle is wanted", "350 lb|N_PER_MM|4|is for a mass, but a spring rate is wanted",
        "5 gal|LITRE|2|more than one unit", "20°|TURN|2|is for an angle", "1.5°30'|DEG|4|does not add up", "1°60'|DEG|2|does not add up",
        "1'234\"|MM|2|does not add up", "1°-30'|DEG|2|not understood", "2000000000|MM|0|too large", "1000001 m|MM|0|too large",
        "1234567890123456|MM|0|digits", "1°30' 5°|DEG|6|two figures", "5 mm|ONE|2|is for a length", "0x10|MM|1|not a unit",
        "٣|MM|0|not a figure", "1\u200B5|MM|2|two figures", "1\u00A0125/128|MM|0|thousands in a fraction"})
    void isRefused(String typed, Unit assumed, int position, String problem) {
        QuantityFormatException e = assertThrows(QuantityFormatException.class, () -> Quantities.parse(typed, assumed));
        assertTrue(e.problem().contains(problem), e::getMessage);
        assertEquals(position, e.position(), e::getMessage);
        assertEquals(e.problem() + "; " + e.remedy(), e.getMessage());
        assertEquals(0, e.getStackTrace().length);
    }

    @Test
    void theRemedyOfAnAmbiguousFigureIsReadEitherWay() {
        QuantityFormatException e = assertThrows(QuantityFormatException.class, () -> Quantities.parse("1,134 kg", Unit.KG));
        assertEquals("\"1,134\" may mean thousands or decimals; type 1134 or 1.134", e.getMessage());
        assertEquals(1134, Quantities.parse("1134 kg", Unit.KG));
        assertEquals(1.134, Quantities.parse("1.134 kg", Unit.KG));
    }

    @Test
    void thePersonsOwnMarkSettlesThousands() {
        assertEquals(1.234, Quantities.parse("1,234", Unit.MM, DecimalMark.COMMA));
        assertThrows(QuantityFormatException.class, () -> Quantities.parse("1.234", Unit.MM, DecimalMark.COMMA));
        assertEquals(12.5, Quantities.parse("12.5", Unit.MM, DecimalMark.COMMA));
    }

    @Test
    void theUnitNamesWhatIsWanted() {
        QuantityFormatException e = assertThrows(QuantityFormatException.class, () -> Quantities.parse("5 kg", Unit.MM));
        assertEquals("\"kg\" is for a mass, but a length is wanted; type mm, cm, m, in or ft", e.getMessage());
    }

    @Test
    void minusZeroIsZero() {
        assertEquals(0L, Double.doubleToRawLongBits(Quantities.parse("-0,00", Unit.MM)));
        assertEquals(0L, Double.doubleToRawLongBits(Quantities.parse("-0°00'", Unit.DEG)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"107,9|MM|MM|0.1", "107|MM|MM|1", "3/16 in|MM|IN|1.5875",
        "-1°30'|DEG|DEG|0.016666666666666666", "240.5 lb|KG|LB|0.045359237", "2 1/4|TURN|TURN|0.25"})
    void theTypingShowsItsFineness(String typed, Unit assumed, Unit unit, double resolution) {
        Quantity quantity = Quantities.read(typed, assumed, DecimalMark.POINT);
        assertEquals(unit, quantity.unit());
        assertEquals(resolution, quantity.resolution(), resolution * 1e-13);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", " ", "1 ", "-", "1/", "½", "'", "1'", "\u00A0", "1\u00A0", "(", "1a("})
    void longInputsAreRefusedAtOnce(String piece) {
        String bomb = piece.repeat(10_000);
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> {
            for (int i = 0; i < 1000; i++) {
                assertThrows(QuantityFormatException.class, () -> Quantities.parse(bomb, Unit.MM));
                assertThrows(QuantityFormatException.class, () -> Quantities.parseLine(bomb, Unit.MM));
                assertThrows(QuantityFormatException.class, () -> Turns.parse(bomb, 12));
            }
        });
    }
}
