package quoin.preparation.condition;

/**
 * How far a rod end is screwed in.
 *
 * @param diameterMm thread diameter, mm
 * @param pitchMm    advance per turn, mm
 * @param engagedMm  thread inside, mm
 */
record Engagement(double diameterMm, double pitchMm, double engagedMm) {

    /** Diameters of thread to be engaged (common practice, no source). */
    private static final double DIAMETERS = 1.5;

    double neededMm() {
        return DIAMETERS * diameterMm;
    }

    double neededTurns() {
        return neededMm() / pitchMm;
    }

    boolean isEnough() {
        return engagedMm >= neededMm() - 1e-9;
    }

    /** Turns it may still be screwed out; negative = it has to go in by as many. */
    double turnsLeft() {
        return (engagedMm - neededMm()) / pitchMm;
    }
}
