package quoin.quantities;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Reads figures as people type them. Values come back in the base unit of the dimension. Stateless.
 *
 * <p><b>One figure.</b> Decimal point or comma; minus as -, − or –, and it covers every part ("-1°30'" is -1.5, "-0°34'"
 * is negative); thousands grouped with a no-break or thin space ("1 234,5"); fractions "3/16", "1 3/16", "2-3/8", "1½";
 * an inline unit in any case ("240lb", "350 LB/IN", 3/16"), which wins over the assumed one; a larger and the next smaller
 * unit ("1°30'", "1 deg 30 min", "2 ft 3 in", "11st 4lb"), where the last unit may be left out ("1°30").
 *
 * <p><b>Never guessed.</b> Two decimal marks ("1.234,5") are refused. So is the mark that is not the person's own with
 * exactly three digits behind it and one to three before, as "1,234" for {@link DecimalMark#POINT}, which may be thousands;
 * "0,234" and "1,2345" are read. A symbol has the meaning of the dimension wanted: ' is feet in a length, minutes in an
 * angle; kg and lb are masses or, where a load is wanted, the load on a scale. "gal" and a bare ° for a temperature take
 * the assumed unit where it is one of those meant, and are refused otherwise.
 *
 * <p><b>A line of figures</b> is separated by spaces, tabs, semicolons, bars, or commas with a space after them; a comma
 * with a digit on both sides is always a decimal comma, so "90,101,146,132" is refused and "90, 101, 146, 132" read. A
 * figure not read is -, ., / or ? alone, or nothing between two semicolons; a separator at the end adds nothing. The sign
 * must touch its figure; a whole figure followed by a fraction ("1 3/16") is one figure: put semicolons where it is two.
 */
public final class Quantities {
    private static final int LONGEST_FIGURE = 80;
    private static final int LONGEST_LINE = 1000;

    private Quantities() {
    }

    /**
     * Reads one figure, the decimal point being the person's own mark.
     *
     * @param assumedUnit unit of a figure typed without one; its dimension is the one wanted
     * @return the value in the base unit of the dimension; finite, at most 1e9 in size, never -0.0
     * @throws QuantityFormatException saying what is wrong and how to type it
     */
    public static double parse(String text, Unit assumedUnit) {
        return parse(text, assumedUnit, DecimalMark.POINT);
    }

    /** As {@link #parse(String, Unit)}, with the person's own decimal mark, which settles "1,234". */
    public static double parse(String text, Unit assumedUnit, DecimalMark ownMark) {
        return read(text, assumedUnit, ownMark).value();
    }

    /** As {@link #parse(String, Unit)}, the preferences giving the assumed unit and the decimal mark. */
    public static double parse(String text, Dimension dimension, UnitPreferences preferences) {
        return parse(text, preferences.unit(dimension), preferences.decimalMark());
    }

    /** As {@link #parse(String, Unit, DecimalMark)}, keeping the unit and the fineness that were typed. */
    public static Quantity read(String text, Unit assumedUnit, DecimalMark ownMark) {
        check(text, assumedUnit, ownMark);
        return new QuantityScanner(new Typed(text, LONGEST_FIGURE), assumedUnit, ownMark, false).single();
    }

    /** Reads a line of figures such as four scale readings, the decimal point being the person's own mark. */
    public static List<OptionalDouble> parseLine(String text, Unit assumedUnit) {
        return parseLine(text, assumedUnit, DecimalMark.POINT);
    }

    /**
     * Reads a line of figures such as "107,9 93,2 - 146,2".
     *
     * @return in the order typed, in the base unit; empty where not read; at least one and at most 64 elements
     * @throws QuantityFormatException saying what is wrong and how to type it
     */
    public static List<OptionalDouble> parseLine(String text, Unit assumedUnit, DecimalMark ownMark) {
        check(text, assumedUnit, ownMark);
        return new QuantityScanner(new Typed(text, LONGEST_LINE), assumedUnit, ownMark, true).line();
    }

    private static void check(String text, Unit assumedUnit, DecimalMark ownMark) {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(assumedUnit, "assumedUnit");
        Objects.requireNonNull(ownMark, "ownMark");
    }
}
