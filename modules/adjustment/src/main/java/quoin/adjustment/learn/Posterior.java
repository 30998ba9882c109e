package quoin.adjustment.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The posterior over car and noise: a mixture of one Gaussian per noise level. */
public final class Posterior {

    /** One noise level with its weight and Gaussian. */
    record Node(NoiseLevel noise, double weight, Fit.Result fit) {
    }

    private static final double NEGLIGIBLE = 2e-3;

    private final CarModel model;
    private final List<Settling> history;
    private final Suspect suspect;
    private final List<Node> nodes;
    private final double logEvidence;

    private Posterior(CarModel model, List<Settling> history, Suspect suspect, List<Node> nodes, double logEvidence) {
        this.model = model;
        this.history = history;
        this.suspect = suspect;
        this.nodes = nodes;
        this.logEvidence = logEvidence;
    }

    /** Updates the prior by the whole history. */
    public static Posterior of(CarModel model, List<NoiseLevel> levels, List<Settling> history, Suspect suspect) {
        Fit fit = new Fit(model, history, suspect);
        double[] start = fit.start();
        List<Fit.Result> results = new ArrayList<>();
        double best = Double.NEGATIVE_INFINITY;
        for (NoiseLevel level : levels) {
            Fit.Result result = fit.run(start, level);
            start = result.p();
            results.add(result);
            best = Math.max(best, result.logEvidence() + level.logPrior());
        }
        double sum = 0;
        double prior = 0;
        for (int i = 0; i < levels.size(); i++) {
            sum += Math.exp(results.get(i).logEvidence() + levels.get(i).logPrior() - best);
            prior += Math.exp(levels.get(i).logPrior());
        }
        List<Node> nodes = new ArrayList<>();
        double kept = 0;
        for (int i = 0; i < levels.size(); i++) {
            double w = Math.exp(results.get(i).logEvidence() + levels.get(i).logPrior() - best) / sum;
            if (w > NEGLIGIBLE) {
                nodes.add(new Node(levels.get(i), w, results.get(i)));
                kept += w;
            }
        }
        double total = kept;
        nodes.replaceAll(node -> new Node(node.noise(), node.weight() / total, node.fit()));
        return new Posterior(model, history, suspect, nodes, best + Math.log(sum / prior));
    }

    CarModel model() {
        return model;
    }

    List<Node> nodes() {
        return nodes;
    }

    Predictor predictor() {
        return new Predictor(model, history, suspect);
    }

    Node likeliest() {
        return nodes.stream().max(Comparator.comparingDouble(Node::weight)).orElseThrow();
    }

    /** Log probability of the readings, up to a constant common to all suspects on the same history. */
    public double logEvidence() {
        return logEvidence;
    }

    /** Mean of parameter k. */
    double mean(int k) {
        double m = 0;
        for (Node node : nodes) {
            m += node.weight() * node.fit().p()[k];
        }
        return m;
    }

    /** Standard deviation of parameter k. */
    double sd(int k) {
        double m = mean(k);
        double v = 0;
        for (Node node : nodes) {
            double d = node.fit().p()[k] - m;
            v += node.weight() * (d * d + variance(node.fit().factor(), k));
        }
        return Math.sqrt(v);
    }

    private static double variance(double[][] r, int k) {
        // row k of the inverse of R, squared: solve R' x = unit vector k
        int n = r.length;
        double[] x = new double[n];
        double sum = 0;
        for (int i = k; i < n; i++) {
            double v = i == k ? 1 : 0;
            for (int j = k; j < i; j++) {
                v -= r[j][i] * x[j];
            }
            x[i] = v / r[i][i];
            sum += x[i] * x[i];
        }
        return sum;
    }

    /** Wheel rates: mean, N/mm. */
    public double[] rates() {
        double[] out = new double[4];
        for (int i = 0; i < 4; i++) {
            out[i] = model.rate()[i] * Math.exp(mean(i));
        }
        return out;
    }

    /** Relative standard deviations of the wheel rates. */
    public double[] rateSds() {
        double[] out = new double[4];
        for (int i = 0; i < 4; i++) {
            out[i] = sd(i);
        }
        return out;
    }

    /** Lift of each adjuster, mm per turn. */
    public double[] lifts() {
        double[] out = new double[model.adjusters()];
        for (int a = 0; a < out.length; a++) {
            out[a] = model.lift()[a] * Math.exp(mean(CarModel.LIFT + model.group()[a]));
        }
        return out;
    }

    /** Relative standard deviation of each lift. */
    public double[] liftSds() {
        double[] out = new double[model.adjusters()];
        for (int a = 0; a < out.length; a++) {
            out[a] = sd(CarModel.LIFT + model.group()[a]);
        }
        return out;
    }

    /** The suspect's free parameter: mean and standard deviation. */
    public double[] extra() {
        if (!suspect.free()) {
            throw new IllegalStateException("the plain model has no free parameter");
        }
        return new double[] {mean(model.parameters()), sd(model.parameters())};
    }

    /** Root mean square friction, N, and height noise, mm. */
    public double[] noise() {
        double f = 0;
        double h = 0;
        for (Node node : nodes) {
            f += node.weight() * node.noise().friction() * node.noise().friction();
            h += node.weight() * node.noise().height() * node.noise().height();
        }
        return new double[] {Math.sqrt(f), Math.sqrt(h)};
    }

    /** Covariance of one more reading round the truth, 8 by 8. */
    public double[][] readingCovariance(int settlings) {
        double[][] out = new double[8][8];
        for (Node node : nodes) {
            double[][] c = node.noise().covariance(predictor().response(node.fit().p()), settlings);
            for (int i = 0; i < 8; i++) {
                for (int j = 0; j < 8; j++) {
                    out[i][j] += node.weight() * c[i][j];
                }
            }
        }
        return out;
    }

    /** Turns in place after the history, as counted. */
    public double[] turnsInPlace() {
        double[] sum = new double[model.adjusters()];
        for (Settling s : history) {
            for (int a = 0; a < sum.length; a++) {
                sum[a] += s.turns()[a];
            }
        }
        return sum;
    }
}
