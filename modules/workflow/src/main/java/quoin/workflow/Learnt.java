package quoin.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Entry.ResponseTakenOver.Effect;
import quoin.logbook.Figure;
import quoin.logbook.Header;
import quoin.suspension.spi.SuspensionTypes;

/** What a day has taught about the car, in the form in which the next day takes it over. */
public final class Learnt {

    private Learnt() {
    }

    /**
     * The response as the day leaves it; what it had taken over itself is in it. A day that turned nothing passes on what it
     * had taken over.
     *
     * @param dayId id of the day
     * @param types the suspension types at hand
     * @return empty where the day neither learnt nor took over anything
     */
    public static Optional<Entry.ResponseTakenOver> of(Day day, String dayId, SuspensionTypes types) {
        boolean turned = day.effective().stream().anyMatch(e -> e instanceof Entry.Adjustment a && a.turns().stream().anyMatch(t -> t.amount() != 0));
        Optional<LegBelief> legs = LegBelief.of(day);
        if (!turned || legs.isEmpty()) {
            return day.takenOver();
        }
        List<Effect> effects = new ArrayList<>();
        legs(day, legs.get(), effects);
        angles(day, types, effects);
        Instant last = day.effective().get(day.effective().size() - 1).header().time();
        return Optional.of(new Entry.ResponseTakenOver(Header.draft(""), dayId, last, TakenOver.loadKg(day), effects));
    }

    private static void legs(Day day, LegBelief legs, List<Effect> effects) {
        PerCorner<Double> loads = PerCorner.of(c -> day.latest(ReadingId.of(ReadingKind.LOAD, c)).map(Figure::value).orElse(0.0));
        double sum = loads.lf() + loads.rf() + loads.lr() + loads.rr();
        AssumedCar described = Assumptions.complete(day.car(), legs.weighed() && sum > 0 ? OptionalDouble.of(sum) : OptionalDouble.empty());
        if (legs.weighed()) {
            for (Corner corner : Corner.values()) {
                double rate = legs.belief().wheelRatesNPerMm().get(corner.ordinal());
                effects.add(new Effect(TakenOver.rateKey(corner), described.corners().get(corner).wheelRateNPerMm(), rate,
                        rate * legs.belief().wheelRateRelativeSds().get(corner.ordinal())));
            }
        }
        Set<String> known = new HashSet<>();
        for (int i = 0; i < legs.adjusters().size(); i++) {
            Adjuster adjuster = legs.adjusters().get(i);
            String key = TakenOver.liftKey(adjuster.id().corner().axle(), adjuster.id().kind());
            if (known.add(key)) {
                double lift = legs.belief().liftsMmPerTurn().get(i);
                effects.add(new Effect(key, LegBelief.liftMmPerTurn(adjuster, described), lift, lift * legs.belief().liftRelativeSds().get(i)));
            }
        }
    }

    /** Only what was turned has anything to tell. */
    private static void angles(Day day, SuspensionTypes types, List<Effect> effects) {
        AngleBelief belief = new AngleBelief(day, AnglePlanner.described(day.car(), types), new ReadingUncertainty(day.car()));
        for (Axle axle : Axle.values()) {
            for (AdjusterKind kind : AngleBelief.KINDS) {
                boolean turned = day.turned().keySet().stream().anyMatch(id -> id.kind() == kind && id.corner().axle() == axle);
                boolean before = day.takenOver().filter(t -> t.effects().stream().anyMatch(e -> e.key()
                        .equals(TakenOver.angleKey(axle, AngleBelief.own(kind), kind)))).isPresent();
                if (turned || before) {
                    for (ReadingKind angle : AngleBelief.ANGLES) {
                        effects.add(new Effect(TakenOver.angleKey(axle, angle, kind), belief.described(axle, angle, kind),
                                belief.effect(axle, angle, kind), belief.sd(axle, angle, Map.of(kind, 1.0))));
                    }
                }
            }
        }
    }
}
