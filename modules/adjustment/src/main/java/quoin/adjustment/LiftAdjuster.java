package quoin.adjustment;

import java.util.Objects;
import quoin.car.Corner;

/**
 * An adjuster that raises or lowers one corner: perch, pushrod.
 *
 * @param id the adjuster's name, as in findings: "RR perch"
 * @param corner the corner it raises
 * @param liftMmPerTurn lift of the corner at the wheel per turn with the load held, mm: thread pitch divided by the
 *     motion ratio for a perch; positive when a positive turn raises the corner
 * @param liftGroup adjusters of one group share one error of the lift per turn (one axle: the same thread, the same
 *     motion ratio)
 * @param liftRelativeSd relative standard deviation of the lift per turn, about 0.03
 */
public record LiftAdjuster(String id, Corner corner, double liftMmPerTurn, String liftGroup, double liftRelativeSd) {

    /** Relative standard deviation of a lift worked out from pitch and motion ratio (common practice, no source). */
    public static final double USUAL_LIFT_SD = 0.03;

    public LiftAdjuster {
        Objects.requireNonNull(corner, "corner of " + id + ": missing");
        if (liftMmPerTurn == 0 || Double.isNaN(liftMmPerTurn) || Double.isInfinite(liftMmPerTurn)) {
            throw new IllegalArgumentException("liftMmPerTurn of " + id + " must be a number other than 0");
        }
        if (!(liftRelativeSd > 0) || liftRelativeSd > 2) {
            throw new IllegalArgumentException("liftRelativeSd of " + id + " must lie in (0, 2]; got " + liftRelativeSd);
        }
    }
}
