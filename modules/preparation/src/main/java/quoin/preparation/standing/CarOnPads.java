package quoin.preparation.standing;

import java.util.Map;
import java.util.OptionalDouble;
import quoin.adjustment.CarModels;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.mechanics.CarModel;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.PlanPoint;
import quoin.mechanics.Turns;

/** This car on pads that are not one plane, by the exact corner loads. As last weighed today, or as described where it was not. */
public final class CarOnPads {

    private final CarModel flat;
    private final Equilibrium onFlat;

    private CarOnPads(CarModel flat) {
        this.flat = flat;
        this.onFlat = CornerLoads.solve(flat, Turns.NONE);
    }

    /** The car of the day. */
    public static CarOnPads of(Day day) {
        PerCorner<OptionalDouble> read = PerCorner.of(c -> day.latest(ReadingId.of(ReadingKind.LOAD, c))
                .map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty()));
        double sum = 0;
        boolean weighed = true;
        for (Corner corner : Corner.values()) {
            weighed &= read.get(corner).isPresent() && read.get(corner).getAsDouble() > 0;
            sum += read.get(corner).orElse(0);
        }
        AssumedCar assumed = Assumptions.complete(day.car(), weighed ? OptionalDouble.of(sum) : OptionalDouble.empty());
        PerCorner<Double> loads = weighed ? read.map(OptionalDouble::getAsDouble) : CarModels.unweighed(assumed);
        return new CarOnPads(CarModels.standing(assumed, loads, Map.of()).car());
    }

    /** Where the pads stand, seen from above: under the wheels. */
    public static PerCorner<PlanPoint> pads(Car car) {
        return CentreOfGravity.contactPoints(car.wheelbaseMm(), car.trackMm(Axle.FRONT), car.trackMm(Axle.REAR));
    }

    /** What each scale shows more than on a plane, kg. */
    public PerCorner<Double> loadChangeKg(PerCorner<Double> heightsMm) {
        return on(heightsMm).loadsKgf().zip(onFlat.loadsKgf(), (on, plane) -> on - plane);
    }

    /** How far the pads move the cross weight, % of the total, plus = more on RF and LR. */
    public double crossChangePercent(PerCorner<Double> heightsMm) {
        return on(heightsMm).shares().crossPercent() - onFlat.shares().crossPercent();
    }

    private Equilibrium on(PerCorner<Double> heightsMm) {
        return CornerLoads.solve(flat.withCorners(PerCorner.of(c -> flat.corners().get(c).withPadHeightMm(heightsMm.get(c)))), Turns.NONE);
    }
}
