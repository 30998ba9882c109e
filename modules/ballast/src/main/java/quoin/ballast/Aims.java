package quoin.ballast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.adjustment.PlanCancellation;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.CrossTarget;
import quoin.mechanics.PlanPoint;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundPlanner;

/** What may be aimed at: the kinds of cross weight with their loads and what each costs, and tolerances that make sense. */
final class Aims {

    static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);
    /** Half width of the 95 % interval of one reading in standard uncertainties. */
    private static final double COVERAGE = 2;

    private Aims() {
    }

    /**
     * One kind of cross weight.
     *
     * @param goal         which
     * @param crossPercent RF+LR it means on this car, %
     * @param loadsKg      the four loads it gives, kg
     */
    record Aim(CrossGoal goal, double crossPercent, PerCorner<Double> loadsKg) {
    }

    /**
     * What an aim costs from where the car stands.
     *
     * @param corners corners to be visited
     * @param turns   turns in all, ways added up
     * @param likely  probability of being inside everywhere afterwards; empty = not known
     */
    record Cost(int corners, double turns, OptionalDouble likely) {
    }

    /**
     * The three usual kinds and the wanted value.
     *
     * @param wantedPercent typed value, %; empty = none
     */
    static List<Aim> all(Car car, PerCorner<Double> loadsKg, OptionalDouble wantedPercent) {
        PerCorner<PlanPoint> wheels = CentreOfGravity.contactPoints(car.wheelbaseMm(), car.trackMm(Axle.FRONT), car.trackMm(Axle.REAR));
        List<Aim> all = new ArrayList<>();
        for (CrossTarget target : CrossTarget.all(loadsKg, wheels)) {
            all.add(new Aim(CrossGoal.valueOf(target.kind().name()), target.shares().crossPercent(), target.loadsKgf()));
        }
        wantedPercent.ifPresent(p -> all.add(new Aim(CrossGoal.WANTED, p, CrossTarget.loadsAtCrossKgf(loadsKg, wheels, p))));
        return all;
    }

    /** The plan the planner would offer first for this aim; empty where it has nothing to start from. Takes seconds. */
    static Optional<Cost> cost(Day day, Aim aim, double tolerancePercent, PlanCancellation cancellation) {
        List<Entry> entries = new ArrayList<>(day.written());
        long next = day.revision() + 1;
        entries.add(new Entry.TargetSet(new Header(next, Instant.EPOCH, ""), CROSS, new Target(aim.crossPercent(), tolerancePercent)));
        entries.add(new Entry.GoalSet(new Header(next + 1, Instant.EPOCH, ""), CrossGoal.WANTED));
        List<RoundPlan> plans = RoundPlanner.options(Day.of(entries), cancellation);
        return plans.stream().findFirst().map(p -> new Cost(p.visits().size(), p.moves().stream().mapToDouble(m -> Math.abs(m.turns())).sum(),
                p.probabilityInside()));
    }

    /** Readings that a day may have a target for, in the order of work. */
    static List<ReadingId> readings(Car car) {
        List<ReadingId> all = new ArrayList<>(car.heightReadings());
        all.add(ReadingId.ofCar(ReadingKind.RAKE));
        all.add(CROSS);
        all.add(ReadingId.ofCar(ReadingKind.FRONT_SHARE));
        all.add(ReadingId.ofCar(ReadingKind.LEFT_SHARE));
        all.addAll(car.cornerReadings(ReadingKind.CAMBER));
        car.cornerReadings(ReadingKind.CASTER).stream().filter(c -> c.place().endsWith("F")).forEach(all::add);
        all.addAll(car.cornerReadings(ReadingKind.TOE));
        return all;
    }

    /**
     * True where a tolerance is finer than the readings can tell: the 95 % interval of one reading is wider than the band,
     * a measurement capability index below 1 (JCGM 106:2012, 7.6.3, from memory).
     *
     * @param uncertainty standard uncertainty of the reading, same unit
     */
    static boolean finerThanReadings(double tolerance, double uncertainty) {
        return tolerance < COVERAGE * uncertainty;
    }

    /** Half width of the 95 % interval of one reading. */
    static double tells(double uncertainty) {
        return COVERAGE * uncertainty;
    }

    /** How many readings have to be averaged for a tolerance, where only their scatter counts; at least 2. */
    static int readingsFor(double tolerance, double uncertainty) {
        double ratio = COVERAGE * uncertainty / tolerance;
        return Math.max(2, (int) Math.ceil(ratio * ratio - 1e-9));
    }

    /** Rake that the height targets give, mm; empty where one of them is missing. */
    static OptionalDouble rakeOfHeights(Car car, Targets targets) {
        double rake = 0;
        for (Corner corner : Corner.values()) {
            Optional<Target> height = car.heightPoint(corner).flatMap(p -> targets.of(p.reading()));
            if (height.isEmpty()) {
                return OptionalDouble.empty();
            }
            rake += (corner.isFront() ? -0.5 : 0.5) * height.get().value();
        }
        return OptionalDouble.of(rake);
    }
}
