package quoin.setupsheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.workflow.spi.Stage;

/** The order of the figures on the sheet: corner by corner from the left front, in each from the weight down; extra points last. */
public final class SheetOrder {

    /** Kinds at a corner from the top of its box; heights come second, under the name of their point. */
    private static final List<ReadingKind> AT_CORNER = List.of(ReadingKind.LOAD, ReadingKind.HEIGHT, ReadingKind.CAMBER,
            ReadingKind.CASTER, ReadingKind.TOE, ReadingKind.PRESSURE);

    private SheetOrder() {
    }

    /** The readings in the box of a corner that a stage of this car asks for, or that a car can always be read for. */
    public static List<ReadingId> at(Car car, Corner corner, List<Stage> stages) {
        Set<ReadingId> asked = asked(car, stages);
        List<ReadingId> found = new ArrayList<>();
        for (ReadingKind kind : AT_CORNER) {
            Optional<ReadingId> id = kind == ReadingKind.HEIGHT ? car.heightPoint(corner).map(HeightPoint::reading)
                    : Optional.of(ReadingId.of(kind, corner));
            id.filter(asked::contains).ifPresent(found::add);
        }
        return found;
    }

    /** Every figure of a blank sheet in the order a hand fills it. */
    public static List<ReadingId> all(Car car, List<Stage> stages) {
        List<ReadingId> found = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            found.addAll(at(car, corner, stages));
        }
        found.addAll(extraHeights(car));
        return found;
    }

    /** Height points that stand for no corner. */
    public static List<ReadingId> extraHeights(Car car) {
        return car.heightReadings().stream().filter(id -> cornerOf(car, id).isEmpty()).toList();
    }

    /** The corner a reading is shown at; empty for the whole car. */
    public static Optional<Corner> cornerOf(Car car, ReadingId id) {
        for (Corner corner : Corner.values()) {
            boolean point = id.kind() == ReadingKind.HEIGHT
                    && car.heightPoint(corner).filter(p -> p.reading().equals(id)).isPresent();
            if (point || id.kind() != ReadingKind.HEIGHT && id.place().equals(corner.name())) {
                return Optional.of(corner);
            }
        }
        return Optional.empty();
    }

    private static Set<ReadingId> asked(Car car, List<Stage> stages) {
        return stages.stream().flatMap(s -> s.readings(car).stream()).collect(Collectors.toSet());
    }
}
