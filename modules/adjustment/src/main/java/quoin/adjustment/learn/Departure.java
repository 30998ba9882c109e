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

    /**
     * The departures in the order of the suspects. One that does no better than the plain model at the middle noise level is
     * not pursued at the others.
     */
    public static List<Departure> of(CarModel model, List<NoiseLevel> levels, List<Settling> history,
            List<Suspect> suspects) {
        List<NoiseLevel> middle = List.of(levels.get(levels.size() / 2));
        double plain = Posterior.of(model, levels, history, Suspect.NONE).logEvidence();
        double plainMiddle = Posterior.of(model, middle, history, Suspect.NONE).logEvidence();
        List<Departure> out = new ArrayList<>();
        for (Suspect suspect : suspects) {
            Departure first = departure(suspect, Posterior.of(model, middle, history, suspect), plainMiddle);
            out.add(first.logOdds() <= 0 ? first : departure(suspect, Posterior.of(model, levels, history, suspect), plain));
        }
        return List.copyOf(out);
    }

    private static Departure departure(Suspect suspect, Posterior posterior, double plain) {
        double[] extra = posterior.extra();
        return new Departure(suspect, posterior.logEvidence() - plain, extra[0], extra[1]);
    }
}
