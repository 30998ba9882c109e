package quoin.quantities;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * Shows values, given in the base unit of their dimension, as one person reads them. What it writes {@link Quantities}
 * reads back. Immutable. Half steps round away from zero; zero never carries a minus sign; thousands are not grouped.
 */
public final class QuantityFormat {
    private static final int MOST_DECIMALS = 9;
    private static final double ROUNDING = 1e-9;
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final UnitPreferences preferences;
    private final boolean signed;
    private final double resolution;

    private QuantityFormat(UnitPreferences preferences, boolean signed, double resolution) {
        this.preferences = Objects.requireNonNull(preferences, "preferences");
        this.signed = signed;
        this.resolution = resolution;
    }

    public static QuantityFormat of(UnitPreferences preferences) {
        return new QuantityFormat(preferences, false, 0);
    }

    /** "107.9": {@code QuantityFormat.of(preferences).number(...)}. */
    public static String format(double baseValue, Dimension dimension, UnitPreferences preferences) {
        return of(preferences).number(baseValue, dimension);
    }

    /** "107.9 kg": {@code QuantityFormat.of(preferences).text(...)}. */
    public static String formatWithUnit(double baseValue, Dimension dimension, UnitPreferences preferences) {
        return of(preferences).text(baseValue, dimension);
    }

    /** A copy that puts + before what is above zero: for changes and differences. Offsets of °F then do not apply. */
    public QuantityFormat signed() {
        return new QuantityFormat(preferences, true, resolution);
    }

    /**
     * A copy that shows no more digits than the values have.
     *
     * @param baseResolution the instrument's or the typed step, in the base unit, above zero: 0.5 mm gives "12.5",
     *     0.25 gives "12.25", 1 gives "12"; never more than the preferred decimals
     */
    public QuantityFormat withResolution(double baseResolution) {
        if (!(baseResolution > 0) || Double.isInfinite(baseResolution)) {
            throw new IllegalArgumentException("baseResolution: " + baseResolution + "; give a step above zero");
        }
        return new QuantityFormat(preferences, signed, baseResolution);
    }

    /** The figure without its unit; an angle in degrees and minutes keeps its marks. */
    public String number(double baseValue, Dimension dimension) {
        if (!Double.isFinite(baseValue)) {
            throw new IllegalArgumentException("baseValue: " + baseValue + "; show a value that is not known as missing");
        }
        if (inMinutes(dimension)) {
            return degreesMinutes(baseValue);
        }
        Unit unit = preferences.unit(dimension);
        double value = signed ? baseValue / unit.factor() : unit.fromBase(baseValue);
        int decimals = Math.min(preferences.decimals(dimension), meaningfulDecimals(unit));
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String figure = rounded.toPlainString().replace('.', preferences.decimalMark().character());
        return signed && rounded.signum() > 0 ? "+" + figure : figure;
    }

    /** The figure with its unit: "107.9 kg", "1.50°", "-1°30'", "2.00 turns", "50.1 %". */
    public String text(double baseValue, Dimension dimension) {
        String figure = number(baseValue, dimension);
        Unit unit = preferences.unit(dimension);
        return switch (dimension) {
            case NUMBER -> figure;
            case ANGLE -> inMinutes(dimension) ? figure : figure + unit.symbol();
            case TURNS -> figure + (isOne(figure) ? " turn" : " turns");
            default -> figure + " " + unit.symbol();
        };
    }

    private boolean inMinutes(Dimension dimension) {
        return dimension == Dimension.ANGLE && preferences.angleStyle() == AngleStyle.DEGREES_MINUTES;
    }

    private static boolean isOne(String figure) {
        return figure.equals("1") || figure.equals("+1") || figure.equals("-1");
    }

    private int meaningfulDecimals(Unit unit) {
        if (resolution == 0) {
            return MOST_DECIMALS;
        }
        double step = resolution / unit.factor();
        int decimals = 0;
        while (decimals < MOST_DECIMALS && Math.pow(10, -decimals) > step * (1 + ROUNDING)) {
            decimals++;
        }
        // a step of 0.25 needs one digit more than its size tells
        return isWhole(step * Math.pow(10, decimals)) || !isWhole(step * Math.pow(10, decimals + 1)) ? decimals : decimals + 1;
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) < ROUNDING * Math.max(1, value);
    }

    private String degreesMinutes(double degrees) {
        BigDecimal minutes = BigDecimal.valueOf(degrees).multiply(SIXTY).setScale(0, RoundingMode.HALF_UP);
        BigDecimal[] parts = minutes.abs().divideAndRemainder(SIXTY);
        String sign = minutes.signum() < 0 ? "-" : signed && minutes.signum() > 0 ? "+" : "";
        int rest = parts[1].intValue();
        return sign + parts[0].toPlainString() + "°" + (rest < 10 ? "0" : "") + rest + "'";
    }
}
