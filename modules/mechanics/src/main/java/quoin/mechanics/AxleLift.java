package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * Height of the centre of gravity by lifting the rear axle with the front on scales. Suspension blocked, brakes off, the
 * car free to roll; wheel-centre heights are loaded radii.
 *
 * <p>Exact, by moments about the front contact point, from the rotation theta of the car:
 * {@code h = Rf + (1 - N/W)(Rr - Rf) + (N - N0) L / (W tan theta)} with N the front load lifted and N0 level. Derived
 * here. The textbook form takes the level share in the radius term and sin theta = lift / wheelbase, so it is off where
 * the radii differ.
 *
 * @param totalKgf weight of the car
 * @param frontLevelKgf front axle load, car level
 * @param frontLiftedKgf front axle load, rear lifted
 * @param wheelbaseMm distance between the axles, car level
 * @param frontWheelCentreMm height of the front wheel centre above its contact point
 * @param rearWheelCentreMm height of the rear wheel centre above its contact point, car level
 * @param rearLiftMm how far the rear wheel centres were lifted
 */
public record AxleLift(double totalKgf, double frontLevelKgf, double frontLiftedKgf, double wheelbaseMm,
        double frontWheelCentreMm, double rearWheelCentreMm, double rearLiftMm) {
    private static final Texts TEXTS = Texts.of(AxleLift.class);

    /** @throws InvalidInputException naming the reading that cannot be */
    public AxleLift {
        Require.positive("total_kgf", totalKgf);
        axleLoad("frontAxleLevel_kgf", frontLevelKgf, totalKgf);
        axleLoad("frontAxleRearLifted_kgf", frontLiftedKgf, totalKgf);
        Require.positive("wheelbase_mm", wheelbaseMm);
        Require.positive("frontWheelCentreHeight_mm", frontWheelCentreMm);
        Require.positive("rearWheelCentreHeight_mm", rearWheelCentreMm);
        Require.positive("rearLift_mm", rearLiftMm);
        if (rearLiftMm >= wheelbaseMm || rearWheelCentreMm + rearLiftMm - frontWheelCentreMm
                >= Math.hypot(wheelbaseMm, rearWheelCentreMm - frontWheelCentreMm)) {
            throw new InvalidInputException("rearLift_mm", TEXTS.phrase("mustBeLessThan"));
        }
    }

    private static void axleLoad(String field, double load, double total) {
        Require.positive(field, load);
        if (load >= total) {
            throw new InvalidInputException(field, TEXTS.phrase("mustBeLessThanThe"));
        }
    }

    /** Rotation of the car, in deg. */
    public double liftAngleDeg() {
        double between = Math.hypot(wheelbaseMm, rearWheelCentreMm - frontWheelCentreMm);
        return Math.toDegrees(Math.asin((rearWheelCentreMm + rearLiftMm - frontWheelCentreMm) / between)
                - Math.asin((rearWheelCentreMm - frontWheelCentreMm) / between));
    }

    /** Height of the centre of gravity above the road, car level, in mm. */
    public double cgHeightMm() {
        double rearShare = 1 - frontLiftedKgf / totalKgf;
        return frontWheelCentreMm + rearShare * (rearWheelCentreMm - frontWheelCentreMm)
                + transfer(Math.tan(Math.toRadians(liftAngleDeg())));
    }

    /** The same by the textbook formula. */
    public double cgHeightTextbookMm() {
        double rearShare = 1 - frontLevelKgf / totalKgf;
        return frontWheelCentreMm + rearShare * (rearWheelCentreMm - frontWheelCentreMm)
                + transfer(Math.tan(Math.asin(rearLiftMm / wheelbaseMm)));
    }

    private double transfer(double tangent) {
        return (frontLiftedKgf - frontLevelKgf) * wheelbaseMm / (totalKgf * tangent);
    }

    /** Distance of the centre of gravity ahead of the rear axle, in mm. */
    public double cgAheadOfRearAxleMm() {
        return wheelbaseMm * frontLevelKgf / totalKgf;
    }
}
