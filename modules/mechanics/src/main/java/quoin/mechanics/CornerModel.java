package quoin.mechanics;

import java.util.OptionalDouble;

/**
 * One corner as the corner-load calculation sees it. Checked when it becomes part of a {@link CarModel}, which can name
 * the corner.
 *
 * @param xMm contact point, forward of the body's origin
 * @param yMm contact point, left of the centre line
 * @param unsprungMassKg wheel, upright and what moves with them; it goes straight to its own scale
 * @param springRateNPerMm rate of the spring itself
 * @param motionRatio spring travel per wheel travel at the design position
 * @param motionRatioSlopePerMm change of the motion ratio per mm of wheel travel, + rising in bump
 * @param springCompressionAtDesignMm compression of the spring at zero wheel travel with no turns made
 * @param perchPitchMmPerTurn movement of the spring seat along the spring for one turn; a + turn compresses the spring
 * @param rodLiftMmPerTurn wheel travel that one + turn of the push or pull rod is worth; a + turn raises the corner
 * @param tyreRateNPerMm vertical rate of the tyre; empty = rigid
 * @param padHeightMm height of the pad top above the common plane
 */
public record CornerModel(double xMm, double yMm, double unsprungMassKg, double springRateNPerMm, double motionRatio,
        double motionRatioSlopePerMm, double springCompressionAtDesignMm, double perchPitchMmPerTurn,
        double rodLiftMmPerTurn, OptionalDouble tyreRateNPerMm, double padHeightMm) {

    /** Spring rate seen at the wheel at the design position, in N/mm: spring rate times motion ratio squared. */
    public double wheelRateNPerMm() {
        return springRateNPerMm * motionRatio * motionRatio;
    }

    /** Vertical compliance between body and pad in mm/N: wheel rate and tyre in series. */
    public double complianceMmPerN() {
        return 1 / wheelRateNPerMm() + tyreComplianceMmPerN();
    }

    double tyreComplianceMmPerN() {
        return tyreRateNPerMm.isPresent() ? 1 / tyreRateNPerMm.getAsDouble() : 0;
    }

    public PlanPoint inPlan() {
        return new PlanPoint(xMm, yMm);
    }

    public CornerModel withSpringCompressionAtDesignMm(double mm) {
        return new CornerModel(xMm, yMm, unsprungMassKg, springRateNPerMm, motionRatio, motionRatioSlopePerMm, mm,
                perchPitchMmPerTurn, rodLiftMmPerTurn, tyreRateNPerMm, padHeightMm);
    }

    public CornerModel withSpringRateNPerMm(double rate) {
        return new CornerModel(xMm, yMm, unsprungMassKg, rate, motionRatio, motionRatioSlopePerMm,
                springCompressionAtDesignMm, perchPitchMmPerTurn, rodLiftMmPerTurn, tyreRateNPerMm, padHeightMm);
    }

    public CornerModel withPadHeightMm(double mm) {
        return new CornerModel(xMm, yMm, unsprungMassKg, springRateNPerMm, motionRatio, motionRatioSlopePerMm,
                springCompressionAtDesignMm, perchPitchMmPerTurn, rodLiftMmPerTurn, tyreRateNPerMm, mm);
    }

    public CornerModel withTyreRateNPerMm(OptionalDouble rate) {
        return new CornerModel(xMm, yMm, unsprungMassKg, springRateNPerMm, motionRatio, motionRatioSlopePerMm,
                springCompressionAtDesignMm, perchPitchMmPerTurn, rodLiftMmPerTurn, rate, padHeightMm);
    }

    void check(String path) {
        Require.finite(path + ".x_mm", xMm);
        Require.finite(path + ".y_mm", yMm);
        Require.notNegative(path + ".unsprungMass_kg", unsprungMassKg);
        Require.positive(path + ".springRate_N_per_mm", springRateNPerMm);
        Require.positive(path + ".motionRatio_springPerWheel", motionRatio);
        Require.finite(path + ".motionRatioSlope_per_mm", motionRatioSlopePerMm);
        Require.finite(path + ".springCompressionAtDesign_mm", springCompressionAtDesignMm);
        Require.notNegative(path + ".perchPitchAtSpring_mm_per_turn", perchPitchMmPerTurn);
        Require.notNegative(path + ".rodLiftAtWheel_mm_per_turn", rodLiftMmPerTurn);
        Require.present(path + ".tyreVerticalRate_N_per_mm", tyreRateNPerMm)
                .ifPresent(rate -> Require.positive(path + ".tyreVerticalRate_N_per_mm", rate));
        Require.finite(path + ".padHeight_mm", padHeightMm);
    }
}
