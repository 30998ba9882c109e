package quoin.mechanics;

import java.util.List;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * Something that is done to a car without touching a perch: masses put in or taken out, a bar joined, another tyre, a
 * softer one. {@link #on} gives the model of the changed car; solving it tells what every scale and height will read.
 *
 * @param masses         put in; a negative mass is taken out
 * @param barLinkErrorMm of a bar that is joined: how far its link is off at the wheel from going in free, mm, + loads the
 *                       left wheel, 0 = joined free; empty = stays off
 * @param wheelRiseMm    rise of the wheel centre by a bigger tyre, mm: circumference / (2 pi)
 * @param tyreRateFactor new vertical rate of the tyre by the present one, greater than 0; a tyre's rate follows its
 *                       pressure nearly in proportion (common practice, no source)
 */
public record CarChange(List<PointMass> masses, PerAxle<OptionalDouble> barLinkErrorMm, PerCorner<Double> wheelRiseMm,
        PerCorner<Double> tyreRateFactor) {

    /** Nothing is done. */
    public static final CarChange NONE = new CarChange(List.of(), PerAxle.both(OptionalDouble.empty()), PerCorner.all(0.0),
            PerCorner.all(1.0));

    /** @throws InvalidInputException naming the value that cannot be */
    public CarChange {
        masses = List.copyOf(masses);
        for (Axle axle : Axle.values()) {
            barLinkErrorMm.get(axle).ifPresent(mm -> Require.finite("barLinkError_mm." + axle, mm));
        }
        for (Corner corner : Corner.values()) {
            Require.finite("wheelRise_mm." + corner, wheelRiseMm.get(corner));
            Require.positive("tyreRateFactor." + corner, tyreRateFactor.get(corner));
        }
    }

    public CarChange withMasses(List<PointMass> changed) {
        return new CarChange(changed, barLinkErrorMm, wheelRiseMm, tyreRateFactor);
    }

    public CarChange withBar(Axle axle, double linkErrorMm) {
        OptionalDouble joined = OptionalDouble.of(linkErrorMm);
        return new CarChange(masses, axle == Axle.FRONT ? new PerAxle<>(joined, barLinkErrorMm.rear())
                : new PerAxle<>(barLinkErrorMm.front(), joined), wheelRiseMm, tyreRateFactor);
    }

    /** A longer tyre circumference at one corner, mm. */
    public CarChange withCircumference(Corner corner, double longerMm) {
        return new CarChange(masses, barLinkErrorMm, wheelRiseMm.with(corner, longerMm / (2 * Math.PI)), tyreRateFactor);
    }

    public CarChange withTyreRate(Corner corner, double factor) {
        return new CarChange(masses, barLinkErrorMm, wheelRiseMm, tyreRateFactor.with(corner, factor));
    }

    /**
     * The changed car. A bar that was off is joined in the car as it stands before anything else is done, so that a link
     * without error carries nothing there.
     *
     * @param car           the car as it stands, at {@link Turns#NONE}
     * @param barRateNPerMm rate of each bar, see {@link BarModel}; 0 = unknown or none
     */
    public CarModel on(CarModel car, PerAxle<Double> barRateNPerMm) {
        PerCorner<Double> travel = CornerLoads.solve(car, Turns.NONE).wheelTravelMm();
        CarModel tyres = car.withCorners(PerCorner.of(c -> {
            CornerModel corner = car.corners().get(c);
            OptionalDouble rate = corner.tyreRateNPerMm();
            return corner.withPadHeightMm(corner.padHeightMm() + wheelRiseMm.get(c)).withTyreRateNPerMm(
                    rate.isPresent() ? OptionalDouble.of(rate.getAsDouble() * tyreRateFactor.get(c)) : rate);
        }));
        return tyres.withBars(new PerAxle<>(bar(Axle.FRONT, car, travel, barRateNPerMm), bar(Axle.REAR, car, travel, barRateNPerMm)))
                .with(masses);
    }

    private BarModel bar(Axle axle, CarModel car, PerCorner<Double> travel, PerAxle<Double> rates) {
        OptionalDouble error = barLinkErrorMm.get(axle);
        if (error.isEmpty()) {
            return car.bars().get(axle);
        }
        double free = travel.get(axle.right()) - travel.get(axle.left());
        return new BarModel(rates.get(axle), free + error.getAsDouble());
    }
}
