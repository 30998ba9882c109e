package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.adjustment.ReadingDoubt.Cause;

/**
 * Judges a reading as it is entered: single causes first (a slip in one figure, two corners exchanged, another turn than
 * recorded, the driver sitting differently), each by its odds against the plain model of the day; then what adjusters
 * cannot change (total, shares), the flatness of the frame, and the jump against the prediction. Nothing is dropped or
 * changed here.
 */
public final class ReadingCheck {

    /** Natural logarithm of the odds from which a single cause is named: 150 to 1. */
    static final double NAMED = 5;
    /** A second slip is looked for in the reading with the first one put right. */
    private static final int SLIPS = 2;

    private ReadingCheck() {
    }

    /**
     * Judges a reading.
     *
     * @param prior what was believed of the car before the first reading
     * @param before settled readings of the day so far, in order; empty for the as-found reading
     * @param reading the reading just entered, its turns being those since the last one
     * @return doubts, the likeliest first; empty where nothing is doubtful
     */
    public static List<ReadingDoubt> check(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        List<ReadingDoubt> doubts = new ArrayList<>(ReadingPlausibility.outOfScale(reading));
        if (!doubts.isEmpty()) {
            return List.copyOf(doubts);
        }
        if (before.stream().noneMatch(ReadingCheck::hasFigures)) {
            ReadingPlausibility.frame(prior, reading).ifPresent(doubts::add);
            return List.copyOf(doubts);
        }
        Optional<ReadingDoubt> slip = ReadingCauses.slipOfFew(prior, before, reading);
        if (slip.isPresent()) {
            return List.of(slip.get());
        }
        SettledReading judged = reading;
        for (int i = 0; i < SLIPS; i++) {
            Optional<ReadingCauses.Explained> one = ReadingCauses.likeliest(prior, before, judged);
            one.ifPresent(o -> doubts.add(o.doubt()));
            if (one.isEmpty() || one.get().mended().isEmpty()) {
                break;
            }
            judged = one.get().mended().get();
        }
        if (doubts.isEmpty()) {
            doubts.addAll(ReadingPlausibility.unexplained(prior, before, reading));
        }
        return List.copyOf(doubts);
    }

    static boolean hasFigures(SettledReading reading) {
        return java.util.stream.IntStream.range(0, 8).anyMatch(i -> reading.figure(i).isPresent());
    }

    /** The cause of a slip of the finger. */
    static Cause cause(TypingSlip.Kind kind) {
        return switch (kind) {
            case DIGITS_SWAPPED, ONE_DIGIT -> Cause.TYPING;
            case DECIMAL_POINT, POINT_AND_DIGITS -> Cause.DECIMAL_POINT;
            case POUNDS -> Cause.POUNDS;
        };
    }
}
