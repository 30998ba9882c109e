package quoin.adjustment;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.AssumedCorner;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.mechanics.BarModel;
import quoin.mechanics.CarModel;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.CornerModel;
import quoin.mechanics.PlanPoint;
import quoin.mechanics.SpacePoint;
import quoin.mechanics.StateFit;
import quoin.mechanics.Turns;

/** Puts a car of the garage before the corner-load mechanics. Body origin: on the centre line under the front axle. */
public final class CarModels {

    private CarModels() {
    }

    /**
     * The car standing exactly as it was read, bars disconnected, with nothing turned since.
     *
     * @param car       the car, complete
     * @param loadsKgf  the four readings, kg
     * @param heightsMm read heights by point name; may be empty
     */
    public static StateFit.FittedCar standing(AssumedCar car, PerCorner<Double> loadsKgf, Map<String, Double> heightsMm) {
        return StateFit.toReadings(model(car, loadsKgf, heightsMm), Turns.NONE, loadsKgf, heightsMm);
    }

    /** Loads to go on where the car was not weighed: the total spread with half on each axle and half on each side. */
    public static PerCorner<Double> unweighed(AssumedCar car) {
        return PerCorner.all(car.totalKg() / 4);
    }

    private static CarModel model(AssumedCar assumed, PerCorner<Double> loads, Map<String, Double> heights) {
        double wheelbase = assumed.car().wheelbaseMm();
        PerCorner<PlanPoint> contacts = CentreOfGravity.contactPoints(wheelbase, assumed.car().trackMm(Axle.FRONT),
                assumed.car().trackMm(Axle.REAR));
        PerCorner<CornerModel> corners = PerCorner.of(c -> corner(assumed.corners().get(c), contacts.get(c)));
        double unsprung = 0;
        double moment = 0;
        for (Corner corner : Corner.values()) {
            AssumedCorner c = assumed.corners().get(corner);
            unsprung += c.unsprungMassKg();
            moment += c.unsprungMassKg() * wheelRadiusMm(assumed);
        }
        double total = loads.lf() + loads.rf() + loads.lr() + loads.rr();
        double sprung = total - unsprung;
        PlanPoint cg = CentreOfGravity.inPlan(loads, contacts);
        double sprungHeight = (total * assumed.cgHeightMm() - moment) / sprung;
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        for (AssumedCar.PlacedPoint point : assumed.heightPoints()) {
            points.put(point.name(), new SpacePoint(point.xMm(), point.yMm(), heights.getOrDefault(point.name(), 0.0)));
        }
        return new CarModel(sprung, new SpacePoint(cg.xMm(), cg.yMm(), sprungHeight), corners,
                PerAxle.both(BarModel.DISCONNECTED), PerAxle.both(OptionalDouble.empty()), OptionalDouble.empty(), 0, points);
    }

    /** Wheel centre height for the unsprung masses: a 13-inch race tyre; 50 mm more or less move the sprung CG by 1 %. */
    private static double wheelRadiusMm(AssumedCar car) {
        return Math.min(270, 0.9 * car.cgHeightMm());
    }

    /** How far the springs are compressed is left open: the fit to the readings finds it. */
    private static CornerModel corner(AssumedCorner corner, PlanPoint contact) {
        return new CornerModel(contact.xMm(), contact.yMm(), corner.unsprungMassKg(), corner.springRateNPerMm(),
                corner.motionRatio(), 0, 0, threadPerTurnMm(corner, AdjusterKind.PERCH),
                threadPerTurnMm(corner, AdjusterKind.PUSHROD) * corner.liftPerThreadMm(AdjusterKind.PUSHROD),
                OptionalDouble.of(corner.tyreRateNPerMm()), 0);
    }

    private static double threadPerTurnMm(AssumedCorner corner, AdjusterKind kind) {
        for (Adjuster adjuster : corner.springLeg()) {
            if (adjuster.id().kind() == kind && adjuster.setting() instanceof Setting.Thread thread) {
                return thread.mmPerTurn();
            }
        }
        return 0;
    }
}
