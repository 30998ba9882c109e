package quoin.adjustment.learn;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.SemiDefinitePositiveCholeskyDecomposition;

/**
 * Cars that agree with everything read so far, each with its friction-free readings now, its own response, and what the scales
 * may be off by, the same in all its readings: drawn from what is believed, evenly spread, all of equal weight.
 */
public final class Scenarios {

    /** Columns of the normal points the scales are drawn from: behind those of the car, before those of {@link NextReading}. */
    private static final int SCALES_AT = NormalPoints.DIMENSIONS - 12;

    private final double[][] now;
    private final double[][][] perTurn;
    private final double[][] off;

    private Scenarios(double[][] now, double[][][] perTurn, double[][] off) {
        this.now = now;
        this.perTurn = perTurn;
        this.off = off;
    }

    /** Draws about 'wanted' cars, at most {@value NormalPoints#COUNT}. */
    public static Scenarios draw(Posterior posterior, int wanted) {
        CarModel model = posterior.model();
        Predictor predictor = posterior.predictor();
        double[] inPlace = posterior.turnsInPlace();
        int count = Math.min(wanted, NormalPoints.COUNT);
        double[][] now = new double[count][];
        double[][][] perTurn = new double[count][][];
        List<Posterior.Node> nodes = posterior.nodes();
        double reached = 0;
        int i = 0;
        for (int k = 0; k < nodes.size(); k++) {
            Posterior.Node node = nodes.get(k);
            reached += node.weight();
            int end = k == nodes.size() - 1 ? count : (int) Math.round(reached * count);
            for (; i < end; i++) {
                double[] p = LeastSquares.backward(node.fit().factor(), NormalPoints.point(i));
                for (int j = 0; j < p.length; j++) {
                    p[j] += node.fit().p()[j];
                }
                perTurn[i] = model.perTurn(p, predictor.response(p));
                now[i] = moved(model.asFound(p), perTurn[i], inPlace);
            }
        }
        return new Scenarios(now, perTurn, new double[count][4]);
    }

    /**
     * The same cars on scales that may be off.
     *
     * @param covariance of what the loads are off by, N2, LF RF LR RR; need not have full rank
     */
    public Scenarios off(double[][] covariance) {
        double[][] factor = new SemiDefinitePositiveCholeskyDecomposition(MatrixUtils.createRealMatrix(covariance)).getL().getData();
        double[][] drawn = new double[now.length][4];
        for (int i = 0; i < drawn.length; i++) {
            for (int r = 0; r < 4; r++) {
                for (int k = 0; k <= r; k++) {
                    drawn[i][r] += factor[r][k] * NormalPoints.point(i)[SCALES_AT + k];
                }
            }
        }
        return new Scenarios(now, perTurn, drawn);
    }

    private static double[] moved(double[] from, double[][] perTurn, double[] turns) {
        double[] out = from.clone();
        for (int i = 0; i < out.length; i++) {
            for (int a = 0; a < turns.length; a++) {
                out[i] += perTurn[i][a] * turns[a];
            }
        }
        return out;
    }

    public int size() {
        return now.length;
    }

    public int adjusters() {
        return perTurn[0][0].length;
    }

    /** What the eight readings of car i should show now. */
    double[] truth(int i) {
        return righted(now[i], i);
    }

    private double[] righted(double[] readings, int i) {
        double[] out = readings.clone();
        for (int k = 0; k < 4; k++) {
            out[k] += off[i][k];
        }
        return out;
    }

    /** Readings per turn of car i. */
    double[][] perTurn(int i) {
        return perTurn[i];
    }

    /** Readings of each car after turns, as its scales will show them. */
    public double[][] after(double[] turns) {
        double[][] out = new double[now.length][];
        for (int i = 0; i < out.length; i++) {
            out[i] = moved(now[i], perTurn[i], turns);
        }
        return out;
    }

    /** What the readings of each car should show after turns: what goals are about. */
    public double[][] truthAfter(double[] turns) {
        return truthOf(after(turns));
    }

    /**
     * What readings should show.
     *
     * @param after a row a car, as {@link #after} gives them; they stay as they are
     */
    public double[][] truthOf(double[][] after) {
        double[][] out = new double[after.length][];
        for (int i = 0; i < out.length; i++) {
            out[i] = righted(after[i], i);
        }
        return out;
    }
}
