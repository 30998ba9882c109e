package quoin.logbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which corrections hold: what is left are the entries that count. */
final class Corrections {

    private Corrections() {
    }

    /**
     * Corrections in force by the number of the entry each corrects. The last correction of an entry holds; working backwards, a
     * correction that was itself withdrawn does not count.
     */
    static Map<Long, Entry.Correction> inForce(List<Entry.Correction> written) {
        Map<Long, Entry.Correction> byTarget = new HashMap<>();
        for (int i = written.size() - 1; i >= 0; i--) {
            Entry.Correction correction = written.get(i);
            if (!byTarget.containsKey(correction.number())) {
                byTarget.putIfAbsent(correction.corrects(), correction);
            }
        }
        return byTarget;
    }

    /** The entries that count. */
    static List<Entry> apply(List<Entry> written) {
        Map<Long, Entry.Correction> byTarget = inForce(of(written));
        List<Entry> kept = new ArrayList<>(written.size());
        for (Entry entry : written) {
            Entry.Correction correction = byTarget.get(entry.number());
            if (entry instanceof Entry.Correction) {
                continue;
            }
            if (correction == null) {
                kept.add(entry);
            } else {
                correction.replacement().ifPresent(r -> kept.add(r.withHeader(entry.header())));
            }
        }
        return List.copyOf(kept);
    }

    static List<Entry.Correction> of(List<Entry> written) {
        return written.stream().filter(Entry.Correction.class::isInstance).map(Entry.Correction.class::cast).toList();
    }
}
