package quoin.mechanics;

import java.util.LinkedHashMap;
import java.util.Map;
import org.ode4j.math.DVector3;
import org.ode4j.math.DVector3C;
import org.ode4j.ode.DBody;
import org.ode4j.ode.DMass;
import org.ode4j.ode.DSliderJoint;
import org.ode4j.ode.DWorld;
import org.ode4j.ode.OdeHelper;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * A car dropped into a general-purpose physics engine (ode4j) and left to come to rest: a rigid body with four wheels on
 * sliders, springs, bars and tyres as forces, dampers only to end the motion. Nothing of the equilibrium equations is
 * used. Chassis twist is not modelled, tyres must have a rate. Inside, SI units as the engine likes them.
 */
final class SettledBody {
    private static final double STEP_S = 5e-4;
    private static final double REST_S = 12;
    private static final double STILL = 1e-11;
    private static final double G = 9.80665;
    private static final double DAMPER_NS_PER_M = 6000;
    private static final double TYRE_DAMPING_NS_PER_M = 2500;
    private static final double MM = 1e-3;
    private static final double N_PER_MM = 1e3;
    private static final double LIGHTEST_KG = 5;

    private final CarModel car;
    private final Turns turns;
    private final DWorld world = OdeHelper.createWorld();
    private final DBody body;
    private final Map<Corner, DBody> wheels = new LinkedHashMap<>();
    private final Map<Corner, DSliderJoint> sliders = new LinkedHashMap<>();
    private final Map<Corner, Double> padN = new LinkedHashMap<>();

    private SettledBody(CarModel car, Turns turns) {
        this.car = car;
        this.turns = turns;
        world.setGravity(0, 0, -G);
        world.setCFM(0);
        world.setERP(0.8);
        body = solid(car.sprungMassKg(), 2.5, 1.2, 0.5, car.sprungCg());
        for (Corner corner : Corner.values()) {
            addWheel(corner);
        }
    }

    /** Pad loads in kgf and heights in mm of a car at rest. */
    record Rest(PerCorner<Double> loadsKgf, Map<String, Double> rideHeightsMm, PerCorner<Double> wheelTravelMm) {
    }

    static Rest of(CarModel car, Turns turns) {
        OdeHelper.initODE2(0);
        SettledBody settled = new SettledBody(car, turns);
        try {
            settled.run();
            return settled.rest();
        } finally {
            settled.world.destroy();
            OdeHelper.closeODE();
        }
    }

    private DBody solid(double massKg, double length, double width, double height, SpacePoint place) {
        DBody solid = OdeHelper.createBody(world);
        DMass mass = OdeHelper.createMass();
        mass.setBoxTotal(massKg, length, width, height);
        solid.setMass(mass);
        solid.setPosition(place.xMm() * MM, place.yMm() * MM, place.zMm() * MM);
        return solid;
    }

    /** A wheel's mass is at its contact point, and slides square to the line contact point - roll centre. */
    private void addWheel(Corner corner) {
        CornerModel model = car.corners().get(corner);
        double mass = Math.max(model.unsprungMassKg(), LIGHTEST_KG);
        DBody wheel = solid(mass, 0.5, 0.2, 0.5, new SpacePoint(model.xMm(), model.yMm(), 0));
        wheel.setGravityMode(false);
        DSliderJoint slider = OdeHelper.createSliderJoint(world);
        slider.attach(wheel, body);
        slider.setAxis(0, sideways(corner), 1);
        wheels.put(corner, wheel);
        sliders.put(corner, slider);
    }

    private double sideways(Corner corner) {
        return car.rollCentreHeightMm().get(corner.axle()).orElse(0) / car.corners().get(corner).yMm();
    }

    private void run() {
        for (double time = 0; time < REST_S; time += STEP_S) {
            push();
            world.step(STEP_S);
            if (time > 1 && isStill()) {
                return;
            }
        }
        throw new AssertionError("not at rest after " + REST_S + " s: " + body.getLinearVel());
    }

    private boolean isStill() {
        double fastest = Math.max(body.getLinearVel().length(), body.getAngularVel().length());
        for (DBody wheel : wheels.values()) {
            fastest = Math.max(fastest, wheel.getLinearVel().length());
        }
        return fastest < STILL;
    }

    private void push() {
        for (Axle axle : Axle.values()) {
            BarModel bar = car.bars().get(axle);
            double across = travelMm(axle.left()) - travelMm(axle.right()) + bar.linkPreloadOffsetMm();
            double force = bar.wheelRateInRollNPerMm() / 2 * across;
            pushApart(axle.left(), force);
            pushApart(axle.right(), -force);
        }
    }

    /** Spring, bar and damper between wheel and body; tyre and weight on the wheel. */
    private void pushApart(Corner corner, double barN) {
        CornerModel model = car.corners().get(corner);
        double linkage = travelMm(corner) + model.rodLiftMmPerTurn() * turns.rod().get(corner);
        double ratio = model.motionRatio() + model.motionRatioSlopePerMm() * linkage;
        double compression = model.springCompressionAtDesignMm() + model.motionRatio() * linkage
                + model.motionRatioSlopePerMm() * linkage * linkage / 2
                + model.perchPitchMmPerTurn() * turns.perch().get(corner);
        double alongUnit = Math.hypot(1, sideways(corner));
        double up = model.springRateNPerMm() * compression * ratio + barN;
        DBody wheel = wheels.get(corner);
        DVector3C contact = wheel.getPosition();
        DVector3 axis = new DVector3();
        sliders.get(corner).getAxis(axis);
        // The engine's own rate of a slider leaves out the turning of the body.
        DVector3 closing = new DVector3();
        body.getPointVel(contact, closing);
        closing.scale(-1).add(wheel.getLinearVel());
        DVector3 onBody = axis.copy().scale(up / alongUnit + DAMPER_NS_PER_M * axis.dot(closing));
        body.addForceAtPos(onBody, contact);
        wheel.addForce(onBody.scale(-1));
        double squeeze = model.padHeightMm() * MM - contact.get2();
        double tyre = model.tyreRateNPerMm().orElseThrow() * N_PER_MM * squeeze;
        padN.put(corner, tyre);
        DVector3 drag = wheel.getLinearVel().reScale(-TYRE_DAMPING_NS_PER_M);
        wheel.addForce(drag.add(0, 0, tyre - G * model.unsprungMassKg()));
    }

    /** Upward part of the movement of a wheel against the body. */
    private double travelMm(Corner corner) {
        return sliders.get(corner).getPosition() / MM / Math.hypot(1, sideways(corner));
    }

    private Rest rest() {
        Map<String, Double> heights = new LinkedHashMap<>();
        car.rideHeightPoints().forEach((name, point) -> {
            DVector3 now = new DVector3();
            body.getRelPointPos((point.xMm() - car.sprungCg().xMm()) * MM, (point.yMm() - car.sprungCg().yMm()) * MM,
                    (point.zMm() - car.sprungCg().zMm()) * MM, now);
            heights.put(name, now.get2() / MM);
        });
        return new Rest(PerCorner.of(c -> KilogramForce.fromNewtons(padN.get(c))), heights,
                PerCorner.of(this::travelMm));
    }
}
