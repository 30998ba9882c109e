package quoin.car;

/**
 * How finely the racer's own instruments read; each is the smallest step shown. They enter every uncertainty.
 *
 * @param scaleResolutionKg  wheel scales, kg
 * @param heightResolutionMm height gauge or rule, mm
 * @param angleResolutionDeg camber gauge, deg
 * @param toeResolutionMm    rule or caliper at the rim, mm
 */
public record Instruments(double scaleResolutionKg, double heightResolutionMm, double angleResolutionDeg, double toeResolutionMm) {
    public Instruments {
        Checks.positive(scaleResolutionKg, "name.scaleResolution");
        Checks.positive(heightResolutionMm, "name.heightResolution");
        Checks.positive(angleResolutionDeg, "name.angleResolution");
        Checks.positive(toeResolutionMm, "name.toeResolution");
    }

    /** Usual workshop instruments (common practice, no source). */
    public static Instruments usual() {
        return new Instruments(0.2, 0.5, 0.1, 0.25);
    }
}
