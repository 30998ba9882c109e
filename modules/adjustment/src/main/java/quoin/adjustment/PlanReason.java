package quoin.adjustment;

import java.util.OptionalDouble;
import quoin.quantities.Texts;

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
    private static final Texts TEXTS = Texts.of(PlanReason.class);

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

    /** The reason in one line. */
    public String sentence() {
        String chance = percent(probability);
        String fewer = withFewer.isPresent() ? TEXTS.say("reason.fewer", percent(withFewer.getAsDouble())) : "";
        String more = withMore.isPresent() ? TEXTS.say("reason.more", percent(withMore.getAsDouble())) : "";
        return switch (kind) {
            case NOTHING_TO_TURN -> TEXTS.say("reason.nothing", chance);
            case FEWEST_VISITS -> TEXTS.say("reason.fewest", percent(sureEnough), corners(), chance, fewer, more);
            case MOST_LIKELY -> TEXTS.say("reason.likeliest", corners(), chance, percent(sureEnough), fewer, more);
            case SMALLEST_ERRORS -> TEXTS.say("reason.smallest",
                    percent(Math.max(probability, Math.max(withFewer.orElse(0), withMore.orElse(0)))), corners());
        };
    }

    private String corners() {
        return visits <= 4 ? TEXTS.say("visits." + visits) : TEXTS.say("visits.n", visits);
    }

    /** Whole per cent, and never 0 % or 100 %: no reading is that certain. */
    private static String percent(double probability) {
        if (probability > 0.99) {
            return TEXTS.say("percent.over");
        }
        if (probability < 0.01) {
            return TEXTS.say("percent.under");
        }
        return Texts.figure("%.0f %%", 100 * probability);
    }
}
