package quoin.finalrecheck;

import java.util.List;
import java.util.stream.Collectors;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.workbench.AdjusterWords;
import quoin.workbench.ReadingFormat;
import quoin.workflow.Comparison;
import quoin.workflow.ExpectedMove.Move;
import quoin.workflow.ExpectedMoves;
import quoin.workflow.ExpectedMoves.Part;

/** Why a reading moved since it was signed: what every turn since then was expected to do to it. */
@Messages({
    "# {0} - sum", "# {1} - parts", "why.expected=expected {0}: {1}",
    "# {0} - turn", "# {1} - move", "why.part={0} {1}",
    "# {0} - number", "why.more={0} more",
    "why.unexplained=the turns do not explain it: read it once more, look for a loose nut or a slipped part"})
final class WhyMoved {

    private static final int MOST_PARTS = 3;
    /** Standard uncertainties beyond which a move is not what was expected: one in 370 of a normal error, as some 25 are looked at. */
    private static final double SURPRISE = 3;

    private final ExpectedMoves moves;
    private final ReadingFormat format;
    private final AdjusterWords adjusters;

    WhyMoved(ExpectedMoves moves, ReadingFormat format, AdjusterWords adjusters) {
        this.moves = moves;
        this.format = format;
        this.adjusters = adjusters;
    }

    /**
     * The reason in one line; empty where nothing since the sign-off was expected to move it and it did not.
     *
     * @param revision number of the day's last entry
     */
    String of(Comparison line, long revision) {
        if (line.signed().isEmpty() || line.isStanding()) {
            return "";
        }
        ReadingId id = line.reading();
        long upTo = line.now().map(n -> n.entry()).orElse(revision);
        List<Part> parts = moves.parts(id, line.signed().get().entry(), upTo);
        List<Part> worth = parts.stream().filter(p -> isShown(id, p.move().amount())).toList();
        double sum = parts.stream().mapToDouble(p -> p.move().amount()).sum();
        double sd = Math.sqrt(parts.stream().mapToDouble(p -> p.move().uncertainty() * p.move().uncertainty()).sum());
        boolean small = line.word() == Comparison.Word.SAME && line.difference().filter(d -> Math.abs(sum) <= d.band()).isPresent();
        String words = worth.isEmpty() || small ? "" : Bundle.why_expected(format.changeNumber(id, sum), named(id, worth));
        boolean surprise = line.difference().filter(d -> Math.abs(d.amount() - sum) > SURPRISE * Math.hypot(d.uncertainty(), sd)).isPresent();
        return surprise ? words.isEmpty() ? Bundle.why_unexplained() : words + "; " + Bundle.why_unexplained() : words;
    }

    /** False for what rounds to nothing as the reading is shown. */
    private boolean isShown(ReadingId id, double amount) {
        return !format.changeNumber(id, amount).equals(format.changeNumber(id, 0));
    }

    private String named(ReadingId id, List<Part> parts) {
        String first = parts.stream().limit(MOST_PARTS).map(p -> part(id, p)).collect(Collectors.joining(", "));
        return parts.size() > MOST_PARTS ? first + ", " + Bundle.why_more(parts.size() - MOST_PARTS) : first;
    }

    private String part(ReadingId id, Part part) {
        Move move = part.move();
        return Bundle.why_part(adjusters.sentence(part.adjuster(), part.turns()), format.changeNumber(id, move.amount()));
    }
}
