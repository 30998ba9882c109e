package quoin.workflow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import quoin.adjustment.PlanCancellation;
import quoin.adjustment.PlanOption;
import quoin.adjustment.PlanPreferences;
import quoin.adjustment.PlanProbability;
import quoin.adjustment.PlanUncertainty;
import quoin.adjustment.Plans;
import quoin.adjustment.StepAdjuster;
import quoin.adjustment.StepPlan;
import quoin.adjustment.StepProblem;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.suspension.AngleResponse;
import quoin.suspension.spi.SuspensionTypes;

/**
 * The plan of the wheel angles: camber, caster and toe of all wheels together, so that a camber rod's toe is taken back by
 * the toe link in the same pass. Wheels are independent of each other, so each is planned by itself, to the proven optimum.
 */
public final class AnglePlanner {

    private static final Texts TEXTS = Texts.of(AnglePlanner.class);

    private static final double PRICE_PER_VISIT = 1;
    private static final double PRICE_PER_TURN = 0.001;
    /** Nothing is turned at a wheel that is inside with this probability: four wheels of 0.97 make nine in ten. */
    private static final PlanPreferences PER_WHEEL = new PlanPreferences(1, 0.97);

    private final Day day;
    private final AngleBelief belief;
    private final ReadingUncertainty uncertainty;
    private final Map<Axle, AngleResponse> described;

    private AnglePlanner(Day day, SuspensionTypes types) {
        this.day = day;
        this.uncertainty = new ReadingUncertainty(day.car());
        this.described = described(day.car(), types);
        this.belief = new AngleBelief(day, described, uncertainty);
    }

    /** How the wheels of each axle answer, by the suspension as described; nothing known where the type is not at hand. */
    static Map<Axle, AngleResponse> described(Car car, SuspensionTypes types) {
        Map<Axle, AngleResponse> described = new EnumMap<>(Axle.class);
        for (Axle axle : Axle.values()) {
            described.put(axle, types.response(car, axle.left()));
        }
        return described;
    }

    /**
     * The plan; empty where no wheel has a reading with a target that still holds, or nothing can be turned.
     *
     * @param types        the suspension types at hand
     * @param cancellation asked during long searches
     */
    public static Optional<RoundPlan> plan(Day day, SuspensionTypes types, PlanCancellation cancellation) {
        return new AnglePlanner(day, types).plan(cancellation);
    }

    /** One wheel: what it reads, what may be turned, the best turns. */
    private record Wheel(Corner corner, List<ReadingId> goals, List<Adjuster> adjusters, StepPlan plan, double probabilityInside,
            double probabilityNow) {
    }

    private Optional<RoundPlan> plan(PlanCancellation cancellation) {
        List<Wheel> wheels = new ArrayList<>();
        for (Corner corner : day.car().walkingOrder()) {
            wheel(corner, cancellation).ifPresent(wheels::add);
        }
        if (wheels.isEmpty()) {
            return Optional.empty();
        }
        List<CornerMove> moves = new ArrayList<>();
        Map<ReadingId, Predicted> predicted = new LinkedHashMap<>();
        double after = 1;
        double now = 1;
        for (Wheel wheel : wheels) {
            double[] turns = wheel.plan().turns();
            moves.addAll(moves(wheel, turns));
            predicted.putAll(predicted(wheel, turns));
            after *= wheel.probabilityInside();
            now *= wheel.probabilityNow();
        }
        predicted.putAll(LegEffects.ofAngles(day, described, moves));
        return Optional.of(new RoundPlan(day.revision(), moves, predicted, OptionalDouble.of(after), OptionalDouble.of(now),
                why(moves), notReachable(wheels), assumed(wheels)));
    }

    private Optional<Wheel> wheel(Corner corner, PlanCancellation cancellation) {
        List<ReadingId> goals = Stream.of(ReadingKind.CAMBER, ReadingKind.CASTER, ReadingKind.TOE).map(k -> ReadingId.of(k, corner))
                .filter(r -> day.targets().of(r).isPresent() && holds(r, corner)).toList();
        // An adjuster whose own angle was not read is left alone: turned for the sake of another it would put that out unseen.
        List<Adjuster> adjusters = AngleBelief.adjusters(day, corner).stream()
                .filter(a -> goals.contains(ReadingId.of(AngleBelief.own(a.id().kind()), corner))).toList();
        if (goals.isEmpty() || adjusters.isEmpty()) {
            return Optional.empty();
        }
        StepProblem problem = problem(corner, goals, adjusters);
        PlanUncertainty spread = turns -> covariance(corner, goals, adjusters, turns);
        PlanOption best = Plans.offer(problem, spread, PER_WHEEL, cancellation).recommended();
        double now = PlanProbability.inside(problem.errors(), spread.covarianceAfter(new double[adjusters.size()]), problem.tolerances()).value();
        return Optional.of(new Wheel(corner, goals, adjusters, best.plan(), best.inside().value(), now));
    }

    /** A reading that one of the wheel's own adjusters was turned after is no start for a plan. */
    private boolean holds(ReadingId reading, Corner corner) {
        Optional<Figure> figure = day.latest(reading);
        return figure.isPresent() && AngleState.of(day, reading, belief, uncertainty).isPresent() && day.after(figure.get().entry()).stream().noneMatch(e -> e instanceof Entry.Adjustment a
                && a.turns().stream().anyMatch(t -> t.adjuster().corner() == corner && AngleBelief.KINDS.contains(t.adjuster().kind())));
    }

    private StepProblem problem(Corner corner, List<ReadingId> goals, List<Adjuster> adjusters) {
        double[] errors = new double[goals.size()];
        double[] tolerances = new double[goals.size()];
        double[][] sensitivity = new double[goals.size()][adjusters.size()];
        for (int i = 0; i < errors.length; i++) {
            Target target = day.targets().of(goals.get(i)).orElseThrow();
            errors[i] = state(goals.get(i)).mean() - target.value();
            tolerances[i] = target.tolerance();
            for (int j = 0; j < adjusters.size(); j++) {
                sensitivity[i][j] = belief.effect(corner.axle(), goals.get(i).kind(), adjusters.get(j).id().kind());
            }
        }
        List<StepAdjuster> steps = adjusters.stream().map(this::step).toList();
        return new StepProblem(errors, tolerances, sensitivity, steps, PRICE_PER_VISIT, PRICE_PER_TURN);
    }

    private StepAdjuster step(Adjuster adjuster) {
        if (adjuster.setting() instanceof Setting.Shims shims) {
            return StepAdjuster.fromStock(adjuster.id().toString(), adjuster.id().corner().name(), offsets(shims, day.turned(adjuster.id())));
        }
        return RoundPlanner.step(day, adjuster);
    }

    /** Every thickness the stock can make, put in beside what was fitted this morning or instead of it, as a change from what is in now. */
    static double[] offsets(Setting.Shims shims, double changedToday) {
        TreeSet<Double> sums = new TreeSet<>(List.of(0.0));
        for (Setting.Shim shim : shims.stock()) {
            TreeSet<Double> more = new TreeSet<>();
            for (double sum : sums) {
                for (int n = 0; n <= shim.count(); n++) {
                    more.add(Math.round((sum + n * shim.thicknessMm()) * 1e6) / 1e6);
                }
            }
            sums = more;
        }
        return sums.stream().flatMap(s -> Stream.of(s, s - shims.fittedMm())).mapToDouble(s -> Math.round((s - changedToday) * 1e6) / 1e6).toArray();
    }

    private double[][] covariance(Corner corner, List<ReadingId> goals, List<Adjuster> adjusters, double[] turns) {
        double[][] covariance = new double[goals.size()][goals.size()];
        for (int i = 0; i < covariance.length; i++) {
            double sd = sd(corner, goals.get(i), adjusters, turns);
            covariance[i][i] = sd * sd;
        }
        return covariance;
    }

    private double sd(Corner corner, ReadingId reading, List<Adjuster> adjusters, double[] turns) {
        Map<AdjusterKind, Double> units = new EnumMap<>(AdjusterKind.class);
        for (int j = 0; j < turns.length; j++) {
            units.put(adjusters.get(j).id().kind(), turns[j]);
        }
        return Math.hypot(state(reading).sd(), belief.sd(corner.axle(), reading.kind(), units));
    }

    private AngleState state(ReadingId reading) {
        return AngleState.of(day, reading, belief, uncertainty).orElseThrow();
    }

    private List<CornerMove> moves(Wheel wheel, double[] turns) {
        List<CornerMove> moves = new ArrayList<>();
        for (int j = 0; j < turns.length; j++) {
            Adjuster adjuster = wheel.adjusters().get(j);
            if (turns[j] != 0) {
                moves.add(new CornerMove(adjuster.id(), turns[j], RoundPlanner.lengthMm(day, adjuster, turns[j]),
                        RoundPlanner.words(adjuster, turns[j])));
            }
        }
        // The trade's order at a wheel: caster and camber first, for both move toe; the toe link last.
        moves.sort(Comparator.comparing(m -> m.adjuster().kind() == AdjusterKind.TOE_LINK));
        return moves;
    }

    private Map<ReadingId, Predicted> predicted(Wheel wheel, double[] turns) {
        Map<ReadingId, Predicted> predicted = new LinkedHashMap<>();
        for (ReadingId goal : wheel.goals()) {
            double now = day.latest(goal).orElseThrow().value();
            double then = state(goal).mean();
            for (int j = 0; j < turns.length; j++) {
                then += belief.effect(wheel.corner().axle(), goal.kind(), wheel.adjusters().get(j).id().kind()) * turns[j];
            }
            predicted.put(goal, new Predicted(now, then, sd(wheel.corner(), goal, wheel.adjusters(), turns), day.targets().of(goal)));
        }
        return predicted;
    }

    private String why(List<CornerMove> moves) {
        if (moves.isEmpty()) {
            return TEXTS.say("angles.leave");
        }
        return TEXTS.say("angles.onePass");
    }

    private List<String> notReachable(List<Wheel> wheels) {
        List<String> lines = new ArrayList<>();
        for (Wheel wheel : wheels) {
            double[] left = wheel.plan().predictedErrors();
            for (int i = 0; i < left.length; i++) {
                if (Math.abs(left[i]) > day.targets().of(wheel.goals().get(i)).orElseThrow().tolerance()) {
                    lines.add(TEXTS.say("angles.staysOutside", wheel.goals().get(i).words()));
                }
            }
        }
        return lines;
    }

    private List<String> assumed(List<Wheel> wheels) {
        return wheels.stream().flatMap(w -> w.adjusters().stream()).map(Adjuster::id).filter(id -> !belief.isDescribed(id))
                .map(AdjusterId::words).map(w -> TEXTS.say("angles.assumed", w)).toList();
    }
}
