package quoin.workbench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.openide.NotifyDescriptor;
import org.openide.awt.StatusDisplayer;
import org.openide.util.Lookup;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.CarFile;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.logbook.Library;
import quoin.rehearsal.PracticeCar;
import quoin.workflow.DayStatus;
import quoin.workflow.Gate;
import quoin.workflow.NextStep;
import quoin.workflow.OrderOfWork;
import quoin.workflow.PartDay;
import quoin.workflow.Recheck;
import quoin.workflow.RoundAdvice;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundUnderway;
import quoin.workflow.ScaleCorrection;
import quoin.workflow.spi.Stage;

/**
 * The day that is open. One instance is handed around; only the edge takes it from the lookup by {@link #inUse()}. Everything
 * here is called on the event thread: an entry is flushed to the file in a few milliseconds, and nothing may be shown as
 * recorded before that.
 */
@ServiceProvider(service = CurrentDay.class)
@Messages({
    "day.none=No day is open.",
    "# {0} - reason", "day.notRecorded=Not recorded: {0}. What you typed is still in its field."})
public final class CurrentDay {

    /** Key of the condition that marks a day as a rehearsal; its value is the seed. */
    public static final String REHEARSAL = Conditions.REHEARSAL;

    private final List<Stage> stages;
    private final OrderOfWork order;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final List<Runnable> planListeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> failureListeners = new CopyOnWriteArrayList<>();
    private final DayUndoRedo undoRedo = new DayUndoRedo(this);
    private final UnitSettings unitSettings = new UnitSettings();
    private Journal journal;
    private DaySnapshot snapshot;
    private final RoundPlans plans;
    private Optional<WaitingWatch> watch = Optional.empty();
    private PracticeCar practiceCar;

    /** The instance of the running application, with every installed stage. */
    public CurrentDay() {
        this(Lookup.getDefault().lookupAll(Stage.class), PlanSource.BY_STAGE);
        Optional.ofNullable(System.getProperty("netbeans.user")).ifPresent(user -> waitIn(Path.of(user, "waiting"),
                words -> StatusDisplayer.getDefault().setStatusText(InertText.plain(words), StatusDisplayer.IMPORTANCE_ERROR_HIGHLIGHT)));
        failureListeners.add(words -> Say.later(words, NotifyDescriptor.WARNING_MESSAGE));
    }

    /** For the stages given; no plans are made. */
    public CurrentDay(Collection<? extends Stage> stages) {
        this(stages, PlanSource.NONE);
    }

    /**
     * @param planner makes the plan of a round
     */
    public CurrentDay(Collection<? extends Stage> stages, PlanSource planner) {
        this.plans = new RoundPlans(planner, () -> planListeners.forEach(Runnable::run));
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

    /**
     * Judges a day that is to be opened. On any thread.
     *
     * @throws JournalException where its entries do not make a day
     */
    public ReadDay read(Journal journal) {
        Day day = journal.day();
        return new ReadDay(journal, day, order.status(day));
    }

    /** Opens a day and closes the one that was open. A day begun as a rehearsal goes on as one. */
    public void open(Journal opened) {
        open(read(Objects.requireNonNull(opened, "opened")));
    }

    /** Opens a day that has been read. */
    public void open(ReadDay read) {
        close();
        journal = read.journal();
        watch.ifPresent(w -> w.begin(journal));
        // entries that waited elsewhere have come in now
        Day day = read.day().goingOn(journal.entries());
        practiceCar = day.condition(REHEARSAL).map(CurrentDay::practiceCar).orElse(null);
        show(day, day == read.day() ? read.status() : order.status(day));
    }

    private static PracticeCar practiceCar(String seed) {
        try {
            return PracticeCar.ouzel23(Long.parseLong(seed));
        } catch (NumberFormatException e) {
            return PracticeCar.ouzel23(0);
        }
    }

    /**
     * Opens a new day of the demo car on which the practice car gives the readings.
     *
     * @param seed chooses the noise of its readings; kept in the day, so that it reads on the same after reopening
     */
    public void openRehearsal(Journal opened, long seed) {
        open(opened);
        practiceCar = PracticeCar.ouzel23(seed);
        record("", h -> new Entry.Condition(h, REHEARSAL, Long.toString(seed), ""));
    }

    /** Closes the day's file; the windows then say what to do. */
    public void close() {
        Journal closing = journal;
        journal = null;
        snapshot = null;
        practiceCar = null;
        plans.forget();
        if (closing != null) {
            closeFile(closing);
            tell();
        }
    }

    private void closeFile(Journal closing) {
        try {
            closing.close();
        } catch (JournalException e) {
            fail(e.getLocalizedMessage());
        }
        watch.ifPresent(WaitingWatch::end);
    }

    private void fail(String words) {
        failureListeners.forEach(l -> l.accept(words));
    }

    /**
     * Lets entries that the day's own file does not take at once wait in a folder; from the next day that is opened.
     *
     * @param second the folder
     * @param line   shows a short line about them
     */
    public void waitIn(Path second, Consumer<String> line) {
        watch = Optional.of(new WaitingWatch(second, this::fail, line));
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
        return practiceCar == null || snapshot == null ? Optional.empty() : Optional.of(practiceCar.read(snapshot.day(), wanted));
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
            // as a whole: what was derived so far may hold words of the language before
            refold(Day.of(journal.entries()));
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
            journal.append(putRight(entry.apply(new Header(0, Instant.EPOCH, stageId))));
        } catch (RuntimeException e) {
            failureListeners.forEach(l -> l.accept(Bundle.day_notRecorded(e.getLocalizedMessage())));
            return false;
        }
        watch.ifPresent(WaitingWatch::look);
        Car before = snapshot.car();
        refold(snapshot.day().goingOn(journal.entries()));
        if (journal.entries().get(journal.entries().size() - 1) instanceof Entry.Correction && !snapshot.car().equals(before)) {
            takeBackOnCar(new DescribedChange(before, snapshot.car()));
        }
        return true;
    }

    /** A change of the car that is undone, redone or withdrawn in the day must not stay in the file later days begin with. */
    private void takeBackOnCar(DescribedChange change) {
        try {
            Library.carFileOf(journal.folder()).ifPresent(f -> CarFile.write(f, change.on(CarFile.read(f))));
        } catch (JournalException e) {
            failureListeners.forEach(l -> l.accept(e.getLocalizedMessage()));
        }
    }

    /** Loads as the scales were found to show them become true loads; what the displays showed stays with them. */
    private Entry putRight(Entry entry) {
        if (snapshot == null || !(entry instanceof Entry.Reading reading)) {
            return entry;
        }
        double stepKg = snapshot.car().instruments().scaleResolutionKg();
        return ScaleCorrection.of(snapshot.day()).<Entry>map(c -> c.applied(reading, stepKg)).orElse(entry);
    }

    /**
     * Signs a stage off where the rules allow it, or with a written reason whatever they say.
     *
     * @return false where it was refused or could not be written
     */
    public boolean signOff(String stageId, Optional<String> reason) {
        return through(day -> reason.isPresent() ? order.signOff(day, stageId, reason.get()) : order.signOff(day, stageId));
    }

    /** Closes the day's work where the rules allow it, or with a written reason whatever they say. */
    public boolean closeDay(Optional<String> reason) {
        return through(day -> reason.isPresent() ? order.close(day, reason.get()) : order.close(day));
    }

    /**
     * Changes what is known of the car, in the open day and in the car's own file, so that later days begin with it. The file
     * keeps whatever else it says.
     *
     * @return false where it could not be written; the failure listeners have then been told
     */
    public boolean keepOnCar(UnaryOperator<Car> change) {
        if (snapshot == null) {
            return false;
        }
        Car changed = change.apply(snapshot.car());
        Optional<Path> file = Library.carFileOf(journal.folder());
        if (!changed.equals(snapshot.car()) && !record("", h -> new Entry.CarDescribed(h, changed))) {
            return false;
        }
        try {
            file.ifPresent(f -> CarFile.write(f, change.apply(CarFile.read(f))));
            return true;
        } catch (JournalException e) {
            failureListeners.forEach(l -> l.accept(e.getLocalizedMessage()));
            return false;
        }
    }

    private boolean through(Function<Day, ? extends Gate<? extends Entry>> asked) {
        if (snapshot == null) {
            return false;
        }
        Gate<? extends Entry> gate = asked.apply(snapshot.day());
        if (!gate.allowed()) {
            failureListeners.forEach(l -> l.accept(String.join("; ", gate.reasons())));
            return false;
        }
        Entry entry = gate.entry().get();
        return record(entry.header().stage(), entry::withHeader);
    }

    /** What the open day was declared to be for and does not prove; empty for the whole job, or where no day is open. */
    public Optional<PartDay> partDay() {
        return snapshot().flatMap(s -> order.part(s.day()));
    }

    /** The signed values beside what is read now; empty where no day is open. */
    public Optional<Recheck> recheck() {
        return snapshot().map(s -> order.recheck(s.day()));
    }

    /**
     * The plans of the round for a stage at the present revision: the one offered first, then those with other numbers of
     * corners; none while they are being made, or where there is none.
     */
    public List<RoundPlan> plans(String stageId) {
        return snapshot().flatMap(s -> s.stage(stageId).map(stage -> plans.of(s.day(), stage.stage()))).orElse(List.of());
    }

    /** What the rounds so far say at the present revision; empty until the plans of the stage are there. */
    public Optional<RoundAdvice> advice(String stageId) {
        return snapshot().flatMap(s -> s.stage(stageId).flatMap(stage -> plans.advice(s.day(), stage.stage())));
    }

    /** The last round of turns as predicted and as read; empty where nothing was turned, or while it is worked out. */
    Optional<LastRound> lastRound() {
        return snapshot == null ? Optional.empty() : plans.lastRound();
    }

    /**
     * The one thing to do next: in the middle of a round the corner that is still to be turned, otherwise what the order of
     * work says. Empty where no day is open.
     */
    public Optional<NextStep> nextStep() {
        return snapshot().map(s -> s.stage(s.status().next().stageId())
                .filter(stage -> s.status().next().kind() != NextStep.Kind.TURN && RoundUnderway.of(s.day(), stage.stage()).isPresent())
                .flatMap(stage -> plans(stage.stage().id()).stream().findFirst())
                .map(rest -> RoundSection.turnNext(s, rest)).orElse(s.status().next()));
    }

    /** True while the plan of a stage is being made. */
    public boolean isPlanning(String stageId) {
        return snapshot != null && plans.isBusy(snapshot.day(), stageId);
    }

    private void refold(Day day) {
        show(day, order.status(day));
    }

    private void show(Day day, DayStatus status) {
        snapshot = new DaySnapshot(day, status, units());
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

    /** Is told on the event thread when plans that were asked for are there, or turn out to be none. */
    public void addPlanListener(Runnable listener) {
        planListeners.add(listener);
    }

    public void removePlanListener(Runnable listener) {
        planListeners.remove(listener);
    }

    /** Is told in words when something could not be written. */
    public void addFailureListener(Consumer<String> listener) {
        failureListeners.add(listener);
    }
}
