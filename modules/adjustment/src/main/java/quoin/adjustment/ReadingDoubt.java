package quoin.adjustment;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Something doubtful in a reading, with its likely cause. The reading itself stays as it is.
 *
 * @param level how serious it is
 * @param cause the likely cause
 * @param row which figure: 0-3 loads, 4-7 heights, each LF RF LR RR; empty for the reading as a whole
 * @param words what was found, with the figures, and what to do, in plain English
 * @param suggested value the figure may have been meant to be, N or mm; empty = no suggestion
 * @param exchangedRow the row whose figure it was exchanged with, which is then meant to be this one's; empty = it is about one figure
 */
public record ReadingDoubt(Level level, Cause cause, OptionalInt row, String words, OptionalDouble suggested, OptionalInt exchangedRow) {

    /** How serious a doubt is. */
    public enum Level {
        /** Worth knowing. */
        INFO,
        /** Read again or check before turning anything. */
        WARNING,
        /** Cannot be right as it stands. */
        ERROR
    }

    /** Likely causes. */
    public enum Cause {
        /** Two digits exchanged, or one digit wrong. */
        TYPING,
        /** The decimal point set wrong or forgotten. */
        DECIMAL_POINT,
        /** Pounds typed as kilograms. */
        POUNDS,
        /** The figures of two corners exchanged. */
        CORNERS_EXCHANGED,
        /** One scale reads differently: zero drifted, gain off, tyre against a chock. */
        SCALE,
        /** One height read wrongly. */
        HEIGHT,
        /** The four heights are not those of one stiff frame. */
        FRAME_NOT_FLAT,
        /** Total load changed though nothing but adjusters moved. */
        TOTAL_CHANGED,
        /** Front or left share changed though adjusters cannot change it: the driver sat differently, a load shifted. */
        DRIVER_MOVED,
        /** A corner was raised or lowered without a turn being recorded: pad moved, ring turned. */
        PAD_OR_UNRECORDED_TURN,
        /** Turned the other way than recorded. */
        TURNED_THE_OTHER_WAY,
        /** Recorded, not done. */
        NOT_TURNED,
        /** Turned by another amount than recorded. */
        MISCOUNTED,
        /** The readings moved otherwise than predicted, and no single cause stands out. */
        UNEXPLAINED
    }

    public ReadingDoubt {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(suggested, "suggested");
        Objects.requireNonNull(exchangedRow, "exchangedRow");
        if (words.isBlank()) {
            throw new IllegalArgumentException("words: a doubt needs words");
        }
    }

    /** A doubt about one figure, or about the reading as a whole. */
    public ReadingDoubt(Level level, Cause cause, OptionalInt row, String words, OptionalDouble suggested) {
        this(level, cause, row, words, suggested, OptionalInt.empty());
    }
}
