package quoin.garage.draft;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;

/**
 * Writes a value in the shortest form a person would type that reads back as the same value: "350 lb/in" where that is what
 * the rate is, "1/24 in" for the pitch of a 24-thread rod; a value with no such form is rounded to seven digits. Toe is chord * sin(angle) as a
 * length on the rim chord, plus = in.
 *
 * @param preferences unit and decimal mark of a figure typed without a unit
 * @param toeInMm     true where toe is a length at the rim, false where it is an angle
 */
public record FigureText(UnitPreferences preferences, boolean toeInMm) {

    private static final int SHORT_DECIMALS = 4;
    private static final int FINEST_INCH = 64;
    private static final MathContext ROUNDED = new MathContext(7);
    private static final Pattern ANGLE_MARK = Pattern.compile(".*(°|º|deg|min|'|’).*", Pattern.DOTALL);
    private static final Pattern LENGTH_MARK = Pattern.compile(".*(mm|in|\"|”|/).*", Pattern.DOTALL);
    private static final Pattern OUT = Pattern.compile("(.*\\S)\\s*out", Pattern.DOTALL | Pattern.CASE_INSENSITIVE);
    private static final Pattern TOE_IN = Pattern.compile("(.*\\S)\\s*toe[- ]in", Pattern.DOTALL | Pattern.CASE_INSENSITIVE);

    public FigureText {
        Objects.requireNonNull(preferences, "preferences");
    }

    /** The racer's unit for figures typed without one: "mm"; empty for plain numbers. */
    public String unit(Dimension dimension) {
        return preferences.unit(dimension).symbol();
    }

    /** The unit of a toe typed without one. */
    public String toeUnit() {
        return unit(toeInMm ? Dimension.LENGTH : Dimension.ANGLE);
    }

    /** Rounded as shown beside the form: "200 N/mm". */
    public String shown(double value, Dimension dimension) {
        return QuantityFormat.formatWithUnit(value, dimension, preferences);
    }

    /**
     * Reads a figure.
     *
     * @return in the base unit
     * @throws quoin.quantities.QuantityFormatException in words for the racer
     */
    public double read(String text, Dimension dimension) {
        return Quantities.parse(text, dimension, preferences);
    }

    /** The shortest text that {@link #read} gives back as this very value; else seven digits of it. */
    public String of(double value, Dimension dimension) {
        Unit own = preferences.unit(dimension);
        Stream<String> candidates = Stream.of(minutes(value, dimension), decimals(value, own, ""),
                others(own).flatMap(u -> decimals(value, u, suffix(u))), fractions(value, dimension)).flatMap(s -> s);
        return candidates.filter(text -> gives(value, () -> read(text, dimension))).findFirst()
                .orElseGet(() -> rounded(value, own));
    }

    private static boolean gives(double wanted, DoubleSupplier reading) {
        try {
            return reading.getAsDouble() == wanted;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private Stream<String> minutes(double value, Dimension dimension) {
        boolean wanted = dimension == Dimension.ANGLE && preferences.angleStyle() == AngleStyle.DEGREES_MINUTES;
        return wanted ? Stream.of(QuantityFormat.format(value, dimension, preferences)) : Stream.empty();
    }

    private Stream<String> decimals(double value, Unit unit, String suffix) {
        BigDecimal exact = BigDecimal.valueOf(unit.fromBase(value));
        return IntStream.rangeClosed(0, SHORT_DECIMALS).mapToObj(d -> plain(exact.setScale(d, RoundingMode.HALF_UP)) + suffix);
    }

    private static Stream<Unit> others(Unit own) {
        List<Unit> usual = switch (own.dimension()) {
            case LENGTH -> List.of(Unit.MM, Unit.IN);
            case MASS -> List.of(Unit.KG, Unit.LB);
            case STIFFNESS -> List.of(Unit.N_PER_MM, Unit.LBF_PER_IN, Unit.KGF_PER_MM);
            case PRESSURE -> List.of(Unit.BAR, Unit.PSI);
            default -> List.<Unit>of();
        };
        return usual.stream().filter(u -> u != own);
    }

    private static Stream<String> fractions(double value, Dimension dimension) {
        if (dimension != Dimension.LENGTH || !(value > 0)) {
            return Stream.empty();
        }
        double inches = Unit.IN.fromBase(value);
        long whole = (long) inches;
        String start = whole == 0 ? "" : whole + " ";
        return IntStream.rangeClosed(2, FINEST_INCH).filter(d -> Math.round((inches - whole) * d) > 0)
                .mapToObj(d -> start + Math.round((inches - whole) * d) + "/" + d + " in");
    }

    /** For values that no short text gives exactly; the draft keeps the value beside the text. */
    private String rounded(double value, Unit own) {
        return plain(BigDecimal.valueOf(own.fromBase(value)).round(ROUNDED));
    }

    private String plain(BigDecimal value) {
        BigDecimal clean = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        String text = clean.toPlainString();
        return preferences.decimalMark() == DecimalMark.COMMA ? text.replace('.', ',') : text;
    }

    private static String suffix(Unit unit) {
        return unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    }

    /**
     * Reads a toe: "0.4", "-0.4 mm", "0.4 out", "0.8 toe-in", "0°04'".
     *
     * @param chordMm rim chord it is read on, mm
     * @return deg, plus = in
     * @throws IllegalArgumentException in words for the racer
     */
    public double readToe(String text, double chordMm) {
        var out = OUT.matcher(text.strip());
        if (out.matches()) {
            return -readToe(out.group(1), chordMm);
        }
        var in = TOE_IN.matcher(text.strip());
        String figure = in.matches() ? in.group(1) : text;
        Dimension typed = toeDimension(figure);
        double value = read(figure, typed);
        return typed == Dimension.LENGTH ? Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, value / chordMm)))) : value;
    }

    private Dimension toeDimension(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (ANGLE_MARK.matcher(lower).matches()) {
            return Dimension.ANGLE;
        }
        return toeInMm || LENGTH_MARK.matcher(lower).matches() ? Dimension.LENGTH : Dimension.ANGLE;
    }

    /** A toe of so many degrees, as {@link #readToe} reads it back; else seven digits of it. */
    public String toe(double deg, double chordMm) {
        double lengthMm = chordMm * Math.sin(Math.toRadians(deg));
        Unit own = preferences.unit(Dimension.LENGTH);
        Stream<String> lengths = Stream.concat(toeInMm ? decimals(lengthMm, own, "") : Stream.empty(),
                decimals(lengthMm, Unit.MM, " mm"));
        Stream<String> angles = decimals(deg, Unit.DEG, toeInMm ? "°" : "");
        Stream<String> ordered = toeInMm ? Stream.concat(lengths, angles) : Stream.concat(angles, lengths);
        return ordered.filter(text -> gives(deg, () -> readToe(text, chordMm))).findFirst()
                .orElseGet(() -> rounded(deg, Unit.DEG) + "°");
    }

    /** As {@link #of(double, Dimension)}; empty text where unknown. */
    public String of(OptionalDouble value, Dimension dimension) {
        return value.isPresent() ? of(value.getAsDouble(), dimension) : "";
    }

    /** Dimension of a unit symbol of the car's assumptions. */
    static Optional<Dimension> dimensionOf(String symbol) {
        return switch (symbol) {
            case "mm" -> Optional.of(Dimension.LENGTH);
            case "kg" -> Optional.of(Dimension.MASS);
            case "N/mm" -> Optional.of(Dimension.STIFFNESS);
            case "" -> Optional.of(Dimension.NUMBER);
            default -> Optional.empty();
        };
    }
}
