package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * How much more the inner wheel steers than the outer one in a turn.
 *
 * @param innerDeg steer of the inner wheel from straight ahead
 * @param outerDeg steer of the outer wheel from straight ahead
 */
public record TurnToeOut(double innerDeg, double outerDeg) {
    private static final Texts TEXTS = Texts.of(TurnToeOut.class);

    /** @throws InvalidInputException naming the angle that cannot be */
    public TurnToeOut {
        steer("inner_deg", innerDeg);
        steer("outer_deg", outerDeg);
    }

    private static void steer(String field, double value) {
        if (Require.positive(field, value) >= 90) {
            throw new InvalidInputException(field, TEXTS.phrase("mustBeLessThanA"));
        }
    }

    /** Inner less outer steer, deg. */
    public double toeOutDeg() {
        return innerDeg - outerDeg;
    }

    /**
     * Share of the difference at which the lines through both front axles meet on the line of the rear axle, %: Ackermann's
     * condition cot(outer) - cot(inner) = track / wheelbase. With 1380 on 2300 mm and 10 deg outside, 100 % is 11.15 deg inside.
     *
     * @param trackMm     distance between the steering axes on the ground; the track stands for it where that is not known
     * @param wheelbaseMm wheelbase
     */
    public double ackermannPercent(double trackMm, double wheelbaseMm) {
        return 100 * toeOutDeg() / (idealInnerDeg(trackMm, wheelbaseMm) - outerDeg);
    }

    /** Inner steer by Ackermann's condition, deg. */
    public double idealInnerDeg(double trackMm, double wheelbaseMm) {
        double cotangent = 1 / Math.tan(Math.toRadians(outerDeg))
                - Require.positive("track_mm", trackMm) / Require.positive("wheelbase_mm", wheelbaseMm);
        return Math.toDegrees(Math.atan2(1, cotangent));
    }
}
