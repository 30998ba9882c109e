package quoin.mechanics;

/**
 * Accuracy classes of weighing instruments: how far a scale of the class may be off. OIML R 76-1:2006, 3.5.1, table 6 (initial
 * verification) and 3.5.2 (in service: twice that). NIST Handbook 44, scales code, table 6 allows the same for class III in
 * service up to 4000 steps: 1, 2, 3 d to 500, 2000, 4000 d (partly from memory).
 */
public enum ScaleClass {
    /** Medium accuracy: 0.5 e to 500 e, 1 e to 2000 e, 1.5 e beyond. */
    III(500, 2000),
    /** Ordinary accuracy: 0.5 e to 50 e, 1 e to 200 e, 1.5 e beyond. */
    IIII(50, 200);

    private final double fine;
    private final double middle;

    ScaleClass(double fine, double middle) {
        this.fine = fine;
        this.middle = middle;
    }

    /**
     * How far the scale may be off at first, kg; the upper bound of a step is part of it.
     *
     * @param loadKg load, kg
     * @param stepKg the verification interval e, kg; on most scales the step shown
     */
    public double initialLimitKg(double loadKg, double stepKg) {
        double steps = Require.notNegative("load_kg", loadKg) / Require.positive("scaleStep_kg", stepKg);
        // 100 kg over 0.2 kg must count as 500 steps, not a hair more
        double slack = 1e-9 * steps;
        return stepKg * (steps - slack <= fine ? 0.5 : steps - slack <= middle ? 1 : 1.5);
    }

    /** How far it may be off once it is in use, kg. */
    public double inServiceLimitKg(double loadKg, double stepKg) {
        return 2 * initialLimitKg(loadKg, stepKg);
    }
}
