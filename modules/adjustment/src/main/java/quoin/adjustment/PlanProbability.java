package quoin.adjustment;

import quoin.adjustment.search.NormalBox;

/**
 * Probability that all readings end inside tolerance, from a multivariate normal distribution of the true values about the
 * predicted ones. Computed by Genz's method on a fixed lattice: the same question always has the same answer.
 *
 * @param value 0 to 1
 * @param standardError standard error of the numerical integration (typically below 2e-4, never of the model); 0 if exact
 */
public record PlanProbability(double value, double standardError) {

    /**
     * Probability that every error is within plus or minus its tolerance.
     *
     * @param predictedErrors mean of the errors (reading - target), in the readings' units
     * @param covariance of the errors, in products of those units, symmetric and positive semidefinite (it may be singular:
     *        readings that depend on each other are taken as such)
     * @param tolerances half-widths, positive
     */
    public static PlanProbability inside(double[] predictedErrors, double[][] covariance, double[] tolerances) {
        int n = predictedErrors.length;
        if (covariance.length != n || tolerances.length != n) {
            throw new IllegalArgumentException("covariance: " + covariance.length + " rows, tolerances: "
                    + tolerances.length + "; give one per reading, " + n);
        }
        double[] lower = new double[n];
        for (int i = 0; i < n; i++) {
            if (covariance[i].length != n || !(covariance[i][i] >= 0)) {
                throw new IllegalArgumentException("covariance[" + i + "]: needs " + n + " entries and no negative variance");
            }
            lower[i] = -tolerances[i];
        }
        NormalBox.Probability probability = NormalBox.probability(predictedErrors, covariance, lower, tolerances);
        return new PlanProbability(probability.value(), probability.standardError());
    }
}
