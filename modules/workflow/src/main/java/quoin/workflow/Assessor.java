package quoin.workflow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import quoin.adjustment.Verdict;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.Causes.Cause;
import quoin.workflow.Staleness.Effect;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/**
 * How every reading stands. Each is seen as last read, which is what is shown; as last read in order, which is what counts for
 * a sign-off; and, for a closed day, as it counted when the last stage was signed.
 */
final class Assessor {

    private static final Texts TEXTS = Texts.of(Assessor.class);

    /** Which figure of a reading is looked at. */
    enum View {
        SHOWN, COUNTING,
        /** As counting, without the doubts that came after the last sign-off: bars joined, nuts tightened, steering freed. */
        CLOSED
    }

    /**
     * A reading with what happened to it.
     *
     * @param state  how it stands
     * @param causes what disturbed it since, and its parts
     */
    record Assessed(ReadingState state, List<Cause> causes) {
        /** Read inside its tolerance (simple acceptance, JCGM 106:2012, 8.2); true where it has no target. */
        boolean inside() {
            return state.target().isEmpty()
                    || state.value().isPresent() && state.target().get().contains(state.value().getAsDouble());
        }
    }

    private record Judged(Figure figure, Freshness freshness, List<String> reasons, List<Cause> causes) {
    }

    private final Day day;
    private final Car car;
    private final Timeline timeline;
    private final Causes causes;
    private final ReadingUncertainty uncertainty;
    private final Asked asked;
    private final Repeats repeats;
    private final Map<View, Map<ReadingId, Assessed>> known = Map.of(View.SHOWN, new HashMap<>(), View.COUNTING, new HashMap<>(),
            View.CLOSED, new HashMap<>());
    private final Map<View, Optional<Target>> crossTargets = new HashMap<>();

    Assessor(Day day, List<Stage> stages, ExpectedMove expected) {
        this.day = day;
        this.asked = Asked.of(day, stages);
        this.car = asked.car();
        this.timeline = Timeline.of(day);
        this.causes = new Causes(car, day, expected);
        this.uncertainty = ReadingUncertainty.of(day);
        this.repeats = new Repeats(day);
    }

    /** The car with the targets of the day. */
    Car car() {
        return car;
    }

    Day day() {
        return day;
    }

    Timeline timeline() {
        return timeline;
    }

    /** What the stages ask for on this car. */
    Asked asked() {
        return asked;
    }

    boolean holds(Requirement requirement) {
        if (requirement.key().equals(Conditions.SETTLED)) {
            return timeline.settledNow();
        }
        return holds(requirement, timeline.valueNow(requirement.key()));
    }

    private static boolean holds(Requirement requirement, Optional<String> value) {
        return value.isPresent() && (requirement.value().isEmpty() || requirement.value().equals(value.get()));
    }

    Assessed of(ReadingId reading, View view) {
        Assessed found = known.get(view).get(reading);
        if (found == null) {
            found = reading.kind().isDerived() ? derived(reading, view) : typed(reading, view);
            known.get(view).put(reading, found);
        }
        return found;
    }

    private Optional<Target> target(ReadingId reading, View view) {
        if (reading.kind() != ReadingKind.CROSS) {
            return day.targets().of(reading);
        }
        Optional<Target> found = crossTargets.get(view);
        if (found == null) {
            found = CrossAim.of(car, day.targets(), id -> of(id, view).state().value());
            crossTargets.put(view, found);
        }
        return found;
    }

    private Assessed typed(ReadingId reading, View view) {
        Optional<Target> target = target(reading, view);
        Optional<Judged> picked = (view == View.SHOWN ? day.latest(reading) : asked.lastInOrder(day, reading))
                .map(f -> judge(f, outOfOrder(f), view));
        if (picked.isEmpty()) {
            return new Assessed(ReadingState.missing(reading, target, uncertainty.of(reading, new double[0], List.of())), List.of());
        }
        Figure figure = picked.get().figure();
        List<Double> same = List.copyOf(sameState(figure).values());
        return assessed(reading, repeats.mean(figure, same), picked.get().freshness(), picked.get().reasons(), target,
                picked.get().causes());
    }

    private Judged judge(Figure figure, List<String> outOfOrder, View view) {
        List<Cause> since = causes.since(figure, uncertainty.of(figure.reading(), new double[] {figure.value()}, List.of(),
                figure.instrumentUncertainty()));
        Freshness freshness = outOfOrder.isEmpty() ? Freshness.FRESH : Freshness.OUT_OF_ORDER;
        List<String> reasons = new ArrayList<>(outOfOrder);
        for (Cause cause : since) {
            if (view == View.CLOSED && isOfTheClose(cause)) {
                continue;
            }
            freshness = freshness.worse(cause.effect() == Effect.STALE ? Freshness.STALE : Freshness.DOUBTFUL);
            reasons.add(cause.words());
        }
        return new Judged(figure, freshness, reasons, since);
    }

    /** A condition that made something doubtful when every stage was signed: the rules let the signature stand. */
    private boolean isOfTheClose(Cause cause) {
        OptionalLong signed = timeline.lastSignOff();
        return cause.kind().isEmpty() && cause.effect() == Effect.DOUBTFUL && signed.isPresent() && cause.entry() > signed.getAsLong();
    }

    /** Why a figure does not count; empty where it was read in order. */
    private List<String> outOfOrder(Figure figure) {
        Timeline.Moment moment = timeline.at(figure.entry());
        List<String> reasons = new ArrayList<>();
        for (Requirement requirement : missed(figure)) {
            reasons.add(Words.takenWithout(requirement, Optional.ofNullable(figure.conditions().get(requirement.key()))));
        }
        asked.notSignedBefore(figure.reading(), moment)
                .ifPresent(s -> reasons.add(TEXTS.say("read.before", Words.inSentence(s.title()))));
        if (!reasons.isEmpty() && moment.asFound()) {
            reasons.add(0, TEXTS.say("read.asFound"));
        }
        return reasons;
    }

    /** Conditions of the stage a figure belongs to that did not hold when it was taken. */
    List<Requirement> missed(Figure figure) {
        Timeline.Moment moment = timeline.at(figure.entry());
        return asked.needed(figure.reading()).stream().filter(r -> !held(r, figure, moment)).toList();
    }

    /** True where a condition held when a figure was taken. */
    static boolean held(Requirement requirement, Figure figure, Timeline.Moment moment) {
        return requirement.key().equals(Conditions.SETTLED) ? moment.settled()
                : holds(requirement, Optional.ofNullable(figure.conditions().get(requirement.key())));
    }

    private Assessed derived(ReadingId reading, View view) {
        List<ReadingId> parts = asked.parts(reading);
        List<Cause> all = new ArrayList<>();
        Set<String> reasons = new LinkedHashSet<>();
        Freshness freshness = parts.isEmpty() ? Freshness.MISSING : Freshness.FRESH;
        long entry = 0;
        double[] values = new double[parts.size()];
        for (int i = 0; i < values.length; i++) {
            Assessed part = of(parts.get(i), view);
            freshness = freshness.worse(part.state().freshness());
            reasons.addAll(part.state().reasons());
            all.addAll(part.causes());
            entry = Math.max(entry, part.state().entry());
            values[i] = part.state().value().orElse(0);
        }
        OptionalDouble value = Derived.value(car, reading, id -> of(id, view).state().value());
        if (freshness == Freshness.MISSING || value.isEmpty()) {
            double u = uncertainty.of(reading, new double[0], List.of());
            return new Assessed(ReadingState.missing(reading, target(reading, view), u), List.of());
        }
        List<Double> together = together(reading, parts, view);
        List<Figure> figures = parts.stream().map(p -> day.latestAt(p, of(p, view).state().entry()).orElseThrow()).toList();
        Measured measured = repeats.derived(reading, value.getAsDouble(), figures, values, together, entry);
        return assessed(reading, measured, freshness, List.copyOf(reasons), target(reading, view), all);
    }

    private Map<Long, Double> sameState(Figure figure) {
        return repeats.of(figure);
    }

    /** The mean of what repeats a figure. */
    Measured mean(Figure figure) {
        return repeats.mean(figure);
    }

    /** Values of a derived reading whose parts were read together, in the same state of the car as they stand now. */
    private List<Double> together(ReadingId reading, List<ReadingId> parts, View view) {
        List<Map<Long, Double>> columns = parts.stream().map(p -> day.latestAt(p, of(p, view).state().entry()).map(this::sameState)
                .orElse(Map.of())).toList();
        List<Double> found = new ArrayList<>();
        double[] values = new double[columns.size()];
        for (Long together : columns.get(0).keySet()) {
            boolean all = true;
            for (int i = 0; i < values.length && all; i++) {
                Double value = columns.get(i).get(together);
                all = value != null;
                values[i] = all ? value : 0;
            }
            if (all) {
                Derived.formula(reading.kind(), values).ifPresent(found::add);
            }
        }
        return found;
    }

    private static Assessed assessed(ReadingId reading, Measured measured, Freshness freshness, List<String> reasons,
            Optional<Target> target, List<Cause> causes) {
        boolean judged = freshness == Freshness.FRESH || freshness == Freshness.DOUBTFUL;
        Optional<Verdict> verdict = judged
                ? target.map(t -> Verdict.of(measured.value(), t.value(), t.tolerance(), measured.uncertainty())) : Optional.empty();
        return new Assessed(new ReadingState(reading, OptionalDouble.of(measured.value()), measured.count(), measured.entry(), freshness,
                reasons, target, measured.uncertainty(), measured.lasting(), verdict), causes);
    }
}
