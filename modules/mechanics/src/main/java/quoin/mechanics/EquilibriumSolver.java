package quoin.mechanics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.quantities.Texts;

/** Newton's method on {@link LoadEquations} with the exact tangent, and implicit differentiation at the solution. */
final class EquilibriumSolver {
    private static final Texts TEXTS = Texts.of(EquilibriumSolver.class);
    private static final int MAX_STEPS = 60;
    private static final double MAX_TURN_RAD = 0.2;
    /** A body tilted further no longer stands on its wheels: the solution found is one after falling over. */
    private static final double FALLEN_RAD = 0.5;
    /** Changes per Newton step below which the next one is rounding: mm, rad, N. */
    private static final double LENGTH_STEP = 1e-7;
    private static final double ANGLE_STEP = 1e-10;
    private static final double FORCE_STEP = 1e-5;

    private final CarModel car;
    private final LoadEquations equations;
    private final double[] state;

    EquilibriumSolver(CarModel car, Turns turns) {
        this.car = Require.present("car", car);
        this.equations = new LoadEquations(car, Require.present("turns", turns));
        this.state = settle();
    }

    private double[] settle() {
        double[] u = new double[LoadEquations.SIZE];
        boolean settled = false;
        for (int step = 0; step < MAX_STEPS; step++) {
            equations.evaluate(u);
            LUDecomposition tangent = factor();
            double[] change = tangent.getSolver().solve(new ArrayRealVector(equations.residual, false)).toArray();
            double turn = Math.max(Math.abs(change[HeightTerm.ROLL]), Math.abs(change[HeightTerm.PITCH]));
            double damping = turn > MAX_TURN_RAD ? MAX_TURN_RAD / turn : 1;
            for (int i = 0; i < u.length; i++) {
                u[i] -= damping * change[i];
            }
            if (settled) {
                requireStable(tangent, u);
                return u;
            }
            settled = isSmall(change);
        }
        throw new NoEquilibriumException(TEXTS.phrase("carDoesNotCome"));
    }

    private LUDecomposition factor() {
        try {
            LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(equations.tangent, true), 0);
            if (!lu.getSolver().isNonSingular()) {
                throw new NoEquilibriumException(TEXTS.phrase("carHasNoStiffness"));
            }
            return lu;
        } catch (MathRuntimeException e) {
            throw new NoEquilibriumException(TEXTS.phrase("carDoesNotCome"), e);
        }
    }

    /**
     * Sylvester's criterion on the stiffness against heave, roll, pitch and twist, wheels and pads eliminated: every leading
     * minor is positive. The full determinant alone would miss a car that is unstable in roll and in pitch.
     */
    private void requireStable(LUDecomposition tangent, double[] u) {
        boolean stands = Math.abs(u[HeightTerm.ROLL]) < FALLEN_RAD && Math.abs(u[HeightTerm.PITCH]) < FALLEN_RAD
                && tangent.getDeterminant() > 0;
        for (int pose = HeightTerm.ROLL; stands && pose < LoadEquations.TRAVEL; pose++) {
            stands = leadingMinor(pose) > 0;
        }
        if (!stands) {
            throw new NoEquilibriumException(TEXTS.phrase("carWouldFallOver"));
        }
    }

    /** Determinant of the tangent with only the first movements of the body left free. */
    private double leadingMinor(int movements) {
        int size = LoadEquations.SIZE - LoadEquations.TRAVEL + movements;
        double[][] kept = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                kept[i][j] = equations.tangent[full(i, movements)][full(j, movements)];
            }
        }
        return new LUDecomposition(new Array2DRowRealMatrix(kept, false), 0).getDeterminant();
    }

    private static int full(int index, int movements) {
        return index < movements ? index : index - movements + LoadEquations.TRAVEL;
    }

    private static boolean isSmall(double[] change) {
        for (int i = 0; i < change.length; i++) {
            double limit = i >= LoadEquations.FORCE ? FORCE_STEP
                    : i == HeightTerm.HEAVE || i >= LoadEquations.TRAVEL ? LENGTH_STEP : ANGLE_STEP;
            if (!(Math.abs(change[i]) < limit)) {
                return false;
            }
        }
        return true;
    }

    Equilibrium equilibrium() {
        equations.evaluate(state);
        PerCorner<Double> loads = PerCorner.of(c -> KilogramForce.fromNewtons(force(c)));
        PerCorner<Double> springs = PerCorner.of(c -> equations.springForce(c.ordinal(), travel(c)));
        return new Equilibrium(loads, Shares.of(loads), centreOfGravity(), heights(), state[HeightTerm.HEAVE],
                Math.toDegrees(state[HeightTerm.ROLL]), Math.toDegrees(state[HeightTerm.PITCH]),
                car.torsionalStiffnessNmPerDeg().isPresent() ? Math.toDegrees(state[HeightTerm.TWIST]) : 0, PerCorner.of(this::travel), springs,
                findings(loads, springs));
    }

    private double force(Corner corner) {
        return state[LoadEquations.FORCE + corner.ordinal()];
    }

    private double travel(Corner corner) {
        return state[LoadEquations.TRAVEL + corner.ordinal()];
    }

    private PlanPoint centreOfGravity() {
        double total = 0;
        double x = 0;
        double y = 0;
        for (Corner corner : Corner.values()) {
            PlanPoint contact = equations.wheel(corner.ordinal()).inPlan();
            total += force(corner);
            x += force(corner) * contact.xMm();
            y += force(corner) * contact.yMm();
        }
        return new PlanPoint(x / total, y / total);
    }

    private Map<String, Double> heights() {
        Map<String, Double> heights = new LinkedHashMap<>();
        car.rideHeightPoints().forEach((name, point) -> {
            HeightTerm term = new HeightTerm(point, 0, car);
            term.evaluate(state, 0);
            heights.put(name, term.height());
        });
        return Collections.unmodifiableMap(heights);
    }

    private static List<LoadFinding> findings(PerCorner<Double> loads, PerCorner<Double> springs) {
        List<LoadFinding> found = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            if (springs.get(corner) < 0) {
                found.add(new LoadFinding(LoadFinding.Kind.SPRING_UNLOADED, corner, springs.get(corner)));
            }
            if (loads.get(corner) < 0) {
                found.add(new LoadFinding(LoadFinding.Kind.WHEEL_LIFTED, corner, loads.get(corner)));
            }
        }
        return List.copyOf(found);
    }

    /** Derivatives of everything by the given inputs at all four corners, in the order inputs x corners. */
    List<Sensitivity> sensitivities(List<LoadInput> inputs) {
        equations.evaluate(state);
        LUDecomposition tangent = factor();
        List<HeightTerm> points = new ArrayList<>();
        car.rideHeightPoints().values().forEach(point -> points.add(new HeightTerm(point, 0, car)));
        points.forEach(term -> term.evaluate(state, 0));
        List<Sensitivity> all = new ArrayList<>();
        for (LoadInput input : inputs) {
            for (Corner corner : Corner.values()) {
                double[] by = equations.byInput(input, corner, state);
                double[] change = tangent.getSolver().solve(new ArrayRealVector(by, false)).mapMultiply(-1).toArray();
                all.add(sensitivity(input, corner, change, points));
            }
        }
        return List.copyOf(all);
    }

    private Sensitivity sensitivity(LoadInput input, Corner corner, double[] change, List<HeightTerm> points) {
        PerCorner<Double> loads = PerCorner.of(
                c -> KilogramForce.fromNewtons(change[LoadEquations.FORCE + c.ordinal()]));
        Map<String, Double> heights = new LinkedHashMap<>();
        int index = 0;
        for (String name : car.rideHeightPoints().keySet()) {
            HeightTerm point = points.get(index++);
            double move = 0;
            for (int k = 0; k < LoadEquations.TRAVEL; k++) {
                move += point.slope[k] * change[k];
            }
            heights.put(name, move);
        }
        // The total is the car's weight and cannot change, so shares follow from the load changes alone.
        double percent = 100 / car.totalMassKg();
        return new Sensitivity(input, corner, loads, (loads.lf() + loads.rf()) * percent,
                (loads.lf() + loads.lr()) * percent, (loads.rf() + loads.lr()) * percent,
                Collections.unmodifiableMap(heights),
                PerCorner.of(c -> change[LoadEquations.TRAVEL + c.ordinal()]));
    }
}
