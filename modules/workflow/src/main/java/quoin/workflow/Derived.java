package quoin.workflow;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** Readings that follow from typed ones: total, shares, cross, rake, total toe, thrust angle. */
public final class Derived {

    private Derived() {
    }

    /** Every derived reading the car can have. */
    public static List<ReadingId> all(Car car) {
        return Stream.concat(
                Stream.of(ReadingKind.TOTAL, ReadingKind.CROSS, ReadingKind.FRONT_SHARE, ReadingKind.LEFT_SHARE, ReadingKind.RAKE,
                        ReadingKind.THRUST_ANGLE).map(ReadingId::ofCar),
                Stream.of(Axle.values()).map(a -> new ReadingId(ReadingKind.TOTAL_TOE, a.name())))
                .filter(id -> !parts(car, id).isEmpty()).toList();
    }

    /**
     * The typed readings a derived one is made of, in the order LF RF LR RR; empty where the car cannot have it. A typed
     * reading is its own only part.
     */
    public static List<ReadingId> parts(Car car, ReadingId id) {
        return switch (id.kind()) {
            case TOTAL, CROSS, FRONT_SHARE, LEFT_SHARE -> Stream.of(Corner.values()).map(c -> ReadingId.of(ReadingKind.LOAD, c)).toList();
            case RAKE -> {
                List<ReadingId> points = Stream.of(Corner.values()).map(car::heightPoint).flatMap(Optional::stream)
                        .map(HeightPoint::reading).toList();
                yield points.size() == 4 ? points : List.of();
            }
            case TOTAL_TOE -> axle(id).<List<ReadingId>>map(a -> List.of(toe(a.left()), toe(a.right()))).orElse(List.of());
            case THRUST_ANGLE -> List.of(toe(Corner.LR), toe(Corner.RR));
            default -> List.of(id);
        };
    }

    /**
     * One derived reading; a typed one comes back as it is.
     *
     * @param typed value per typed reading, base unit; empty = not read
     * @return base unit; empty where a part is missing, or the total is not above 0 kg
     */
    public static OptionalDouble value(Car car, ReadingId id, Function<ReadingId, OptionalDouble> typed) {
        List<ReadingId> parts = parts(car, id);
        double[] v = new double[parts.size()];
        for (int i = 0; i < v.length; i++) {
            OptionalDouble part = typed.apply(parts.get(i));
            if (part.isEmpty()) {
                return OptionalDouble.empty();
            }
            v[i] = part.getAsDouble();
        }
        return v.length == 0 ? OptionalDouble.empty() : formula(id.kind(), v);
    }

    /** A reading from the values of all its {@link #parts}; see {@link ReadingKind} for the formulas and signs. */
    static OptionalDouble formula(ReadingKind kind, double[] v) {
        return switch (kind) {
            case TOTAL -> OptionalDouble.of(v[0] + v[1] + v[2] + v[3]);
            case CROSS -> share(v[1] + v[2], v);
            case FRONT_SHARE -> share(v[0] + v[1], v);
            case LEFT_SHARE -> share(v[0] + v[2], v);
            case RAKE -> OptionalDouble.of((v[2] + v[3] - v[0] - v[1]) / 2);
            case TOTAL_TOE -> OptionalDouble.of(v[0] + v[1]);
            case THRUST_ANGLE -> OptionalDouble.of((v[1] - v[0]) / 2);
            default -> OptionalDouble.of(v[0]);
        };
    }

    private static OptionalDouble share(double part, double[] loads) {
        double total = loads[0] + loads[1] + loads[2] + loads[3];
        return total > 0 ? OptionalDouble.of(100 * part / total) : OptionalDouble.empty();
    }

    private static Optional<Axle> axle(ReadingId id) {
        return Stream.of(Axle.values()).filter(a -> a.name().equals(id.place())).findFirst();
    }

    private static ReadingId toe(Corner corner) {
        return ReadingId.of(ReadingKind.TOE, corner);
    }
}
