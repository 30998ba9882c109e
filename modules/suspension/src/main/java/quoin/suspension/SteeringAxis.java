package quoin.suspension;

import java.util.Arrays;
import quoin.suspension.solver.Coil;
import quoin.suspension.solver.Geometry;
import quoin.suspension.solver.Pickup;
import quoin.suspension.solver.Vectors;
import quoin.suspension.solver.Walker;

/** Where the axis is that a wheel steers about. */
interface SteeringAxis {

    /** The wheel is not steered. */
    SteeringAxis NONE = walker -> null;

    /**
     * The instantaneous screw of the upright with the tie rod driven, the body and the spring held.
     *
     * @param coil null where the spring is not described: then the wheel centre is held at its height
     */
    static SteeringAxis screw(Coil coil) {
        return walker -> {
            double[] motion = walker.motion(walker.rackChange());
            if (coil != null) {
                double[] travel = walker.motion(walker.heightChange(1));
                double share = coil.rate(walker.pose(), walker.geometry(), motion)
                        / coil.rate(walker.pose(), walker.geometry(), travel);
                Arrays.setAll(motion, i -> motion[i] - share * travel[i]);
            }
            double[] turn = Arrays.copyOfRange(motion, 3, 6);
            double[] along = turn[2] < 0 ? Vectors.times(-1, turn) : turn;
            double[] arm = Vectors.times(1 / Vectors.dot(turn, turn), Vectors.cross(turn, motion));
            return new double[][] {Vectors.plus(walker.pose().origin(), 1, arm), along};
        };
    }

    /** A point of the axis and its direction, upward; null where there is none. */
    double[][] find(Walker walker);

    /** Direction change per unit of a motion and a change of geometry; null where only solving again can tell. */
    default double[] rate(Walker walker, double[] motion, Geometry change) {
        return null;
    }

    /** Top rearward, rad. */
    static double caster(double[] direction) {
        return Math.atan2(-direction[0], direction[2]);
    }

    /** Top inboard, rad. */
    static double kpi(double[] direction) {
        return Math.atan2(-direction[1], direction[2]);
    }

    /** Rate of caster (index 0) or KPI (index 1), rad. */
    static double rate(double[] direction, double[] rate, int index) {
        double across = -direction[index];
        double square = across * across + direction[2] * direction[2];
        return (-rate[index] * direction[2] - across * rate[2]) / square;
    }

    /** Through two joints. */
    static SteeringAxis through(Joint lower, Joint upper) {
        return new SteeringAxis() {
            @Override
            public double[][] find(Walker walker) {
                double[] from = position(walker, lower);
                return new double[][] {from, Vectors.minus(position(walker, upper), from)};
            }

            @Override
            public double[] rate(Walker walker, double[] motion, Geometry change) {
                return Vectors.minus(velocity(walker, upper, motion, change), velocity(walker, lower, motion, change));
            }
        };
    }

    private static double[] position(Walker walker, Joint joint) {
        return joint.onBody() ? walker.geometry().fixedPoint(joint.index())
                : walker.pose().point(walker.geometry().movingPoint(joint.index()));
    }

    private static double[] velocity(Walker walker, Joint joint, double[] motion, Geometry change) {
        if (joint.onBody()) {
            return change.fixedPoint(joint.index());
        }
        double[] arm = walker.pose().direction(walker.geometry().movingPoint(joint.index()));
        double[] own = walker.pose().direction(change.movingPoint(joint.index()));
        return Vectors.plus(Pickup.carried(arm, motion), 1, own);
    }
}
