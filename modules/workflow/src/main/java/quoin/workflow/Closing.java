package quoin.workflow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.Assessor.View;
import quoin.workflow.spi.Requirement;

/**
 * What is undone again before the day is closed, in working order: bars joined and weighed with them, dampers back, nuts
 * tightened and, where rods were turned today, the toe looked at once more, steering lock out.
 */
public final class Closing {

    private static final Texts TEXTS = Texts.of(Closing.class);

    /** How far joining the bars may move the cross weight, % (common practice: 0.1 to 0.15). */
    public static final double CROSS_LIMIT = 0.15;

    /** Adjusters whose locknut turns the rod as it is tightened, and the wheel with it. */
    private static final Set<AdjusterKind> RODS = EnumSet.of(AdjusterKind.TOE_LINK, AdjusterKind.CAMBER_ROD, AdjusterKind.CASTER_ROD);

    private Closing() {
    }

    /** The closing conditions in working order. */
    public static List<Requirement> requirements(Car car) {
        List<Requirement> all = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            if (car.axles().get(axle).bar().isPresent()) {
                all.add(new Requirement(Conditions.bar(axle), Conditions.CONNECTED, TEXTS.say("closing.joinBar." + axle),
                        Optional.of(TEXTS.say("closing.joinBar.caution"))));
            }
        }
        all.add(new Requirement(Conditions.DAMPERS, Conditions.RUNNING, TEXTS.say("closing.dampers"),
                Optional.of(TEXTS.say("closing.dampers.caution"))));
        all.add(new Requirement(Conditions.LOCKNUTS, Conditions.YES, TEXTS.say("closing.locknuts"),
                Optional.of(TEXTS.say("closing.locknuts.caution"))));
        all.add(new Requirement(Conditions.STEERING, Conditions.FREE, TEXTS.say("closing.steering"),
                Optional.of(TEXTS.say("closing.steering.caution"))));
        return List.copyOf(all);
    }

    /** The closing conditions and which hold; nuts tightened before something was turned again do not. */
    public static List<RequirementState> states(Day day) {
        Timeline timeline = Timeline.of(day);
        return requirements(day.car()).stream().map(r -> new RequirementState(r, holds(r, timeline))).toList();
    }

    /**
     * What a day for part of the job has to put back: only what was taken off, set soft, locked or loosened on it. What it was
     * not asked to prove stays open.
     */
    static List<Problem> leftUndone(Day day) {
        Timeline timeline = Timeline.of(day);
        return touched(day).stream().filter(r -> !holds(r, timeline)).map(r -> Problem.condition(r.words())).toList();
    }

    /** The closing conditions of what was done on the day. */
    static List<Requirement> touched(Day day) {
        Timeline timeline = Timeline.of(day);
        return requirements(day.car()).stream().filter(r -> r.key().equals(Conditions.LOCKNUTS) ? !day.turned().isEmpty()
                : timeline.valueNow(r.key()).isPresent()).toList();
    }

    private static boolean holds(Requirement requirement, Timeline timeline) {
        return timeline.valueNow(requirement.key()).equals(Optional.of(requirement.value()));
    }

    /**
     * What keeps the day from being closed apart from its stages, in working order.
     *
     * @param judged everything that some stage judges
     */
    static List<Problem> open(Assessor assessor, List<ReadingId> judged) {
        List<Problem> problems = new ArrayList<>(crossWithBars(assessor).stream().toList());
        for (Requirement requirement : requirements(assessor.car())) {
            if (requirement.key().equals(Conditions.STEERING)) {
                problems.addAll(toeAfterNuts(assessor, judged));
            }
            if (!holds(requirement, assessor.timeline())) {
                problems.add(Problem.condition(requirement.words()));
            }
        }
        CarCheck.leftOpen(assessor.day()).forEach(i -> problems.add(Problem.condition(i.words())));
        return problems;
    }

    /** Conditions of a typed reading without those that closing has just undone. */
    static List<Requirement> needed(Assessor assessor, ReadingId typed) {
        return assessor.asked().needed(typed).stream().filter(r -> !isUndone(r)).toList();
    }

    private static boolean isUndone(Requirement requirement) {
        return Timeline.isBar(requirement.key()) || requirement.key().equals(Conditions.DAMPERS);
    }

    /** True where a reading was last taken in order but for what closing undoes: the weighing with the bars, the last look. */
    static boolean isClosingLook(Assessor assessor, ReadingId reading) {
        return assessor.asked().parts(reading).stream().allMatch(p -> assessor.day().latest(p)
                .filter(f -> assessor.missed(f).stream().allMatch(Closing::isUndone)).isPresent());
    }

    /** The last figure after an entry that was taken as a last look has to be. */
    private static Optional<Figure> lookAfter(Assessor assessor, ReadingId typed, long entry) {
        List<Figure> history = assessor.day().history(typed);
        for (int i = history.size() - 1; i >= 0 && history.get(i).entry() > entry; i--) {
            if (assessor.missed(history.get(i)).stream().allMatch(Closing::isUndone)) {
                return Optional.of(history.get(i));
            }
        }
        return Optional.empty();
    }

    /** The last look, not the mean of several: a rod may have been set again between them. */
    private static OptionalDouble valueAfter(Assessor assessor, ReadingId reading, long entry) {
        return Derived.value(assessor.car(), reading, id -> lookAfter(assessor, id, entry).map(f -> OptionalDouble.of(f.value()))
                .orElse(OptionalDouble.empty()));
    }

    /** Once every bar is joined: compares with the last weighing in order, which is one with the bars off. */
    private static Optional<Problem> crossWithBars(Assessor assessor) {
        ReadingId cross = ReadingId.ofCar(ReadingKind.CROSS);
        ReadingState off = assessor.of(cross, View.COUNTING).state();
        OptionalLong joined = lastJoined(assessor);
        if (joined.isEmpty() || off.value().isEmpty() || off.freshness() == Freshness.STALE) {
            return Optional.empty();
        }
        OptionalDouble now = Derived.value(assessor.car(), cross, id -> lookAfter(assessor, id, joined.getAsLong())
                .map(f -> OptionalDouble.of(assessor.mean(f).value())).orElse(OptionalDouble.empty()));
        if (now.isEmpty()) {
            return Optional.of(new Problem(Problem.Kind.READ, TEXTS.say("closing.weighOnce", Words.figure(CROSS_LIMIT, ReadingKind.CROSS)), List.of(cross), Set.of()));
        }
        double moved = now.getAsDouble() - off.value().getAsDouble();
        return Math.abs(moved) <= CROSS_LIMIT + 1e-9 ? Optional.empty() : Optional.of(new Problem(Problem.Kind.OUTSIDE,
                TEXTS.say("closing.barsMove", Words.signed(moved, ReadingKind.CROSS), Words.figure(CROSS_LIMIT, ReadingKind.CROSS)), List.of(cross), Set.of()));
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
        return barred ? assessor.timeline().last(Disturbance.BAR) : OptionalLong.empty();
    }

    /** One last look at the toe, still with the lock in, where rods were turned today. */
    private static List<Problem> toeAfterNuts(Assessor assessor, List<ReadingId> judged) {
        OptionalLong tightened = assessor.timeline().last(Disturbance.LOCKNUTS);
        boolean tight = assessor.timeline().valueNow(Conditions.LOCKNUTS).equals(Optional.of(Conditions.YES));
        boolean rods = assessor.day().turned().keySet().stream().anyMatch(id -> RODS.contains(id.kind()));
        if (!tight || tightened.isEmpty() || !rods) {
            return List.of();
        }
        Set<ReadingId> unread = new LinkedHashSet<>();
        List<Problem> problems = new ArrayList<>();
        for (ReadingId toe : judged.stream().filter(id -> Staleness.isToe(assessor.asked().parts(id))).toList()) {
            OptionalDouble value = valueAfter(assessor, toe, tightened.getAsLong());
            Optional<Target> target = assessor.day().targets().of(toe);
            if (value.isEmpty()) {
                unread.addAll(assessor.asked().parts(toe));
            } else if (target.isPresent() && !target.get().contains(value.getAsDouble())) {
                problems.add(new Problem(Problem.Kind.OUTSIDE, TEXTS.say("closing.nutsTurned",
                        Words.figure(value.getAsDouble(), toe.kind()), Words.target(target.get(), toe.kind())),
                        List.of(toe), Set.of()));
            }
        }
        if (!unread.isEmpty()) {
            problems.add(0, new Problem(Problem.Kind.READ, TEXTS.say("closing.lookOnce"), List.copyOf(unread), Set.of()));
        }
        return problems;
    }
}
