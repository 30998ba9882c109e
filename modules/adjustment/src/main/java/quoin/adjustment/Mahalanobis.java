package quoin.adjustment;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;

/** Squared distance in standard deviations: d' C^-1 d. */
final class Mahalanobis {

    private Mahalanobis() {
    }

    static double squared(double[] d, List<List<Double>> covariance) {
        double[][] c = covariance.stream().map(r -> r.stream().mapToDouble(Double::doubleValue).toArray()).toArray(double[][]::new);
        ArrayRealVector v = new ArrayRealVector(d);
        return new CholeskyDecomposition(new Array2DRowRealMatrix(c), 1e-9, 1e-12).getSolver().solve(v).dotProduct(v);
    }
}
