package quoin.car;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Fills what the racer does not know, by rules that can be told in one line each. The rules are common practice (no
 * source); their only purpose is a first plan, which the readings of the day then correct.
 */
public final class Assumptions {

    /** Ride frequency used where a spring is unknown, Hz: light club cars lie between 1.8 and 2.8. */
    static final double RIDE_FREQUENCY_HZ = 2.2;
    static final double TOTAL_KG = 600;
    static final double MOTION_RATIO = 0.75;
    static final double TYRE_RATE_N_PER_MM = 200;
    /** Unsprung mass of one corner as a share of the whole car. */
    static final double UNSPRUNG_SHARE = 0.042;
    /** Height of the centre of gravity as a share of the wheelbase. */
    static final double CG_HEIGHT_SHARE = 0.18;
    static final double RIM_CHORD_MM = 360;
    /** Distance of a height point from the centre line as a share of the track. */
    static final double POINT_HALF_WIDTH_SHARE = 0.2;
    static final Setting PERCH = new Setting.Thread(1.5, false, 4, "quarter turn");

    private final Car car;
    private final List<Assumption> made = new ArrayList<>();

    private Assumptions(Car car) {
        this.car = car;
    }

    /** Completes a car that has not been weighed today. */
    public static AssumedCar complete(Car car) {
        return complete(car, OptionalDouble.empty());
    }

    /**
     * Completes a car.
     *
     * @param weighedTotalKg total of the scales, kg; empty where the car was not weighed
     */
    public static AssumedCar complete(Car car, OptionalDouble weighedTotalKg) {
        return new Assumptions(car).run(weighedTotalKg);
    }

    private AssumedCar run(OptionalDouble weighedTotalKg) {
        double total = weighedTotalKg.isPresent() ? weighedTotalKg.getAsDouble()
                : given(car.masses().totalKg(), TOTAL_KG, "total", "", "kg");
        double cgHeight = given(car.masses().cgHeightMm(), CG_HEIGHT_SHARE * car.wheelbaseMm(), "cgHeight", "", "mm");
        PerCorner<AssumedCorner> corners = PerCorner.of(c -> corner(c, total));
        List<AssumedCar.PlacedPoint> points = car.heightPoints().stream().map(this::point).toList();
        return new AssumedCar(car, corners, total, cgHeight, points, made);
    }

    private AssumedCorner corner(Corner corner, double total) {
        CornerSetup setup = car.corners().get(corner);
        String at = corner.name();
        double unsprung = given(setup.unsprungMassKg(), UNSPRUNG_SHARE * total, "unsprung", at, "kg");
        double ratio = given(setup.motionRatio(), MOTION_RATIO, "motionRatio", at, "");
        boolean hasPushrod = setup.adjuster(AdjusterKind.PUSHROD).isPresent();
        double rod = hasPushrod ? given(setup.pushrodRatio(), ratio, "pushrodRatio", at, "")
                : setup.pushrodRatio().orElse(ratio);
        double omega = 2 * Math.PI * RIDE_FREQUENCY_HZ;
        double wheelRate = Math.max(total / 4 - unsprung, 0.1 * total) * omega * omega / 1000;
        double spring = given(setup.springRateNPerMm(), wheelRate / (ratio * ratio), "springRate", at, "N/mm");
        double tyre = given(setup.tyreRateNPerMm(), TYRE_RATE_N_PER_MM, "tyreRate", at, "N/mm");
        double chord = given(setup.rimChordMm(), RIM_CHORD_MM, "rimChord", at, "mm");
        return new AssumedCorner(spring, ratio, rod, tyre, unsprung, chord, springLeg(corner, setup));
    }

    private List<Adjuster> springLeg(Corner corner, CornerSetup setup) {
        List<Adjuster> leg = setup.adjusters().stream().filter(a -> a.id().kind().isSpringLeg()).toList();
        if (!leg.isEmpty()) {
            return leg;
        }
        made.add(new Assumption("perchPitch", corner.name(), 1.5, "mm"));
        return List.of(Adjuster.unmeasured(new AdjusterId(AdjusterKind.PERCH, corner), PERCH));
    }

    private AssumedCar.PlacedPoint point(HeightPoint point) {
        Axle axle = point.corner().map(Corner::axle).orElse(Axle.FRONT);
        double x = given(point.xMm(), axle == Axle.FRONT ? 0 : -car.wheelbaseMm(), Assumption.POINT_X, point.name(), "mm");
        double side = point.corner().map(c -> c.isLeft() ? 1.0 : -1.0).orElse(0.0);
        double y = given(point.yMm(), side * POINT_HALF_WIDTH_SHARE * car.trackMm(axle), Assumption.POINT_Y, point.name(), "mm");
        return new AssumedCar.PlacedPoint(point.name(), x, y);
    }

    private double given(OptionalDouble known, double otherwise, String key, String place, String unit) {
        if (known.isPresent()) {
            return known.getAsDouble();
        }
        made.add(new Assumption(key, place, otherwise, unit));
        return otherwise;
    }
}
