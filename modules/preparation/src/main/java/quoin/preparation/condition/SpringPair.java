package quoin.preparation.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.mechanics.KilogramForce;
import quoin.mechanics.LineFit;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Figures;
import quoin.preparation.sheet.Lines;
import quoin.quantities.Dimension;
import quoin.quantities.UnitPreferences;

/**
 * The rates of the two springs of an axle, pressed over a scale: the slope of force over deflection.
 *
 * @param left  N/mm; empty = fewer than two points
 * @param right N/mm; empty = fewer than two points
 */
@Messages({
    "spring.leftMm=left, pressed by", "spring.leftKg=left, scale shows", "spring.rightMm=right, pressed by", "spring.rightKg=right, scale shows",
    "# {0} - unit", "spring.left=left, {0}", "# {0} - unit", "spring.right=right, {0}", "# {0} - point", "# {1} - which", "spring.cell=Point {0}, {1}"})
record SpringPair(Side left, Side right) {

    /** A pair that differs by more than this is none, N/mm: 10 lbf/in (common practice, no source). */
    static final double PAIR_LIMIT_N_PER_MM = 10 * 0.175126835246;
    private static final int POINTS = 4;
    private static final String LEFT = "left";
    private static final String RIGHT = "right";

    /**
     * One spring.
     *
     * @param rateNPerMm     empty = fewer than two points
     * @param standardNPerMm standard uncertainty; empty with two points, which say nothing of it
     */
    record Side(OptionalDouble rateNPerMm, OptionalDouble standardNPerMm) {
    }

    static Lines lines(UnitPreferences units) {
        List<Lines.Line> lines = new ArrayList<>();
        for (int i = 1; i <= POINTS; i++) {
            lines.add(Lines.Line.of(Integer.toString(i), cell(LEFT, i, true, Bundle.spring_leftMm()),
                    cell(LEFT, i, false, Bundle.spring_leftKg()), cell(RIGHT, i, true, Bundle.spring_rightMm()),
                    cell(RIGHT, i, false, Bundle.spring_rightKg())));
        }
        String length = units.unit(Dimension.LENGTH).symbol();
        String mass = units.unit(Dimension.MASS).symbol();
        return new Lines(List.of(Bundle.spring_left(length), Bundle.spring_left(mass), Bundle.spring_right(length), Bundle.spring_right(mass)), lines);
    }

    private static Cell cell(String side, int point, boolean deflection, String name) {
        return Cell.of(key(side, point, deflection), Bundle.spring_cell(Integer.toString(point), name),
                deflection ? Dimension.LENGTH : Dimension.MASS);
    }

    private static String key(String side, int point, boolean deflection) {
        return side + "." + point + (deflection ? ".mm" : ".kg");
    }

    /** @throws quoin.mechanics.InvalidInputException where all points of a spring lie at one deflection */
    static SpringPair of(Figures figures) {
        return new SpringPair(side(figures, LEFT), side(figures, RIGHT));
    }

    private static Side side(Figures figures, String side) {
        List<LineFit.Point> points = new ArrayList<>();
        for (int i = 1; i <= POINTS; i++) {
            OptionalDouble mm = figures.maybe(key(side, i, true));
            OptionalDouble kg = figures.maybe(key(side, i, false));
            if (mm.isPresent() && kg.isPresent()) {
                points.add(new LineFit.Point(mm.getAsDouble(), KilogramForce.toNewtons(kg.getAsDouble())));
            }
        }
        if (points.size() < 2) {
            return new Side(OptionalDouble.empty(), OptionalDouble.empty());
        }
        LineFit fit = LineFit.through(points);
        return new Side(OptionalDouble.of(fit.slope()), fit.slopeStandard());
    }

    /** Left less right, N/mm; empty where one is missing. */
    OptionalDouble differenceNPerMm() {
        return left.rateNPerMm().isPresent() && right.rateNPerMm().isPresent()
                ? OptionalDouble.of(left.rateNPerMm().getAsDouble() - right.rateNPerMm().getAsDouble()) : OptionalDouble.empty();
    }

    boolean isPair() {
        return Math.abs(differenceNPerMm().orElse(0)) <= PAIR_LIMIT_N_PER_MM;
    }
}
