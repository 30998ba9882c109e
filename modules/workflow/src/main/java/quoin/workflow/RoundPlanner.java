package quoin.workflow;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.adjustment.PlanCancellation;
import quoin.adjustment.PlanOption;
import quoin.adjustment.PlanOptions;
import quoin.adjustment.PlanPreferences;
import quoin.adjustment.Plans;
import quoin.adjustment.StepAdjuster;
import quoin.adjustment.StepProblem;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Assumption;
import quoin.car.ReadingId;
import quoin.car.Setting;
import quoin.logbook.Day;
import quoin.quantities.Texts;
import quoin.quantities.Turns;
import quoin.suspension.spi.SuspensionTypes;

/**
 * The plan of the next round of perches and pushrods: whole steps that bring cross weight and all heights to target
 * together with few visits. The response comes from the exact corner-load mechanics, corrected by what the rounds of the
 * day really did; the plan is the proven optimum for it. Where the uncertainty of the response makes other turns clearly
 * likelier to end inside, those are offered first.
 */
public final class RoundPlanner {

    private static final Texts TEXTS = Texts.of(RoundPlanner.class);

    /** Turns either way where the thread's ends are not known (common practice, no source: stay well on the thread). */
    static final double UNKNOWN_RANGE_TURNS = 6;
    /** A visit costs as much as one reading just at its tolerance; a turn next to nothing. */
    private static final double PRICE_PER_VISIT = 1;
    private static final double PRICE_PER_TURN = 0.001;
    /** The likeliest turns go before those with the smallest errors from this gain in probability on. */
    private static final double CLEARLY_LIKELIER = 0.05;

    private RoundPlanner() {
    }

    /** The plan offered first; empty where nothing was read that a plan could start from, or nothing has a target. */
    public static Optional<RoundPlan> plan(Day day) {
        List<RoundPlan> all = options(day, PlanCancellation.NEVER);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /**
     * The plan offered first, then the best plans with other numbers of corners, fewest first.
     *
     * @param cancellation asked during long searches
     */
    public static List<RoundPlan> options(Day day, PlanCancellation cancellation) {
        return options(day, new SuspensionTypes(List.of()), cancellation);
    }

    /**
     * The same, with what the turns do to the wheel angles.
     *
     * @param types        the suspension types at hand
     * @param cancellation asked during long searches
     */
    public static List<RoundPlan> options(Day day, SuspensionTypes types, PlanCancellation cancellation) {
        Optional<LegBelief> known = LegBelief.of(day);
        if (known.isEmpty()) {
            return List.of();
        }
        LegBelief legs = known.get();
        LegReadings readings = LegReadings.of(day, legs);
        if (readings.goals().isEmpty()) {
            return List.of();
        }
        PlanOptions offered = offered(steps(day, legs), readings, cancellation);
        PlanWords words = new PlanWords(day, legs, readings);
        OptionalDouble now = OptionalDouble.of(readings.probabilityInside(new double[legs.adjusters().size()]));
        List<RoundPlan> plans = new ArrayList<>();
        for (int i = 0; i < offered.options().size(); i++) {
            PlanOption option = offered.options().get(i);
            double[] turns = option.plan().turns();
            boolean first = i == offered.first();
            RoundPlan plan = new RoundPlan(day.revision(), moves(day, legs, turns), predicted(day, types, readings, turns),
                    OptionalDouble.of(option.inside().value()), now,
                    first ? offered.reason().sentence() : words.option(option), words.notReachable(offered), words.assumed());
            plans.add(first ? 0 : plans.size(), plan);
        }
        LikeliestTurns likeliest = LikeliestTurns.of(day, legs, readings.beliefGoals());
        double smallestErrors = likeliest.probabilityAfter(offered.recommended().plan().turns());
        if (likeliest.advice().probabilityAfter() > smallestErrors + CLEARLY_LIKELIER) {
            double[] turns = likeliest.turns();
            plans.add(0, new RoundPlan(day.revision(), moves(day, legs, turns), predicted(day, types, readings, turns),
                    OptionalDouble.of(likeliest.advice().probabilityAfter()), now,
                    words.likeliest(likeliest.advice().probabilityAfter(), smallestErrors), words.notReachable(offered),
                    words.assumed()));
        }
        return List.copyOf(plans);
    }

    /**
     * What some turns will do, from the day as it stands.
     *
     * @param turns turns per adjuster, plus raises the corner; those of other adjusters than perches and pushrods are left out
     * @return by reading, as read and as it will be read; empty where nothing was read that a forecast could start from
     */
    public static Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns) {
        Optional<LegBelief> known = LegBelief.of(day);
        if (known.isEmpty()) {
            return Map.of();
        }
        LegBelief legs = known.get();
        double[] amounts = legs.adjusters().stream().mapToDouble(a -> turns.getOrDefault(a.id(), 0.0)).toArray();
        return LegReadings.of(day, legs).predicted(amounts);
    }

    private static Map<ReadingId, Predicted> predicted(Day day, SuspensionTypes types, LegReadings readings, double[] turns) {
        Map<ReadingId, Predicted> all = new LinkedHashMap<>(readings.predicted(turns));
        all.putAll(LegEffects.ofTravel(day, AnglePlanner.described(day.car(), types), readings.travelMm(turns)));
        return all;
    }

    /**
     * One adjuster a corner, as long as both together are not clearly better: the second does the same to loads and heights, at the
     * price of a second spanner and a second locknut.
     */
    private static PlanOptions offered(List<StepAdjuster> steps, LegReadings readings, PlanCancellation cancellation) {
        List<StepAdjuster> few = oneACorner(steps);
        PlanOptions simple = offer(few, readings, cancellation);
        PlanOption chosen = simple.recommended();
        if (few.equals(steps) || chosen.inside().value() >= PlanPreferences.USUAL.sureEnough()) {
            return simple;
        }
        PlanOptions whole = offer(steps, readings, cancellation);
        PlanOption other = whole.recommended();
        boolean better = other.inside().value() > chosen.inside().value() + CLEARLY_LIKELIER
                || other.plan().objective() < chosen.plan().objective() - PRICE_PER_VISIT / 2;
        return better ? whole : simple;
    }

    private static PlanOptions offer(List<StepAdjuster> steps, LegReadings readings, PlanCancellation cancellation) {
        StepProblem problem = new StepProblem(readings.errors(), readings.tolerances(), readings.sensitivityPerTurn(), steps,
                PRICE_PER_VISIT, PRICE_PER_TURN);
        return Plans.offer(problem, readings::covarianceAfter, PlanPreferences.USUAL, cancellation);
    }

    /** The same, with all but the first adjuster of each corner that can be turned locked. */
    static List<StepAdjuster> oneACorner(List<StepAdjuster> steps) {
        Set<String> taken = new HashSet<>();
        return steps.stream().map(step -> step.isLocked() || taken.add(step.visit()) ? step : StepAdjuster.locked(step.id(), step.visit()))
                .toList();
    }

    /** Perches and pushrods with the whole steps they can still go, in the belief's order. */
    static List<StepAdjuster> steps(Day day, LegBelief legs) {
        return legs.adjusters().stream().map(a -> step(day, a)).toList();
    }

    static StepAdjuster step(Day day, Adjuster adjuster) {
        String id = adjuster.id().toString();
        String visit = adjuster.id().corner().name();
        Setting.Thread thread = (Setting.Thread) adjuster.setting();
        OptionalDouble length = lengthMm(day, adjuster, 0);
        double low = -UNKNOWN_RANGE_TURNS;
        double high = UNKNOWN_RANGE_TURNS;
        if (length.isPresent() && adjuster.minMm().isPresent()) {
            low = (adjuster.minMm().getAsDouble() - length.getAsDouble()) / thread.mmPerTurn();
        }
        if (length.isPresent() && adjuster.maxMm().isPresent()) {
            high = (adjuster.maxMm().getAsDouble() - length.getAsDouble()) / thread.mmPerTurn();
        }
        if (adjuster.locked() || low > 0 || high < 0) {
            return StepAdjuster.locked(id, visit);
        }
        return StepAdjuster.stepping(id, visit, thread.turnsPerStep(), low, high);
    }

    /** Thread length after the given turns, mm: the length at the start plus all turns of the day. */
    static OptionalDouble lengthMm(Day day, Adjuster adjuster, double turns) {
        return adjuster.startMm().isPresent()
                ? OptionalDouble.of(adjuster.startMm().getAsDouble() + (day.turned(adjuster.id()) + turns) * adjuster.setting().mmPerUnit())
                : OptionalDouble.empty();
    }

    private static List<CornerMove> moves(Day day, LegBelief legs, double[] turns) {
        List<CornerMove> moves = new ArrayList<>();
        for (int i = 0; i < turns.length; i++) {
            if (turns[i] != 0) {
                Adjuster adjuster = legs.adjusters().get(i);
                moves.add(new CornerMove(adjuster.id(), turns[i], lengthMm(day, adjuster, turns[i]), words(adjuster, turns[i])));
            }
        }
        return moves;
    }

    /** "2 turns + 3 notches up", "1 flat toe in", "0.5 mm top out". */
    static String words(Adjuster adjuster, double turns) {
        String amount = adjuster.setting() instanceof Setting.Thread thread
                ? Turns.text(Math.abs(turns), thread.stepsPerTurn(), thread.stepName())
                : Texts.figure("%.2f mm", Math.abs(turns));
        String what = switch (adjuster.id().kind()) {
            case PERCH, PUSHROD -> "lift";
            case CAMBER_ROD, CAMBER_SHIM -> "camber";
            case CASTER_ROD -> "caster";
            case TOE_LINK -> "toe";
            case BAR_LINK -> "bar";
        };
        return TEXTS.say("move." + what + (turns > 0 ? ".plus" : ".minus"), amount);
    }

    /** What an assumption says in one line. */
    static String words(Assumption assumption) {
        String value = Texts.figure("%.3g", assumption.value()) + (assumption.unit().isEmpty() ? "" : " " + assumption.unit());
        return TEXTS.say("move.assumed", assumption.field(), value, assumption.rule());
    }
}
