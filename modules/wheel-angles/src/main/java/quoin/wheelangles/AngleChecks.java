package quoin.wheelangles;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.workflow.Derived;
import quoin.workflow.spi.Finding;

/** Side against side, and whether the rear wheels push the car straight; limits are common practice. */
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
            sides(day, ReadingKind.CAMBER, axle, CAMBER_SIDES_DEG, "turn each wheel half round and read again before setting it")
                    .ifPresent(findings::add);
            sides(day, ReadingKind.CASTER, axle, CASTER_SIDES_DEG, "the car will pull to the side with less caster")
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
        return Math.abs(difference - wanted) <= limit + 1e-9 ? Optional.empty() : Optional.of(Finding.warning(String.format(Locale.ROOT,
                "%s %s is %.2f\u00b0 and %s %.2f\u00b0: %.2f\u00b0 apart%s; %s", axle.left(), kind.words(), l.get(), axle.right(), r.get(),
                Math.abs(difference), wanted == 0 ? "" : String.format(Locale.ROOT, " (%.2f\u00b0 wanted)", Math.abs(wanted)), so)));
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
        return Optional.of(Finding.warning(String.format(Locale.ROOT, "Thrust angle %.2f\u00b0 to the %s: the car crabs and the steering wheel will "
                + "sit crooked; set the rear toe equal before the front", Math.abs(angle.getAsDouble()),
                angle.getAsDouble() > 0 ? "left" : "right"), id));
    }
}
