package quoin.adjustment;

import java.util.List;
import quoin.adjustment.learn.NextReading;
import quoin.quantities.Texts;

/**
 * When to stop. The work ends when the probability that every goal is met, friction-free, reaches
 * {@code enoughProbability}, or when a further round would raise it by less than {@code leastGain}, be it made once or
 * twice: then the noise of the readings, not the setting, limits what can be known. A bare estimate never ends it, and a
 * single reading that is close, with nothing much to gain by turning, is read once more.
 *
 * @param enoughProbability probability that is enough, between 0.5 and 1
 * @param leastGain rise of the probability a round must promise, 0 or more
 * @param readAgainChance chance of settling the matter from which one more settled reading is advised before a turn;
 *     above 1 for never
 */
public record StopRule(double enoughProbability, double leastGain, double readAgainChance) {
    private static final Texts TEXTS = Texts.of(StopRule.class);

    /**
     * The usual rule: 85 %, or less than ten points to gain; read again when that settles it with a chance of one in
     * three. Chosen on the rounds benchmark: a higher demand costs rounds that friction does not repay.
     */
    public static final StopRule USUAL = new StopRule(0.85, 0.10, 1.0 / 3);

    public StopRule {
        if (!(enoughProbability > 0.5 && enoughProbability < 1)) {
            throw new IllegalArgumentException("enoughProbability must lie between 0.5 and 1; got " + enoughProbability);
        }
        if (!(leastGain >= 0)) {
            throw new IllegalArgumentException("leastGain must be 0 or more; got " + leastGain);
        }
    }

    /**
     * The next step.
     *
     * @param goals the goals, at least one
     * @param stepTurns turns of one step of each adjuster
     */
    public NextStep next(ResponseBelief belief, List<Goal> goals, double[] stepTurns) {
        return next(belief, goals, stepTurns, belief.bestSteps(goals, stepTurns));
    }

    /** The next step when the turns to make are already chosen. */
    public NextStep next(ResponseBelief belief, List<Goal> goals, double[] stepTurns, TurnAdvice advice) {
        double now = advice.probabilityNow();
        double after = advice.probabilityAfter();
        if (now >= enoughProbability) {
            return new NextStep(NextStep.Action.STOP_INSIDE, advice, now, after, after, 1, text(
                    "stop.inside", now, enoughProbability));
        }
        double[] turns = new double[stepTurns.length];
        for (int a = 0; a < turns.length; a++) {
            turns[a] = advice.steps().get(a) * stepTurns[a];
        }
        double twice = Math.max(after, new NextReading(belief.posterior(), belief.scenarios(),
                ResponseBelief.aims(goals), turns).chanceAfterFurtherTurn());
        double gain = Math.max(after - now, (twice - now) / 2);
        double settles = new NextReading(belief.posterior(), belief.scenarios(), ResponseBelief.aims(goals),
                new double[turns.length]).chanceOfReaching(enoughProbability);
        boolean turnedAlready = belief.history().stream().anyMatch(SettledReading::turned);
        boolean settling = settles >= readAgainChance;
        boolean hardlyGains = now > 1 - enoughProbability && after - now < leastGain || !advice.turnsAnything();
        if (settling || readAgainChance <= 1 && belief.history().size() == 1 && hardlyGains) {
            return new NextStep(NextStep.Action.READ_AGAIN, advice, now, after, twice, settles, settling ? text(
                    "stop.settles", now, settles) : text(
                    "stop.single",
                    now, enoughProbability));
        }
        if (gain < leastGain && (turnedAlready || !advice.turnsAnything())) {
            return new NextStep(NextStep.Action.STOP_NO_GAIN, advice, now, after, twice, settles, text(
                    "stop.noGain",
                    now, Math.max(after, now)));
        }
        return new NextStep(NextStep.Action.TURN, advice, now, after, twice, settles, text(
                "stop.turn", now, after));
    }

    private static String text(String key, double first, double second) {
        return TEXTS.say(key, Texts.figure("%.0f %%", first * 100), Texts.figure("%.0f %%", second * 100));
    }
}
