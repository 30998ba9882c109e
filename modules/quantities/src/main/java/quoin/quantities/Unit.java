package quoin.quantities;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A unit people read or type, with its exact size in the base unit of its dimension.
 *
 * <p>{@code base = (value - offset) * numerator / denominator}; only {@link #DEG_F} has an offset.
 *
 * <p>Sources: SI brochure, 9th ed. 2019 (bar, litre, degree and minute of angle, degree Celsius); NIST SP 811, 2008 ed.,
 * App. B.8 (inch 25.4 mm, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s2, US gallon 231 in3 = 3.785 411 784 l,
 * degree Fahrenheit); UK Weights and Measures Act 1985 (imperial gallon 4.546 09 l). Everything else follows from these.
 */
public enum Unit {
    MM(Dimension.LENGTH, "mm", 1, "1", "1"),
    CM(Dimension.LENGTH, "cm", 2, "10", "1"),
    M(Dimension.LENGTH, "m", 4, "1000", "1", "metre", "metres", "meter", "meters"),
    IN(Dimension.LENGTH, "in", 3, "25.4", "1", "\"", "inch", "inches", "ins"),
    FT(Dimension.LENGTH, "ft", 4, "304.8", "1", "'", "foot", "feet"),

    DEG(Dimension.ANGLE, "°", 2, "1", "1", "deg", "degs", "degree", "degrees"),
    ARCMIN(Dimension.ANGLE, "'", 0, "1", "60", "min", "mins", "minute", "minutes", "arcmin"),
    ARCSEC(Dimension.ANGLE, "\"", 0, "1", "3600", "sec", "secs", "second", "seconds", "arcsec"),

    KG(Dimension.MASS, "kg", 1, "1", "1", "kgs", "kilo", "kilos"),
    G(Dimension.MASS, "g", 0, "0.001", "1", "gr", "gram", "grams"),
    LB(Dimension.MASS, "lb", 1, "0.45359237", "1", "lbs", "#", "pound", "pounds"),
    ST(Dimension.MASS, "st", 2, "6.35029318", "1", "stone"),

    N(Dimension.FORCE, "N", 0, "1", "1", "newton", "newtons"),
    /** The load a mass of 1 kg puts on a scale under standard gravity; scales, and so people, call it kg. */
    KGF(Dimension.FORCE, "kg", 1, "9.80665", "1", "kgf", "kp", "kgs", "kilo", "kilos"),
    /** The load a mass of 1 lb puts on a scale under standard gravity. */
    LBF(Dimension.FORCE, "lb", 1, "4.4482216152605", "1", "lbf", "lbs", "#", "pound", "pounds"),

    N_PER_MM(Dimension.STIFFNESS, "N/mm", 1, "1", "1"),
    N_PER_M(Dimension.STIFFNESS, "N/m", 0, "0.001", "1"),
    LBF_PER_IN(Dimension.STIFFNESS, "lb/in", 0, "4.4482216152605", "25.4", "lbf/in", "lbs/in", "lb/inch", "lbf/inch",
            "lbs/inch", "lb/\"", "lbs/\""),
    KGF_PER_MM(Dimension.STIFFNESS, "kg/mm", 2, "9.80665", "1", "kgf/mm"),

    BAR(Dimension.PRESSURE, "bar", 2, "1", "1", "bars"),
    /** lbf/in2: 4.4482216152605 N on 645.16 mm2; 1 N/mm2 is 10 bar. */
    PSI(Dimension.PRESSURE, "psi", 1, "44.482216152605", "645.16", "lb/in²", "lbf/in²"),
    KPA(Dimension.PRESSURE, "kPa", 0, "0.01", "1"),

    LITRE(Dimension.VOLUME, "l", 1, "1", "1", "litre", "litres", "liter", "liters", "ltr"),
    GAL_US(Dimension.VOLUME, "gal (US)", 2, "3.785411784", "1", "us gal", "gal", "gals", "gallon", "gallons"),
    GAL_IMP(Dimension.VOLUME, "gal (imp)", 2, "4.54609", "1", "imp gal", "gal (uk)", "uk gal", "gal", "gals", "gallon",
            "gallons"),

    DEG_C(Dimension.TEMPERATURE, "°C", 0, "1", "1", "degc", "c", "celsius", "°", "deg"),
    DEG_F(Dimension.TEMPERATURE, "°F", 0, "5", "9", "degf", "f", "fahrenheit", "°", "deg"),

    N_M(Dimension.TORQUE, "N m", 0, "1", "1"),
    /** 4.4482216152605 N at 0.3048 m. */
    LBF_FT(Dimension.TORQUE, "lbf ft", 0, "1.3558179483314004", "1", "lb ft", "lbs ft", "ft lb", "ft lbf", "ft lbs"),

    TURN(Dimension.TURNS, "turn", 2, "1", "1", "turns", "t", "rev", "revs"),
    PERCENT(Dimension.PERCENT, "%", 1, "1", "1", "percent", "per cent", "pct"),
    ONE(Dimension.NUMBER, "", 2, "1", "1");

    private final Dimension dimension;
    private final String symbol;
    private final int usualDecimals;
    private final BigDecimal numerator;
    private final BigDecimal denominator;
    private final BigDecimal offset;
    private final double factor;
    private final List<String> aliases;

    Unit(Dimension dimension, String symbol, int usualDecimals, String numerator, String denominator, String... aliases) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.usualDecimals = usualDecimals;
        this.numerator = new BigDecimal(numerator);
        this.denominator = new BigDecimal(denominator);
        this.offset = symbol.equals("°F") ? BigDecimal.valueOf(32) : BigDecimal.ZERO;
        this.factor = this.numerator.divide(this.denominator, MathContext.DECIMAL128).doubleValue();
        this.aliases = List.of(aliases);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As shown beside a figure; empty for {@link #ONE}. Loads show the scales' "kg" and "lb". */
    public String symbol() {
        return symbol;
    }

    /** Other spellings that are read, in any case and with or without spaces, points and hyphens. */
    public List<String> aliases() {
        return aliases;
    }

    /** Decimals that suit what is read in a workshop, where the user has not set his own. */
    public int usualDecimals() {
        return usualDecimals;
    }

    /** Numerator of the exact factor to the base unit. */
    public BigDecimal numerator() {
        return numerator;
    }

    /** Denominator of the exact factor to the base unit. */
    public BigDecimal denominator() {
        return denominator;
    }

    /** What this unit shows at the zero of the base unit's scale: 32 for degree Fahrenheit, else 0. */
    public BigDecimal offset() {
        return offset;
    }

    /** Base units per one of this unit; by itself right for differences and tolerances of temperature too. */
    public double factor() {
        return factor;
    }

    /** A value in this unit, in the base unit. */
    public double toBase(double value) {
        return (value - offset.doubleValue()) * factor;
    }

    /** A value in the base unit, in this unit. */
    public double fromBase(double baseValue) {
        return baseValue / factor + offset.doubleValue();
    }
}
