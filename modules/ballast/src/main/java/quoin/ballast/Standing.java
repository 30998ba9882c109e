package quoin.ballast;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.adjustment.CarModels;
import quoin.car.AssumedCar;
import quoin.car.Assumption;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.KnownMass;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.CarChange;
import quoin.mechanics.CarModel;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.PointMass;
import quoin.mechanics.SpacePoint;
import quoin.mechanics.Turns;
import quoin.workbench.DaySnapshot;
import quoin.workflow.Freshness;
import quoin.workflow.ReadingState;

/**
 * The car as it was last weighed, before the exact mechanics.
 *
 * @param car     its description
 * @param model   stands exactly as it was read, bars off
 * @param now     its state of rest: the readings
 * @param doubts  why the readings no longer hold, in words; empty = they do
 * @param assumed what had to be assumed of the car, in words
 */
record Standing(Car car, CarModel model, Equilibrium now, List<String> doubts, List<Assumption> assumed) {

    /** From the last weights and heights of the day; empty where a corner has not been weighed. */
    static Optional<Standing> of(DaySnapshot day) {
        PerCorner<ReadingState> loads = PerCorner.of(c -> day.status().reading(ReadingId.of(ReadingKind.LOAD, c)));
        Map<String, Double> heights = new LinkedHashMap<>();
        Set<String> doubts = new LinkedHashSet<>();
        for (Corner corner : Corner.values()) {
            if (loads.get(corner).value().isEmpty()) {
                return Optional.empty();
            }
            doubt(loads.get(corner), doubts);
        }
        for (HeightPoint point : day.car().heightPoints()) {
            ReadingState height = day.status().reading(point.reading());
            height.value().ifPresent(mm -> heights.put(point.name(), mm));
            doubt(height, doubts);
        }
        return Optional.of(of(day.car(), loads.map(l -> l.value().getAsDouble()), heights, List.copyOf(doubts)));
    }

    private static void doubt(ReadingState reading, Set<String> doubts) {
        if (reading.freshness() == Freshness.STALE) {
            doubts.addAll(reading.reasons());
        }
    }

    /**
     * From figures.
     *
     * @param loadsKg   the four weights, kg
     * @param heightsMm read heights by point name, mm
     */
    static Standing of(Car car, PerCorner<Double> loadsKg, Map<String, Double> heightsMm, List<String> doubts) {
        double total = loadsKg.lf() + loadsKg.rf() + loadsKg.lr() + loadsKg.rr();
        AssumedCar assumed = Assumptions.complete(car, OptionalDouble.of(total));
        CarModel model = CarModels.standing(assumed, loadsKg, heightsMm).car();
        return new Standing(car, model, CornerLoads.solve(model, Turns.NONE), doubts, assumed.assumptions());
    }

    /** What will be read after a change. */
    Equilibrium after(CarChange change) {
        PerAxle<Double> rates = new PerAxle<>(barRate(Axle.FRONT), barRate(Axle.REAR));
        return CornerLoads.solve(change.on(model, rates), Turns.NONE);
    }

    /** What will be read after some masses were put in or taken out. */
    Equilibrium after(List<PointMass> masses) {
        return after(CarChange.NONE.withMasses(masses));
    }

    /** Rate of a bar, N/mm; 0 where the car has none or its rate is unknown. */
    double barRate(Axle axle) {
        return car.axles().get(axle).bar().map(b -> b.rollRateNPerMm().orElse(0)).orElse(0.0);
    }

    /** Change of the centre of gravity's height when some masses are put in or taken out, mm. */
    double cgRiseMm(List<PointMass> masses) {
        double total = model.totalMassKg();
        double height = cgHeightMm();
        double moment = total * height;
        for (PointMass mass : masses) {
            total += mass.massKg();
            moment += mass.massKg() * mass.place().zMm();
        }
        return moment / total - height;
    }

    /** Height of the centre of gravity as known or assumed, mm. */
    double cgHeightMm() {
        return Assumptions.complete(car, OptionalDouble.of(model.totalMassKg())).cgHeightMm();
    }

    /** A known mass as the mechanics take it. */
    static PointMass mass(KnownMass known) {
        return new PointMass(known.massKg(), new SpacePoint(known.xMm(), known.yMm(), known.zMm()));
    }

    /** Every reading that the mechanics predict, with its value in a state of rest, loads first. */
    static Map<ReadingId, Double> readings(Car car, Equilibrium state) {
        Map<ReadingId, Double> all = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            all.put(ReadingId.of(ReadingKind.LOAD, corner), state.loadsKgf().get(corner));
        }
        all.put(ReadingId.ofCar(ReadingKind.TOTAL), state.shares().totalKgf());
        all.put(ReadingId.ofCar(ReadingKind.FRONT_SHARE), state.shares().frontPercent());
        all.put(ReadingId.ofCar(ReadingKind.LEFT_SHARE), state.shares().leftPercent());
        all.put(ReadingId.ofCar(ReadingKind.CROSS), state.shares().crossPercent());
        for (ReadingId height : car.heightReadings()) {
            Double mm = state.rideHeightsMm().get(height.place());
            if (mm != null) {
                all.put(height, mm);
            }
        }
        return all;
    }

}
