package quoin.suspension.solver;

import java.util.List;
import java.util.Optional;

/** Length of the coil-over that goes with a pose. */
public interface Coil {

    /** Length between the two joints, mm; NaN where the linkage of the coil-over cannot follow. */
    double length(Pose pose, Geometry geometry);

    /** Change of the length per unit of a motion, the joints on the car's body at rest. */
    double rate(Pose pose, Geometry geometry, double[] motion);

    /**
     * Change of the length for a motion together with a change of the geometry, by central difference of the length alone;
     * no loop is solved.
     */
    default double rate(Pose pose, Geometry geometry, double[] motion, Geometry change) {
        double h = 1e-4;
        double[] length = new double[2];
        for (int i = 0; i < 2; i++) {
            double s = i == 0 ? -h : h;
            Pose moved = pose.copy();
            moved.move(s * motion[0], s * motion[1], s * motion[2], s * motion[3], s * motion[4], s * motion[5]);
            length[i] = length(moved, geometry.plus(s, change));
        }
        return (length[1] - length[0]) / (2 * h);
    }

    /** How it is drawn at this pose. */
    List<Segment> outline(Pose pose, Geometry geometry);

    /** The same with the pushrod longer by so much; empty where there is none. */
    default Optional<Coil> withPushrod(double longerByMm) {
        return Optional.empty();
    }

    /** Straight from a joint on the car's body to a point of the linkage. */
    record Direct(int fixedPoint, Pickup pickup) implements Coil {
        @Override
        public double length(Pose pose, Geometry geometry) {
            return Vectors.distance(pickup.position(pose, geometry), geometry.fixedPoint(fixedPoint));
        }

        @Override
        public double rate(Pose pose, Geometry geometry, double[] motion) {
            double[] along = Vectors.unit(Vectors.minus(pickup.position(pose, geometry), geometry.fixedPoint(fixedPoint)));
            return Vectors.dot(along, pickup.velocity(pose, geometry, motion));
        }

        @Override
        public List<Segment> outline(Pose pose, Geometry geometry) {
            return List.of(new Segment(Segment.Part.COIL, geometry.fixedPoint(fixedPoint), pickup.position(pose, geometry)));
        }
    }
}
