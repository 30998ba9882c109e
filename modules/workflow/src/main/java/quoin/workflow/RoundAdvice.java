package quoin.workflow;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quoin.adjustment.CarVerdict;
import quoin.adjustment.GoalVerdict;
import quoin.adjustment.GuardBand;
import quoin.adjustment.NextStep;
import quoin.adjustment.OddCorner;
import quoin.adjustment.StopRule;
import quoin.adjustment.Verdict;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.quantities.Texts;

/**
 * What the rounds so far say: where the car stands against its targets, friction left aside, and whether another round is
 * worth it.
 *
 * @param verdicts          by reading with a target: inside, outside or too close to call, with its probability
 * @param all               the same for all of them together
 * @param next              turn, read once more, or stop
 * @param nextWords         one sentence on that, with the numbers behind it
 * @param chanceAfterRound  probability that every target is met after one more round
 * @param oddCorner         a corner that answered oddly, with the evidence; empty = none stands out
 */
public record RoundAdvice(Map<ReadingId, Verdict> verdicts, Verdict all, NextStep.Action next, String nextWords,
        double chanceAfterRound, Optional<OddCorner> oddCorner) {

    public RoundAdvice {
        verdicts = Collections.unmodifiableMap(new LinkedHashMap<>(verdicts));
        Objects.requireNonNull(all, "all");
        Objects.requireNonNull(next, "next");
        Objects.requireNonNull(oddCorner, "oddCorner");
    }

    /** What the day says; empty where nothing was read that counts, or nothing read has a target. */
    public static Optional<RoundAdvice> of(Day day) {
        return LegBelief.of(day).flatMap(legs -> of(day, legs));
    }

    private static Optional<RoundAdvice> of(Day day, LegBelief legs) {
        LegReadings readings = LegReadings.of(day, legs);
        if (readings.goals().isEmpty()) {
            return Optional.empty();
        }
        CarVerdict verdict = legs.belief().verdict(readings.beliefGoals(), GuardBand.USUAL);
        Map<ReadingId, Verdict> each = new LinkedHashMap<>();
        for (int i = 0; i < readings.goals().size(); i++) {
            GoalVerdict goal = verdict.goals().get(i);
            each.put(readings.goals().get(i), new Verdict(goal.verdict(), goal.forecast().probabilityInside()));
        }
        LikeliestTurns likeliest = LikeliestTurns.of(day, legs, readings.beliefGoals());
        NextStep next = StopRule.USUAL.next(legs.belief(), readings.beliefGoals(), likeliest.stepTurns(), likeliest.advice());
        return Optional.of(new RoundAdvice(each, new Verdict(verdict.verdict(), verdict.probabilityInside()), next.action(),
                Texts.sentence(next.reason()) + ".", next.probabilityAfterRound(), OddCorner.of(legs.belief().prior(),
                legs.belief().history())));
    }

    /** Whether the work on these targets ends here. */
    public boolean stops() {
        return next == NextStep.Action.STOP_INSIDE || next == NextStep.Action.STOP_NO_GAIN;
    }

    /** The sentence that says to stop; empty = go on. */
    public Optional<String> stopWords() {
        return stops() ? Optional.of(nextWords) : Optional.empty();
    }

    /** The sentence that asks for one more settled reading; empty = not asked for. */
    public Optional<String> readAgainWords() {
        return next == NextStep.Action.READ_AGAIN ? Optional.of(nextWords) : Optional.empty();
    }

    /** The sentence about a corner that answered oddly; empty = none. */
    public Optional<String> oddCornerWords() {
        return oddCorner.map(OddCorner::words);
    }

    /** Readings outside or too close to call, in the order of the targets. */
    public List<ReadingId> open() {
        return verdicts.entrySet().stream().filter(e -> e.getValue().answer() != Verdict.Answer.INSIDE).map(Map.Entry::getKey)
                .toList();
    }
}
