package quoin.car;

import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * A part of the car where a mass may be fixed: a box seen from above at one height. Axes as those of {@link Car}.
 *
 * @param name     as the racer calls it: "left sill"
 * @param rearXMm  rear edge, forward of the front axle line (behind is negative), mm
 * @param frontXMm front edge, not behind the rear edge, mm
 * @param rightYMm right edge, left of the centre line (right is negative), mm
 * @param leftYMm  left edge, not right of the right edge, mm
 * @param zMm      height of a mass fixed there above the pads, mm
 */
public record MassZone(String name, double rearXMm, double frontXMm, double rightYMm, double leftYMm, double zMm) {
    private static final Texts TEXTS = Texts.of(MassZone.class);

    public MassZone {
        if (name.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("placeForBallastNeeds"));
        }
        if (!(rearXMm <= frontXMm)) {
            throw new NotTakenException(TEXTS.phrase("rearEdgeMustLie", name));
        }
        if (!(rightYMm <= leftYMm)) {
            throw new NotTakenException(TEXTS.phrase("rightEdgeMustLie", name));
        }
        if (!Double.isFinite(zMm) || Double.isInfinite(rearXMm) || Double.isInfinite(frontXMm) || Double.isInfinite(rightYMm)
                || Double.isInfinite(leftYMm)) {
            throw new NotTakenException(TEXTS.phrase("everyEdgeAndThe", name));
        }
    }
}
