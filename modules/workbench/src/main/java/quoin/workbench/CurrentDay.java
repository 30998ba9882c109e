package quoin.workbench;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.openide.util.Lookup;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.workflow.OrderOfWork;
import quoin.workflow.spi.Stage;

/**
 * The day that is open. One instance is handed around; only the edge takes it from the lookup by {@link #inUse()}. Everything
 * here is called on the event thread: an entry is flushed to the file in a few milliseconds, and nothing may be shown as
 * recorded before that.
 */
@ServiceProvider(service = CurrentDay.class)
@Messages({
    "day.none=No day is open.",
    "# {0} - reason", "day.notRecorded=Not recorded: {0} What you typed is still in its field."})
public final class CurrentDay {

    private final List<Stage> stages;
    private final OrderOfWork order;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> failureListeners = new CopyOnWriteArrayList<>();
    private final DayUndoRedo undoRedo = new DayUndoRedo(this);
    private final UnitSettings unitSettings = new UnitSettings();
    private Journal journal;
    private DaySnapshot snapshot;
    private BiFunction<Day, List<ReadingId>, Map<ReadingId, Double>> practiceCar;

    /** The instance of the running application, with every installed stage. */
    public CurrentDay() {
        this(Lookup.getDefault().lookupAll(Stage.class));
    }

    public CurrentDay(Collection<? extends Stage> stages) {
        this.stages = stages.stream().<Stage>map(s -> s).sorted(Comparator.comparingInt(Stage::position)).toList();
        this.order = new OrderOfWork(this.stages);
    }

    /** The one instance of the application; for windows and actions only. */
    public static CurrentDay inUse() {
        return Lookup.getDefault().lookup(CurrentDay.class);
    }

    /** Installed stages in the order of work. */
    public List<Stage> stages() {
        return stages;
    }

    /** Opens a day and closes the one that was open. */
    public void open(Journal opened) {
        Objects.requireNonNull(opened, "opened");
        close();
        journal = opened;
        refold();
    }

    /** Opens a day on which a practice car gives the readings. */
    public void open(Journal opened, BiFunction<Day, List<ReadingId>, Map<ReadingId, Double>> practice) {
        close();
        practiceCar = Objects.requireNonNull(practice, "practice");
        journal = Objects.requireNonNull(opened, "opened");
        refold();
    }

    /** Closes the day's file; the windows then say what to do. */
    public void close() {
        Journal closing = journal;
        journal = null;
        snapshot = null;
        practiceCar = null;
        if (closing != null) {
            closeFile(closing);
            tell();
        }
    }

    private void closeFile(Journal closing) {
        try {
            closing.close();
        } catch (JournalException e) {
            failureListeners.forEach(l -> l.accept(e.getMessage()));
        }
    }

    public Optional<Journal> journal() {
        return Optional.ofNullable(journal);
    }

    /** The day at its last revision; empty where no day is open. */
    public Optional<DaySnapshot> snapshot() {
        return Optional.ofNullable(snapshot);
    }

    /** What the practice car reads now; empty where the day is no rehearsal. */
    public Optional<Map<ReadingId, Double>> practiceReadings(List<ReadingId> wanted) {
        return practiceCar == null || snapshot == null ? Optional.empty() : Optional.of(practiceCar.apply(snapshot.day(), wanted));
    }

    public boolean isRehearsal() {
        return practiceCar != null;
    }

    public DisplayUnits units() {
        return unitSettings.load();
    }

    /** Changes how figures are shown, here and in every later day. */
    public void setUnits(DisplayUnits units) {
        unitSettings.save(units);
        if (journal != null) {
            refold();
        }
    }

    /** Undo and redo of the open day, for the platform's actions. */
    public DayUndoRedo undoRedo() {
        return undoRedo;
    }

    /**
     * Records one entry: appends and flushes it, computes the day again and tells the windows.
     *
     * @param stageId stage it is recorded in, or empty
     * @param entry   makes the entry under the header given
     * @return false where it could not be written; the failure listeners have then been told and the caller keeps what was typed
     */
    public boolean record(String stageId, Function<Header, Entry> entry) {
        if (journal == null) {
            failureListeners.forEach(l -> l.accept(Bundle.day_none()));
            return false;
        }
        try {
            journal.append(entry.apply(new Header(0, Instant.EPOCH, stageId)));
        } catch (RuntimeException e) {
            failureListeners.forEach(l -> l.accept(Bundle.day_notRecorded(e.getMessage())));
            return false;
        }
        refold();
        return true;
    }

    private void refold() {
        Day day = Day.of(journal.entries());
        snapshot = new DaySnapshot(day, order.status(day), units());
        tell();
    }

    private void tell() {
        undoRedo.changed();
        listeners.forEach(Runnable::run);
    }

    /** Is told on the event thread after every change of the day. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** Is told in words when something could not be written. */
    public void addFailureListener(Consumer<String> listener) {
        failureListeners.add(listener);
    }
}
