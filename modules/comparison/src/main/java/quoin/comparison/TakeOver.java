package quoin.comparison;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import org.openide.windows.OnShowing;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.DayShelf;
import quoin.logbook.Entry;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workbench.CurrentDay;
import quoin.workflow.Learnt;

/**
 * A day that has just been begun takes over what the last day of the car taught. It is an entry like any other: undo declines
 * it, and a day that goes on is never changed.
 */
@OnShowing
@Messages("takeOver.declined=declined")
public final class TakeOver implements Runnable {

    private static final RequestProcessor WORKER = new RequestProcessor("quoin take over", 1, true);

    private Path asked;

    @Override
    public void run() {
        CurrentDay current = CurrentDay.inUse();
        current.addListener(() -> dayChanged(current));
        dayChanged(current);
    }

    private void dayChanged(CurrentDay current) {
        Optional<Path> folder = current.journal().map(j -> j.folder());
        if (folder.isEmpty() || folder.get().equals(asked) || !isFresh(current)) {
            return;
        }
        asked = folder.get();
        WORKER.post(() -> find(current, folder.get()));
    }

    /** Nothing was recorded but the car, and where it is one the rehearsal. */
    private static boolean isFresh(CurrentDay current) {
        return current.snapshot().filter(s -> s.day().written().stream().allMatch(e -> e instanceof Entry.CarDescribed
                || e instanceof Entry.Condition c && c.key().equals(CurrentDay.REHEARSAL))).isPresent()
                && current.journal().filter(j -> !j.isReadOnly()).isPresent();
    }

    private static void find(CurrentDay current, Path folder) {
        try {
            DayShelf shelf = new DayShelf(folder);
            Optional<DayInfo> last = shelf.before(folder.getFileName().toString());
            Optional<Entry.ResponseTakenOver> learnt = last.flatMap(l -> shelf.day(l).flatMap(d -> of(d, l)));
            learnt.ifPresent(found -> EventQueue.invokeLater(() -> {
                boolean same = current.journal().filter(j -> j.folder().equals(folder)).isPresent();
                if (same && current.snapshot().flatMap(s -> s.day().takenOver()).isEmpty()) {
                    current.record("", found::withHeader);
                }
            }));
        } catch (RuntimeException e) {
            Logger.getLogger(TakeOver.class.getName()).log(Level.WARNING, "nothing could be taken over from the last day", e);
        }
    }

    /** What a day of the shelf teaches. */
    static Optional<Entry.ResponseTakenOver> of(Day day, DayInfo info) {
        return Learnt.of(day, info.id(), SuspensionTypes.installed());
    }

    /** Takes the entry in force back; the day goes on as if nothing had been taken over. */
    static void decline(CurrentDay current) {
        current.snapshot().flatMap(s -> s.day().takenOver()).ifPresent(t -> current.record("",
                h -> new Entry.Correction(h, t.number(), Optional.empty(), Bundle.takeOver_declined())));
    }
}
