package quoin.mechanics;

import quoin.quantities.Texts;

/**
 * Caster and kingpin inclination from camber readings while the wheel is steered on turn plates.
 *
 * <p>The spin axis keeps its angle to the steering axis, so for a left wheel
 * {@code tan(caster) cos(c) sin(d) - tan(kpi) cos(c) cos(d) - sin(c) = constant}, with c camber (+ top outboard) and d steer
 * (+ to the left); a right wheel is its mirror image. Three readings give three linear equations. Derived here; the textbook
 * form is January, SAE paper 850219 (1985), and the trade's tables. It holds for a steering axis fixed in the body, which
 * must neither lift nor roll.
 *
 * @param left        true for a left wheel
 * @param toeInDeg    toe at straight ahead, + in
 * @param steerDeg    true steer angles from the straight-ahead position, + to the left: straight ahead, left, right
 * @param cambersDeg  camber at each
 */
public record CasterSweep(boolean left, double toeInDeg, double[] steerDeg, double[] cambersDeg) {
    private static final Texts TEXTS = Texts.of(CasterSweep.class);
    private static final int READINGS = 3;
    private static final double SHIFT_DEG = 1e-4;

    /** @throws InvalidInputException naming what cannot be */
    public CasterSweep {
        Require.finite("toeIn_deg", toeInDeg);
        steerDeg = steerDeg.clone();
        cambersDeg = cambersDeg.clone();
        if (steerDeg.length != READINGS || cambersDeg.length != READINGS) {
            throw new InvalidInputException("steerAngle_deg", TEXTS.phrase("needsThreePositionsAnd"));
        }
        for (int i = 0; i < READINGS; i++) {
            if (!(Math.abs(Require.finite("steerAngle_deg", steerDeg[i])) < 90)) {
                throw new InvalidInputException("steerAngle_deg", TEXTS.phrase("mustBeLessThanA"));
            }
            if (!(Math.abs(Require.finite("camber_deg", cambersDeg[i])) < 90)) {
                throw new InvalidInputException("camber_deg", TEXTS.phrase("mustBeLessThanA"));
            }
        }
        if (Math.abs(toeInDeg) >= 90) {
            throw new InvalidInputException("toeIn_deg", TEXTS.phrase("mustBeLessThanA"));
        }
        if (!(steerDeg[2] < steerDeg[0] && steerDeg[0] < steerDeg[1])) {
            throw new InvalidInputException("steerAngle_deg", TEXTS.phrase("mustBeGreaterThan"));
        }
    }

    /** The same angle to both sides. */
    public static CasterSweep symmetric(boolean left, double toeInDeg, double steerAngleDeg, double straightDeg,
            double steeredLeftDeg, double steeredRightDeg) {
        return new CasterSweep(left, toeInDeg, new double[] {0, steerAngleDeg, -steerAngleDeg},
                new double[] {straightDeg, steeredLeftDeg, steeredRightDeg});
    }

    @Override
    public double[] steerDeg() {
        return steerDeg.clone();
    }

    @Override
    public double[] cambersDeg() {
        return cambersDeg.clone();
    }

    /**
     * Caster + top rearward, kingpin inclination + top inboard.
     *
     * @param casterDeg caster
     * @param kpiDeg    kingpin inclination
     */
    public record SteeringAxis(double casterDeg, double kpiDeg) {
    }

    /** From the three readings without approximation. */
    public SteeringAxis exact() {
        double[][] a = new double[READINGS][];
        for (int i = 0; i < READINGS; i++) {
            // the wheel's own heading: toe-in turns a left wheel to the right
            double steer = Math.toRadians(outward(steerDeg[i]) - toeInDeg);
            double camber = Math.toRadians(cambersDeg[i]);
            a[i] = new double[] {Math.cos(camber) * Math.sin(steer), -Math.cos(camber) * Math.cos(steer), Math.sin(camber)};
        }
        // the difference of two rows is free of the constant
        double[] p = difference(a[1], a[0]);
        double[] q = difference(a[2], a[0]);
        double determinant = p[0] * q[1] - p[1] * q[0];
        double caster = (p[2] * q[1] - p[1] * q[2]) / determinant;
        double kpi = (p[0] * q[2] - p[2] * q[0]) / determinant;
        return new SteeringAxis(Math.toDegrees(Math.atan(caster)), Math.toDegrees(Math.atan(kpi)));
    }

    private double outward(double steer) {
        return left ? steer : -steer;
    }

    private static double[] difference(double[] one, double[] other) {
        return new double[] {one[0] - other[0], one[1] - other[1], one[2] - other[2]};
    }

    /**
     * By the trade's formulas: caster from the difference of the cambers over the sum of the sines, kingpin inclination from
     * the rise of their mean over straight ahead. Off by a few hundredths of a degree, more with unequal angles.
     */
    public SteeringAxis textbook() {
        double sines = Math.sin(Math.toRadians(steerDeg[1] - steerDeg[0])) - Math.sin(Math.toRadians(steerDeg[2] - steerDeg[0]));
        double cosines = (Math.cos(Math.toRadians(steerDeg[1] - steerDeg[0])) + Math.cos(Math.toRadians(steerDeg[2] - steerDeg[0]))) / 2;
        double caster = outward(cambersDeg[1] - cambersDeg[2]) / sines;
        double kpi = ((cambersDeg[1] + cambersDeg[2]) / 2 - cambersDeg[0]) / (1 - cosines);
        return new SteeringAxis(caster, kpi);
    }

    /** How much an error of the straight-ahead reading is multiplied in kingpin inclination: about 17 at 20 deg. */
    public double kpiErrorFactor() {
        return 1 / (1 - Math.cos(Math.toRadians((steerDeg[1] - steerDeg[2]) / 2)));
    }

    /**
     * Standard deviation of both angles, deg, for one of 1 deg in each of the three camber readings, independent: about 2.07 and
     * 20.3 at 20 deg. A kingpin inclination from a gauge of 0.1 deg is therefore an estimate only.
     */
    public SteeringAxis noiseFactors() {
        double caster = 0;
        double kpi = 0;
        for (int i = 0; i < READINGS; i++) {
            SteeringAxis above = shifted(i, SHIFT_DEG).exact();
            SteeringAxis below = shifted(i, -SHIFT_DEG).exact();
            caster = Math.hypot(caster, (above.casterDeg() - below.casterDeg()) / (2 * SHIFT_DEG));
            kpi = Math.hypot(kpi, (above.kpiDeg() - below.kpiDeg()) / (2 * SHIFT_DEG));
        }
        return new SteeringAxis(caster, kpi);
    }

    private CasterSweep shifted(int reading, double byDeg) {
        double[] cambers = cambersDeg.clone();
        cambers[reading] += byDeg;
        return new CasterSweep(left, toeInDeg, steerDeg, cambers);
    }
}
