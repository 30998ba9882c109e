package quoin.comparison;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/**
 * A moment of a day that is worth comparing.
 *
 * @param kind  what it is
 * @param stage id of the stage signed off then, or empty
 * @param round rounds of turning done by then
 * @param entry last entry that belongs to it
 * @param time  when that was written
 */
public record Moment(Kind kind, String stage, int round, long entry, Instant time) {

    /** What a moment is. */
    public enum Kind {
        /** Nothing turned yet. */
        AS_FOUND,
        /** Everything read after one round of turning, before the next. */
        ROUND,
        /** A stage signed off. */
        SIGNED,
        /** Just before the weights were taken again after the angles. */
        BEFORE_REWEIGH,
        /** The last entry of the day. */
        LAST
    }

    /** Every moment of a day, oldest first; the last entry is always one. */
    public static List<Moment> of(Day day) {
        List<Moment> moments = new ArrayList<>();
        int round = 0;
        boolean read = false;
        Entry before = null;
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Adjustment adjustment && adjustment.turns().stream().anyMatch(t -> t.amount() != 0)) {
                if (read && before instanceof Entry.SignOff && round > 0) {
                    round++;
                    read = false;
                } else if (read && before != null) {
                    moments.add(new Moment(round == 0 ? Kind.AS_FOUND : Kind.ROUND, "", round, before.number(), before.header().time()));
                    round++;
                    read = false;
                } else if (round == 0) {
                    round = 1;
                }
            } else if (entry instanceof Entry.Reading) {
                read = true;
            } else if (entry instanceof Entry.SignOff) {
                moments.add(new Moment(Kind.SIGNED, entry.header().stage(), round, entry.number(), entry.header().time()));
            }
            before = entry;
        }
        beforeReweigh(day).ifPresent(moments::add);
        if (before != null) {
            moments.add(new Moment(round == 0 ? Kind.AS_FOUND : Kind.LAST, "", round, day.revision(), before.header().time()));
            if (round == 0) {
                moments.add(new Moment(Kind.LAST, "", round, day.revision(), before.header().time()));
            }
        }
        return moments.stream().sorted((a, b) -> a.entry() != b.entry() ? Long.compare(a.entry(), b.entry()) : a.kind().compareTo(b.kind()))
                .toList();
    }

    /** The entry before the first weighing after the angles were last read on their own. */
    static Optional<Moment> beforeReweigh(Day day) {
        Entry angles = null;
        Entry weighing = null;
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Reading reading) {
                boolean weighed = has(reading, ReadingKind.LOAD);
                if (has(reading, ReadingKind.TOE) && !weighed) {
                    angles = entry;
                    weighing = null;
                } else if (weighed && angles != null && weighing == null) {
                    weighing = entry;
                }
            }
        }
        Entry found = weighing;
        return found == null ? Optional.empty() : Stream.of(found).map(w -> new Moment(Kind.BEFORE_REWEIGH, "", 0, w.number() - 1,
                w.header().time())).findFirst();
    }

    private static boolean has(Entry.Reading reading, ReadingKind kind) {
        return reading.values().keySet().stream().anyMatch(id -> id.kind() == kind);
    }
}
