package quoin.mechanics;

import quoin.car.Axle;

/**
 * Height above the pads of one body-fixed (or wheel) point as a function of heave, roll, pitch, twist and wheel travel,
 * with its exact first and second derivatives. Rotations are finite: roll about x first, then pitch about y.
 *
 * <p>A section of the chassis at x turns by {@code share * twist} more than the body, about an axis at height h. With
 * A = roll + share * twist and the point at height zeta above that axis,
 * {@code Z = heave - x sin(pitch) + cos(pitch) (h cos(roll) + y sin A + zeta cos A)}.
 */
final class HeightTerm {
    static final int HEAVE = 0;
    static final int ROLL = 1;
    static final int PITCH = 2;
    static final int TWIST = 3;
    static final int TRAVEL = 4;
    static final int SIZE = 5;

    final double[] slope = new double[SIZE];
    final double[][] curvature = new double[SIZE][SIZE];

    private final double x;
    private final double y;
    private final double z;
    private final double sideways;
    private final double axisHeight;
    private final double twistShare;

    private double height;
    private double forward;
    private double left;

    /** @param sideways movement to the left per mm of wheel travel; 0 = along the body's z */
    HeightTerm(SpacePoint point, double sideways, CarModel car) {
        this.x = point.xMm();
        this.y = point.yMm();
        this.z = point.zMm();
        this.sideways = sideways;
        this.axisHeight = car.torsionAxisHeightMm();
        double middle = (car.axleX(Axle.FRONT) + car.axleX(Axle.REAR)) / 2;
        this.twistShare = (x - middle) / car.wheelbaseMm();
    }

    /** Evaluates at a pose: u holds heave, roll, pitch, twist (mm, rad) first. */
    void evaluate(double[] u, double travel) {
        double sinRoll = Math.sin(u[ROLL]);
        double cosRoll = Math.cos(u[ROLL]);
        double sinPitch = Math.sin(u[PITCH]);
        double cosPitch = Math.cos(u[PITCH]);
        double sinA = Math.sin(u[ROLL] + twistShare * u[TWIST]);
        double cosA = Math.cos(u[ROLL] + twistShare * u[TWIST]);
        double across = y + sideways * travel;
        double up = z + travel - axisHeight;

        double turned = across * cosA - up * sinA;
        double lifted = across * sinA + up * cosA;
        double section = axisHeight * cosRoll + lifted;
        height = u[HEAVE] - x * sinPitch + cosPitch * section;
        forward = x * cosPitch + sinPitch * section;
        left = turned - axisHeight * sinRoll;

        double byRoll = left;
        double byTwist = twistShare * turned;
        double byTravel = sideways * sinA + cosA;
        slope[HEAVE] = 1;
        slope[ROLL] = cosPitch * byRoll;
        slope[PITCH] = -forward;
        slope[TWIST] = cosPitch * byTwist;
        slope[TRAVEL] = cosPitch * byTravel;

        double turning = sideways * cosA - sinA;
        set(ROLL, ROLL, -cosPitch * section);
        set(ROLL, PITCH, -sinPitch * byRoll);
        set(ROLL, TWIST, -cosPitch * twistShare * lifted);
        set(ROLL, TRAVEL, cosPitch * turning);
        set(PITCH, PITCH, x * sinPitch - cosPitch * section);
        set(PITCH, TWIST, -sinPitch * byTwist);
        set(PITCH, TRAVEL, -sinPitch * byTravel);
        set(TWIST, TWIST, -cosPitch * twistShare * twistShare * lifted);
        set(TWIST, TRAVEL, cosPitch * twistShare * turning);
    }

    private void set(int i, int j, double value) {
        curvature[i][j] = value;
        curvature[j][i] = value;
    }

    double height() {
        return height;
    }

    /** Where the point is seen from above, road axes through the body's origin. */
    PlanPoint inPlan() {
        return new PlanPoint(forward, left);
    }
}
