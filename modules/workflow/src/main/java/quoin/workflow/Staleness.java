package quoin.workflow;

import java.util.List;
import java.util.Optional;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/**
 * What makes which reading stale (common practice, no source). Rows are what happened, columns what was read before:
 *
 * <pre>
 * changed                     | height | weight | camber | caster | toe same axle | toe other axle
 * pads shimmed, car re-placed |   X    |   X    |   X    |   X    |      ~        |      ~
 * tyre set or pressure        |   X    |   X    |   ~    |   ~    |      ~        |      ~
 * scales tested              |   .    |   ~    |   .    |   .    |      .        |      .
 * driver, fuel, ballast       |   X    |   X    |   ~    |   ~    |      ~        |      ~
 * perch or pushrod            |   X    |   X    |   ~    |   ~    |      ~        |      ~
 * camber of a wheel           |   X    |   X    |   X    |   ~    |      X        |      .
 * caster rods                 |   X    |   X    |   X    |   X    |      X        |      .
 * toe link                    |   .    |   ~    |   ~    |   ~    |      X        |      .
 * bar joined or taken off     |   .    |   ~    |   .    |   .    |      .        |      .
 * jacked, steered, driven     |   ~    |   ~    |   ~    |   ~    |      ~        |      ~
 * steering lock out           |   ~    |   ~    |   ~    |   .    |      ~        |      ~
 * locknuts tightened          |   .    |   .    |   .    |   .    |      ~        |      ~
 * </pre>
 *
 * X = no longer valid, ~ = doubtful, . = stays. Caster is read by steering the wheels, so taking the lock out leaves it.
 * Angles that are only doubtful after perch or pushrod work become stale once a leg moved more than
 * {@link #LEG_LIMIT_MM} in all.
 */
public final class Staleness {

    /** What an event does to an older reading. */
    public enum Effect { STAYS, DOUBTFUL, STALE }

    /** Movement of one leg, at the wheel, beyond which angles must be read again, mm (common practice). */
    public static final double LEG_LIMIT_MM = 2.0;

    private Staleness() {
    }

    /**
     * One cell of the table.
     *
     * @param what    what happened
     * @param where   axle it happened at; empty where it concerns the whole car
     * @param reading a typed reading taken before
     */
    public static Effect of(Disturbance what, Optional<Axle> where, ReadingId reading) {
        String row = switch (what) {
            case PADS -> "XXXX~~";
            case TYRES, MASS, SPRING_LEG -> "XX~~~~";
            case CAMBER -> "XXX~X.";
            case CASTER -> "XXXXX.";
            case TOE_LINK -> ".~~~X.";
            case BAR, SCALES -> ".~....";
            case MOVED -> "~~~~~~";
            case STEERING_FREED -> "~~~.~~";
            case LOCKNUTS -> "....~~";
        };
        int column = switch (reading.kind()) {
            case HEIGHT -> 0;
            case LOAD -> 1;
            case CAMBER -> 2;
            case CASTER -> 3;
            case TOE -> where.isEmpty() || where.get() == Corner.valueOf(reading.place()).axle() ? 4 : 5;
            default -> -1;
        };
        if (column < 0) {
            return preparation(what, reading);
        }
        return switch (row.charAt(column)) {
            case 'X' -> Effect.STALE;
            case '~' -> Effect.DOUBTFUL;
            default -> Effect.STAYS;
        };
    }

    private static Effect preparation(Disturbance what, ReadingId reading) {
        return switch (reading.kind()) {
            case PAD_HEIGHT -> what == Disturbance.PADS ? Effect.STALE : Effect.STAYS;
            case PRESSURE -> what == Disturbance.TYRES ? Effect.STALE : Effect.STAYS;
            default -> Effect.STAYS;
        };
    }

    /** True for what is made of toe. */
    static boolean isToe(List<ReadingId> parts) {
        return !parts.isEmpty() && parts.stream().allMatch(p -> p.kind() == ReadingKind.TOE);
    }

    /** True for what only moving or changing mass changes: perches leave total and shares as they are (a law of statics). */
    static boolean isMass(ReadingId reading) {
        return switch (reading.kind()) {
            case TOTAL, FRONT_SHARE, LEFT_SHARE -> true;
            default -> false;
        };
    }

    /** True for the readings that {@link #LEG_LIMIT_MM} concerns. */
    static boolean isAngle(ReadingId reading) {
        return switch (reading.kind()) {
            case CAMBER, CASTER, TOE -> true;
            default -> false;
        };
    }
}
