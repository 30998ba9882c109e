package quoin.workflow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.mechanics.Sensitivity;
import quoin.suspension.AngleResponse;
import quoin.suspension.spi.SuspensionTypes;

/**
 * What one unit of every adjuster does to every reading of the car as it was last read: the response as described and as
 * learnt from the rounds of the day.
 */
public final class ExpectedMoves implements ExpectedMove {

    /** Relative uncertainty of what a link does to loads and heights (common practice, no source). */
    private static final double LINK_TO_LEG_SD = 0.25;
    /** Relative uncertainty of what wheel travel does to the angles, as described (common practice, no source). */
    private static final double TRAVEL_TO_ANGLE_SD = 0.25;

    private final Day day;
    private final Optional<LegBelief> legs;
    private final List<Sensitivity> perTurn;
    private final Map<Axle, AngleResponse> described;
    private final AngleBelief angles;
    private final Map<AdjusterId, Map<ReadingId, Move>> known = new HashMap<>();

    /**
     * @param types the suspension types at hand
     */
    public ExpectedMoves(Day day, SuspensionTypes types) {
        this.day = day;
        this.legs = LegBelief.of(day);
        this.perTurn = legs.map(l -> LegBelief.sensitivities(l.adjusters(), l.standing().car())).orElse(List.of());
        this.described = AnglePlanner.described(day.car(), types);
        this.angles = new AngleBelief(day, described, new ReadingUncertainty(day.car()));
    }

    @Override
    public Optional<Move> of(Map<AdjusterId, Double> turns, ReadingId reading) {
        double amount = 0;
        double squares = 0;
        boolean any = false;
        for (Map.Entry<AdjusterId, Double> turn : turns.entrySet()) {
            Optional<Move> one = Optional.ofNullable(perUnit(turn.getKey()).get(reading));
            if (one.isPresent()) {
                any = true;
                amount += turn.getValue() * one.get().amount();
                squares += Math.pow(turn.getValue() * one.get().uncertainty(), 2);
            }
        }
        return any ? Optional.of(new Move(amount, Math.sqrt(squares))) : Optional.empty();
    }

    /** What one turn, or one mm of shim, does to every reading it moves. */
    public Map<ReadingId, Move> perUnit(AdjusterId adjuster) {
        return known.computeIfAbsent(adjuster, this::find);
    }

    private Map<ReadingId, Move> find(AdjusterId adjuster) {
        Map<ReadingId, Move> all = new LinkedHashMap<>();
        if (adjuster.kind().isSpringLeg()) {
            leg(adjuster, all);
        } else if (AngleBelief.KINDS.contains(adjuster.kind())) {
            link(adjuster, all);
        }
        derive(all);
        return all;
    }

    private void leg(AdjusterId adjuster, Map<ReadingId, Move> all) {
        int at = legs.map(l -> l.adjusters().stream().map(a -> a.id()).toList().indexOf(adjuster)).orElse(-1);
        if (at < 0) {
            return;
        }
        LegBelief known = legs.orElseThrow();
        double liftSd = known.belief().liftRelativeSds().get(at);
        double rateSd = known.belief().wheelRateRelativeSds().stream().mapToDouble(Double::doubleValue).average().orElse(0);
        Sensitivity one = perTurn.get(at);
        double learnt = learnt(known, at);
        if (known.weighed()) {
            for (Corner corner : Corner.values()) {
                put(all, ReadingId.of(ReadingKind.LOAD, corner), learnt * one.loadsKgf().get(corner), Math.hypot(liftSd, rateSd));
            }
        }
        one.rideHeightsMm().forEach((name, mm) -> put(all, new ReadingId(ReadingKind.HEIGHT, name), learnt * mm, liftSd));
        PerCorner<Double> travel = one.wheelTravelMm().map(t -> learnt * t);
        LegEffects.ofTravel(day, described, travel).forEach((id, p) -> put(all, id, p.change(), TRAVEL_TO_ANGLE_SD));
    }

    /** How much more or less than described one turn lifts, as the rounds have shown. */
    private static double learnt(LegBelief legs, int at) {
        double before = legs.belief().prior().adjusters().get(at).liftMmPerTurn();
        return before == 0 ? 1 : legs.belief().liftsMmPerTurn().get(at) / before;
    }

    private void link(AdjusterId adjuster, Map<ReadingId, Move> all) {
        Axle axle = adjuster.corner().axle();
        for (ReadingKind angle : AngleBelief.ANGLES) {
            double effect = angles.effect(axle, angle, adjuster.kind());
            all.put(ReadingId.of(angle, adjuster.corner()), new Move(effect, angles.sd(axle, angle, Map.of(adjuster.kind(), 1.0))));
        }
        CornerMove one = new CornerMove(adjuster, 1, OptionalDouble.empty(), "");
        LegEffects.ofAngles(day, described, List.of(one)).forEach((id, p) -> {
            if (!id.kind().isDerived()) {
                put(all, id, p.change(), LINK_TO_LEG_SD);
            }
        });
    }

    private static void put(Map<ReadingId, Move> all, ReadingId id, double amount, double relativeSd) {
        all.put(id, new Move(amount, Math.abs(amount) * relativeSd));
    }

    /** Cross, shares, rake and sums from the moves of their parts, at the values last read; uncertainty in the same proportion. */
    private void derive(Map<ReadingId, Move> all) {
        Map<ReadingId, Move> derived = new LinkedHashMap<>();
        for (ReadingId id : Derived.all(day.car())) {
            List<ReadingId> parts = Derived.parts(day.car(), id);
            OptionalDouble now = Derived.value(day.car(), id, this::last);
            if (now.isEmpty() || parts.stream().noneMatch(all::containsKey)) {
                continue;
            }
            OptionalDouble then = Derived.value(day.car(), id, p -> OptionalDouble.of(last(p).orElse(0) + amount(all, p)));
            double amount = then.orElse(now.getAsDouble()) - now.getAsDouble();
            double relative = parts.stream().filter(p -> amount(all, p) != 0)
                    .mapToDouble(p -> all.get(p).uncertainty() / Math.abs(amount(all, p))).max().orElse(0);
            derived.put(id, new Move(amount, Math.abs(amount) * relative));
        }
        all.putAll(derived);
    }

    private static double amount(Map<ReadingId, Move> all, ReadingId id) {
        return all.containsKey(id) ? all.get(id).amount() : 0;
    }

    private OptionalDouble last(ReadingId id) {
        return day.latest(id).map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty());
    }

    /** Everything turned after an entry and up to another, net per adjuster, without what was turned back. */
    public static Map<AdjusterId, Double> turnedBetween(Day day, long after, long upTo) {
        Map<AdjusterId, Double> net = new LinkedHashMap<>();
        for (Entry entry : day.after(after)) {
            if (entry.number() <= upTo && entry instanceof Entry.Adjustment adjustment) {
                adjustment.turns().forEach(t -> net.merge(t.adjuster(), t.amount(), Double::sum));
            }
        }
        net.values().removeIf(v -> Math.abs(v) < 1e-9);
        return net;
    }

    /** One adjuster's part in the move of a reading. */
    public record Part(AdjusterId adjuster, double turns, Move move) {
    }

    /** The parts of all adjusters in the move of a reading between two entries, the largest first; those that move it nothing are left out. */
    public List<Part> parts(ReadingId reading, long after, long upTo) {
        List<Part> parts = new ArrayList<>();
        turnedBetween(day, after, upTo).forEach((id, turns) -> of(Map.of(id, turns), reading).filter(m -> m.amount() != 0)
                .ifPresent(m -> parts.add(new Part(id, turns, m))));
        parts.sort((a, b) -> Double.compare(Math.abs(b.move().amount()), Math.abs(a.move().amount())));
        return parts;
    }
}
