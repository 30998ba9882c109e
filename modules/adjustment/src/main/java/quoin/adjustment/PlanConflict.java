package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.adjustment.search.BandFit;

/**
 * Proof that no combination of turns within the ranges, whole steps or not, brings every reading inside tolerance at once.
 *
 * @param distance lower bound of the distance from "all inside": root of the sum of squares of what exceeds the tolerances,
 *        each in tolerances
 * @param turns the nearest combination, steps left aside
 * @param excess per reading at that combination: what exceeds its tolerance, in tolerances, with the sign of the error
 * @param readings the readings that stay outside there, worst first
 * @param adjustersAtEnd the adjusters at the end of their range there
 */
public record PlanConflict(double distance, double[] turns, double[] excess, List<Integer> readings,
        List<String> adjustersAtEnd) {
    private static final double NOTICEABLE = 1e-6;

    /** Copies. */
    public PlanConflict {
        turns = turns.clone();
        excess = excess.clone();
        readings = List.copyOf(readings);
        adjustersAtEnd = List.copyOf(adjustersAtEnd);
    }

    @Override
    public double[] turns() {
        return turns.clone();
    }

    @Override
    public double[] excess() {
        return excess.clone();
    }

    /** The conflict, or empty when (steps left aside) all readings can be inside at once. */
    public static Optional<PlanConflict> of(StepProblem problem) {
        BandFit fit = BandFit.of(PlanSearch.space(problem));
        if (fit.provenDistance() == 0) {
            return Optional.empty();
        }
        double[] excess = fit.excess();
        List<Integer> readings = new ArrayList<>();
        for (int i = 0; i < excess.length; i++) {
            if (Math.abs(excess[i]) > NOTICEABLE) {
                readings.add(i);
            }
        }
        readings.sort((one, two) -> Double.compare(Math.abs(excess[two]), Math.abs(excess[one])));
        List<String> atEnd = new ArrayList<>();
        for (int j = 0; j < fit.turns().length; j++) {
            StepAdjuster adjuster = problem.adjusters().get(j);
            double t = fit.turns()[j];
            if (!adjuster.isLocked() && (t == adjuster.minTurns() || t == adjuster.maxTurns())) {
                atEnd.add(adjuster.id());
            }
        }
        return Optional.of(new PlanConflict(fit.provenDistance(), fit.turns(), excess, readings, atEnd));
    }
}
