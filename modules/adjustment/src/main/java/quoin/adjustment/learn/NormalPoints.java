package quoin.adjustment.learn;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.SobolSequenceGenerator;

/** Evenly spread standard normal points (Sobol sequence through the inverse distribution): the same on every run. */
final class NormalPoints {

    static final int DIMENSIONS = 32;
    static final int COUNT = 1024;

    private static final class Holder {
        private static final double[][] TABLE = table();

        private static double[][] table() {
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(DIMENSIONS);
            NormalDistribution normal = new NormalDistribution();
            sobol.nextVector();
            double[][] out = new double[COUNT][];
            for (int i = 0; i < COUNT; i++) {
                double[] u = sobol.nextVector();
                for (int k = 0; k < DIMENSIONS; k++) {
                    u[k] = normal.inverseCumulativeProbability(u[k]);
                }
                out[i] = u;
            }
            return out;
        }
    }

    private NormalPoints() {
    }

    /** Row i of the table; not to be changed by the caller. */
    static double[] point(int i) {
        return Holder.TABLE[i % COUNT];
    }
}
