package quoin.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Unit;

/**
 * Shows and reads the figures of one car in the racer's units. Values are in the base unit of the reading's kind. Toe is
 * kept in degrees; as a length it is chord * sin(toe), the difference of the two gaps at the rim (chord of the wheel, or
 * the mean chord of the axle for total toe).
 */
public final class ReadingFormat {

    private static final Pattern ANGLE_MARK = Pattern.compile(".*(°|º|deg|min|'|’).*", Pattern.DOTALL);
    private static final Pattern LENGTH_MARK = Pattern.compile(".*(mm|in|\"|”|/).*", Pattern.DOTALL);

    private static final int ENTRY_DECIMALS = 4;

    private final AssumedCar car;
    private final DisplayUnits units;

    public ReadingFormat(Car car, DisplayUnits units) {
        this.car = Assumptions.complete(car);
        this.units = units;
    }

    public DisplayUnits units() {
        return units;
    }

    /** "107.9", without its unit. */
    public String number(ReadingId reading, double value) {
        return format(reading).number(shown(reading, value), dimension(reading));
    }

    /** The figure with every digit that was typed, for a field: "107.94". */
    public String exact(ReadingId reading, double value) {
        Dimension dimension = dimension(reading);
        String text = QuantityFormat.of(units.preferences().withDecimals(dimension, ENTRY_DECIMALS))
                .number(shown(reading, value), dimension);
        int mark = text.indexOf(units.preferences().decimalMark().character());
        return mark < 0 || !text.matches("[-+0-9.,]*") ? text : text.replaceAll("[.,]?0+$", "");
    }

    /** A figure in the unit it is shown in, for the axis of a chart. */
    public double shownValue(ReadingId reading, double value) {
        Dimension dimension = dimension(reading);
        return units.preferences().unit(dimension).fromBase(shown(reading, value));
    }

    /** "107.9 kg". */
    public String text(ReadingId reading, double value) {
        return format(reading).text(shown(reading, value), dimension(reading));
    }

    /** "+1.4 mm": a difference of two values. */
    public String change(ReadingId reading, double difference) {
        return format(reading).signed().text(shown(reading, difference), dimension(reading));
    }

    /** "+1.4": a difference of two values without its unit, for a table that names the unit. */
    public String changeNumber(ReadingId reading, double difference) {
        return format(reading).signed().number(shown(reading, difference), dimension(reading));
    }

    /** "62.0 ± 1.0", for a table that names the unit. */
    public String bandNumber(ReadingId reading, double value, double halfWidth) {
        return number(reading, value) + " ± " + number(reading, halfWidth);
    }

    /** "LF rail height, mm": the name a line of a table begins with. */
    public String nameWithUnit(ReadingId reading) {
        return reading.words() + ", " + unit(reading);
    }

    /** "62.0 ± 1.0 mm". */
    public String band(ReadingId reading, double value, double halfWidth) {
        return number(reading, value) + " ± " + format(reading).text(shown(reading, halfWidth), dimension(reading));
    }

    /** The unit figures of this reading are shown in: "kg". */
    public String unit(ReadingId reading) {
        return units.preferences().unit(dimension(reading)).symbol();
    }

    /**
     * Reads one typed figure.
     *
     * @return the value in the base unit of the reading's kind
     * @throws quoin.quantities.QuantityFormatException in words for the racer
     */
    public double parse(ReadingId reading, String text) {
        Dimension typed = typedDimension(reading, text);
        return base(reading, typed, Quantities.parse(text, typed, units.preferences()));
    }

    /**
     * Reads a whole line of figures.
     *
     * @param readings what the figures are, in order; figures beyond the end take the kind of the last
     * @throws quoin.quantities.QuantityFormatException in words for the racer
     */
    public List<OptionalDouble> parseLine(List<ReadingId> readings, String text) {
        ReadingId first = readings.get(0);
        Dimension typed = typedDimension(first, text);
        Unit assumed = units.preferences().unit(typed);
        List<OptionalDouble> figures = Quantities.parseLine(text, assumed, units.preferences().decimalMark());
        List<OptionalDouble> values = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            ReadingId reading = readings.get(Math.min(i, readings.size() - 1));
            OptionalDouble figure = figures.get(i);
            values.add(figure.isPresent() ? OptionalDouble.of(base(reading, typed, figure.getAsDouble())) : figure);
        }
        return values;
    }

    private boolean isToe(ReadingId reading) {
        return reading.kind() == ReadingKind.TOE || reading.kind() == ReadingKind.TOTAL_TOE;
    }

    private Dimension dimension(ReadingId reading) {
        if (isToe(reading)) {
            return units.toeInMm() ? Dimension.LENGTH : Dimension.ANGLE;
        }
        return switch (reading.kind().unit()) {
            case KG -> Dimension.MASS;
            case MM -> Dimension.LENGTH;
            case DEG -> Dimension.ANGLE;
            case BAR -> Dimension.PRESSURE;
            case PERCENT -> Dimension.PERCENT;
        };
    }

    private Dimension typedDimension(ReadingId reading, String text) {
        if (isToe(reading)) {
            String lower = text.toLowerCase(Locale.ROOT);
            if (ANGLE_MARK.matcher(lower).matches()) {
                return Dimension.ANGLE;
            }
            if (LENGTH_MARK.matcher(lower).matches()) {
                return Dimension.LENGTH;
            }
        }
        return dimension(reading);
    }

    private double base(ReadingId reading, Dimension typed, double value) {
        if (isToe(reading) && typed == Dimension.LENGTH) {
            double chord = chordMm(reading);
            return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, value / chord))));
        }
        return value;
    }

    private double shown(ReadingId reading, double value) {
        if (isToe(reading) && units.toeInMm()) {
            return chordMm(reading) * Math.sin(Math.toRadians(value));
        }
        return value;
    }

    private double chordMm(ReadingId toe) {
        if (toe.kind() == ReadingKind.TOTAL_TOE) {
            Axle axle = Axle.valueOf(toe.place());
            return (chordMm(axle.left()) + chordMm(axle.right())) / 2;
        }
        return chordMm(Corner.valueOf(toe.place()));
    }

    private double chordMm(Corner corner) {
        return car.corners().get(corner).rimChordMm();
    }

    private QuantityFormat format(ReadingId reading) {
        int decimals = switch (reading.kind()) {
            case TOE, TOTAL_TOE, CAMBER, CASTER, KPI, THRUST_ANGLE, TURN_TOE_OUT, PRESSURE -> 2;
            case CROSS, FRONT_SHARE, LEFT_SHARE -> 2;
            default -> 1;
        };
        Dimension dimension = dimension(reading);
        boolean finer = units.preferences().unit(dimension) == Unit.IN;
        return QuantityFormat.of(units.preferences().withDecimals(dimension, finer ? decimals + 2 : decimals));
    }
}
