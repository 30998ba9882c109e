package quoin.car;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * A car as the racer knows it. Only wheelbase and tracks must be known; {@link Assumptions} fills the rest by stated rules.
 * Axes: ISO 8855, x forward from the front axle line, y left from the centre line, z up from the pads; mm, kg, N, deg.
 *
 * @param id           stable id of the car, used as its folder name
 * @param name         what the racer calls it
 * @param wheelbaseMm  front to rear axle, mm, greater than 0
 * @param axles        track, bar and suspension of each axle
 * @param corners      springs, tyres and adjusters of each corner
 * @param masses       masses as far as known
 * @param heightPoints where ride height is measured; names are unique
 * @param targets      what the car is set to
 * @param loadCase     the state the figures belong to
 * @param instruments  how finely the readings are taken
 * @param walkingOrder the order in which the racer walks round the car, each corner once
 */
public record Car(String id, String name, double wheelbaseMm, PerAxle<AxleSetup> axles, PerCorner<CornerSetup> corners,
        Masses masses, List<HeightPoint> heightPoints, Targets targets, LoadCase loadCase, Instruments instruments,
        List<Corner> walkingOrder) {
    private static final Texts TEXTS = Texts.of(Car.class);

    public Car {
        if (id.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("carNeedsAnId"));
        }
        if (name.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("carNeedsAName"));
        }
        Checks.positive(wheelbaseMm, "name.wheelbase");
        Objects.requireNonNull(axles, "axles");
        Objects.requireNonNull(corners, "corners");
        Objects.requireNonNull(masses, "masses");
        Objects.requireNonNull(targets, "targets");
        Objects.requireNonNull(loadCase, "loadCase");
        Objects.requireNonNull(instruments, "instruments");
        heightPoints = List.copyOf(heightPoints);
        walkingOrder = List.copyOf(walkingOrder);
        Set<String> names = new HashSet<>();
        for (HeightPoint point : heightPoints) {
            if (!names.add(point.name())) {
                throw new NotTakenException(TEXTS.phrase("twoHeightPointsAre", point.name()));
            }
        }
        if (walkingOrder.size() != 4 || new HashSet<>(walkingOrder).size() != 4) {
            throw new NotTakenException(TEXTS.phrase("walkingOrderNamesEach"));
        }
    }

    public double trackMm(Axle axle) {
        return axles.get(axle).trackMm();
    }

    /** All adjusters, corner by corner in walking order. */
    public List<Adjuster> adjusters() {
        return walkingOrder.stream().flatMap(c -> corners.get(c).adjusters().stream()).toList();
    }

    public Optional<Adjuster> adjuster(AdjusterId id) {
        return corners.get(id.corner()).adjuster(id.kind());
    }

    /** The height point that stands for a corner. */
    public Optional<HeightPoint> heightPoint(Corner corner) {
        return heightPoints.stream().filter(p -> p.corner().equals(Optional.of(corner))).findFirst();
    }

    /** Height readings in walking order of their corners, extra points last. */
    public List<ReadingId> heightReadings() {
        Stream<HeightPoint> atCorners = walkingOrder.stream().flatMap(c -> heightPoint(c).stream());
        Stream<HeightPoint> extra = heightPoints.stream().filter(p -> !p.corner().flatMap(this::heightPoint).equals(Optional.of(p)));
        return Stream.concat(atCorners, extra).map(HeightPoint::reading).toList();
    }

    /** One kind of reading at every corner, in walking order. */
    public List<ReadingId> cornerReadings(ReadingKind kind) {
        return walkingOrder.stream().map(c -> ReadingId.of(kind, c)).toList();
    }

    public Car withTargets(Targets changed) {
        return new Car(id, name, wheelbaseMm, axles, corners, masses, heightPoints, changed, loadCase, instruments, walkingOrder);
    }

    public Car withMasses(Masses changed) {
        return new Car(id, name, wheelbaseMm, axles, corners, changed, heightPoints, targets, loadCase, instruments, walkingOrder);
    }

    public Car withLoadCase(LoadCase changed) {
        return new Car(id, name, wheelbaseMm, axles, corners, masses, heightPoints, targets, changed, instruments, walkingOrder);
    }

    public Car withId(String newId, String newName) {
        return new Car(newId, newName, wheelbaseMm, axles, corners, masses, heightPoints, targets, loadCase, instruments, walkingOrder);
    }
}
