package quoin.workflow;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Day;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.CrossTarget;

/** The cross weight in force: the value of the rule the racer chose, with its tolerance; RF+LR in % of the total. */
public final class CrossAim {

    /** Tolerance where none was set, % (common practice, no source). */
    static final double USUAL_TOLERANCE = 0.5;

    private CrossAim() {
    }

    /** From the loads as last read; empty where the rule needs loads or a value that is missing. */
    public static Optional<Target> of(Day day) {
        return of(day.car(), day.targets(), id -> day.latest(id).map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty()));
    }

    /**
     * From any loads.
     *
     * @param loads value per load reading, kg; empty = not weighed
     */
    static Optional<Target> of(Car car, Targets targets, Function<ReadingId, OptionalDouble> loads) {
        Optional<Target> typed = targets.of(ReadingId.ofCar(ReadingKind.CROSS));
        double tolerance = typed.map(Target::tolerance).orElse(USUAL_TOLERANCE);
        return switch (targets.crossGoal()) {
            case WANTED -> typed;
            case EQUAL_DIAGONALS -> Optional.of(new Target(50, tolerance));
            case EQUAL_FRONTS, SAME_FRONT_SHARE -> byLoads(car, targets.crossGoal(), loads).map(cross -> new Target(cross, tolerance));
        };
    }

    private static Optional<Double> byLoads(Car car, CrossGoal goal, Function<ReadingId, OptionalDouble> loads) {
        if (Derived.value(car, ReadingId.ofCar(ReadingKind.CROSS), loads).isEmpty()) {
            return Optional.empty();
        }
        PerCorner<Double> kgf = PerCorner.of(corner -> loads.apply(ReadingId.of(ReadingKind.LOAD, corner)).getAsDouble());
        return CrossTarget.all(kgf, CentreOfGravity.contactPoints(car.wheelbaseMm(), car.trackMm(Axle.FRONT), car.trackMm(Axle.REAR)))
                .stream().filter(target -> target.kind().name().equals(goal.name())).findFirst()
                .map(target -> target.shares().crossPercent());
    }
}
