package quoin.workflow;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.adjustment.Verdict;
import quoin.car.AntiRollBar;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.mechanics.BarModel;
import quoin.mechanics.CarModel;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.Turns;

/**
 * What joining the bars did to the weights: the cross weight with the bars joined less that with them off, everything else as
 * it was. A bar whose link fits joins free and moves nothing.
 *
 * @param joined     axles whose bars were joined between the two weighings; more than one cannot be told apart
 * @param off        cross weight with the bars off, %
 * @param with       cross weight with the bars joined, %
 * @param totalKg    weight of the car, kg
 * @param linkMm     per bar, how far its link is off, mm of wheel travel, plus = it loads the left wheel, if this bar alone is the
 *                   cause; empty where the rate of the bar is not known
 */
public record BarPreload(List<Axle> joined, Measured off, Measured with, double totalKg, Map<Axle, Double> linkMm) {

    private static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);

    public BarPreload {
        joined = List.copyOf(joined);
        linkMm = Map.copyOf(linkMm);
    }

    /** The weighings on both sides of the last joining; empty where there are not both, or something else was done between. */
    public static Optional<BarPreload> of(Day day) {
        Timeline timeline = Timeline.of(day);
        List<Timeline.Event> bars = timeline.events().stream().filter(e -> e.what() == Disturbance.BAR).toList();
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        long last = bars.get(bars.size() - 1).entry();
        ReadingsAt read = new ReadingsAt(day);
        Optional<Measured> with = read.at(CROSS, day.revision()).filter(m -> isWholeAfter(day, last));
        Optional<Measured> off = lastOff(day, read, bars);
        if (with.isEmpty() || off.isEmpty() || isWorkedOn(timeline, off.get().entry(), with.get().entry())) {
            return Optional.empty();
        }
        List<Axle> joined = new ArrayList<>();
        bars.stream().filter(e -> e.entry() > off.get().entry() && Conditions.CONNECTED.equals(e.value()))
                .flatMap(e -> e.axle().stream()).distinct().forEach(joined::add);
        double total = read.at(ReadingId.ofCar(ReadingKind.TOTAL), day.revision()).orElseThrow().value();
        double moved = with.get().value() - off.get().value();
        return joined.isEmpty() ? Optional.empty() : Optional.of(new BarPreload(joined, off.get(), with.get(), total,
                links(day, joined, moved)));
    }

    /** The last weighing before the first joining of the last run of joinings. */
    private static Optional<Measured> lastOff(Day day, ReadingsAt read, List<Timeline.Event> bars) {
        for (int i = bars.size() - 1; i >= 0; i--) {
            if (bars.get(i).key().isEmpty() || !bars.get(i).value().equals(Conditions.CONNECTED)) {
                continue;
            }
            long before = bars.get(i).entry() - 1;
            Optional<Measured> seen = read.at(CROSS, before);
            boolean bare = seen.isPresent() && day.latestAt(ReadingId.of(ReadingKind.LOAD, Corner.LF), seen.get().entry())
                    .filter(f -> bars.stream().filter(b -> b.entry() < f.entry()).reduce((a, b) -> b)
                            .filter(b -> b.value().equals(Conditions.DISCONNECTED)).isPresent()).isPresent();
            if (bare) {
                return seen;
            }
        }
        return Optional.empty();
    }

    private static boolean isWholeAfter(Day day, long entry) {
        return PerCorner.of(c -> day.latest(ReadingId.of(ReadingKind.LOAD, c)).filter(f -> f.entry() > entry).isPresent())
                .equals(PerCorner.all(true));
    }

    private static boolean isWorkedOn(Timeline timeline, long from, long to) {
        return timeline.events().stream().anyMatch(e -> e.entry() > from && e.entry() < to && e.what() != Disturbance.BAR
                && Staleness.of(e.what(), e.axle(), ReadingId.of(ReadingKind.LOAD, Corner.LF)) == Staleness.Effect.STALE);
    }

    private static Map<Axle, Double> links(Day day, List<Axle> joined, double movedPercent) {
        Map<Axle, Double> found = new EnumMap<>(Axle.class);
        Optional<LegBelief> legs = LegBelief.of(day);
        for (Axle axle : joined) {
            OptionalDouble rate = day.car().axles().get(axle).bar().map(AntiRollBar::rollRateNPerMm).orElse(OptionalDouble.empty());
            if (legs.isPresent() && rate.isPresent()) {
                found.put(axle, movedPercent / crossPerMm(legs.get().standing().car(), axle, rate.getAsDouble()));
            }
        }
        return found;
    }

    /**
     * Change of the cross weight per mm of link error, %, by the exact corner loads of the car on its scales.
     *
     * @param rateNPerMm of the bar in roll, see {@link AntiRollBar}
     */
    static double crossPerMm(CarModel car, Axle axle, double rateNPerMm) {
        Equilibrium bare = CornerLoads.solve(car.withBars(PerAxle.both(BarModel.DISCONNECTED)), Turns.NONE);
        double free = bare.wheelTravelMm().get(axle.right()) - bare.wheelTravelMm().get(axle.left());
        BarModel forced = new BarModel(rateNPerMm, free + 1);
        PerAxle<BarModel> bars = axle == Axle.FRONT ? new PerAxle<>(forced, BarModel.DISCONNECTED)
                : new PerAxle<>(BarModel.DISCONNECTED, forced);
        return CornerLoads.solve(car.withBars(bars), Turns.NONE).shares().crossPercent() - bare.shares().crossPercent();
    }

    public Difference difference() {
        return Difference.of(off, with);
    }

    /** Weight that joining moved onto each wheel of RF and LR, and off each of the others, kg. */
    public double kgPerWheel() {
        return difference().amount() / 100 * totalKg / 2;
    }

    /** Read within the limit of {@link Closing#CROSS_LIMIT}: simple acceptance, as the rules take it. */
    public boolean isFree() {
        return Math.abs(difference().amount()) <= Closing.CROSS_LIMIT + 1e-9;
    }

    /** The difference against the limit, its uncertainty taken into account. */
    public Verdict verdict() {
        return Verdict.of(difference().amount(), 0, Closing.CROSS_LIMIT, difference().uncertainty());
    }
}
