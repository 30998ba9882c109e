package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityFormatTest {
    private static final UnitPreferences METRIC = UnitPreferences.metric();
    private static final UnitPreferences INCH_POUND = UnitPreferences.inchPound();
    private static final UnitPreferences MINUTES = METRIC.withAngleStyle(AngleStyle.DEGREES_MINUTES);

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"108.3|LENGTH|108.3 mm|4.264 in", "-1.5|ANGLE|-1.50°|-1.50°",
        "469|MASS|469.0 kg|1034.0 lb", "980.665|FORCE|100.0 kg|220.5 lb", "87.5634176|STIFFNESS|87.6 N/mm|500 lb/in",
        "1.72368932|PRESSURE|1.72 bar|25.0 psi", "20|VOLUME|20.0 l|5.28 gal (US)", "20|TEMPERATURE|20 °C|68 °F",
        "20|TORQUE|20 N m|15 lbf ft", "2.25|TURNS|2.25 turns|2.25 turns", "52.68|PERCENT|52.7 %|52.7 %", "0.618|NUMBER|0.62|0.62"})
    void shownInBothSystems(double base, Dimension dimension, String metric, String inchPound) {
        assertEquals(metric, QuantityFormat.formatWithUnit(base, dimension, METRIC));
        assertEquals(inchPound, QuantityFormat.formatWithUnit(base, dimension, INCH_POUND));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"-1.5|-1°30'", "-0.566667|-0°34'", "0.999|1°00'", "1.9999|2°00'", "0|0°00'",
        "-0.001|0°00'", "12.1|12°06'", "-0.0083334|-0°01'"})
    void degreesAndMinutes(double degrees, String shown) {
        assertEquals(shown, QuantityFormat.formatWithUnit(degrees, Dimension.ANGLE, MINUTES));
    }

    @Test
    void zeroHasNoSign() {
        for (double small : new double[] {-0.0, 0.0, -0.04, 0.04, -1e-300, -Double.MIN_VALUE}) {
            assertEquals("0.0", QuantityFormat.format(small, Dimension.LENGTH, METRIC));
            assertEquals("0.0", QuantityFormat.of(METRIC).signed().number(small, Dimension.LENGTH));
            assertEquals("0°00'", QuantityFormat.of(MINUTES).signed().number(small / 10, Dimension.ANGLE));
        }
    }

    @Test
    void signed() {
        QuantityFormat signed = QuantityFormat.of(METRIC.withDecimalMark(DecimalMark.COMMA)).signed();
        assertEquals("+0,3 mm", signed.text(0.3, Dimension.LENGTH));
        assertEquals("-0,3 mm", signed.text(-0.3, Dimension.LENGTH));
        assertEquals("+0°30'", QuantityFormat.of(MINUTES).signed().text(0.5, Dimension.ANGLE));
        assertEquals("+9 °F", QuantityFormat.of(INCH_POUND).signed().text(5, Dimension.TEMPERATURE));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 12.3", "1, 12", "10, 12", "0.25, 12.35", "0.1, 12.3", "0.01, 12.35", "0.0001, 12.346", "2, 12", "0.2, 12.3"})
    void neverMoreDigitsThanItHas(double resolution, String shown) {
        UnitPreferences fine = METRIC.withDecimals(Dimension.LENGTH, 3);
        assertEquals(shown, QuantityFormat.of(fine).withResolution(resolution).number(12.346, Dimension.LENGTH));
    }

    @Test
    void resolutionInTheShownUnit() {
        assertEquals("0.49", QuantityFormat.of(INCH_POUND).withResolution(0.5).number(12.5, Dimension.LENGTH));
        assertEquals("12.5", QuantityFormat.of(METRIC).withResolution(1e-6).number(12.46, Dimension.LENGTH));
    }

    @Test
    void halvesRoundAwayFromZeroAsPrinted() {
        assertEquals("0.3", QuantityFormat.format(0.25, Dimension.LENGTH, METRIC));
        assertEquals("-0.3", QuantityFormat.format(-0.25, Dimension.LENGTH, METRIC));
        assertEquals("1.01", QuantityFormat.format(1.005, Dimension.ANGLE, METRIC));
    }

    @Test
    void oneTurnIsSingular() {
        UnitPreferences whole = METRIC.withDecimals(Dimension.TURNS, 0);
        assertEquals("1 turn", QuantityFormat.formatWithUnit(1, Dimension.TURNS, whole));
        assertEquals("2 turns", QuantityFormat.formatWithUnit(2, Dimension.TURNS, whole));
    }

    @Test
    void misuseIsNamed() {
        assertThrows(IllegalArgumentException.class, () -> QuantityFormat.format(Double.NaN, Dimension.LENGTH, METRIC));
        assertThrows(IllegalArgumentException.class,
                () -> QuantityFormat.format(Double.POSITIVE_INFINITY, Dimension.ANGLE, MINUTES));
        assertThrows(IllegalArgumentException.class, () -> QuantityFormat.of(METRIC).withResolution(0));
        assertThrows(IllegalArgumentException.class, () -> QuantityFormat.of(METRIC).withResolution(Double.NaN));
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
                () -> new UnitPreferences(Map.of(Dimension.LENGTH, Unit.KG), DecimalMark.POINT, Map.of(), AngleStyle.DECIMAL));
        assertEquals("units: KG is for MASS, not for LENGTH; choose a unit of LENGTH", e.getMessage());
        assertThrows(IllegalArgumentException.class, () -> METRIC.withDecimals(Dimension.MASS, 10));
    }

    @Test
    void changingTheUnitTakesItsUsualDecimals() {
        UnitPreferences changed = METRIC.withDecimals(Dimension.LENGTH, 0).withUnit(Unit.IN);
        assertEquals(Unit.IN, changed.unit(Dimension.LENGTH));
        assertEquals(3, changed.decimals(Dimension.LENGTH));
        assertEquals(Unit.KGF, changed.unit(Dimension.FORCE));
        assertEquals(Unit.MM, METRIC.unit(Dimension.LENGTH));
    }
}
