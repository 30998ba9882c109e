package quoin.mechanics;

import java.util.Arrays;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;

/**
 * The equilibrium of a {@link CarModel} as the stationary point of its potential energy, with the exact tangent.
 *
 * <p>Unknowns: heave, roll, pitch, twist (mm, rad), four wheel travels (mm), four pad forces (N). The pad forces are
 * Lagrange multipliers of "wheel height = pad height - tyre compression", so a rigid tyre is not a special case. The
 * twist equation is multiplied by the chassis' compliance, so a rigid chassis is not one either.
 */
final class LoadEquations {
    static final int TRAVEL = 4;
    static final int FORCE = 8;
    static final int SIZE = 12;

    final double[] residual = new double[SIZE];
    final double[][] tangent = new double[SIZE][SIZE];

    private final CarModel car;
    private final double[] perch = new double[4];
    private final double[] rod = new double[4];
    private final CornerModel[] corners = new CornerModel[4];
    private final HeightTerm[] wheels = new HeightTerm[4];
    private final HeightTerm cg;
    private final double sprungWeight;
    private final double twistCompliance;

    LoadEquations(CarModel car, Turns turns) {
        this.car = car;
        for (Corner corner : Corner.values()) {
            int i = corner.ordinal();
            corners[i] = car.corners().get(corner);
            perch[i] = turns.perch().get(corner);
            rod[i] = turns.rod().get(corner);
            SpacePoint contact = new SpacePoint(corners[i].xMm(), corners[i].yMm(), 0);
            double rollCentre = car.rollCentreHeightMm().get(corner.axle()).orElse(0);
            wheels[i] = new HeightTerm(contact, rollCentre / corners[i].yMm(), car);
        }
        cg = new HeightTerm(car.sprungCg(), 0, car);
        sprungWeight = KilogramForce.toNewtons(car.sprungMassKg());
        twistCompliance = car.torsionalStiffnessNmPerDeg().isPresent()
                ? Math.PI / 180 / (1000 * car.torsionalStiffnessNmPerDeg().getAsDouble()) : 0;
    }

    /** Fills residual and tangent at the state u. */
    void evaluate(double[] u) {
        Arrays.fill(residual, 0);
        for (double[] row : tangent) {
            Arrays.fill(row, 0);
        }
        cg.evaluate(u, 0);
        addHeight(cg, sprungWeight, -1);
        for (int i = 0; i < 4; i++) {
            addCorner(i, u);
        }
        addBar(Axle.FRONT, u);
        addBar(Axle.REAR, u);
        residual[HeightTerm.TWIST] = twistCompliance * residual[HeightTerm.TWIST] + u[HeightTerm.TWIST];
        for (int j = 0; j < SIZE; j++) {
            tangent[HeightTerm.TWIST][j] *= twistCompliance;
        }
        tangent[HeightTerm.TWIST][HeightTerm.TWIST] += 1;
    }

    private void addCorner(int i, double[] u) {
        CornerModel corner = corners[i];
        int s = TRAVEL + i;
        int f = FORCE + i;
        double ratio = ratio(i, u[s]);
        double compression = compression(i, u[s]);
        residual[s] += corner.springRateNPerMm() * compression * ratio;
        tangent[s][s] += corner.springRateNPerMm() * (ratio * ratio + compression * corner.motionRatioSlopePerMm());

        HeightTerm wheel = wheels[i];
        wheel.evaluate(u, u[s]);
        addHeight(wheel, KilogramForce.toNewtons(corner.unsprungMassKg()) - u[f], i);
        residual[f] = corner.padHeightMm() - wheel.height() - corner.tyreComplianceMmPerN() * u[f];
        tangent[f][f] = -corner.tyreComplianceMmPerN();
        for (int k = 0; k < HeightTerm.SIZE; k++) {
            int column = k < TRAVEL ? k : s;
            tangent[f][column] = -wheel.slope[k];
            tangent[column][f] = -wheel.slope[k];
        }
    }

    private void addHeight(HeightTerm term, double weight, int wheel) {
        int used = wheel < 0 ? TRAVEL : HeightTerm.SIZE;
        for (int a = 0; a < used; a++) {
            int row = a < TRAVEL ? a : TRAVEL + wheel;
            residual[row] += weight * term.slope[a];
            for (int b = 0; b < used; b++) {
                tangent[row][b < TRAVEL ? b : TRAVEL + wheel] += weight * term.curvature[a][b];
            }
        }
    }

    private void addBar(Axle axle, double[] u) {
        BarModel bar = car.bars().get(axle);
        int left = TRAVEL + axle.left().ordinal();
        int right = TRAVEL + axle.right().ordinal();
        double half = bar.wheelRateInRollNPerMm() / 2;
        double force = half * (u[left] - u[right] + bar.linkPreloadOffsetMm());
        residual[left] += force;
        residual[right] -= force;
        tangent[left][left] += half;
        tangent[right][right] += half;
        tangent[left][right] -= half;
        tangent[right][left] -= half;
    }

    /** Load that the bar of the axle adds to its left wheel at the state u, in N. */
    PerAxle<Double> barForces(double[] u) {
        return new PerAxle<>(barForce(Axle.FRONT, u), barForce(Axle.REAR, u));
    }

    private double barForce(Axle axle, double[] u) {
        BarModel bar = car.bars().get(axle);
        return bar.wheelRateInRollNPerMm() / 2 * (u[TRAVEL + axle.left().ordinal()]
                - u[TRAVEL + axle.right().ordinal()] + bar.linkPreloadOffsetMm());
    }

    /** Compression of the spring: the rod shifts the linkage, the perch shifts the seat. */
    double compression(int i, double travel) {
        CornerModel corner = corners[i];
        return corner.springCompressionAtDesignMm() + springTravel(i, travel);
    }

    /** Compression of the spring over and above that at design, perch included. */
    double springTravel(int i, double travel) {
        CornerModel corner = corners[i];
        double linkage = travel + corner.rodLiftMmPerTurn() * rod[i];
        return corner.motionRatio() * linkage + corner.motionRatioSlopePerMm() * linkage * linkage / 2
                + corner.perchPitchMmPerTurn() * perch[i];
    }

    /** Spring travel per wheel travel at the state of the linkage. */
    double ratio(int i, double travel) {
        CornerModel corner = corners[i];
        return corner.motionRatio() + corner.motionRatioSlopePerMm() * (travel + corner.rodLiftMmPerTurn() * rod[i]);
    }

    double springForce(int i, double travel) {
        return corners[i].springRateNPerMm() * compression(i, travel);
    }

    /** Contact point of a wheel at the last evaluated state. */
    HeightTerm wheel(int i) {
        return wheels[i];
    }

    /** Derivative of the residual with respect to one unit of an input, at the state u. */
    double[] byInput(LoadInput input, Corner corner, double[] u) {
        int i = corner.ordinal();
        CornerModel c = corners[i];
        double travel = u[TRAVEL + i];
        double ratio = ratio(i, travel);
        double[] by = new double[SIZE];
        switch (input) {
            case PERCH -> by[TRAVEL + i] = c.springRateNPerMm() * c.perchPitchMmPerTurn() * ratio;
            case ROD -> by[TRAVEL + i] = c.springRateNPerMm() * c.rodLiftMmPerTurn()
                    * (ratio * ratio + compression(i, travel) * c.motionRatioSlopePerMm());
            case PAD_HEIGHT -> by[FORCE + i] = 1;
            case SPRING_RATE -> by[TRAVEL + i] = compression(i, travel) * ratio;
            case SPRING_COMPRESSION -> by[TRAVEL + i] = c.springRateNPerMm() * ratio;
        }
        return by;
    }
}
