package quoin.workbench.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/**
 * One line of the log.
 *
 * @param entry  the entry as written
 * @param struck true where it no longer counts as written: corrected, withdrawn or undone
 */
record LogLine(Entry entry, boolean struck) {

    /** Every entry of the day, newest first. */
    static List<LogLine> of(Day day) {
        Map<Long, Entry> counting = new HashMap<>();
        day.effective().forEach(e -> counting.put(e.number(), e));
        Set<Long> corrected = corrected(day.written());
        List<LogLine> lines = new ArrayList<>();
        for (int i = day.written().size() - 1; i >= 0; i--) {
            Entry entry = day.written().get(i);
            boolean struck = entry instanceof Entry.Correction ? corrected.contains(entry.number())
                    : !entry.equals(counting.get(entry.number()));
            lines.add(new LogLine(entry, struck));
        }
        return lines;
    }

    /** Numbers of entries named by a correction that counts itself; worked backwards, as corrections hold. */
    private static Set<Long> corrected(List<Entry> written) {
        Set<Long> numbers = new HashSet<>();
        for (int i = written.size() - 1; i >= 0; i--) {
            if (written.get(i) instanceof Entry.Correction correction && !numbers.contains(correction.number())) {
                numbers.add(correction.corrects());
            }
        }
        return numbers;
    }

    /** True where it can be withdrawn: all but the entry that opened the day and what is struck already. */
    boolean canWithdraw() {
        return !struck && entry.number() > 1;
    }
}
