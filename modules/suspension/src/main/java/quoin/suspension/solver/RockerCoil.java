package quoin.suspension.solver;

import java.util.List;
import java.util.Optional;

/** A push- or pullrod that turns a rocker, and a coil-over from the rocker to the car's body. */
public final class RockerCoil implements Coil {
    private final Circle rocker;
    private final double[] rodOnRocker;
    private final double[] coilOnRocker;
    private final double[] coilOnBody;
    private final Pickup pickup;
    private final double rodLength;
    private final double branch;

    /**
     * @param axis any direction along the rocker's axis; the points are at the design position, in the car's axes
     * @param start of the pickup at the design position
     */
    public RockerCoil(double[] pivot, double[] axis, double[] rodOnRocker, double[] coilOnRocker, double[] coilOnBody,
            Pickup pickup, double[] start) {
        rocker = new Circle(pivot, Vectors.unit(axis));
        this.rodOnRocker = rodOnRocker.clone();
        this.coilOnRocker = coilOnRocker.clone();
        this.coilOnBody = coilOnBody.clone();
        this.pickup = pickup;
        rodLength = Vectors.distance(start, rodOnRocker);
        branch = rocker.branch(rodOnRocker, start);
    }

    private RockerCoil(RockerCoil other, double longerBy) {
        rocker = other.rocker;
        rodOnRocker = other.rodOnRocker;
        coilOnRocker = other.coilOnRocker;
        coilOnBody = other.coilOnBody;
        pickup = other.pickup;
        rodLength = other.rodLength + longerBy;
        branch = other.branch;
    }

    /** Whether the rod points straight at the rocker's axis, where it cannot turn it. */
    public boolean isDead() {
        return branch == 0;
    }

    @Override
    public Optional<Coil> withPushrod(double longerByMm) {
        return Optional.of(new RockerCoil(this, longerByMm));
    }

    private double angle(double[] at) {
        return rocker.angle(rodOnRocker, at, rodLength, branch);
    }

    @Override
    public double length(Pose pose, Geometry geometry) {
        return Vectors.distance(rocker.point(coilOnRocker, angle(pickup.position(pose, geometry))), coilOnBody);
    }

    @Override
    public double rate(Pose pose, Geometry geometry, double[] motion) {
        double[] at = pickup.position(pose, geometry);
        double angle = angle(at);
        double[] along = Vectors.minus(at, rocker.point(rodOnRocker, angle));
        double turn = Vectors.dot(along, pickup.velocity(pose, geometry, motion))
                / Vectors.dot(along, rocker.velocity(rodOnRocker, angle));
        double[] coil = Vectors.unit(Vectors.minus(rocker.point(coilOnRocker, angle), coilOnBody));
        return turn * Vectors.dot(coil, rocker.velocity(coilOnRocker, angle));
    }

    @Override
    public List<Segment> outline(Pose pose, Geometry geometry) {
        double[] at = pickup.position(pose, geometry);
        double angle = angle(at);
        double[] rod = rocker.point(rodOnRocker, angle);
        double[] coil = rocker.point(coilOnRocker, angle);
        double[] pivot = rocker.centre();
        return List.of(new Segment(Segment.Part.ROD, rod, at), new Segment(Segment.Part.ROCKER, pivot, rod),
                new Segment(Segment.Part.ROCKER, pivot, coil), new Segment(Segment.Part.ROCKER, rod, coil),
                new Segment(Segment.Part.COIL, coilOnBody, coil));
    }
}
