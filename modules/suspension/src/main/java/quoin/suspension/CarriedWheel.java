package quoin.suspension;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import quoin.suspension.solver.Coil;
import quoin.suspension.solver.Pickup;
import quoin.suspension.solver.Vectors;
import quoin.suspension.solver.Walker;

/**
 * Reads the outputs off a wheel and its carrier; y outboard throughout. The contact point is the lowest point of a thin
 * disc of the loaded radius.
 */
final class CarriedWheel {
    private final double[] spinAxis;
    private final double radius;
    private final double[] designContact;
    private final SteeringAxis axis;
    private final Coil coil;

    /** @param coil null where the spring is not described */
    CarriedWheel(Wheel wheel, SteeringAxis axis, Coil coil) {
        spinAxis = Vectors.unit(Change.array(wheel.spinAxis()));
        radius = wheel.loadedRadiusMm();
        designContact = Vectors.plus(Change.array(wheel.centre()), 1, contactArm(spinAxis));
        this.axis = axis;
        this.coil = coil;
    }

    Coil coil() {
        return coil;
    }

    SteeringAxis axis() {
        return axis;
    }

    double[] spinAxis(Walker walker) {
        return walker.pose().direction(spinAxis);
    }

    /** Camber in rad: top outboard is plus, so an axis that points up outboard is minus. */
    static double camber(double[] spin) {
        return -Math.asin(spin[2]);
    }

    /** Toe in rad: an axis that points forward outboard is toe-in. */
    static double toe(double[] spin) {
        return Math.atan2(spin[0], spin[1]);
    }

    static double camberRate(double[] spin, double[] motion) {
        return -turned(spin, motion)[2] / Math.hypot(spin[0], spin[1]);
    }

    static double toeRate(double[] spin, double[] motion) {
        double[] rate = turned(spin, motion);
        return (rate[0] * spin[1] - rate[1] * spin[0]) / (spin[0] * spin[0] + spin[1] * spin[1]);
    }

    private static double[] turned(double[] direction, double[] motion) {
        return Vectors.cross(Arrays.copyOfRange(motion, 3, 6), direction);
    }

    /** From the wheel centre to the contact point. */
    private double[] contactArm(double[] spin) {
        double level = Math.hypot(spin[0], spin[1]);
        double k = spin[2] * radius / level;
        return new double[] {k * spin[0], k * spin[1], -radius * level};
    }

    double[] contactPoint(Walker walker) {
        return Vectors.plus(walker.pose().origin(), 1, contactArm(spinAxis(walker)));
    }

    /** Velocity of the contact point itself, which is another point of the tyre at every moment. */
    double[] contactPathRate(Walker walker, double[] motion) {
        double[] spin = spinAxis(walker);
        double[] rate = turned(spin, motion);
        double level = Math.hypot(spin[0], spin[1]);
        double levelRate = -spin[2] * rate[2] / level;
        double k = spin[2] * radius / level;
        double kRate = radius * (rate[2] * level - spin[2] * levelRate) / (level * level);
        return new double[] {motion[0] + k * rate[0] + kRate * spin[0], motion[1] + k * rate[1] + kRate * spin[1],
            motion[2] - radius * levelRate};
    }

    /** All outputs at the walker's position. @param travelMotion per mm that every driven wheel rises */
    Map<CurveOutput, Double> outputs(Walker walker, double[] travelMotion) {
        Map<CurveOutput, Double> out = new EnumMap<>(CurveOutput.class);
        double[] spin = spinAxis(walker);
        out.put(CurveOutput.CAMBER, Math.toDegrees(camber(spin)));
        out.put(CurveOutput.TOE, Math.toDegrees(toe(spin)));
        out.put(CurveOutput.BUMP_CAMBER, Math.toDegrees(camberRate(spin, travelMotion)));
        out.put(CurveOutput.BUMP_STEER, Math.toDegrees(toeRate(spin, travelMotion)));
        double[] contact = contactPoint(walker);
        out.put(CurveOutput.HALF_TRACK_CHANGE, contact[1] - designContact[1]);
        out.put(CurveOutput.WHEELBASE_CHANGE, contact[0] - designContact[0]);
        rollCentre(walker, travelMotion, contact, out);
        steering(walker, contact, toe(spin), out);
        if (coil != null) {
            out.put(CurveOutput.COIL_LENGTH, coil.length(walker.pose(), walker.geometry()));
            out.put(CurveOutput.MOTION_RATIO, -coil.rate(walker.pose(), walker.geometry(), travelMotion));
        }
        return out;
    }

    private void rollCentre(Walker walker, double[] travelMotion, double[] contact, Map<CurveOutput, Double> out) {
        if (walker.heightsMm().length == 1) {
            double[] material = Pickup.carried(Vectors.minus(contact, walker.pose().origin()), travelMotion);
            double[] path = contactPathRate(walker, travelMotion);
            out.put(CurveOutput.ROLL_CENTRE_HEIGHT, contact[1] * material[1] / material[2]);
            out.put(CurveOutput.ROLL_CENTRE_HEIGHT_PATH, contact[1] * path[1] / path[2]);
        } else {
            out.put(CurveOutput.ROLL_CENTRE_HEIGHT, axleRollCentre(walker) - contact[2]);
        }
    }

    /** Height in the car's plane of symmetry at which an axle rolls without moving sideways. */
    private static double axleRollCentre(Walker walker) {
        double[] roll = walker.motion(walker.heightChange(1, -1));
        double[] origin = walker.pose().origin();
        double sideways = roll[1];
        return origin[2] + sideways / roll[3];
    }

    private void steering(Walker walker, double[] contact, double toe, Map<CurveOutput, Double> out) {
        double[][] line = axis.find(walker);
        if (line == null) {
            return;
        }
        double[] direction = line[1];
        out.put(CurveOutput.CASTER, Math.toDegrees(SteeringAxis.caster(direction)));
        out.put(CurveOutput.KPI, Math.toDegrees(SteeringAxis.kpi(direction)));
        double[] ground = Vectors.plus(line[0], (contact[2] - line[0][2]) / direction[2], direction);
        double scrub = contact[1] - ground[1];
        double trail = ground[0] - contact[0];
        out.put(CurveOutput.SCRUB_RADIUS, scrub);
        out.put(CurveOutput.TRAIL, trail);
        out.put(CurveOutput.SCRUB_RADIUS_WHEEL, scrub * Math.cos(toe) - trail * Math.sin(toe));
        out.put(CurveOutput.TRAIL_WHEEL, trail * Math.cos(toe) + scrub * Math.sin(toe));
    }
}
