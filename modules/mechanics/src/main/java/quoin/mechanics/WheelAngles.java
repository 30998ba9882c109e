package quoin.mechanics;

import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.quantities.Texts;

/**
 * Arithmetic of toe. Toe is + in for each wheel (ISO 8855 7.1.6); a steer angle is + to the left, so a left wheel's toe
 * is minus its steer angle and a right wheel's is plus. Example: LF 0.10 deg in and RF 0.14 deg in make 0.24 deg total.
 */
public final class WheelAngles {
    private static final Texts TEXTS = Texts.of(WheelAngles.class);
    private WheelAngles() {
    }

    /**
     * @param toeMm difference of the gaps at the front and rear edge of one wheel, + in
     * @param chordMm distance between the two places where the gap is read
     * @throws InvalidInputException if the chord is not positive or shorter than the difference
     */
    public static double toeDeg(double toeMm, double chordMm) {
        Require.positive("chord_mm", chordMm);
        Require.finite("toe_mm", toeMm);
        if (Math.abs(toeMm) >= chordMm) {
            throw new InvalidInputException("toe_mm", TEXTS.phrase("mustBeLessThanTheChord"));
        }
        return Math.toDegrees(Math.asin(toeMm / chordMm));
    }

    /** Difference of the two gaps on a chord for a toe angle; the inverse of {@link #toeDeg}. */
    public static double toeMm(double toeDeg, double chordMm) {
        Require.positive("chord_mm", chordMm);
        Require.finite("toe_deg", toeDeg);
        if (Math.abs(toeDeg) >= 90) {
            throw new InvalidInputException("toe_deg", TEXTS.phrase("mustBeLessThanA"));
        }
        return chordMm * Math.sin(Math.toRadians(toeDeg));
    }

    /** Sum of the two wheels of each axle, in deg, + in. */
    public static PerAxle<Double> totalToeDeg(PerCorner<Double> toeDeg) {
        return new PerAxle<>(toeDeg.lf() + toeDeg.rf(), toeDeg.lr() + toeDeg.rr());
    }

    /**
     * Where the rear axle drives: (RR - LR) / 2 in deg, + to the left (ISO). Service tables often print (L - R) / 2,
     * which is + to the right.
     */
    public static double thrustAngleDeg(PerCorner<Double> toeDeg) {
        return (toeDeg.rr() - toeDeg.lr()) / 2;
    }

    /** Toe with the front wheels measured from the thrust line instead of the centre line; the total stays the same. */
    public static PerCorner<Double> toeToThrustLineDeg(PerCorner<Double> toeDeg) {
        double thrust = thrustAngleDeg(toeDeg);
        return new PerCorner<>(toeDeg.lf() + thrust, toeDeg.rf() - thrust, toeDeg.lr(), toeDeg.rr());
    }

    /**
     * How far one front wheel stands behind the other, as an angle in deg.
     *
     * @param leftAheadMm how far the left front wheel centre is ahead of the right
     * @param trackMm front track
     */
    public static double setbackDeg(double leftAheadMm, double trackMm) {
        Require.finite("leftAhead_mm", leftAheadMm);
        return Math.toDegrees(Math.atan(leftAheadMm / Require.positive("track_mm", trackMm)));
    }
}
