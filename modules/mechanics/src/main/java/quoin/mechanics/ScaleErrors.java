package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * What makes a scale reading uncertain.
 *
 * @param resolutionKg step of the display; taken as a rectangular distribution, step / sqrt(12) (JCGM 100:2008 F.2.2.1)
 * @param repeatabilitySdKg standard deviation of settled readings of one load
 * @param calibrationRelativeSd standard deviation of the scale's gain, 0.001 = 0.1 %; independent from scale to scale
 * @param readingsAveraged how many settled readings were averaged; repeatability falls with its square root
 */
public record ScaleErrors(double resolutionKg, double repeatabilitySdKg, double calibrationRelativeSd,
        int readingsAveraged) {
    private static final Texts TEXTS = Texts.of(ScaleErrors.class);

    /** @throws InvalidInputException naming the value that cannot be */
    public ScaleErrors {
        Require.notNegative("scaleResolution_kg", resolutionKg);
        Require.notNegative("repeatabilitySd_kg", repeatabilitySdKg);
        Require.notNegative("calibrationRelativeSd", calibrationRelativeSd);
        if (readingsAveraged < 1) {
            throw new InvalidInputException("readingsAveraged", TEXTS.phrase("mustBeOrMore", readingsAveraged));
        }
    }

    /** Standard uncertainty of one load in kgf. */
    public double standardUncertaintyKgf(double loadKgf) {
        double display = resolutionKg / Math.sqrt(12);
        double settling = repeatabilitySdKg / Math.sqrt(readingsAveraged);
        double gain = calibrationRelativeSd * loadKgf;
        return Math.sqrt(display * display + settling * settling + gain * gain);
    }
}
