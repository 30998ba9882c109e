package quoin.car;

import java.util.List;

/**
 * One corner with nothing unknown: known values as given, the rest by {@link Assumptions}.
 *
 * @param springRateNPerMm spring rate, N/mm
 * @param motionRatio      spring travel per wheel travel
 * @param pushrodRatio     push- or pullrod travel per wheel travel
 * @param tyreRateNPerMm   vertical tyre rate, N/mm
 * @param unsprungMassKg   unsprung mass, kg
 * @param rimChordMm       chord at which toe is read, mm
 * @param springLeg        perch and pushrod of the corner, at least one
 */
public record AssumedCorner(double springRateNPerMm, double motionRatio, double pushrodRatio, double tyreRateNPerMm,
        double unsprungMassKg, double rimChordMm, List<Adjuster> springLeg) {

    public AssumedCorner {
        springLeg = List.copyOf(springLeg);
    }

    /** Spring rate seen at the wheel, tyre left out, N/mm: spring rate times motion ratio squared. */
    public double wheelRateNPerMm() {
        return springRateNPerMm * motionRatio * motionRatio;
    }

    /**
     * Movement of the wheel against the body, at constant load, for one mm of thread of a perch or pushrod.
     *
     * @throws IllegalArgumentException where the adjuster is neither
     */
    public double liftPerThreadMm(AdjusterKind kind) {
        return switch (kind) {
            case PERCH -> 1 / motionRatio;
            case PUSHROD -> 1 / pushrodRatio;
            default -> throw new IllegalArgumentException(kind.words() + " is not part of the spring leg");
        };
    }
}
