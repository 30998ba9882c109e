package quoin.preparation.pads;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.mechanics.LevelLoop;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Figures;
import quoin.preparation.sheet.Lines;
import quoin.quantities.Dimension;

/** Ways to survey four pad tops. */
@Messages({
    "pad.water=Water level", "pad.rule=Line laser and rule", "pad.between=Level from pad to pad",
    "pad.waterSigns=Read the water on a rule that stands on each pad. A bigger reading is a lower pad. Wait two minutes, no bubbles in the hose.",
    "pad.ruleSigns=Read the middle of the laser line on a rule that stands on each pad. A bigger reading is a lower pad.",
    "pad.betweenSigns=Straight edge and level from pad to pad, once round. Type how much higher the second pad is; lower = minus.",
    "# {0} - corner", "pad.reading={0}, reading on the rule", "pad.left=left", "pad.right=right", "pad.front=Front", "pad.rear=Rear",
    "# {0} - first corner", "# {1} - second corner", "pad.above={0} above {1}"})
enum PadMethod {
    WATER_LEVEL("water-level"),
    RULE("rule"),
    LEVEL_BETWEEN("level-between");

    private static final String FRONT = "front";
    private static final String RIGHT = "right";
    private static final String REAR = "rear";
    private static final String LEFT = "left";

    private final String id;

    PadMethod(String id) {
        this.id = id;
    }

    /** Stable name, as the journal keeps it. */
    String id() {
        return id;
    }

    String title() {
        return switch (this) {
            case WATER_LEVEL -> Bundle.pad_water();
            case RULE -> Bundle.pad_rule();
            case LEVEL_BETWEEN -> Bundle.pad_between();
        };
    }

    /** How to read and which way is plus. */
    String signs() {
        return switch (this) {
            case WATER_LEVEL -> Bundle.pad_waterSigns();
            case RULE -> Bundle.pad_ruleSigns();
            case LEVEL_BETWEEN -> Bundle.pad_betweenSigns();
        };
    }

    @Override
    public String toString() {
        return title();
    }

    /** The fields, laid out as the pads stand. */
    Lines lines() {
        if (this == LEVEL_BETWEEN) {
            return Lines.of(difference(FRONT, Corner.RF, Corner.LF), difference(RIGHT, Corner.RR, Corner.RF),
                    difference(REAR, Corner.RR, Corner.LR), difference(LEFT, Corner.LR, Corner.LF));
        }
        return new Lines(List.of(Bundle.pad_left(), Bundle.pad_right()), List.of(
                Lines.Line.of(Bundle.pad_front(), corner(Corner.LF), corner(Corner.RF)),
                Lines.Line.of(Bundle.pad_rear(), corner(Corner.LR), corner(Corner.RR))));
    }

    private static Lines.Line difference(String key, Corner higher, Corner lower) {
        String name = Bundle.pad_above(higher.words(), lower.words());
        return Lines.Line.of(name, Cell.of(key, name, Dimension.LENGTH));
    }

    private static Cell corner(Corner corner) {
        return Cell.of(corner.name(), Bundle.pad_reading(corner.words()), Dimension.LENGTH);
    }

    /** Keys of everything that has to be typed. */
    List<String> keys() {
        List<String> keys = new ArrayList<>();
        lines().cells().forEach(c -> keys.add(c.key()));
        return keys;
    }

    /** Heights of the tops above the lowest, mm. Every key must be there. */
    PerCorner<Double> heightsMm(Figures figures) {
        PerCorner<Double> any = this == LEVEL_BETWEEN ? loop(figures).heightsMm() : PerCorner.of(c -> -figures.values().get(c.name()));
        double lowest = Math.min(Math.min(any.lf(), any.rf()), Math.min(any.lr(), any.rr()));
        return any.map(h -> h - lowest + 0.0);
    }

    /** What a survey once round fails to close by, mm; empty where nothing is read twice. */
    OptionalDouble closingErrorMm(Figures figures) {
        return this == LEVEL_BETWEEN ? OptionalDouble.of(loop(figures).closingErrorMm()) : OptionalDouble.empty();
    }

    private static LevelLoop loop(Figures figures) {
        ToDoubleFunction<String> of = key -> figures.values().get(key);
        return new LevelLoop(of.applyAsDouble(FRONT), of.applyAsDouble(RIGHT), of.applyAsDouble(REAR), of.applyAsDouble(LEFT));
    }

    /**
     * Standard uncertainty of the warp, mm: four readings by rule each enter once; round by level the closing error is shared
     * out, which leaves one reading's worth, or what the closing error itself tells where that is more.
     */
    double warpUncertaintyMm(Figures figures, double readingMm) {
        return this == LEVEL_BETWEEN ? Math.max(readingMm, loop(figures).standardUncertaintyMm()) : 2 * readingMm;
    }
}
