package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import quoin.adjustment.learn.Aim;
import quoin.adjustment.learn.ChanceSearch;
import quoin.adjustment.learn.ChanceTable;
import quoin.adjustment.learn.Posterior;
import quoin.adjustment.learn.Scenarios;

/**
 * What is believed of the car after the readings so far: its response, its friction-free state now, the noise.
 * Immutable.
 */
public final class ResponseBelief {

    private static final int SCENARIOS = 1024;

    private final LearningPrior prior;
    private final List<SettledReading> history;
    private final Posterior posterior;
    private final Scenarios scenarios;

    ResponseBelief(LearningPrior prior, List<SettledReading> history, Posterior posterior) {
        this(prior, history, posterior, Scenarios.draw(posterior, SCENARIOS));
    }

    private ResponseBelief(LearningPrior prior, List<SettledReading> history, Posterior posterior, Scenarios scenarios) {
        this.prior = prior;
        this.history = List.copyOf(history);
        this.posterior = posterior;
        this.scenarios = scenarios;
    }

    /**
     * The same, read on scales that may be off: alike in every reading, so that no reading tells and no turn shows it. What is read
     * next is forecast as before; what is true, and with it every chance of meeting a goal, is as much less certain.
     *
     * @param loadCovariance of what the four loads are off by, N2, rows and columns LF RF LR RR
     */
    public ResponseBelief onScalesOff(List<List<Double>> loadCovariance) {
        double[][] covariance = loadCovariance.stream().map(row -> row.stream().mapToDouble(v -> v).toArray()).toArray(double[][]::new);
        return new ResponseBelief(prior, history, posterior, scenarios.off(covariance));
    }

    public LearningPrior prior() {
        return prior;
    }

    public List<SettledReading> history() {
        return history;
    }

    Posterior posterior() {
        return posterior;
    }

    Scenarios scenarios() {
        return scenarios;
    }

    /** Most credible wheel rates, N/mm, order LF RF LR RR. */
    public List<Double> wheelRatesNPerMm() {
        return list(posterior.rates());
    }

    /** Relative standard uncertainty of each wheel rate. */
    public List<Double> wheelRateRelativeSds() {
        return list(posterior.rateSds());
    }

    /** Most credible lift of each adjuster, mm per turn. */
    public List<Double> liftsMmPerTurn() {
        return list(posterior.lifts());
    }

    /** Relative standard uncertainty of each lift. */
    public List<Double> liftRelativeSds() {
        return list(posterior.liftSds());
    }

    /** Standard deviation of the friction force at one suspension, as learnt, N. */
    public double frictionSdN() {
        return posterior.noise()[0];
    }

    /** Standard deviation of one height reading, as learnt, mm. */
    public double heightSdMm() {
        return posterior.noise()[1];
    }

    /** Readings to expect after turns (one value per adjuster), in the load case of the targets. */
    public ReadingForecast predict(double[] turns) {
        checkTurns(turns.length);
        double[][] after = scenarios.after(turns);
        double[] mean = mean(after);
        double[][] reading = covariance(after, mean);
        double[][] noise = posterior.readingCovariance(1);
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < 8; j++) {
                reading[i][j] += noise[i][j];
            }
        }
        double[][] truth = scenarios.truthOf(after);
        return new ReadingForecast(list(mean), lists(covariance(truth, mean(truth))), lists(reading));
    }

    private static double[][] covariance(double[][] sample, double[] mean) {
        double[][] out = new double[8][8];
        for (double[] row : sample) {
            for (int i = 0; i < 8; i++) {
                for (int j = 0; j < 8; j++) {
                    out[i][j] += (row[i] - mean[i]) * (row[j] - mean[j]) / sample.length;
                }
            }
        }
        return out;
    }

    /** Mean loads (N, first four) and heights (mm, last four) per turn of each adjuster: 8 rows. */
    public List<List<Double>> responsePerTurn() {
        int m = prior.adjusters().size();
        double[] still = predictMean(new double[m]);
        double[][] out = new double[8][m];
        for (int a = 0; a < m; a++) {
            double[] one = new double[m];
            one[a] = 1;
            double[] after = predictMean(one);
            for (int i = 0; i < 8; i++) {
                out[i][a] = after[i] - still[i];
            }
        }
        return lists(out);
    }

    private double[] predictMean(double[] turns) {
        return mean(scenarios.after(turns));
    }

    private static double[] mean(double[][] sample) {
        double[] mean = new double[8];
        for (double[] row : sample) {
            for (int i = 0; i < 8; i++) {
                mean[i] += row[i] / sample.length;
            }
        }
        return mean;
    }

    /** Every goal's friction-free value after turns: mean, uncertainty, probability inside. */
    public List<GoalForecast> forecast(List<Goal> goals, double[] turns) {
        checkTurns(turns.length);
        double[][] sample = scenarios.truthAfter(turns);
        List<GoalForecast> out = new ArrayList<>();
        for (Goal goal : goals) {
            Aim aim = aim(goal);
            double mean = 0;
            double square = 0;
            int in = 0;
            for (double[] row : sample) {
                double d = aim.value(row) - goal.target();
                mean += d / sample.length;
                square += d * d / sample.length;
                in += Math.abs(d) <= goal.tolerance() ? 1 : 0;
            }
            out.add(new GoalForecast(goal, goal.target() + mean, Math.sqrt(Math.max(0, square - mean * mean)),
                    (double) in / sample.length));
        }
        return out;
    }

    /** Probability that all goals are met, friction-free, after turns. */
    public double probabilityInside(List<Goal> goals, double[] turns) {
        checkTurns(turns.length);
        return new ChanceTable(scenarios, aims(goals), turns).chance(ones(turns.length));
    }

    /** Probability that all goals are met as the car stands. */
    public double probabilityInside(List<Goal> goals) {
        return probabilityInside(goals, new double[prior.adjusters().size()]);
    }

    /** The verdict on the goals as the car stands, by the rule. */
    public CarVerdict verdict(List<Goal> goals, GuardBand rule) {
        List<GoalVerdict> each = forecast(goals, new double[prior.adjusters().size()]).stream()
                .map(f -> new GoalVerdict(f, rule.width(f.sd()), rule.verdict(f.probabilityInside())))
                .toList();
        double all = probabilityInside(goals);
        return new CarVerdict(each, all, rule.verdict(all));
    }

    /**
     * Whole steps with the best probability of meeting every goal, uncertainty of the response included.
     *
     * @param stepTurns turns of one step of each adjuster (0.25 for quarter turns)
     * @param lowest fewest steps allowed at each adjuster, at most 0
     * @param highest most steps allowed at each adjuster, at least 0
     */
    public TurnAdvice bestSteps(List<Goal> goals, double[] stepTurns, int[] lowest, int[] highest) {
        checkTurns(stepTurns.length);
        ChanceTable table = new ChanceTable(scenarios, aims(goals), stepTurns);
        int[] best = ChanceSearch.best(table, lowest, highest);
        return new TurnAdvice(IntStream.of(best).boxed().toList(), table.chance(new int[best.length]),
                table.chance(best));
    }

    /** The same without range limits. */
    public TurnAdvice bestSteps(List<Goal> goals, double[] stepTurns) {
        int[] far = new int[stepTurns.length];
        java.util.Arrays.fill(far, 1000);
        return bestSteps(goals, stepTurns, IntStream.of(far).map(s -> -s).toArray(), far);
    }

    private void checkTurns(int length) {
        if (length != prior.adjusters().size()) {
            throw new IllegalArgumentException("turns holds " + length + " values; give one per adjuster, "
                    + prior.adjusters().size());
        }
    }

    static List<Aim> aims(List<Goal> goals) {
        return goals.stream().map(ResponseBelief::aim).toList();
    }

    private static Aim aim(Goal goal) {
        return new Aim(goal.weights(), goal.share(), goal.target(), goal.tolerance());
    }

    private static int[] ones(int n) {
        int[] out = new int[n];
        java.util.Arrays.fill(out, 1);
        return out;
    }

    private static List<Double> list(double[] values) {
        return java.util.Arrays.stream(values).boxed().toList();
    }

    private static List<List<Double>> lists(double[][] rows) {
        return java.util.Arrays.stream(rows).map(ResponseBelief::list).toList();
    }
}
