package quoin.wheelangles.measure;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import quoin.car.Axle;
import quoin.car.Corner;

/** Camber of every wheel that was measured, axle by axle, with what the floor did to it. */
final class CamberOutcome {

    private CamberOutcome() {
    }

    /**
     * @param columns ends of the keys of a wheel's fields; a wheel counts where one of them is typed
     * @param wheel   adds the camber of one wheel
     * @throws Figures.MissingFigure where no wheel has a figure; names the first column of the wheel reached first
     */
    static Outcome of(Figures figures, List<String> columns, BiConsumer<Outcome.Builder, Corner> wheel) {
        Outcome.Builder to = new Outcome.Builder();
        boolean none = true;
        for (Axle axle : Axle.values()) {
            List<Corner> read = Stream.of(axle.left(), axle.right())
                    .filter(corner -> figures.any(columns.stream().map(end -> corner + end).toArray(String[]::new))).toList();
            read.forEach(corner -> wheel.accept(to, corner));
            if (!read.isEmpty()) {
                none = false;
                Floor.remarks(to, figures, axle);
            }
        }
        if (none) {
            throw new Figures.MissingFigure(figures.setting().car().walkingOrder().get(0) + columns.get(0));
        }
        return to.build();
    }
}
