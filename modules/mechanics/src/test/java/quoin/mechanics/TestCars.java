package quoin.mechanics;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/** A Formula 3 car of 5395 N: wheelbase 2675 mm, tracks 1520 and 1470 mm (dimensions printed in the F302 manual). */
final class TestCars {
    static final double WHEELBASE = 2675;
    static final double WEIGHT_N = 5395;
    static final PerCorner<Double> LOADS_N = new PerCorner<>(1210.860, 1162.940, 1529.866, 1491.334);
    static final PerCorner<PlanPoint> CONTACTS = CentreOfGravity.contactPoints(WHEELBASE, 1520, 1470);

    private TestCars() {
    }

    /** Wheel rates 90/70 N/mm (motion ratio 1), tyres as given, at rest level with the loads above. */
    static CarModel formula(OptionalDouble tyre, double cgHeight) {
        return formula(tyre, cgHeight, PerAxle.both(BarModel.DISCONNECTED), OptionalDouble.empty());
    }

    static CarModel formula(OptionalDouble tyre, double cgHeight, PerAxle<BarModel> bars, OptionalDouble chassis) {
        PerCorner<CornerModel> corners = PerCorner.of(c -> new CornerModel(CONTACTS.get(c).xMm(), CONTACTS.get(c).yMm(),
                0, c.isFront() ? 90 : 70, 1, 0, 0, 1, 1, tyre, 0));
        Map<String, SpacePoint> overWheels = new LinkedHashMap<>();
        for (Corner c : Corner.values()) {
            overWheels.put(c.name(), new SpacePoint(CONTACTS.get(c).xMm(), CONTACTS.get(c).yMm(), 0));
        }
        CarModel car = new CarModel(KilogramForce.fromNewtons(WEIGHT_N), new SpacePoint(-1498, 12, cgHeight), corners,
                bars, PerAxle.both(OptionalDouble.empty()), chassis, 0, overWheels);
        return StateFit.toReadings(car, Turns.NONE, LOADS_N.map(KilogramForce::fromNewtons), Map.of()).car();
    }

    static FlatFrame flat(double frontRate, double rearRate, OptionalDouble tyre) {
        double compliance = tyre.isPresent() ? 1 / tyre.getAsDouble() : 0;
        return new FlatFrame(new PerAxle<>(1520.0, 1470.0), PerCorner.of(c -> c.isFront() ? frontRate : rearRate),
                PerCorner.all(compliance), PerAxle.both(0.0), 0);
    }

    static FlatFrame withBars(FlatFrame flat, double front, double rear) {
        return new FlatFrame(flat.trackMm(), flat.wheelRateNPerMm(), flat.tyreComplianceMmPerN(),
                new PerAxle<>(front, rear), flat.chassisComplianceRadPerNmm());
    }

    static FlatFrame withChassis(FlatFrame flat, double nmPerDeg) {
        return new FlatFrame(flat.trackMm(), flat.wheelRateNPerMm(), flat.tyreComplianceMmPerN(), flat.barRateNPerMm(),
                Math.PI / 180 / (1000 * nmPerDeg));
    }

    static PerCorner<Double> raised(Corner corner, double mm) {
        return PerCorner.all(0.0).with(corner, mm);
    }

    static double cross(PerCorner<Double> values) {
        return values.rf() + values.lr();
    }

    static double track(CarModel car, Corner corner) {
        return car.trackMm(corner.isFront() ? Axle.FRONT : Axle.REAR);
    }
}
