package quoin.adjustment;

import java.util.Objects;
import quoin.car.Corner;

/**
 * A target with its tolerance.
 *
 * @param reading which reading
 * @param corner corner of a load or height; any corner for a share
 * @param target target: per cent for shares, N for loads, mm for heights
 * @param tolerance half-width in the same unit, greater than 0
 */
public record Goal(Kind reading, Corner corner, double target, double tolerance) {

    /** The reading a goal is about. */
    public enum Kind {
        /** (RF + LR) / total, per cent. */
        CROSS_PERCENT,
        /** (LF + RF) / total, per cent. */
        FRONT_PERCENT,
        /** (LF + LR) / total, per cent. */
        LEFT_PERCENT,
        /** One corner load, N. */
        LOAD,
        /** One height, mm. */
        HEIGHT
    }

    public Goal {
        Objects.requireNonNull(corner, "corner: missing");
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("tolerance must be greater than 0; got " + tolerance);
        }
    }

    /** Cross weight (RF + LR) / total, per cent. */
    public static Goal cross(double targetPercent, double tolerancePercent) {
        return new Goal(Kind.CROSS_PERCENT, Corner.LF, targetPercent, tolerancePercent);
    }

    /** Height at one corner's point, mm. */
    public static Goal height(Corner corner, double targetMm, double toleranceMm) {
        return new Goal(Kind.HEIGHT, corner, targetMm, toleranceMm);
    }

    /** Load at one corner, N. */
    public static Goal load(Corner corner, double targetN, double toleranceN) {
        return new Goal(Kind.LOAD, corner, targetN, toleranceN);
    }

    /** Weights of the eight readings in this goal's value; shares are per cent of the total. */
    double[] weights() {
        return switch (reading) {
            case CROSS_PERCENT -> new double[] {0, 100, 100, 0, 0, 0, 0, 0};
            case FRONT_PERCENT -> new double[] {100, 100, 0, 0, 0, 0, 0, 0};
            case LEFT_PERCENT -> new double[] {100, 0, 100, 0, 0, 0, 0, 0};
            case LOAD -> unit(corner.ordinal());
            case HEIGHT -> unit(4 + corner.ordinal());
        };
    }

    /** Whether the value is a share of the total. */
    public boolean share() {
        return reading != Kind.LOAD && reading != Kind.HEIGHT;
    }

    private static double[] unit(int row) {
        double[] w = new double[8];
        w[row] = 1;
        return w;
    }
}
