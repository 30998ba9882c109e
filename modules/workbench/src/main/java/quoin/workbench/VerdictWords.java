package quoin.workbench;

import java.util.List;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;
import quoin.adjustment.Verdict;
import quoin.car.Target;
import quoin.workflow.Freshness;
import quoin.workflow.ReadingState;
import quoin.workflow.StageState;

/**
 * A verdict as a shape and a word.
 *
 * @param mark the shape
 * @param word the word beside it, in full: "1.4 mm high"
 */
@Messages({
    "verdict.missing=not read yet",
    "verdict.noTarget=no target",
    "verdict.inside=inside",
    "# {0} - difference", "verdict.high=outside, {0} too high",
    "# {0} - difference", "verdict.low=outside, {0} too low",
    "verdict.close=too close to call",
    "# {0} - verdict", "# {1} - reasons", "verdict.stale=stale ({0} then): {1}",
    "# {0} - verdict", "# {1} - reasons", "verdict.doubtful={0}, doubtful: {1}",
    "# {0} - verdict", "# {1} - reasons", "verdict.outOfOrder={0}, out of order: {1}",
    "stage.waiting=waiting", "stage.open=open", "stage.ready=ready to sign off", "stage.signed=signed off",
    "stage.checkAgain=check again"})
public record VerdictWords(Mark mark, String word) {

    /** What to show for a reading in a stage. */
    public static VerdictWords of(ReadingState state, ReadingFormat format) {
        if (state.value().isEmpty() || state.freshness() == Freshness.MISSING) {
            return new VerdictWords(Mark.NONE, Bundle.verdict_missing());
        }
        VerdictWords verdict = verdict(state, format);
        String reasons = String.join("; ", state.reasons());
        return switch (state.freshness()) {
            case STALE -> new VerdictWords(Mark.AGAIN, Bundle.verdict_stale(verdict.word(), reasons));
            case DOUBTFUL -> new VerdictWords(Mark.AGAIN, Bundle.verdict_doubtful(verdict.word(), reasons));
            case OUT_OF_ORDER -> new VerdictWords(verdict.mark(), Bundle.verdict_outOfOrder(verdict.word(), reasons));
            default -> verdict;
        };
    }

    /** What to show for the first of some states, or "not read yet". */
    public static VerdictWords of(Optional<ReadingState> state, ReadingFormat format) {
        return state.map(s -> of(s, format)).orElseGet(() -> new VerdictWords(Mark.NONE, Bundle.verdict_missing()));
    }

    private static VerdictWords verdict(ReadingState state, ReadingFormat format) {
        Optional<Target> target = state.target();
        Optional<Verdict> verdict = state.verdict();
        if (target.isEmpty() || verdict.isEmpty()) {
            return new VerdictWords(Mark.NONE, Bundle.verdict_noTarget());
        }
        double off = state.value().getAsDouble() - target.get().value();
        return switch (verdict.get().answer()) {
            case INSIDE -> new VerdictWords(Mark.INSIDE, Bundle.verdict_inside());
            case TOO_CLOSE -> new VerdictWords(Mark.CLOSE, Bundle.verdict_close());
            case OUTSIDE -> {
                String by = format.text(state.reading(), Math.abs(off));
                yield off > 0 ? new VerdictWords(Mark.ABOVE, Bundle.verdict_high(by)) : new VerdictWords(Mark.BELOW, Bundle.verdict_low(by));
            }
        };
    }

    /** What to show for a stage. */
    public static VerdictWords of(StageState state) {
        return switch (state) {
            case WAITING -> new VerdictWords(Mark.WAITING, Bundle.stage_waiting());
            case OPEN -> new VerdictWords(Mark.OPEN, Bundle.stage_open());
            case READY -> new VerdictWords(Mark.READY, Bundle.stage_ready());
            case SIGNED -> new VerdictWords(Mark.SIGNED, Bundle.stage_signed());
            case CHECK_AGAIN -> new VerdictWords(Mark.AGAIN, Bundle.stage_checkAgain());
        };
    }

    /** The reasons of several states, each once. */
    public static List<String> reasons(List<ReadingState> states) {
        return states.stream().flatMap(s -> s.reasons().stream()).distinct().toList();
    }
}
