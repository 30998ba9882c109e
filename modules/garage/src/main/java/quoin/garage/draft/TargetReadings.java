package quoin.garage.draft;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import quoin.car.AssumedCar;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.quantities.Dimension;

/** The readings that the form asks a target for, heights apart: those go with their points. */
final class TargetReadings {

    private TargetReadings() {
    }

    static List<ReadingId> weights() {
        Stream<ReadingId> shares = Stream.of(ReadingKind.CROSS, ReadingKind.FRONT_SHARE, ReadingKind.LEFT_SHARE, ReadingKind.TOTAL)
                .map(ReadingId::ofCar);
        return Stream.concat(shares, corners(ReadingKind.LOAD)).toList();
    }

    static List<ReadingId> angles() {
        Stream<ReadingId> caster = Stream.of(Corner.LF, Corner.RF).map(c -> ReadingId.of(ReadingKind.CASTER, c));
        Stream<ReadingId> total = Arrays.stream(Axle.values()).map(a -> new ReadingId(ReadingKind.TOTAL_TOE, a.name()));
        return Stream.of(corners(ReadingKind.CAMBER), caster, corners(ReadingKind.TOE), total,
                Stream.of(ReadingId.ofCar(ReadingKind.THRUST_ANGLE))).flatMap(s -> s).toList();
    }

    static ReadingId rake() {
        return ReadingId.ofCar(ReadingKind.RAKE);
    }

    private static Stream<ReadingId> corners(ReadingKind kind) {
        return Arrays.stream(Corner.values()).map(c -> ReadingId.of(kind, c));
    }

    static Stream<ReadingId> all() {
        return Stream.of(Stream.of(rake()), weights().stream(), angles().stream()).flatMap(s -> s);
    }

    static boolean offered(ReadingId reading) {
        return all().anyMatch(reading::equals);
    }

    static String path(ReadingId reading) {
        return "targets." + reading;
    }

    static Dimension dimension(ReadingKind kind) {
        return switch (kind.unit()) {
            case KG -> Dimension.MASS;
            case MM -> Dimension.LENGTH;
            case DEG -> Dimension.ANGLE;
            case BAR -> Dimension.PRESSURE;
            case PERCENT -> Dimension.PERCENT;
        };
    }

    /** Chord a toe is read on, mm: the wheel's, or the mean of the axle for total toe. */
    static double chordMm(AssumedCar car, ReadingId toe) {
        if (toe.kind() == ReadingKind.TOTAL_TOE) {
            Axle axle = Axle.valueOf(toe.place());
            return (chordMm(car, axle.left()) + chordMm(car, axle.right())) / 2;
        }
        return chordMm(car, Corner.valueOf(toe.place()));
    }

    private static double chordMm(AssumedCar car, Corner corner) {
        return car.corners().get(corner).rimChordMm();
    }

    /**
     * Half width of the band where the racer typed none, in the base unit (common practice, no source); for toe mm at the
     * rim.
     */
    static double usualTolerance(ReadingKind kind) {
        return switch (kind) {
            case HEIGHT, RAKE, LOAD -> 1;
            case CROSS -> 0.3;
            case FRONT_SHARE, LEFT_SHARE, TOE -> 0.25;
            case TOTAL_TOE -> 0.5;
            case CAMBER -> 0.1;
            case CASTER, KPI, TURN_TOE_OUT -> 0.25;
            case THRUST_ANGLE -> 0.05;
            case TOTAL, WHEELBASE, SETBACK, CIRCUMFERENCE -> 2;
            case CG_HEIGHT -> 10;
            case PAD_HEIGHT, SCALE_ZERO -> 0.5;
            case PRESSURE -> 0.05;
        };
    }
}
