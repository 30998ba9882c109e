package quoin.workbench;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Timer;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.FileFinding;
import quoin.logbook.Journal;
import quoin.logbook.Waiting;

/**
 * Looks after entries that could not be written to the day's own file: tries again every few seconds, and tells the racer
 * where they wait, why, and when they are in the day. A disk that is only slow for a moment is not worth a word. Event
 * thread only.
 */
@Messages({
    "# {0} - number of entries", "# {1} - why", "# {2} - file",
    "waiting.told=The day''s file cannot be written: {1}.\n{0,choice,1#One entry waits|1<{0} entries wait} in {2}.\nGo on working: nothing is lost."
            + " Make room on the disk, or plug it in again; what waits then follows by itself.",
    "# {0} - number of entries", "# {1} - why", "waiting.line={0,choice,1#1 entry waits|1<{0} entries wait} for the day''s disk: {1}",
    "waiting.over=Everything that waited is in the day's file now.",
    "# {0} - number of entries", "# {1} - file", "# {2} - why",
    "waiting.atClosing={0,choice,1#One entry waits|1<{0} entries wait} in {1}, because the day''s file could not be written: {2}.\n"
            + "Open the day again when its disk is well; they are then taken into it."})
final class WaitingWatch {

    private static final int AGAIN_MS = 2000;

    private final Path folder;
    private final Consumer<String> tell;
    private final Consumer<String> line;
    private final Timer timer = new Timer(AGAIN_MS, e -> again());
    private Journal journal;
    private boolean told;
    private boolean shown;

    /**
     * @param folder second place of the entries
     * @param tell   told in words what the racer must know
     * @param line   shows a short line that may be overlooked
     */
    WaitingWatch(Path folder, Consumer<String> tell, Consumer<String> line) {
        this.folder = folder;
        this.tell = tell;
        this.line = line;
    }

    /** Takes a day that was opened; entries that wait for it are in it afterwards. */
    void begin(Journal opened) {
        journal = opened;
        told = false;
        shown = false;
        List<FileFinding> found = opened.waitIn(folder, () -> EventQueue.invokeLater(() -> over(opened)));
        found.forEach(f -> tell.accept(f.words()));
        timer.start();
    }

    /** What waits; looked at after each entry. */
    void look() {
        Optional<Waiting> waiting = journal == null ? Optional.empty() : journal.waiting();
        waiting.ifPresent(w -> {
            shown = true;
            line.accept(Bundle.waiting_line(w.count(), w.why()));
        });
    }

    private void again() {
        Optional<Waiting> waiting = journal.waiting();
        if (waiting.isPresent()) {
            if (!told) {
                told = true;
                tell.accept(Bundle.waiting_told(waiting.get().count(), waiting.get().why(), waiting.get().place()));
            }
            look();
            journal.bringHome();
        }
    }

    private void over(Journal done) {
        if (journal == done && journal.waiting().isEmpty() && shown) {
            told = false;
            shown = false;
            line.accept(Bundle.waiting_over());
        }
    }

    /** Lets go of the day, which was closed. */
    void end() {
        timer.stop();
        if (journal != null) {
            journal.waiting().ifPresent(w -> tell.accept(Bundle.waiting_atClosing(w.count(), w.place(), w.why())));
        }
        journal = null;
    }
}
