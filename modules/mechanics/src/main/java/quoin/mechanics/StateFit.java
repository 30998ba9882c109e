package quoin.mechanics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.quantities.Texts;

/**
 * Makes a car model stand exactly as a real car was read: spring preload is never known, but four loads and the ride
 * heights say what it must be.
 *
 * <p>Kept from the model: springs, motion ratios, tyres, bars, chassis, pads, unsprung masses, height of the centre of
 * gravity. Found: sprung mass and its centre of gravity in plan (from the loads), the attitude (least squares from the
 * heights), and the spring compression of each corner (from its own equilibrium). The loads are reproduced exactly;
 * heights up to their residuals, which four points on a stiff frame leave as flatness error. Everything but the attitude
 * is explicit. Derived here; checked by solving the fitted car again.
 */
public final class StateFit {
    private static final Texts TEXTS = Texts.of(StateFit.class);
    private static final int MAX_ROUNDS = 100;
    private static final double SETTLED = 1e-13;

    private StateFit() {
    }

    /**
     * @param car the car as far as it is known
     * @param turns turns already made since the design position; counted as made in the readings
     * @param loadsKgf the four readings
     * @param heightsMm readings of named points of the model. Three points off one line fix the attitude, more are
     *        averaged; with fewer the attitude stays as near the design as the readings allow
     * @throws InvalidInputException naming a load or a height that cannot be
     */
    public static FittedCar toReadings(CarModel car, Turns turns, PerCorner<Double> loadsKgf,
            Map<String, Double> heightsMm) {
        double sprungKg = Shares.of(loadsKgf).totalKgf();
        for (Corner corner : Corner.values()) {
            sprungKg -= car.corners().get(corner).unsprungMassKg();
        }
        if (!(sprungKg > 0)) {
            throw new InvalidInputException("cornerLoads_kgf", TEXTS.phrase("loadsAddUpTo"));
        }
        heightsMm.forEach((name, height) -> {
            if (!car.rideHeightPoints().containsKey(name)) {
                throw new InvalidInputException("rideHeights_mm." + name, TEXTS.phrase("carHasNoRide"));
            }
            Require.finite("rideHeights_mm." + name, height);
        });
        CarModel fitted = car.withSprungMass(sprungKg, car.sprungCg());
        double[] pose = new double[LoadEquations.TRAVEL];
        for (int round = 0; round < MAX_ROUNDS; round++) {
            fitAttitude(fitted, heightsMm, pose);
            double[] u = state(fitted, turns, loadsKgf, pose);
            SpacePoint cg = centreOfGravity(fitted, turns, u);
            double twist = twist(fitted.withSprungMass(sprungKg, cg), turns, u);
            double moved = Math.abs(twist - pose[HeightTerm.TWIST]) * fitted.wheelbaseMm()
                    + Math.abs(cg.xMm() - fitted.sprungCg().xMm()) + Math.abs(cg.yMm() - fitted.sprungCg().yMm());
            pose[HeightTerm.TWIST] = twist;
            fitted = fitted.withSprungMass(sprungKg, cg);
            if (moved < SETTLED * fitted.wheelbaseMm()) {
                break;
            }
        }
        fitAttitude(fitted, heightsMm, pose);
        CarModel standing = withPreload(fitted, turns, state(fitted, turns, loadsKgf, pose));
        return new FittedCar(standing, turns, residuals(standing, heightsMm, pose));
    }

    /** Heave, roll and pitch that fit the heights best at the given twist (Gauss-Newton, least change where free). */
    private static void fitAttitude(CarModel car, Map<String, Double> heightsMm, double[] pose) {
        if (heightsMm.isEmpty()) {
            return;
        }
        double[] scale = {1, 2 / car.trackMm(Axle.FRONT), 2 / car.wheelbaseMm()};
        for (int round = 0; round < MAX_ROUNDS; round++) {
            double[][] slopes = new double[heightsMm.size()][3];
            double[] missing = new double[heightsMm.size()];
            int row = 0;
            for (Map.Entry<String, Double> reading : heightsMm.entrySet()) {
                HeightTerm term = new HeightTerm(car.rideHeightPoints().get(reading.getKey()), 0, car);
                term.evaluate(pose, 0);
                missing[row] = reading.getValue() - term.height();
                for (int k = 0; k < 3; k++) {
                    slopes[row][k] = term.slope[k] * scale[k];
                }
                row++;
            }
            RealVector step = new SingularValueDecomposition(new Array2DRowRealMatrix(slopes, false)).getSolver()
                    .solve(new ArrayRealVector(missing, false));
            for (int k = 0; k < 3; k++) {
                pose[k] += step.getEntry(k) * scale[k];
            }
            if (step.getNorm() < 1e-11 * (1 + Math.abs(pose[HeightTerm.HEAVE]))) {
                return;
            }
        }
    }

    /** Wheel travels and pad forces that go with a pose and the loads. */
    private static double[] state(CarModel car, Turns turns, PerCorner<Double> loadsKgf, double[] pose) {
        double[] u = new double[LoadEquations.SIZE];
        System.arraycopy(pose, 0, u, 0, pose.length);
        LoadEquations equations = new LoadEquations(car, turns);
        equations.evaluate(u);
        for (Corner corner : Corner.values()) {
            CornerModel model = car.corners().get(corner);
            double force = KilogramForce.toNewtons(loadsKgf.get(corner));
            HeightTerm wheel = equations.wheel(corner.ordinal());
            double height = model.padHeightMm() - model.tyreComplianceMmPerN() * force;
            // The height of a wheel is linear in its own travel.
            u[LoadEquations.TRAVEL + corner.ordinal()] = (height - wheel.height()) / wheel.slope[HeightTerm.TRAVEL];
            u[LoadEquations.FORCE + corner.ordinal()] = force;
        }
        return u;
    }

    /** Where the sprung mass must be to balance the loads, at the height given in the model. */
    private static SpacePoint centreOfGravity(CarModel car, Turns turns, double[] u) {
        LoadEquations equations = new LoadEquations(car, turns);
        equations.evaluate(u);
        double forward = 0;
        double left = 0;
        double weight = KilogramForce.toNewtons(car.sprungMassKg());
        for (Corner corner : Corner.values()) {
            double carried = u[LoadEquations.FORCE + corner.ordinal()]
                    - KilogramForce.toNewtons(car.corners().get(corner).unsprungMassKg());
            PlanPoint contact = equations.wheel(corner.ordinal()).inPlan();
            forward += carried * contact.xMm() / weight;
            left += carried * contact.yMm() / weight;
        }
        HeightTerm here = new HeightTerm(car.sprungCg(), 0, car);
        here.evaluate(u, 0);
        double dx = forward - here.inPlan().xMm();
        double dy = left - here.inPlan().yMm();
        return new SpacePoint(car.sprungCg().xMm() + dx, car.sprungCg().yMm() + dy, car.sprungCg().zMm());
    }

    private static double twist(CarModel car, Turns turns, double[] u) {
        LoadEquations equations = new LoadEquations(car, turns);
        equations.evaluate(u);
        return u[HeightTerm.TWIST] - equations.residual[HeightTerm.TWIST];
    }

    /** Spring compressions that hold each wheel where the readings put it. */
    private static CarModel withPreload(CarModel car, Turns turns, double[] u) {
        LoadEquations equations = new LoadEquations(car, turns);
        equations.evaluate(u);
        PerAxle<Double> bars = equations.barForces(u);
        return car.withCorners(PerCorner.of(corner -> {
            int i = corner.ordinal();
            CornerModel model = car.corners().get(corner);
            double travel = u[LoadEquations.TRAVEL + i];
            double carried = u[LoadEquations.FORCE + i] - KilogramForce.toNewtons(model.unsprungMassKg());
            double bar = bars.get(corner.axle()) * (corner.isLeft() ? 1 : -1);
            double atWheel = carried * equations.wheel(i).slope[HeightTerm.TRAVEL] - bar;
            double compression = atWheel / (equations.ratio(i, travel) * model.springRateNPerMm());
            return model.withSpringCompressionAtDesignMm(compression - equations.springTravel(i, travel));
        }));
    }

    private static Map<String, Double> residuals(CarModel car, Map<String, Double> heightsMm, double[] pose) {
        Map<String, Double> residuals = new LinkedHashMap<>();
        heightsMm.forEach((name, height) -> {
            HeightTerm term = new HeightTerm(car.rideHeightPoints().get(name), 0, car);
            term.evaluate(pose, 0);
            residuals.put(name, height - term.height());
        });
        return Collections.unmodifiableMap(residuals);
    }

    /**
     * A car that stands as it was read.
     *
     * @param car the model with mass, centre of gravity and spring compressions found
     * @param turns turns counted as already made; solve with these to get the readings back
     * @param heightResidualsMm read height less the model's, per point read
     */
    public record FittedCar(CarModel car, Turns turns, Map<String, Double> heightResidualsMm) {
    }
}
