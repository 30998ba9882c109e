package quoin.logbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Applies corrections: what is left are the entries that count. */
final class Corrections {

    private Corrections() {
    }

    /**
     * The last correction of an entry holds. Working backwards, a correction that was itself withdrawn does not count.
     */
    static List<Entry> apply(List<Entry> written) {
        Map<Long, Entry.Correction> byTarget = new HashMap<>();
        for (int i = written.size() - 1; i >= 0; i--) {
            if (written.get(i) instanceof Entry.Correction correction && !byTarget.containsKey(correction.number())) {
                byTarget.putIfAbsent(correction.corrects(), correction);
            }
        }
        List<Entry> kept = new ArrayList<>(written.size());
        for (Entry entry : written) {
            if (entry instanceof Entry.Correction) {
                continue;
            }
            Entry.Correction correction = byTarget.get(entry.number());
            if (correction == null) {
                kept.add(entry);
            } else {
                correction.replacement().ifPresent(r -> kept.add(r.withHeader(entry.header())));
            }
        }
        return List.copyOf(kept);
    }
}
