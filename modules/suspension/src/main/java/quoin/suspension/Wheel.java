package quoin.suspension;

import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;

/**
 * A wheel at its design position, with y outboard from the centre line whatever the side.
 *
 * @param centre         wheel centre, mm
 * @param spinAxis       direction of the spin axis, pointing outboard; any length
 * @param loadedRadiusMm distance from the wheel centre to the contact point, mm
 */
public record Wheel(SpacePoint centre, SpacePoint spinAxis, double loadedRadiusMm) {
    private static final Texts TEXTS = Texts.of(Wheel.class);

    /** @throws InvalidInputException naming what no wheel can have */
    public Wheel {
        if (!(loadedRadiusMm > 0)) {
            throw InvalidInputException.notPositive(HardPoints.LOADED_RADIUS, loadedRadiusMm);
        }
        if (!(centre.yMm() > 0)) {
            throw new InvalidInputException(HardPoints.WHEEL_CENTRE, TEXTS.phrase("mustBeOutboardOf"));
        }
        if (!(spinAxis.yMm() > Math.hypot(spinAxis.xMm(), spinAxis.zMm()))) {
            throw new InvalidInputException(HardPoints.SPIN_AXIS, TEXTS.phrase("mustPointOutboardNearly"));
        }
    }

    /**
     * A wheel by its angles, as they are read on the car.
     *
     * @param camberDeg + top outboard
     * @param toeDeg    + in
     */
    public static Wheel ofAngles(SpacePoint centre, double camberDeg, double toeDeg, double loadedRadiusMm) {
        double camber = Math.toRadians(camberDeg);
        double toe = Math.toRadians(toeDeg);
        return new Wheel(centre, new SpacePoint(Math.cos(camber) * Math.sin(toe), Math.cos(camber) * Math.cos(toe),
                -Math.sin(camber)), loadedRadiusMm);
    }
}
