package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.workflow.spi.Requirement;

/** What is undone again before the day is closed: bars joined, dampers back, lock out, nuts tightened. */
public final class Closing {

    /** How far joining the bars may move the cross weight, % (common practice: 0.1 to 0.15). */
    public static final double CROSS_LIMIT = 0.15;

    private Closing() {
    }

    /** The closing conditions in working order. */
    public static List<Requirement> requirements(Car car) {
        List<Requirement> all = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            if (car.axles().get(axle).bar().isPresent()) {
                String end = axle == Axle.FRONT ? "front" : "rear";
                all.add(new Requirement(Conditions.bar(axle), Conditions.CONNECTED, "Join the " + end
                        + " bar, driver in: set the link so that the bolt slides in with the fingers",
                        Optional.of("A link forced in loads one wheel and spoils the cross weight")));
            }
        }
        all.add(new Requirement(Conditions.DAMPERS, Conditions.RUNNING, "Put the dampers back to their clicks",
                Optional.of("Dampers left soft are found out in the first corner")));
        all.add(new Requirement(Conditions.STEERING, Conditions.FREE, "Take the steering lock out",
                Optional.of("Turn the wheel from lock to lock before the car leaves the pads")));
        all.add(new Requirement(Conditions.LOCKNUTS, Conditions.YES, "Tighten every nut loosened today, paint across it and tick it off",
                Optional.of("A loose nut on a link is not felt until it fails; then look at the toe once more")));
        return List.copyOf(all);
    }

    /** What keeps the day from being closed apart from its stages. */
    static List<Problem> open(Assessor assessor, long signedAt) {
        List<Problem> problems = new ArrayList<>();
        for (Requirement requirement : requirements(assessor.car())) {
            if (!assessor.holds(requirement)) {
                problems.add(Problem.condition(requirement.words()));
            }
        }
        crossWithBars(assessor, signedAt).ifPresent(problems::add);
        return problems;
    }

    private static Optional<Problem> crossWithBars(Assessor assessor, long signedAt) {
        Day day = assessor.day();
        OptionalLong joined = lastJoined(assessor);
        ReadingId cross = ReadingId.ofCar(ReadingKind.CROSS);
        OptionalDouble signed = crossAt(assessor.car(), day, signedAt);
        if (joined.isEmpty() || signed.isEmpty()) {
            return Optional.empty();
        }
        boolean weighed = assessor.car().cornerReadings(ReadingKind.LOAD).stream()
                .allMatch(id -> day.latest(id).map(f -> f.entry() > joined.getAsLong()).orElse(false));
        if (!weighed) {
            return Optional.of(new Problem(Problem.Kind.READ, "weigh once more with the bars joined, it must stay within "
                    + Words.figure(CROSS_LIMIT, ReadingKind.CROSS), List.of(cross), Set.of()));
        }
        double now = crossAt(assessor.car(), day, Long.MAX_VALUE).orElseThrow();
        double moved = now - signed.getAsDouble();
        return Math.abs(moved) <= CROSS_LIMIT ? Optional.empty() : Optional.of(new Problem(Problem.Kind.OUTSIDE,
                "the joined bars move it by " + Words.signed(moved, ReadingKind.CROSS) + ", more than "
                + Words.figure(CROSS_LIMIT, ReadingKind.CROSS) + ": set the links again", List.of(cross), Set.of()));
    }

    private static OptionalDouble crossAt(Car car, Day day, long entry) {
        return Derived.value(car, ReadingId.ofCar(ReadingKind.CROSS), id -> day.latestAt(id, entry).map(Figure::value)
                .map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    /** The last change of a bar or its link, as long as every bar is joined. */
    private static OptionalLong lastJoined(Assessor assessor) {
        boolean barred = false;
        for (Axle axle : Axle.values()) {
            if (assessor.car().axles().get(axle).bar().isPresent()) {
                barred = true;
                if (!assessor.timeline().valueNow(Conditions.bar(axle)).equals(Optional.of(Conditions.CONNECTED))) {
                    return OptionalLong.empty();
                }
            }
        }
        return barred ? assessor.timeline().events().stream().filter(e -> e.what() == Disturbance.BAR)
                .mapToLong(Timeline.Event::entry).max() : OptionalLong.empty();
    }
}
