package quoin.preparation.scales;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Figures;
import quoin.preparation.sheet.Lines;
import quoin.preparation.standing.CarOnPads;
import quoin.quantities.Dimension;

/** Four loads from fewer than four scales, or from two small ones under each wheel. */
@Messages({
    "fewer.one=One scale moved round, three blocks", "fewer.axle=Two scales moved from axle to axle, two blocks",
    "fewer.side=Two scales moved from side to side, two blocks", "fewer.two=Two scales under one wheel, with a plank",
    "fewer.oneSteps=Blocks as high as the scale under the other three wheels. Read, move scale and block, settle, read. Blocks that differ in height warp the floor: type by how much they stand above the scale, and it is taken out.",
    "fewer.pairSteps=Blocks as high as the scales under the other two wheels. Read both, move them to the other two, settle, read. Type by how much the blocks stand above the scales, and it is taken out.",
    "fewer.twoSteps=A stiff plank across two scales, the wheel in its middle. Weigh the plank by itself. The load is both figures less the plank. All four wheels must stand equally high.",
    "fewer.caution=Each move is a jack and stands under the frame: nobody in the car or under it, wheels on the ground chocked. The sum is only as good as the car was settled each time.",
    "fewer.block=Blocks above scale", "fewer.plank=Plank", "fewer.a=scale A", "fewer.b=scale B", "fewer.shown=shown",
    "# {0} - corner", "# {1} - which", "fewer.cell={0}, {1}"})
enum FewerScales {
    ONE_ROUND("moved-scales"),
    AXLE_BY_AXLE("moved-scales"),
    SIDE_BY_SIDE("moved-scales"),
    TWO_UNDER("two-under-a-wheel");

    private static final String BLOCK = "block";
    private static final String PLANK = "plank";
    private static final String SECOND = ".b";

    private final String id;

    FewerScales(String id) {
        this.id = id;
    }

    /** Stable name, as the journal keeps it. */
    String id() {
        return id;
    }

    @Override
    public String toString() {
        return switch (this) {
            case ONE_ROUND -> Bundle.fewer_one();
            case AXLE_BY_AXLE -> Bundle.fewer_axle();
            case SIDE_BY_SIDE -> Bundle.fewer_side();
            case TWO_UNDER -> Bundle.fewer_two();
        };
    }

    String steps() {
        return switch (this) {
            case ONE_ROUND -> Bundle.fewer_oneSteps();
            case AXLE_BY_AXLE, SIDE_BY_SIDE -> Bundle.fewer_pairSteps();
            case TWO_UNDER -> Bundle.fewer_twoSteps();
        };
    }

    Lines lines() {
        List<Lines.Line> lines = new ArrayList<>();
        boolean two = this == TWO_UNDER;
        lines.add(two ? Lines.Line.of(Bundle.fewer_plank(), Cell.of(PLANK, Bundle.fewer_plank(), Dimension.MASS))
                : Lines.Line.of(Bundle.fewer_block(), Cell.of(BLOCK, Bundle.fewer_block(), Dimension.LENGTH, "0")));
        for (Corner corner : Corner.values()) {
            String a = Bundle.fewer_cell(corner.words(), two ? Bundle.fewer_a() : Bundle.fewer_shown());
            lines.add(two ? Lines.Line.of(corner.words(), Cell.of(corner.name(), a, Dimension.MASS),
                    Cell.of(corner + SECOND, Bundle.fewer_cell(corner.words(), Bundle.fewer_b()), Dimension.MASS))
                    : Lines.Line.of(corner.words(), Cell.of(corner.name(), a, Dimension.MASS)));
        }
        return new Lines(two ? List.of(Bundle.fewer_a(), Bundle.fewer_b()) : List.of(), lines);
    }

    List<String> needed() {
        List<String> keys = new ArrayList<>();
        lines().cells().filter(c -> !c.key().equals(BLOCK)).forEach(c -> keys.add(c.key()));
        return keys;
    }

    /**
     * The four loads, kg: what blocks of another height do to this car is taken out.
     *
     * @param figures every needed key is there
     */
    PerCorner<Double> loadsKg(Figures figures, CarOnPads car) {
        if (this == TWO_UNDER) {
            return PerCorner.of(c -> figures.values().get(c.name()) + figures.values().get(c + SECOND) - figures.values().get(PLANK));
        }
        double block = figures.or(BLOCK, 0);
        return PerCorner.of(c -> {
            PerCorner<Double> heights = PerCorner.of(o -> onScale(c, o) ? 0.0 : block);
            double more = block == 0 ? 0 : car.loadChangeKg(heights).get(c);
            return figures.values().get(c.name()) - more;
        });
    }

    /** Whether a wheel stands on a scale while another is read. */
    private boolean onScale(Corner read, Corner other) {
        return switch (this) {
            case ONE_ROUND -> other == read;
            case AXLE_BY_AXLE -> other.isFront() == read.isFront();
            case SIDE_BY_SIDE -> other.isLeft() == read.isLeft();
            case TWO_UNDER -> true;
        };
    }

    /** Standard uncertainty of each load from the steps of the displays, kg: three readings make one where a plank is used. */
    Map<Corner, Double> uncertaintyKg(double stepKg) {
        Map<Corner, Double> u = new TreeMap<>();
        for (Corner corner : Corner.values()) {
            u.put(corner, stepKg / Math.sqrt(12) * (this == TWO_UNDER ? Math.sqrt(3) : 1));
        }
        return u;
    }
}
