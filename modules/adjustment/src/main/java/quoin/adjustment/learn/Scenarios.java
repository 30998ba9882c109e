package quoin.adjustment.learn;

import java.util.List;

/**
 * Cars that agree with everything read so far, each with its friction-free readings now and its own response: drawn
 * from the posterior, evenly spread, all of equal weight.
 */
public final class Scenarios {

    private final double[][] now;
    private final double[][][] perTurn;

    private Scenarios(double[][] now, double[][][] perTurn) {
        this.now = now;
        this.perTurn = perTurn;
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
        return new Scenarios(now, perTurn);
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

    /** The eight readings of car i now. */
    double[] now(int i) {
        return now[i];
    }

    /** Readings per turn of car i. */
    double[][] perTurn(int i) {
        return perTurn[i];
    }

    /** Readings of each car after turns. */
    public double[][] after(double[] turns) {
        double[][] out = new double[now.length][];
        for (int i = 0; i < out.length; i++) {
            out[i] = moved(now[i], perTurn[i], turns);
        }
        return out;
    }
}
