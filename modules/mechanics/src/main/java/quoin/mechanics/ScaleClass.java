package quoin.mechanics;

/**
 * Accuracy classes of weighing instruments: how far a scale of the class may be off. OIML R 76-1:2006, 3.5.1, table 6 (initial
 * verification) and 3.5.2 (in service: twice that). NIST Handbook 44, scales code, table 6, maintenance tolerance: 1, 2, 3, 5 d
 * with the same first two bounds and a third (class III partly, class IIII wholly from memory).
 */
public enum ScaleClass {
    /** Medium accuracy: 0.5 e to 500 e, 1 e to 2000 e, 1.5 e beyond. */
    III(500, 2000, 4000),
    /** Ordinary accuracy: 0.5 e to 50 e, 1 e to 200 e, 1.5 e beyond. */
    IIII(50, 200, 400);

    private final double fine;
    private final double middle;
    private final double coarse;

    ScaleClass(double fine, double middle, double coarse) {
        this.fine = fine;
        this.middle = middle;
        this.coarse = coarse;
    }

    /**
     * How far the scale may be off at first, kg; the upper bound of a step is part of it.
     *
     * @param loadKg load, kg
     * @param stepKg the verification interval e, kg; on most scales the step shown
     */
    public double initialLimitKg(double loadKg, double stepKg) {
        double steps = steps(loadKg, stepKg);
        return stepKg * (steps <= fine ? 0.5 : steps <= middle ? 1 : 1.5);
    }

    /** How far it may be off in use by NIST Handbook 44, kg. */
    public double handbookLimitKg(double loadKg, double stepKg) {
        double steps = steps(loadKg, stepKg);
        return stepKg * (steps <= fine ? 1 : steps <= middle ? 2 : steps <= coarse ? 3 : 5);
    }

    /** 100 kg over 0.2 kg must count as 500 steps, not a hair more. */
    private static double steps(double loadKg, double stepKg) {
        double steps = Require.notNegative("load_kg", loadKg) / Require.positive("scaleStep_kg", stepKg);
        return steps - 1e-9 * steps;
    }

    /** How far it may be off once it is in use, kg. */
    public double inServiceLimitKg(double loadKg, double stepKg) {
        return 2 * initialLimitKg(loadKg, stepKg);
    }
}
