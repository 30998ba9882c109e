package quoin.suspension.solver;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * The same loop equations with the same analytic derivatives and its usual tolerances, given to Hipparchus'
 * Levenberg-Marquardt, each position started from the last.
 */
final class LevenbergMarquardt {
    private static final double SCALE_MM = 200;

    private final Loops loops;
    private final LevenbergMarquardtOptimizer optimizer = new LevenbergMarquardtOptimizer();
    private Pose pose;
    private long evaluations;
    private Geometry geometry;

    LevenbergMarquardt(Loops loops) {
        this.loops = loops;
        pose = new Pose(loops.origin);
        geometry = loops.design;
    }

    void moveTo(double rackMm, double heightMm) {
        geometry = loops.design.plus(rackMm, loops.rackChange()).plus(heightMm, loops.heightChange(1));
        Pose from = pose;
        Optimum optimum = optimizer.optimize(new LeastSquaresBuilder().start(new double[6]).target(new double[6])
                .model(point -> model(from, point)).checker((iteration, last, now) -> last.getPoint().getDistance(now.getPoint()) < 1e-6)
                .maxEvaluations(100).maxIterations(100).lazyEvaluation(false).build());
        evaluations += optimum.getEvaluations();
        pose = moved(from, optimum.getPoint());
    }

    private static Pose moved(Pose from, RealVector step) {
        Pose moved = from.copy();
        moved.move(step.getEntry(0), step.getEntry(1), step.getEntry(2), step.getEntry(3) / SCALE_MM,
                step.getEntry(4) / SCALE_MM, step.getEntry(5) / SCALE_MM);
        return moved;
    }

    private Pair<RealVector, RealMatrix> model(Pose from, RealVector step) {
        double[] residual = new double[6];
        double[] jacobian = new double[36];
        Pose at = moved(from, step);
        int row = 0;
        for (Constraint constraint : loops.constraints) {
            constraint.linearise(at, geometry, residual, jacobian, row);
            row += constraint.rows();
        }
        double[][] matrix = new double[6][6];
        for (int i = 0; i < 36; i++) {
            matrix[i / 6][i % 6] = i % 6 < 3 ? jacobian[i] : jacobian[i] / SCALE_MM;
        }
        return new Pair<>(new ArrayRealVector(residual, false), new Array2DRowRealMatrix(matrix, false));
    }

    long evaluations() {
        return evaluations;
    }

    Pose pose() {
        return pose;
    }
}
