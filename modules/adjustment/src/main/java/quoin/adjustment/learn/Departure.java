package quoin.adjustment.learn;

import java.util.ArrayList;
import java.util.List;

/**
 * One departure from the plain model, held against the readings. The odds are the ratio of the two models' probabilities
 * of the readings, each averaged over everything unknown (Bayes factor; Kass and Raftery, J. Amer. Statist. Assoc. 90,
 * 1995, 773-795), so a departure that explains anything is paid for by its own vagueness.
 *
 * @param suspect what departs
 * @param logOdds natural logarithm of the Bayes factor against the plain model
 * @param amount most credible value of the free parameter
 * @param sd its standard deviation
 */
public record Departure(Suspect suspect, double logOdds, double amount, double sd) {

    /** The departures in the order of the suspects. */
    public static List<Departure> of(CarModel model, List<NoiseLevel> levels, List<Settling> history,
            List<Suspect> suspects) {
        double plain = Posterior.of(model, levels, history, Suspect.NONE).logEvidence();
        List<Departure> out = new ArrayList<>();
        for (Suspect suspect : suspects) {
            Posterior posterior = Posterior.of(model, levels, history, suspect);
            double[] extra = posterior.extra();
            out.add(new Departure(suspect, posterior.logEvidence() - plain, extra[0], extra[1]));
        }
        return List.copyOf(out);
    }
}
