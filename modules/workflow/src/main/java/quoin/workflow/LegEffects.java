package quoin.workflow;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.LoadInput;
import quoin.mechanics.Sensitivity;
import quoin.mechanics.Turns;
import quoin.suspension.AngleResponse;

/**
 * What one job does to the readings of the others: links that lengthen a corner's leg move loads and heights, and perches
 * and pushrods move the wheel angles through the travel of the wheels.
 */
final class LegEffects {

    private LegEffects() {
    }

    /**
     * Loads, cross and heights after turning angle adjusters. A longer leg loads the car as a pad of the same height does.
     *
     * @param described how the wheels of each axle answer
     * @param moves     what is turned
     */
    static Map<ReadingId, Predicted> ofAngles(Day day, Map<Axle, AngleResponse> described, List<CornerMove> moves) {
        PerCorner<Double> lift = PerCorner.of(c -> moves.stream().filter(m -> m.adjuster().corner() == c)
                .mapToDouble(m -> m.turns() * described.get(c.axle()).of(m.adjuster().kind()).legLiftMm()).sum());
        Optional<LegBelief> legs = lift.equals(PerCorner.all(0.0)) ? Optional.empty() : LegBelief.of(day);
        return legs.map(l -> ofLift(day, l, lift)).orElse(Map.of());
    }

    private static Map<ReadingId, Predicted> ofLift(Day day, LegBelief legs, PerCorner<Double> lift) {
        List<Sensitivity> perMm = CornerLoads.sensitivities(legs.standing().car(), Turns.NONE, List.of(LoadInput.PAD_HEIGHT));
        Map<ReadingId, Predicted> all = new LinkedHashMap<>();
        if (legs.weighed()) {
            for (Corner corner : day.car().walkingOrder()) {
                double move = perMm.stream().mapToDouble(s -> s.loadsKgf().get(corner) * lift.get(s.corner())).sum();
                put(day, all, ReadingId.of(ReadingKind.LOAD, corner), move);
            }
            put(day, all, ReadingId.ofCar(ReadingKind.CROSS), perMm.stream().mapToDouble(s -> s.crossPercent() * lift.get(s.corner())).sum());
        }
        for (HeightPoint point : day.car().heightPoints()) {
            put(day, all, point.reading(), perMm.stream().mapToDouble(s -> s.rideHeightsMm().get(point.name()) * lift.get(s.corner())).sum());
        }
        return all;
    }

    private static void put(Day day, Map<ReadingId, Predicted> all, ReadingId reading, double move) {
        OptionalDouble now = Derived.value(day.car(), reading,
                id -> day.latest(id).map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty()));
        if (now.isPresent()) {
            var target = reading.kind() == ReadingKind.CROSS ? CrossAim.of(day) : day.targets().of(reading);
            all.put(reading, new Predicted(now.getAsDouble(), now.getAsDouble() + move, 0, target));
        }
    }

    /**
     * Camber, caster and toe of every wheel that was read, after perches and pushrods moved the wheels against the body.
     *
     * @param travelMm change of each wheel's travel, mm
     */
    static Map<ReadingId, Predicted> ofTravel(Day day, Map<Axle, AngleResponse> described, PerCorner<Double> travelMm) {
        Map<ReadingId, Predicted> all = new LinkedHashMap<>();
        for (ReadingKind angle : AngleBelief.ANGLES) {
            for (Corner corner : day.car().walkingOrder()) {
                ReadingId reading = ReadingId.of(angle, corner);
                Optional<Figure> read = day.latest(reading);
                if (read.isPresent()) {
                    AngleResponse response = described.get(corner.axle());
                    double move = AngleBelief.of(response.perMmTravel(), angle) * travelMm.get(corner)
                            + AngleBelief.of(response.perMmTravelAcross(), angle) * travelMm.get(corner.acrossAxle());
                    all.put(reading, new Predicted(read.get().value(), read.get().value() + move, 0, day.targets().of(reading)));
                }
            }
        }
        return all;
    }
}
