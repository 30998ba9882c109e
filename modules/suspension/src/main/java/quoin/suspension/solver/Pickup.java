package quoin.suspension.solver;

/** A point that moves with the linkage: where a pushrod or a coil-over holds on. */
public sealed interface Pickup {

    double[] position(Pose pose, Geometry geometry);

    /** Velocity with the joints of the car's body at rest. @param motion as {@link Walker#motion} gives it */
    double[] velocity(Pose pose, Geometry geometry, double[] motion);

    /** Velocity of a point of the guided body given from its reference point. */
    static double[] carried(double[] arm, double[] motion) {
        double[] turn = {motion[3], motion[4], motion[5]};
        double[] v = Vectors.cross(turn, arm);
        return new double[] {motion[0] + v[0], motion[1] + v[1], motion[2] + v[2]};
    }

    /** A point of the guided body. */
    record OnBody(int movingPoint) implements Pickup {
        @Override
        public double[] position(Pose pose, Geometry geometry) {
            return pose.point(geometry.moving, 3 * movingPoint);
        }

        @Override
        public double[] velocity(Pose pose, Geometry geometry, double[] motion) {
            return carried(pose.direction(geometry.moving, 3 * movingPoint), motion);
        }
    }

    /**
     * A point of an arm that turns about an axis on the car's body and carries a joint of the guided body.
     *
     * @param along  distance along the axis from its first joint
     * @param toward distance from the axis towards the outer joint
     * @param aside  distance square to both
     */
    record OnArm(int fixedA, int fixedB, int movingTip, double along, double toward, double aside) implements Pickup {

        /** The arm's point that is at a place at the design position. */
        public static OnArm at(Geometry design, double[] origin, int fixedA, int fixedB, int movingTip, double[] place) {
            double[][] frame = frame(design, fixedA, fixedB, Vectors.plus(origin, 1, design.movingPoint(movingTip)));
            double[] from = Vectors.minus(place, design.fixedPoint(fixedA));
            double radius = Vectors.length(frame[1]);
            return new OnArm(fixedA, fixedB, movingTip, Vectors.dot(from, frame[0]),
                    Vectors.dot(from, frame[1]) / radius, Vectors.dot(from, frame[2]) / radius);
        }

        /** Unit vector along the axis, from the axis to the tip, and their cross product. */
        private static double[][] frame(Geometry geometry, int fixedA, int fixedB, double[] tip) {
            double[] a = geometry.fixedPoint(fixedA);
            double[] axis = Vectors.unit(Vectors.minus(geometry.fixedPoint(fixedB), a));
            double[] to = Vectors.minus(tip, a);
            double[] radius = Vectors.plus(to, -Vectors.dot(to, axis), axis);
            return new double[][] {axis, radius, Vectors.cross(axis, radius)};
        }

        @Override
        public double[] position(Pose pose, Geometry geometry) {
            double[][] frame = frame(geometry, fixedA, fixedB, pose.point(geometry.moving, 3 * movingTip));
            double radius = Vectors.length(frame[1]);
            double[] onAxis = Vectors.plus(geometry.fixedPoint(fixedA), along, frame[0]);
            return Vectors.plus(Vectors.plus(onAxis, toward / radius, frame[1]), aside / radius, frame[2]);
        }

        @Override
        public double[] velocity(Pose pose, Geometry geometry, double[] motion) {
            double[] tip = pose.point(geometry.moving, 3 * movingTip);
            double[][] frame = frame(geometry, fixedA, fixedB, tip);
            double[] v = carried(Vectors.minus(tip, pose.origin), motion);
            double turn = Vectors.dot(v, frame[2]) / Vectors.dot(frame[1], frame[1]);
            double[] from = Vectors.minus(position(pose, geometry), geometry.fixedPoint(fixedA));
            return Vectors.times(turn, Vectors.cross(frame[0], from));
        }
    }
}
