package quoin.workflow;

import java.util.List;
import java.util.Optional;
import quoin.logbook.Entry;

/**
 * The answer to a sign-off or to closing the day.
 *
 * @param entry   the entry to append, its header without number and time; empty = refused
 * @param reasons why it is refused, or what was passed over for the written reason
 * @param <E>     kind of entry
 */
public record Gate<E extends Entry>(Optional<E> entry, List<String> reasons) {

    public Gate {
        reasons = List.copyOf(reasons);
        if (entry.isEmpty() && reasons.isEmpty()) {
            throw new IllegalArgumentException("a refusal needs its reasons");
        }
    }

    public boolean allowed() {
        return entry.isPresent();
    }
}
