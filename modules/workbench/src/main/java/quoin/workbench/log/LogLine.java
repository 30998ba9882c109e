package quoin.workbench.log;

import java.util.List;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workbench.UndoHistory;

/**
 * One line of the log.
 *
 * @param entry  the entry as written
 * @param struck true where it no longer counts as written: corrected, withdrawn or undone
 */
record LogLine(Entry entry, boolean struck) {

    /** The line of an entry of the day. */
    static LogLine of(Day day, Entry entry) {
        boolean struck = entry instanceof Entry.Correction correction ? isCorrected(correction, day)
                : !day.counting(entry.number()).filter(entry::equals).isPresent();
        return new LogLine(entry, struck);
    }

    /** A correction is struck where a later one, not struck itself, names it. */
    private static boolean isCorrected(Entry.Correction wrong, Day day) {
        List<Entry.Correction> all = day.corrections();
        for (int i = all.size() - 1; i >= 0 && all.get(i).number() > wrong.number(); i--) {
            if (all.get(i).corrects() == wrong.number() && !isCorrected(all.get(i), day)) {
                return true;
            }
        }
        return false;
    }

    /** True where it can be withdrawn: all but what opened the day and what is struck already. */
    boolean canWithdraw() {
        return !struck && !UndoHistory.opensTheDay(entry);
    }
}
