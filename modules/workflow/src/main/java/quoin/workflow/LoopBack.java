package quoin.workflow;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/**
 * The way back from the final re-check that disturbs least: of the plans that are about as likely to end inside, the one
 * whose largest leg moves least, and what it takes with it.
 *
 * @param plan        what to turn
 * @param largestLegMm most any leg has moved by then since the angles were signed, mm at the wheel; 0 where no leg moves
 * @param anglesAgain whether the angles must be read again afterwards: always after links, after legs beyond
 *                    {@link Staleness#LEG_LIMIT_MM}
 * @param leaving     readings now inside that the plan is expected to put outside
 */
public record LoopBack(RoundPlan plan, double largestLegMm, boolean anglesAgain, List<ReadingId> leaving) {

    /** Plans whose probability is this near to the best count as alike (common practice, no source). */
    private static final double ALIKE = 0.05;

    public LoopBack {
        leaving = List.copyOf(leaving);
    }

    /**
     * Picks the plan.
     *
     * @param plans        of the stage that opens again
     * @param anglesStage  id of the stage whose sign-off the angles date from
     */
    public static Optional<LoopBack> of(Day day, List<RoundPlan> plans, String anglesStage) {
        double best = plans.stream().mapToDouble(p -> p.probabilityInside().orElse(0)).max().orElse(0);
        return plans.stream().filter(p -> !p.moves().isEmpty() && p.probabilityInside().orElse(0) >= best - ALIKE)
                .map(p -> of(day, p, anglesStage))
                .min(Comparator.comparing(LoopBack::anglesAgain).thenComparing(l -> l.leaving().size())
                        .thenComparing(LoopBack::largestLegMm).thenComparing(l -> l.plan().visits().size()));
    }

    private static LoopBack of(Day day, RoundPlan plan, String anglesStage) {
        double leg = largestLegMm(day, plan, anglesStage);
        boolean links = plan.moves().stream().anyMatch(m -> !m.adjuster().kind().isSpringLeg() && m.adjuster().kind() != AdjusterKind.BAR_LINK);
        List<ReadingId> leaving = plan.predicted().entrySet().stream()
                .filter(e -> e.getValue().target().filter(t -> t.contains(e.getValue().now()) && !t.contains(e.getValue().predicted())).isPresent())
                .map(Map.Entry::getKey).toList();
        return new LoopBack(plan, leg, links || leg > Staleness.LEG_LIMIT_MM, leaving);
    }

    private static double largestLegMm(Day day, RoundPlan plan, String anglesStage) {
        Map<AdjusterId, Double> turns = new HashMap<>();
        long since = day.signOff(anglesStage).map(Entry.SignOff::number).orElse(day.revision());
        turns.putAll(ExpectedMoves.turnedBetween(day, since, day.revision()));
        plan.moves().forEach(m -> turns.merge(m.adjuster(), m.turns(), Double::sum));
        Map<Corner, Double> legs = new EnumMap<>(Corner.class);
        turns.forEach((id, amount) -> {
            if (id.kind().isSpringLeg()) {
                legs.merge(id.corner(), Causes.legMm(day.car(), id, amount), Double::sum);
            }
        });
        return legs.values().stream().mapToDouble(Math::abs).max().orElse(0);
    }
}
