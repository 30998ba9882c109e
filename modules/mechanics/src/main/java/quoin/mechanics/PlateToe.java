package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * Total toe of an axle from two plates held against the wheels, by the distances between their front and their rear ends.
 * Plates cannot tell the two wheels apart, nor the thrust angle.
 *
 * @param frontMm  between the front ends
 * @param rearMm   between the rear ends, greater for toe-in
 * @param plateMm  between the two places on a plate where the tape lies
 */
public record PlateToe(double frontMm, double rearMm, double plateMm) {
    private static final Texts TEXTS = Texts.of(PlateToe.class);

    /** @throws InvalidInputException naming the length that cannot be */
    public PlateToe {
        Require.positive("front_mm", frontMm);
        Require.positive("rear_mm", rearMm);
        Require.positive("plate_mm", plateMm);
        if (Math.abs(rearMm - frontMm) >= plateMm) {
            throw new InvalidInputException("front_mm", TEXTS.phrase("differsFromTheRearBy"));
        }
    }

    /**
     * Sum of both wheels' toe, deg, + in: the rear is wider by plate * (sin left + sin right), shared equally here. A total of
     * 0.24 deg on plates of 500 mm makes 2.0944 mm however it is shared.
     */
    public double totalToeDeg() {
        return 2 * Math.toDegrees(Math.asin((rearMm - frontMm) / (2 * plateMm)));
    }
}
