package quoin.wheelangles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.Derived;
import quoin.workflow.spi.Finding;

/** Side against side, and whether the rear wheels push the car straight; limits are common practice. */
@Messages({
    "sides.camber=turn each wheel half round and read again before setting it",
    "sides.caster=the car will pull to the side with less caster",
    "# {0} - left",
    "# {1} - kind",
    "# {2} - left value",
    "# {3} - right",
    "# {4} - right value",
    "# {5} - difference",
    "# {6} - advice",
    "sides.apart={0} {1} is {2} and {3} {4}: {5} apart; {6}",
    "# {0} - left",
    "# {1} - kind",
    "# {2} - left value",
    "# {3} - right",
    "# {4} - right value",
    "# {5} - difference",
    "# {6} - advice",
    "# {7} - wanted",
    "sides.apartWanted={0} {1} is {2} and {3} {4}: {5} apart ({7} wanted); {6}",
    "# {0} - angle",
    "thrust.left=Thrust angle {0} to the left: the car crabs and the steering wheel will sit crooked; set the rear toe equal before the front",
    "# {0} - angle",
    "thrust.right=Thrust angle {0} to the right: the car crabs and the steering wheel will sit crooked; set the rear toe equal before the front"})
final class AngleChecks {

    /** Camber of the two sides of an axle, deg. */
    static final double CAMBER_SIDES_DEG = 0.2;
    /** Caster of the two sides, deg: a couple of tenths makes the car pull. */
    static final double CASTER_SIDES_DEG = 0.3;
    /** Thrust angle, deg: beyond it the car crabs and the steering wheel sits crooked. */
    static final double THRUST_DEG = 0.05;

    private AngleChecks() {
    }

    static List<Finding> of(Day day) {
        List<Finding> findings = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            sides(day, ReadingKind.CAMBER, axle, CAMBER_SIDES_DEG, Bundle.sides_camber())
                    .ifPresent(findings::add);
            sides(day, ReadingKind.CASTER, axle, CASTER_SIDES_DEG, Bundle.sides_caster())
                    .ifPresent(findings::add);
        }
        thrust(day).ifPresent(findings::add);
        return List.copyOf(findings);
    }

    /** What the sides differ by beyond what their targets ask for. */
    private static Optional<Finding> sides(Day day, ReadingKind kind, Axle axle, double limit, String so) {
        ReadingId left = ReadingId.of(kind, axle.left());
        ReadingId right = ReadingId.of(kind, axle.right());
        Optional<Double> l = day.latest(left).map(Figure::value);
        Optional<Double> r = day.latest(right).map(Figure::value);
        if (l.isEmpty() || r.isEmpty()) {
            return Optional.empty();
        }
        double wanted = wanted(day, left) - wanted(day, right);
        double difference = l.get() - r.get();
        if (Math.abs(difference - wanted) <= limit + 1e-9) {
            return Optional.empty();
        }
        String one = axle.left().words();
        String other = axle.right().words();
        return Optional.of(Finding.warning(wanted == 0
                ? Bundle.sides_apart(one, kind.words(), deg(l.get()), other, deg(r.get()), deg(Math.abs(difference)), so)
                : Bundle.sides_apartWanted(one, kind.words(), deg(l.get()), other, deg(r.get()), deg(Math.abs(difference)), so, deg(Math.abs(wanted)))));
    }

    private static String deg(double angle) {
        return Texts.figure("%.2f\u00b0", angle);
    }

    /** Target of a side; both count as 0 where only one of them is known, so that no difference is asked for. */
    private static double wanted(Day day, ReadingId id) {
        ReadingId other = ReadingId.of(id.kind(), Corner.valueOf(id.place()).acrossAxle());
        boolean both = day.targets().of(id).isPresent() && day.targets().of(other).isPresent();
        return both ? day.targets().of(id).orElseThrow().value() : 0;
    }

    private static Optional<Finding> thrust(Day day) {
        ReadingId id = ReadingId.ofCar(ReadingKind.THRUST_ANGLE);
        OptionalDouble angle = Derived.value(day.car(), id, part -> day.latest(part).map(f -> OptionalDouble.of(f.value()))
                .orElse(OptionalDouble.empty()));
        if (angle.isEmpty() || Math.abs(angle.getAsDouble()) <= THRUST_DEG) {
            return Optional.empty();
        }
        String size = deg(Math.abs(angle.getAsDouble()));
        return Optional.of(Finding.warning(angle.getAsDouble() > 0 ? Bundle.thrust_left(size) : Bundle.thrust_right(size), id));
    }
}
