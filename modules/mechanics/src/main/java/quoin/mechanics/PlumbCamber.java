package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * Camber from a plumb line hung outboard of the wheel and a rule.
 *
 * @param topMm    line to the top edge of the rim
 * @param bottomMm line to the bottom edge, greater for positive camber
 * @param chordMm  distance between the two places on the rim
 */
public record PlumbCamber(double topMm, double bottomMm, double chordMm) {
    private static final Texts TEXTS = Texts.of(PlumbCamber.class);

    /** @throws InvalidInputException naming the length that cannot be */
    public PlumbCamber {
        Require.notNegative("top_mm", topMm);
        Require.notNegative("bottom_mm", bottomMm);
        Require.positive("chord_mm", chordMm);
        if (Math.abs(bottomMm - topMm) >= chordMm) {
            throw new InvalidInputException("top_mm", TEXTS.phrase("differsFromTheBottom"));
        }
    }

    /** Camber to the plumb line, deg, + top outboard; 0.5 mm on 330 mm is 0.09 deg. */
    public double camberDeg() {
        return Math.toDegrees(Math.asin((bottomMm - topMm) / chordMm));
    }
}
