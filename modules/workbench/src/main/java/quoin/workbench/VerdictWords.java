package quoin.workbench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;
import quoin.adjustment.Verdict;
import quoin.car.ReadingId;
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
    "verdict.inside=inside",
    "# {0} - difference", "verdict.high={0} too high",
    "# {0} - difference", "verdict.low={0} too low",
    "# {0} - difference", "verdict.in={0} too far in",
    "# {0} - difference", "verdict.out={0} too far out",
    "# {0} - difference", "verdict.positive={0} too positive",
    "# {0} - difference", "verdict.negative={0} too negative",
    "verdict.close=too close to call",
    "verdict.stale=stale",
    "verdict.doubtful=doubtful",
    "# {0} - verdict", "verdict.alsoDoubtful={0}, doubtful",
    "verdict.outOfOrder=does not count",
    "# {0} - reasons", "why.stale=Stale: {0}.",
    "# {0} - reasons", "why.doubtful=Doubtful: {0}.",
    "# {0} - first reasons", "# {1} - number", "why.andMore={0}; and {1} more",
    "# {0} - reasons", "why.outOfOrder=Does not count for the sign-off: {0}.",
    "stage.waiting=waiting", "stage.open=open", "stage.ready=ready to sign off", "stage.signed=signed off",
    "stage.checkAgain=check again"})
public record VerdictWords(Mark mark, String word) {

    private static final int MOST_REASONS = 3;

    /** What to show for a reading in a stage, in a word or two; {@link #why} gives the reasons. */
    public static VerdictWords of(ReadingState state, ReadingFormat format) {
        if (state.value().isEmpty() || state.freshness() == Freshness.MISSING) {
            return new VerdictWords(Mark.NONE, Bundle.verdict_missing());
        }
        VerdictWords verdict = verdict(state, format);
        return switch (state.freshness()) {
            case STALE -> new VerdictWords(Mark.AGAIN, Bundle.verdict_stale());
            case DOUBTFUL -> new VerdictWords(Mark.AGAIN,
                    verdict.word().isEmpty() ? Bundle.verdict_doubtful() : Bundle.verdict_alsoDoubtful(verdict.word()));
            case OUT_OF_ORDER -> new VerdictWords(Mark.AGAIN, Bundle.verdict_outOfOrder());
            default -> verdict;
        };
    }

    /** Why some of the readings do not hold as they stand, each reason once; empty where all do. */
    public static String why(Collection<ReadingState> states) {
        List<String> lines = new ArrayList<>();
        reasons(states, Freshness.STALE).map(Bundle::why_stale).ifPresent(lines::add);
        reasons(states, Freshness.DOUBTFUL).map(Bundle::why_doubtful).ifPresent(lines::add);
        reasons(states, Freshness.OUT_OF_ORDER).map(Bundle::why_outOfOrder).ifPresent(lines::add);
        return String.join("\n", lines);
    }

    private static Optional<String> reasons(Collection<ReadingState> states, Freshness freshness) {
        List<String> reasons = states.stream().filter(s -> s.freshness() == freshness).flatMap(s -> s.reasons().stream()).distinct().toList();
        if (reasons.isEmpty()) {
            return Optional.empty();
        }
        String first = String.join("; ", reasons.subList(0, Math.min(MOST_REASONS, reasons.size())));
        return Optional.of(reasons.size() > MOST_REASONS ? Bundle.why_andMore(first, reasons.size() - MOST_REASONS) : first);
    }

    /** What to show for the first of some states, or "not read yet". */
    public static VerdictWords of(Optional<ReadingState> state, ReadingFormat format) {
        return state.map(s -> of(s, format)).orElseGet(() -> new VerdictWords(Mark.NONE, Bundle.verdict_missing()));
    }

    private static VerdictWords verdict(ReadingState state, ReadingFormat format) {
        Optional<Target> target = state.target();
        Optional<Verdict> verdict = state.verdict();
        if (target.isEmpty() || verdict.isEmpty()) {
            return new VerdictWords(Mark.NONE, "");
        }
        double off = state.value().getAsDouble() - target.get().value();
        return switch (verdict.get().answer()) {
            case INSIDE -> new VerdictWords(Mark.INSIDE, Bundle.verdict_inside());
            case TOO_CLOSE -> new VerdictWords(Mark.CLOSE, Bundle.verdict_close());
            case OUTSIDE -> {
                String by = format.text(state.reading(), Math.abs(off));
                yield outside(state.reading(), off, by);
            }
        };
    }

    /** Which way a reading lies outside, in the words of its kind: a height is too high, a toe too far in, a camber too negative. */
    static VerdictWords outside(ReadingId reading, double off, String by) {
        return switch (reading.kind()) {
            case TOE, TOTAL_TOE -> off > 0 ? new VerdictWords(Mark.ABOVE, Bundle.verdict_in(by)) : new VerdictWords(Mark.BELOW, Bundle.verdict_out(by));
            case CAMBER -> off > 0 ? new VerdictWords(Mark.ABOVE, Bundle.verdict_positive(by))
                    : new VerdictWords(Mark.BELOW, Bundle.verdict_negative(by));
            default -> off > 0 ? new VerdictWords(Mark.ABOVE, Bundle.verdict_high(by)) : new VerdictWords(Mark.BELOW, Bundle.verdict_low(by));
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
}
