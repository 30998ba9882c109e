package quoin.workbench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.workflow.ReadingChecks;
import quoin.workflow.spi.Finding;

/**
 * Doubts about figures that are typed but not recorded yet: each is raised once, with the likely figure; a figure that is left as
 * it is then counts as meant.
 */
public final class EntryDoubts {

    /** Judges figures about to be recorded; the likeliest cause first. */
    @FunctionalInterface
    interface Judge {
        List<Finding> of(Day day, Map<ReadingId, Double> typed);
    }

    private final Judge judge;
    private final Map<ReadingId, Double> raised = new HashMap<>();

    public EntryDoubts() {
        this(ReadingChecks::of);
    }

    EntryDoubts(Judge judge) {
        this.judge = judge;
    }

    /** A doubt about one of the figures that has a likelier figure and was not raised yet; it counts as raised from now on. */
    public Optional<Finding> next(Day day, Map<ReadingId, Double> typed) {
        Optional<Finding> doubt = findings(day, typed).stream()
                .filter(f -> f.level() != Finding.Level.INFO && f.suggested().isPresent())
                .filter(f -> f.about().filter(id -> typed.containsKey(id) && !typed.get(id).equals(raised.get(id))).isPresent())
                .findFirst();
        doubt.flatMap(Finding::about).ifPresent(id -> raised.put(id, typed.get(id)));
        return doubt;
    }

    /** Recording is never refused, also where the figures cannot be judged. */
    private List<Finding> findings(Day day, Map<ReadingId, Double> typed) {
        try {
            return judge.of(day, typed);
        } catch (RuntimeException e) {
            Logger.getLogger(EntryDoubts.class.getName()).log(Level.WARNING, "typed figures could not be judged", e);
            return List.of();
        }
    }

    /** Forgets what was raised: the figures are recorded. */
    public void forget() {
        raised.clear();
    }
}
