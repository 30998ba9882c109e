package quoin.mechanics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.quantities.Texts;

/**
 * A car standing on four scales: one body on four springs and tyres. Body axes after ISO 8855 (x forward, y left, z up)
 * with z = 0 at the road at the design position; the body's origin may be anywhere along the car.
 *
 * @param sprungMassKg everything that the springs carry, driver and fuel included
 * @param sprungCg its centre of gravity
 * @param corners the four corners
 * @param bars the anti-roll bars
 * @param rollCentreHeightMm height of the point that the wheel moves square to, seen from the front; empty = the wheel
 *        moves along the body's z
 * @param torsionalStiffnessNmPerDeg of the chassis between the axles; empty = rigid
 * @param torsionAxisHeightMm height of the axis, parallel to x on the centre line, about which the chassis twists. A
 *        section turns in proportion to its distance from mid-wheelbase: the front axle by + half, the rear axle by -
 *        half of the twist
 * @param rideHeightPoints named points under the body, kept in the given order
 */
public record CarModel(double sprungMassKg, SpacePoint sprungCg, PerCorner<CornerModel> corners, PerAxle<BarModel> bars,
        PerAxle<OptionalDouble> rollCentreHeightMm, OptionalDouble torsionalStiffnessNmPerDeg,
        double torsionAxisHeightMm, Map<String, SpacePoint> rideHeightPoints) {
    private static final Texts TEXTS = Texts.of(CarModel.class);

    /** @throws InvalidInputException naming the field that no car can have */
    public CarModel {
        Require.positive("sprungMass_kg", sprungMassKg);
        checkPoint("sprungCg", sprungCg);
        Require.present("corners", corners);
        for (Corner corner : Corner.values()) {
            corners.get(corner).check("corners." + corner);
        }
        checkPlan(corners);
        Require.present("antiRollBars", bars).front().check("antiRollBars.front");
        bars.rear().check("antiRollBars.rear");
        for (Axle axle : Axle.values()) {
            String path = "rollCentreHeight_mm." + (axle == Axle.FRONT ? "front" : "rear");
            Require.present("rollCentreHeight_mm", rollCentreHeightMm).get(axle)
                    .ifPresent(height -> Require.finite(path, height));
            checkGuidance(path, rollCentreHeightMm.get(axle), corners, axle);
        }
        Require.present("chassisTorsionalStiffness_Nm_per_deg", torsionalStiffnessNmPerDeg)
                .ifPresent(rate -> Require.positive("chassisTorsionalStiffness_Nm_per_deg", rate));
        Require.finite("torsionAxisHeight_mm", torsionAxisHeightMm);
        Require.present("rideHeightPoints", rideHeightPoints)
                .forEach((name, point) -> checkPoint("rideHeightPoints." + name, point));
        rideHeightPoints = Collections.unmodifiableMap(new LinkedHashMap<>(rideHeightPoints));
    }

    /** A car without roll-centre guidance, bars or chassis twist: the plain four-spring body. */
    public static CarModel plain(double sprungMassKg, SpacePoint sprungCg, PerCorner<CornerModel> corners,
            Map<String, SpacePoint> rideHeightPoints) {
        return new CarModel(sprungMassKg, sprungCg, corners, PerAxle.both(BarModel.DISCONNECTED),
                PerAxle.both(OptionalDouble.empty()), OptionalDouble.empty(), 0, rideHeightPoints);
    }

    /** Sprung and unsprung mass together, in kg. */
    public double totalMassKg() {
        double total = sprungMassKg;
        for (Corner corner : Corner.values()) {
            total += corners.get(corner).unsprungMassKg();
        }
        return total;
    }

    /** Distance between the mean contact points of the axles. */
    public double wheelbaseMm() {
        return axleX(Axle.FRONT) - axleX(Axle.REAR);
    }

    /** Distance between the contact points of one axle, across the car. */
    public double trackMm(Axle axle) {
        return corners.get(axle.left()).yMm() - corners.get(axle.right()).yMm();
    }

    /** Mean contact point of an axle, forward of the origin. */
    double axleX(Axle axle) {
        return (corners.get(axle.left()).xMm() + corners.get(axle.right()).xMm()) / 2;
    }

    /** Contact points seen from above. */
    public PerCorner<PlanPoint> contactPoints() {
        return corners.map(CornerModel::inPlan);
    }

    public CarModel withCorners(PerCorner<CornerModel> changed) {
        return new CarModel(sprungMassKg, sprungCg, changed, bars, rollCentreHeightMm, torsionalStiffnessNmPerDeg,
                torsionAxisHeightMm, rideHeightPoints);
    }

    public CarModel withBars(PerAxle<BarModel> changed) {
        return new CarModel(sprungMassKg, sprungCg, corners, changed, rollCentreHeightMm, torsionalStiffnessNmPerDeg,
                torsionAxisHeightMm, rideHeightPoints);
    }

    public CarModel withTorsionalStiffnessNmPerDeg(OptionalDouble stiffness) {
        return new CarModel(sprungMassKg, sprungCg, corners, bars, rollCentreHeightMm, stiffness, torsionAxisHeightMm,
                rideHeightPoints);
    }

    public CarModel withSprungMass(double massKg, SpacePoint cg) {
        return new CarModel(massKg, cg, corners, bars, rollCentreHeightMm, torsionalStiffnessNmPerDeg,
                torsionAxisHeightMm, rideHeightPoints);
    }

    public CarModel withRideHeightPoints(Map<String, SpacePoint> points) {
        return new CarModel(sprungMassKg, sprungCg, corners, bars, rollCentreHeightMm, torsionalStiffnessNmPerDeg,
                torsionAxisHeightMm, points);
    }

    /**
     * The same car, perches and springs untouched, with known masses put in (or taken out: negative). Solving it again
     * tells what every scale and height will read. Exact for a rigid chassis; one that twists is given all its mass at the
     * common centre of gravity, which leaves out the twist that the mass itself makes about that point.
     */
    public CarModel with(List<PointMass> masses) {
        double mass = sprungMassKg;
        double mx = sprungMassKg * sprungCg.xMm();
        double my = sprungMassKg * sprungCg.yMm();
        double mz = sprungMassKg * sprungCg.zMm();
        for (PointMass added : masses) {
            mass += added.massKg();
            mx += added.massKg() * added.place().xMm();
            my += added.massKg() * added.place().yMm();
            mz += added.massKg() * added.place().zMm();
        }
        Require.positive("sprungMass_kg", mass);
        return withSprungMass(mass, new SpacePoint(mx / mass, my / mass, mz / mass));
    }

    private static void checkPoint(String path, SpacePoint point) {
        Require.present(path, point);
        Require.finite(path + ".x_mm", point.xMm());
        Require.finite(path + ".y_mm", point.yMm());
        Require.finite(path + ".z_mm", point.zMm());
    }

    private static void checkGuidance(String path, OptionalDouble height, PerCorner<CornerModel> corners, Axle axle) {
        boolean onCentreLine = corners.get(axle.left()).yMm() == 0 || corners.get(axle.right()).yMm() == 0;
        if (height.orElse(0) != 0 && onCentreLine) {
            throw new InvalidInputException(path, TEXTS.phrase("rollCentreOnThe"));
        }
    }

    private static void checkPlan(PerCorner<CornerModel> corners) {
        for (Axle axle : Axle.values()) {
            if (!(corners.get(axle.left()).yMm() > corners.get(axle.right()).yMm())) {
                throw new InvalidInputException("corners." + axle.left() + ".y_mm", TEXTS.phrase("leftWheelMustStand"));
            }
        }
        for (boolean left : new boolean[] {true, false}) {
            Corner front = Corner.of(Axle.FRONT, left);
            if (!(corners.get(front).xMm() > corners.get(front.sameSide()).xMm())) {
                throw new InvalidInputException("corners." + front + ".x_mm", TEXTS.phrase("frontWheelMustStand"));
            }
        }
    }
}
