package quoin.adjustment;

import java.util.Arrays;

/** How well the readings after given turns are known beforehand. */
@FunctionalInterface
public interface PlanUncertainty {
    /**
     * Covariance of the true errors about the predicted ones after the turns, reading by reading, in products of the
     * readings' units; symmetric, positive semidefinite. It may grow with the turns, as an ill-known response makes it do.
     */
    double[][] covarianceAfter(double[] turns);

    /** The same covariance whatever is turned. */
    static PlanUncertainty constant(double[][] covariance) {
        double[][] copy = Arrays.stream(covariance).map(double[]::clone).toArray(double[][]::new);
        return turns -> copy;
    }
}
