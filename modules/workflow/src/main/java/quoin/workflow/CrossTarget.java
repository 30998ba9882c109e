package quoin.workflow;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Day;

/**
 * The three common cross targets side by side and the one in force; all are RF+LR in % of the total.
 *
 * @param goal            the kind the racer chose
 * @param equalDiagonals  always 50
 * @param equalFronts     cross at which LF equals RF; empty = not weighed
 * @param sameFrontShare  cross at which the front share is the same on both sides; empty = not weighed
 * @param wanted          the value typed as the cross target; empty = none typed
 * @param inForce         target of the chosen kind with its tolerance; empty where its loads or its value are missing
 */
public record CrossTarget(CrossGoal goal, double equalDiagonals, OptionalDouble equalFronts, OptionalDouble sameFrontShare,
        OptionalDouble wanted, Optional<Target> inForce) {

    /** Tolerance where none was set, % (common practice). */
    public static final double USUAL_TOLERANCE = 0.5;

    public CrossTarget {
        Objects.requireNonNull(goal, "goal");
        Objects.requireNonNull(inForce, "inForce");
    }

    /** From the loads as last read. */
    public static CrossTarget of(Day day) {
        return of(day.car(), day.targets(), id -> day.latest(id).map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty()));
    }

    /**
     * From any loads.
     *
     * @param loads value per load reading, kg; empty = not weighed
     */
    public static CrossTarget of(Car car, Targets targets, Function<ReadingId, OptionalDouble> loads) {
        Optional<Target> typed = targets.of(ReadingId.ofCar(ReadingKind.CROSS));
        OptionalDouble wanted = typed.isPresent() ? OptionalDouble.of(typed.get().value()) : OptionalDouble.empty();
        OptionalDouble fronts = OptionalDouble.empty();
        OptionalDouble share = OptionalDouble.empty();
        if (Derived.value(car, ReadingId.ofCar(ReadingKind.CROSS), loads).isPresent()) {
            double[] w = new double[4];
            for (Corner corner : Corner.values()) {
                w[corner.ordinal()] = loads.apply(ReadingId.of(ReadingKind.LOAD, corner)).getAsDouble();
            }
            fronts = OptionalDouble.of(equalFronts(w, car.trackMm(Axle.FRONT) / car.trackMm(Axle.REAR)));
            share = OptionalDouble.of(sameFrontShare(w));
        }
        OptionalDouble value = switch (targets.crossGoal()) {
            case EQUAL_DIAGONALS -> OptionalDouble.of(50);
            case EQUAL_FRONTS -> fronts;
            case SAME_FRONT_SHARE -> share;
            case WANTED -> wanted;
        };
        double tolerance = typed.map(Target::tolerance).orElse(USUAL_TOLERANCE);
        Optional<Target> inForce = value.isPresent() ? Optional.of(new Target(value.getAsDouble(), tolerance)) : Optional.empty();
        return new CrossTarget(targets.crossGoal(), 50, fronts, share, wanted, inForce);
    }

    /**
     * Perches keep both axle sums and the roll moment, so what leaves the right front by d arrives at the left rear's side
     * as d times front track over rear track.
     */
    private static double equalFronts(double[] w, double trackRatio) {
        double d = (w[0] + w[1]) / 2 - w[1];
        return 100 * (w[1] + d + w[2] + d * trackRatio) / (w[0] + w[1] + w[2] + w[3]);
    }

    /** cross = f + l - 2 f l with front share f and left share l. */
    private static double sameFrontShare(double[] w) {
        double total = w[0] + w[1] + w[2] + w[3];
        double f = (w[0] + w[1]) / total;
        double l = (w[0] + w[2]) / total;
        return 100 * (f + l - 2 * f * l);
    }
}
