package quoin.wheelangles.screen;

import java.util.OptionalDouble;
import quoin.mechanics.WheelAngles;
import quoin.quantities.AngleStyle;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;
import quoin.wheelangles.measure.Outcome;

/**
 * One result in every way a racer reads it.
 *
 * @param name        as shown
 * @param decimal     degrees, or per cent; empty where it is a length
 * @param minutes     degrees and minutes
 * @param mm          millimetres, on the chord for an angle
 * @param inches      the same in inches
 * @param uncertainty 95 % interval either side
 * @param isRecorded  true where it goes into the journal
 */
record FigureLine(String name, String decimal, String minutes, String mm, String inches, String uncertainty, boolean isRecorded) {

    /** Two-sided 95 % of a normal distribution (JCGM 100:2008, table G.1). */
    private static final double COVERAGE_95 = 1.96;
    static final String NOTHING = "–";
    private static final double FINE_DEG = 0.06;
    private static final double FINEST_DEG = 0.002;

    static FigureLine of(Outcome.Result result, OptionalDouble standardUncertainty, UnitPreferences units, boolean isRecorded) {
        double value = result.value();
        double u = COVERAGE_95 * standardUncertainty.orElse(0);
        boolean known = standardUncertainty.isPresent();
        return switch (result.dimension()) {
            case ANGLE -> {
                int decimals = known && u > FINE_DEG ? 2 : known && u < FINEST_DEG ? 4 : 3;
                boolean chord = result.chordMm() > 0 && Math.abs(value) < 90;
                double mm = chord ? WheelAngles.toeMm(value, result.chordMm()) : 0;
                yield new FigureLine(result.name(), angle(units, decimals).number(value, Dimension.ANGLE),
                        QuantityFormat.of(units.withAngleStyle(AngleStyle.DEGREES_MINUTES)).number(value, Dimension.ANGLE),
                        chord ? length(units, Unit.MM, 2).number(mm, Dimension.LENGTH) : NOTHING,
                        chord ? length(units, Unit.IN, 3).number(mm, Dimension.LENGTH) : NOTHING,
                        known ? angle(units, decimals).text(u, Dimension.ANGLE) : NOTHING, isRecorded);
            }
            case LENGTH -> new FigureLine(result.name(), NOTHING, NOTHING, length(units, Unit.MM, 1).number(value, Dimension.LENGTH),
                    length(units, Unit.IN, 2).number(value, Dimension.LENGTH),
                    known ? length(units, Unit.MM, 1).text(u, Dimension.LENGTH) : NOTHING, isRecorded);
            default -> new FigureLine(result.name(), QuantityFormat.formatWithUnit(value, result.dimension(), units), NOTHING, NOTHING, NOTHING,
                    known ? QuantityFormat.formatWithUnit(u, result.dimension(), units) : NOTHING, isRecorded);
        };
    }

    private static QuantityFormat angle(UnitPreferences units, int decimals) {
        return QuantityFormat.of(units.withUnit(Unit.DEG).withAngleStyle(AngleStyle.DECIMAL).withDecimals(Dimension.ANGLE, decimals));
    }

    private static QuantityFormat length(UnitPreferences units, Unit unit, int decimals) {
        return QuantityFormat.of(units.withUnit(unit).withDecimals(Dimension.LENGTH, decimals));
    }
}
