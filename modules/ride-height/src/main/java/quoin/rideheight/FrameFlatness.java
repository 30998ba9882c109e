package quoin.rideheight;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.spi.Finding;

/**
 * A stiff frame is flat: its four marked points tilt alike at the front and at the rear. Where they do not, one height was
 * misread, or the frame is twisted.
 */
@Messages({
    "# {0} - difference",
    "# {1} - reading",
    "# {2} - flat",
    "frame.twisted=The frame is not flat: front tilt and rear tilt differ by {0}. Most likely {1} was misread: {2} would be flat; measure it again, else the frame is twisted"})
final class FrameFlatness {

    /** Difference of the tilts from which something is wrong, mm (common practice). */
    static final double LIMIT_MM = 1.5;

    /** A height that would make the frame flat, and how far the reading is from what was to be expected. */
    private record Suspect(ReadingId reading, double flatMm, double surpriseMm) {
    }

    private FrameFlatness() {
    }

    /** Findings on the heights as last read; none where the four corners were not read together. */
    static List<Finding> of(Day day) {
        double[] heights = new double[4];
        long[] entries = new long[4];
        for (Corner corner : Corner.values()) {
            Optional<Figure> figure = day.car().heightPoint(corner).map(HeightPoint::reading).flatMap(day::latest);
            if (figure.isEmpty()) {
                return List.of();
            }
            heights[corner.ordinal()] = figure.get().value();
            entries[corner.ordinal()] = figure.get().entry();
        }
        boolean together = entries[0] == entries[1] && entries[1] == entries[2] && entries[2] == entries[3];
        return together ? of(day, heights, entries[0]) : List.of();
    }

    private static List<Finding> of(Day day, double[] heights, long entry) {
        double widthRatio = widthRatio(day.car());
        double twist = heights[1] - heights[0] - widthRatio * (heights[3] - heights[2]);
        if (Math.abs(twist) < LIMIT_MM) {
            return List.of();
        }
        double[] remedy = {twist, -twist, -twist / widthRatio, twist / widthRatio};
        Suspect likely = List.of(Corner.values()).stream().map(c -> suspect(day, c, heights[c.ordinal()], remedy[c.ordinal()], entry))
                .max(Comparator.comparingDouble(Suspect::surpriseMm)).orElseThrow();
        String words = Bundle.frame_twisted(Texts.figure("%.1f mm", Math.abs(twist)), likely.reading().words(),
                Texts.figure("%.1f mm", likely.flatMm()));
        return List.of(Finding.warning(words, likely.reading()).suggesting(likely.flatMm()));
    }

    /** Surprise: how much nearer the flat value lies to the reading before, or to the target where there is none. */
    private static Suspect suspect(Day day, Corner corner, double height, double change, long entry) {
        ReadingId id = day.car().heightPoint(corner).orElseThrow().reading();
        OptionalDouble before = day.latestAt(id, entry - 1).map(f -> OptionalDouble.of(f.value())).orElseGet(() -> day.targets().of(id)
                .map(Target::value).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
        double flat = height + change;
        double surprise = before.isPresent() ? Math.abs(height - before.getAsDouble()) - Math.abs(flat - before.getAsDouble())
                : -Math.abs(change);
        return new Suspect(id, flat, surprise);
    }

    /** Distance of the front points over that of the rear points, 1 where a place is unknown. */
    private static double widthRatio(Car car) {
        OptionalDouble front = width(car, Axle.FRONT);
        OptionalDouble rear = width(car, Axle.REAR);
        return front.isPresent() && rear.isPresent() && rear.getAsDouble() > 0 && front.getAsDouble() > 0
                ? front.getAsDouble() / rear.getAsDouble() : 1;
    }

    private static OptionalDouble width(Car car, Axle axle) {
        OptionalDouble left = car.heightPoint(axle.left()).map(HeightPoint::yMm).orElse(OptionalDouble.empty());
        OptionalDouble right = car.heightPoint(axle.right()).map(HeightPoint::yMm).orElse(OptionalDouble.empty());
        return left.isPresent() && right.isPresent() ? OptionalDouble.of(left.getAsDouble() - right.getAsDouble())
                : OptionalDouble.empty();
    }
}
