package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import quoin.adjustment.learn.CarModel;
import quoin.adjustment.learn.Departure;
import quoin.adjustment.learn.NoiseLevel;
import quoin.adjustment.learn.Posterior;
import quoin.adjustment.learn.Settling;
import quoin.adjustment.learn.Suspect;

/**
 * Learns the car from the rounds of the day: Bayesian update of wheel rates, lift per turn, present state and reading
 * noise. The whole history is solved again each time (at most some thirty readings), so the answer does not depend on
 * the order of updates and is reproducible.
 */
public final class Learner {

    private Learner() {
    }

    /**
     * What is believed after the readings.
     *
     * @param prior what was believed before the first reading
     * @param history every settled reading of the day, in order, at least one; the first is as-found
     * @throws IllegalArgumentException when the history is empty or the turns of a reading do not match the adjusters
     */
    public static ResponseBelief learn(LearningPrior prior, List<SettledReading> history) {
        CarModel model = model(prior);
        List<Settling> settlings = settlings(prior, history);
        return new ResponseBelief(prior, history, Posterior.of(model, levels(prior.noise()), settlings, Suspect.NONE));
    }

    static List<NoiseLevel> levels(NoisePrior noise) {
        return NoiseLevel.grid(noise.frictionSdN(), noise.frictionLogSd(), noise.heightSdMm(), noise.heightLogSd(),
                noise.scaleSdN());
    }

    /** Log odds of single departures, in the order given, against the plain model on the same history. */
    static List<Departure> departures(LearningPrior prior, List<SettledReading> history, List<Suspect> suspects) {
        NoisePrior noise = prior.noise();
        return Departure.of(model(prior), NoiseLevel.coarse(noise.frictionSdN(), noise.frictionLogSd(), noise.heightSdMm(),
                noise.scaleSdN()), settlings(prior, history), suspects);
    }

    /** Log probability of the history under the plain model, comparable between histories that differ in figures only. */
    static double logEvidence(LearningPrior prior, List<SettledReading> history) {
        NoisePrior noise = prior.noise();
        return Posterior.of(model(prior), NoiseLevel.coarse(noise.frictionSdN(), noise.frictionLogSd(), noise.heightSdMm(),
                noise.scaleSdN()), settlings(prior, history), Suspect.NONE).logEvidence();
    }

    static List<Settling> settlings(LearningPrior prior, List<SettledReading> history) {
        if (history.isEmpty()) {
            throw new IllegalArgumentException("history is empty; learning needs the as-found reading at least");
        }
        List<Settling> out = new ArrayList<>();
        for (SettledReading reading : history) {
            if (reading.turns().size() != prior.adjusters().size()) {
                throw new IllegalArgumentException("turns of reading " + (out.size() + 1) + " holds "
                        + reading.turns().size() + " values; give one per adjuster, " + prior.adjusters().size());
            }
            out.add(settling(reading));
        }
        return out;
    }

    private static Settling settling(SettledReading reading) {
        double[] values = new double[8];
        boolean[] present = new boolean[8];
        for (int i = 0; i < 8; i++) {
            var value = i < 4 ? reading.loadsN().get(i) : reading.heightsMm().get(i - 4);
            present[i] = value.isPresent();
            values[i] = value.orElse(0);
        }
        double[] load = new double[3];
        for (LoadChange change : reading.loadChanges()) {
            double weight = change.massKg() * STANDARD_GRAVITY;
            load[0] += weight;
            load[1] += weight * change.xMm();
            load[2] += weight * change.yMm();
        }
        double[] turns = reading.turns().stream().mapToDouble(Double::doubleValue).toArray();
        return new Settling(turns, values, present, load, reading.settlings());
    }

    /** Standard acceleration of gravity, m/s2 (3rd CGPM, 1901). */
    private static final double STANDARD_GRAVITY = 9.80665;

    static CarModel model(LearningPrior prior) {
        double[][] wheel = new double[4][];
        double[][] height = new double[4][];
        double[] tyre = new double[4];
        double[] rate = new double[4];
        double[] rateSd = new double[4];
        for (int i = 0; i < 4; i++) {
            CornerSpring c = prior.corners().get(i);
            wheel[i] = new double[] {c.xMm(), c.yMm()};
            height[i] = new double[] {c.heightXMm(), c.heightYMm()};
            tyre[i] = c.tyreRateNPerMm();
            rate[i] = c.wheelRateNPerMm();
            rateSd[i] = c.rateRelativeSd();
        }
        List<LiftAdjuster> adjusters = prior.adjusters();
        List<String> groups = adjusters.stream().map(LiftAdjuster::liftGroup).distinct().toList();
        double[] groupSd = new double[groups.size()];
        int[] group = new int[adjusters.size()];
        for (int a = 0; a < group.length; a++) {
            group[a] = groups.indexOf(adjusters.get(a).liftGroup());
            groupSd[group[a]] = adjusters.get(a).liftRelativeSd();
        }
        return CarModel.of(wheel, height, tyre, rate, rateSd,
                prior.barRatesNPerMm().stream().mapToDouble(Double::doubleValue).toArray(),
                adjusters.stream().mapToInt(a -> a.corner().ordinal()).toArray(),
                adjusters.stream().mapToDouble(LiftAdjuster::liftMmPerTurn).toArray(), group, groupSd,
                prior.exactResponse().stream()
                        .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray()).toArray(double[][]::new));
    }
}
