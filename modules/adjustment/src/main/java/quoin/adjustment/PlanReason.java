package quoin.adjustment;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Why the first plan is first, in numbers and in one line.
 *
 * @param kind the rule that decided
 * @param visits visits of the first plan
 * @param probability its probability of ending inside tolerance
 * @param sureEnough the probability asked for
 * @param withFewer best probability among the offered plans with fewer visits, absent when there are none
 * @param withMore best probability among the offered plans with more visits, absent when there are none
 */
public record PlanReason(Kind kind, int visits, double probability, double sureEnough, OptionalDouble withFewer,
        OptionalDouble withMore) {

    /** The rules, in the order in which they are tried. */
    public enum Kind {
        /** Leaving everything alone is sure enough. */
        NOTHING_TO_TURN,
        /** The fewest visits that are sure enough. */
        FEWEST_VISITS,
        /** None is sure enough; the fewest visits within 5 points of the most likely plan. */
        MOST_LIKELY,
        /** None is likely to end inside; the plan with the lowest objective. */
        SMALLEST_ERRORS
    }

    /** The reason in one line of English. */
    public String sentence() {
        String chance = percent(probability);
        String fewer = withFewer.isPresent() ? "; fewer corners reach " + percent(withFewer.getAsDouble()) : "";
        String more = withMore.isPresent() ? "; more corners reach " + percent(withMore.getAsDouble()) : "";
        return switch (kind) {
            case NOTHING_TO_TURN -> "Leave it: with nothing turned it is inside tolerance with " + chance + ".";
            case FEWEST_VISITS -> "Fewest corners for " + percent(sureEnough) + " certainty: " + corners()
                    + " and ends inside tolerance with " + chance + fewer + more + ".";
            case MOST_LIKELY -> "Best chance: " + corners() + " and ends inside tolerance with " + chance
                    + ", short of " + percent(sureEnough) + fewer + more + ".";
            case SMALLEST_ERRORS -> "No plan is likely to bring every reading inside tolerance (at best "
                    + percent(Math.max(probability, Math.max(withFewer.orElse(0), withMore.orElse(0))))
                    + "); this one leaves the smallest errors for its visits: " + corners() + ".";
        };
    }

    private String corners() {
        return switch (visits) {
            case 0 -> "turns nothing";
            case 1 -> "visits one corner";
            case 2 -> "visits two corners";
            case 3 -> "visits three corners";
            case 4 -> "visits four corners";
            default -> "makes " + visits + " visits";
        };
    }

    /** Whole per cent, and never 0 % or 100 %: no reading is that certain. */
    private static String percent(double probability) {
        if (probability > 0.99) {
            return "over 99 %";
        }
        if (probability < 0.01) {
            return "under 1 %";
        }
        return String.format(Locale.ROOT, "%.0f %%", 100 * probability);
    }
}
