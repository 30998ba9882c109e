package quoin.logbook;

import java.util.Objects;

/**
 * Something about a file that was noticed on opening it. Nothing is ever dropped because of it.
 *
 * @param kind  what it is
 * @param line  line in the file, the first is 1; 0 = the file as a whole
 * @param words what was found and what was done about it
 */
public record FileFinding(Kind kind, int line, String words) {

    /** What can be found. */
    public enum Kind {
        /** The last line was cut off while being written; it was put into a file beside the day. */
        TORN_END,
        /** A whole last line lacked its line end, which was added. */
        END_ADDED,
        /** A line cannot be read; it stays in the file. */
        DAMAGED_LINE,
        /** A line of a known kind holds something this program cannot read; it stays and is shown, but does not count. */
        NOT_UNDERSTOOD,
        /** A line of a kind this program does not know; it stays and is shown, but does not count. */
        UNKNOWN_KIND,
        /** Entry numbers are missing, repeated or out of sequence. */
        NUMBERING,
        /** The file was written by a newer program and can only be looked at. */
        NEWER_FORMAT,
        /** Entries waited in another folder, because the day's file could not be written. */
        WAITED,
        /** No entry describes the car. */
        NO_CAR
    }

    public FileFinding {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(words, "words");
    }
}
