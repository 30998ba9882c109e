package quoin.ballast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.mechanics.CarChange;
import quoin.mechanics.PointMass;
import quoin.mechanics.SpacePoint;

/**
 * A question about the car: another driver, other fuel, a bar joined, other tyres.
 *
 * @param driverKg       how much heavier the other driver is, kg; negative = lighter
 * @param leanLeftMm     how far the driver leans to the left, mm; negative = to the right
 * @param fuelKg         how much more fuel, kg; negative = less
 * @param barLinkErrorMm of a bar that is joined: how far its link is off, mm at the wheel, + loads the left wheel; empty = off
 * @param circumferenceMm how much longer each tyre is round, mm
 * @param softerPercent  how much softer each tyre is, % of its rate
 */
record WhatIf(double driverKg, double leanLeftMm, double fuelKg, PerAxle<OptionalDouble> barLinkErrorMm,
        PerCorner<Double> circumferenceMm, PerCorner<Double> softerPercent) {

    static final WhatIf NOTHING = new WhatIf(0, 0, 0, PerAxle.both(OptionalDouble.empty()), PerCorner.all(0.0), PerCorner.all(0.0));

    /** True where the question needs a driver's mass with a place that the car does not state. */
    boolean lacksDriver(Car car) {
        return (driverKg != 0 || leanLeftMm != 0) && car.masses().massOf(KnownMass.Role.DRIVER) == 0;
    }

    boolean lacksFuel(Car car) {
        return fuelKg != 0 && car.masses().massOf(KnownMass.Role.FUEL) == 0;
    }

    /** The change as the mechanics take it; a driver or fuel of several masses changes in proportion. */
    CarChange on(Car car) {
        List<PointMass> masses = new ArrayList<>();
        double drivers = car.masses().massOf(KnownMass.Role.DRIVER);
        double fuels = car.masses().massOf(KnownMass.Role.FUEL);
        for (KnownMass known : car.masses().known()) {
            if (known.role() == KnownMass.Role.DRIVER && drivers > 0) {
                double heavier = known.massKg() * (1 + driverKg / drivers);
                masses.add(Standing.mass(known).removed());
                masses.add(new PointMass(heavier, new SpacePoint(known.xMm(), known.yMm() + leanLeftMm, known.zMm())));
            } else if (known.role() == KnownMass.Role.FUEL && fuels > 0) {
                masses.add(new PointMass(known.massKg() * fuelKg / fuels, new SpacePoint(known.xMm(), known.yMm(), known.zMm())));
            }
        }
        CarChange change = CarChange.NONE.withMasses(masses);
        for (Axle axle : Axle.values()) {
            OptionalDouble error = barLinkErrorMm.get(axle);
            change = error.isPresent() ? change.withBar(axle, error.getAsDouble()) : change;
        }
        for (Corner corner : Corner.values()) {
            change = change.withCircumference(corner, circumferenceMm.get(corner)).withTyreRate(corner, 1 - softerPercent.get(corner) / 100);
        }
        return change;
    }
}
