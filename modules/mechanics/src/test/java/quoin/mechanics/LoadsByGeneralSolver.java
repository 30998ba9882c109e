package quoin.mechanics;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import quoin.car.PerCorner;

/** The equilibrium put to a general-purpose solver: Hipparchus' Levenberg-Marquardt with differences for slopes. */
final class LoadsByGeneralSolver {
    private static final double STEP = 1e-6;
    private static final double CLOSE = 1e-9;
    private static final int MOST_STEPS = 400;
    /** Size of each unknown (mm, rad, N) and of each equation (N, N mm, rad, mm): the solver sees numbers alike. */
    private static final double[] SIZE = {10, 0.01, 0.01, 0.01, 10, 10, 10, 10, 1000, 1000, 1000, 1000};
    private static final double[] EQUATION = {1e3, 1e6, 1e6, 0.01, 1e3, 1e3, 1e3, 1e3, 10, 10, 10, 10};

    private LoadsByGeneralSolver() {
    }

    static PerCorner<Double> loadsKgf(CarModel car, Turns turns) {
        LoadEquations equations = new LoadEquations(car, turns);
        MultivariateJacobianFunction model = state -> {
            double[] x = state.toArray();
            double[] here = residual(equations, x);
            double[][] slope = new double[LoadEquations.SIZE][LoadEquations.SIZE];
            for (int j = 0; j < x.length; j++) {
                double kept = x[j];
                x[j] = kept + STEP;
                double[] there = residual(equations, x);
                x[j] = kept;
                for (int i = 0; i < here.length; i++) {
                    slope[i][j] = (there[i] - here[i]) / STEP;
                }
            }
            return new Pair<RealVector, RealMatrix>(new ArrayRealVector(here, false),
                    new Array2DRowRealMatrix(slope, false));
        };
        double[] found = new LevenbergMarquardtOptimizer().optimize(new LeastSquaresBuilder().model(model)
                .target(new double[LoadEquations.SIZE]).start(new double[LoadEquations.SIZE])
                .checker((step, before, now) -> now.getCost() < CLOSE)
                .lazyEvaluation(false).maxEvaluations(MOST_STEPS).maxIterations(MOST_STEPS).build()).getPoint().toArray();
        return PerCorner.of(c -> KilogramForce.fromNewtons(SIZE[LoadEquations.FORCE + c.ordinal()]
                * found[LoadEquations.FORCE + c.ordinal()]));
    }

    private static double[] residual(LoadEquations equations, double[] x) {
        double[] u = new double[x.length];
        Arrays.setAll(u, i -> SIZE[i] * x[i]);
        equations.evaluate(u);
        double[] scaled = equations.residual.clone();
        Arrays.setAll(scaled, i -> scaled[i] / EQUATION[i]);
        return scaled;
    }
}
