package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

class UnitTest {
    private static final BigDecimal POUND_KG = new BigDecimal("0.45359237");
    private static final BigDecimal GRAVITY = new BigDecimal("9.80665");
    private static final BigDecimal INCH_MM = new BigDecimal("25.4");
    private static final BigDecimal FOOT_M = new BigDecimal("0.3048");
    private static final BigDecimal POUND_FORCE_N = POUND_KG.multiply(GRAVITY);

    private static void assertExact(BigDecimal numerator, BigDecimal denominator, Unit unit) {
        assertEquals(0, numerator.multiply(unit.denominator()).compareTo(unit.numerator().multiply(denominator)),
                () -> unit + " is " + unit.numerator() + "/" + unit.denominator());
    }

    /** Derived units follow exactly from pound, inch and standard gravity (NIST SP 811, 2008, App. B). */
    @Test
    void derivedFactorsAreExact() {
        BigDecimal one = BigDecimal.ONE;
        BigDecimal squareInch = INCH_MM.multiply(INCH_MM);
        assertExact(POUND_KG, one, Unit.LB);
        assertExact(POUND_KG.multiply(BigDecimal.valueOf(14)), one, Unit.ST);
        assertExact(INCH_MM, one, Unit.IN);
        assertExact(INCH_MM.multiply(BigDecimal.valueOf(12)), one, Unit.FT);
        assertExact(GRAVITY, one, Unit.KGF);
        assertExact(POUND_FORCE_N, one, Unit.LBF);
        assertExact(POUND_FORCE_N, INCH_MM, Unit.LBF_PER_IN);
        assertExact(GRAVITY, one, Unit.KGF_PER_MM);
        assertExact(POUND_FORCE_N.multiply(BigDecimal.TEN), squareInch, Unit.PSI);
        assertExact(POUND_FORCE_N.multiply(FOOT_M), one, Unit.LBF_FT);
        assertExact(squareInch.multiply(INCH_MM).multiply(BigDecimal.valueOf(231)).movePointLeft(6), one, Unit.GAL_US);
        assertExact(one, BigDecimal.valueOf(60), Unit.ARCMIN);
        assertExact(one, BigDecimal.valueOf(3600), Unit.ARCSEC);
    }

    /** Seven digits as printed in NIST SP 811 (2008) App. B.8, cited from memory, in the base units used here. */
    @ParameterizedTest
    @CsvSource({"LB, 0.4535924", "IN, 25.4", "FT, 304.8", "KGF, 9.80665", "LBF, 4.448222", "LBF_PER_IN, 0.1751268",
        "PSI, 0.06894757", "LBF_FT, 1.355818", "GAL_US, 3.785412", "GAL_IMP, 4.54609", "KPA, 0.01"})
    void printedFactors(Unit unit, double printed) {
        assertEquals(printed, unit.factor(), printed * 5e-7);
    }

    /** Derived from the exact factors above with rational arithmetic. */
    @Test
    void workedConversions() {
        assertEquals(571.014715, Unit.LBF_PER_IN.fromBase(100), 5e-7);
        assertEquals(5.710147154733, Unit.LBF_PER_IN.fromBase(1), 5e-13);
        assertEquals(87.5634176, Unit.LBF_PER_IN.toBase(500), 5e-8);
        assertEquals(172.368932, Unit.KPA.fromBase(Unit.PSI.toBase(25)), 5e-7);
        assertEquals(1133.980925, Unit.LB.toBase(2500), 5e-7);
        assertEquals(1.5875, Unit.IN.toBase(1.0 / 16), 1e-15);
        assertEquals(2.908882086657e-4, Math.toRadians(Unit.ARCMIN.toBase(1)), 5e-16);
    }

    /** Well-known points of both scales; t/°C = (t/°F - 32)/1.8, NIST SP 811 App. B.8. */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "68, 20"})
    void degreesFahrenheit(double fahrenheit, double celsius) {
        assertEquals(celsius, Unit.DEG_F.toBase(fahrenheit), 1e-13);
        assertEquals(fahrenheit, Unit.DEG_F.fromBase(celsius), 1e-13);
    }

    @ParameterizedTest
    @EnumSource
    void theBaseUnitHasFactorOne(Dimension dimension) {
        assertEquals(dimension, dimension.baseUnit().dimension());
        assertEquals(1, dimension.baseUnit().factor());
        assertEquals(BigDecimal.ZERO, dimension.baseUnit().offset());
    }

    @ParameterizedTest
    @EnumSource
    void everySymbolAndAliasIsReadAsItsUnit(Unit unit) {
        for (String symbol : unit.aliases()) {
            assertEquals(unit.toBase(7), Quantities.parse("7 " + symbol, unit), 1e-9, symbol);
            assertEquals(unit.toBase(7), Quantities.parse("7" + symbol.toUpperCase(), unit), 1e-9, symbol);
        }
        assertEquals(unit.toBase(7), Quantities.parse("7 " + unit.symbol(), unit.dimension().baseUnit()), 1e-9);
    }

    /** Every unit built from the units of the JSR 385 reference implementation, and converted by it. */
    @ParameterizedTest
    @EnumSource
    void agreesWithAnIndependentUnitLibrary(Unit unit) throws Exception {
        Map<Unit, javax.measure.Unit<?>> theirs = independentUnits();
        javax.measure.Unit<?> from = theirs.get(unit);
        javax.measure.Unit<?> to = theirs.get(unit.dimension().baseUnit());
        assertNotNull(from, () -> unit + " is not compared");
        for (double value : new double[] {-40, 0, 0.1, 1, 107.9, 12345.678}) {
            double expected = from.getConverterToAny(to).convert(value);
            assertEquals(expected, unit.toBase(value), Math.abs(expected) * 1e-14 + 1e-12, () -> value + " " + unit);
            assertEquals(value, unit.fromBase(expected), Math.abs(value) * 1e-14 + 1e-12, () -> expected + " to " + unit);
        }
    }

    private static Map<Unit, javax.measure.Unit<?>> independentUnits() {
        Map<Unit, javax.measure.Unit<?>> map = new EnumMap<>(Unit.class);
        var mm = MetricPrefix.MILLI(Units.METRE);
        var inch = Units.METRE.multiply(254).divide(10_000);
        var foot = inch.multiply(12);
        var pound = Units.KILOGRAM.multiply(45_359_237).divide(100_000_000);
        var gravity = Units.METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000);
        var kilogramForce = Units.KILOGRAM.multiply(gravity);
        var poundForce = pound.multiply(gravity);
        var degree = AbstractUnit.ONE.multiply(Math.PI).divide(180);
        map.put(Unit.MM, mm);
        map.put(Unit.CM, MetricPrefix.CENTI(Units.METRE));
        map.put(Unit.M, Units.METRE);
        map.put(Unit.IN, inch);
        map.put(Unit.FT, foot);
        map.put(Unit.DEG, degree);
        map.put(Unit.ARCMIN, degree.divide(60));
        map.put(Unit.ARCSEC, degree.divide(3600));
        map.put(Unit.KG, Units.KILOGRAM);
        map.put(Unit.G, Units.GRAM);
        map.put(Unit.LB, pound);
        map.put(Unit.ST, pound.multiply(14));
        map.put(Unit.N, Units.NEWTON);
        map.put(Unit.KGF, kilogramForce);
        map.put(Unit.LBF, poundForce);
        map.put(Unit.N_PER_MM, Units.NEWTON.divide(mm));
        map.put(Unit.N_PER_M, Units.NEWTON.divide(Units.METRE));
        map.put(Unit.LBF_PER_IN, poundForce.divide(inch));
        map.put(Unit.KGF_PER_MM, kilogramForce.divide(mm));
        map.put(Unit.BAR, Units.PASCAL.multiply(100_000));
        map.put(Unit.PSI, poundForce.divide(inch.pow(2)));
        map.put(Unit.KPA, MetricPrefix.KILO(Units.PASCAL));
        map.put(Unit.LITRE, Units.LITRE);
        map.put(Unit.GAL_US, inch.pow(3).multiply(231));
        map.put(Unit.GAL_IMP, Units.LITRE.multiply(454_609).divide(100_000));
        map.put(Unit.DEG_C, Units.CELSIUS);
        map.put(Unit.DEG_F, Units.KELVIN.multiply(5).divide(9).shift(459.67));
        map.put(Unit.N_M, Units.NEWTON.multiply(Units.METRE));
        map.put(Unit.LBF_FT, poundForce.multiply(foot));
        map.put(Unit.TURN, AbstractUnit.ONE.multiply(2 * Math.PI));
        map.put(Unit.PERCENT, Units.PERCENT);
        map.put(Unit.ONE, AbstractUnit.ONE);
        return map;
    }

    @Test
    void theDoubleFactorIsTheExactOneRounded() {
        for (Unit unit : Unit.values()) {
            double exact = unit.numerator().divide(unit.denominator(), new MathContext(60)).doubleValue();
            assertTrue(Math.abs(unit.factor() - exact) <= Math.ulp(exact) / 2, unit::name);
        }
    }
}
