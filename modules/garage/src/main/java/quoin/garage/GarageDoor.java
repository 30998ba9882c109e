package quoin.garage;

import java.awt.Frame;
import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.Lookup;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import org.openide.util.lookup.ServiceProvider;
import org.openide.windows.WindowManager;
import quoin.car.Car;
import quoin.garage.desk.Desk;
import quoin.garage.draft.CarDraft;
import quoin.garage.draft.FigureText;
import quoin.garage.form.CarFormDialog;
import quoin.logbook.JournalException;
import quoin.logbook.KnownDay;
import quoin.logbook.Library;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workbench.CurrentDay;
import quoin.workbench.DisplayUnits;
import quoin.workbench.InertText;
import quoin.workbench.ReadDay;
import quoin.workbench.Say;
import quoin.workbench.StageWindow;
import quoin.workbench.Waiting;

/**
 * What the garage's menu, its window and the command line can ask for, with the questions and messages that go with it.
 * One instance serves the application; event thread only.
 */
@ServiceProvider(service = GarageDoor.class)
@Messages({
    "# {0} - date", "door.rehearsal=Rehearsal {0}",
    "# {0} - date", "door.day=Set-up {0}",
    "door.newCar=New car", "# {0} - car", "door.editCar=Car: {0}",
    "door.noCar=There is no car in the garage yet. Begin with New car; only the wheelbase and the tracks have to be known.",
    "door.noDay=There is no day in the garage yet. Begin with New day, or rehearse with the practice car.",
    "# {0} - why", "door.lookAt={0}\n\nOpen it to look at only?", "door.lookAtTitle=Open to look at",
    "door.folder=Open the folder of a day", "door.openFolder=Open",
    "door.reading=Reading the day"})
public final class GarageDoor {

    /** System property that names the library folder; the option --library comes before it. */
    static final String LIBRARY = "quoin.library";

    private static final RequestProcessor AT_START = new RequestProcessor("quoin day at start", 1);

    private final Desk desk;

    /** For the lookup; the library is where {@link #LIBRARY} says, else in its usual place. */
    public GarageDoor() {
        this.desk = new Desk(CurrentDay.inUse(), Optional.ofNullable(System.getProperty(LIBRARY)).map(Path::of)
                .orElseGet(Library::defaultRoot), new RememberedDay(), Clock.systemDefaultZone());
    }

    static GarageDoor inUse() {
        return Lookup.getDefault().lookup(GarageDoor.class);
    }

    Desk desk() {
        return desk;
    }

    private static String today() {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).format(LocalDate.now());
    }

    void rehearse() {
        run(() -> {
            desk.rehearse(Bundle.door_rehearsal(today()));
            return List.of();
        });
    }

    void demo() {
        run(() -> {
            desk.demo(Bundle.door_rehearsal(today()));
            return List.of();
        });
    }

    void open(Path dayFolder) {
        run(() -> desk.isOpen(dayFolder) ? List.of() : openOrLookAt(dayFolder));
    }

    /** A day that another Quoin has open, or that cannot be written, can still be looked at. */
    private List<String> openOrLookAt(Path dayFolder) {
        try {
            return opened(() -> desk.read(dayFolder));
        } catch (JournalException e) {
            if (!e.isReadable()) {
                throw e;
            }
            Object answer = DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(InertText.plain(Bundle.door_lookAt(e.getLocalizedMessage())),
                    Bundle.door_lookAtTitle(), NotifyDescriptor.YES_NO_OPTION, NotifyDescriptor.QUESTION_MESSAGE));
            return answer == NotifyDescriptor.YES_OPTION ? opened(() -> desk.readToLookAt(dayFolder)) : List.of();
        }
    }

    /** A long day takes a while to read; whoever does not want to wait goes on with the day that is open. */
    private List<String> opened(Supplier<ReadDay> reading) {
        return Waiting.until(Bundle.door_reading(), watch -> {
            ReadDay read = reading.get();
            try {
                watch.orGiveUp(1);
                return read;
            } catch (CancellationException e) {
                read.journal().close();
                throw e;
            }
        }).map(desk::take).orElse(List.of());
    }

    /** Goes on where Quoin was left; where there is no such day, the garage comes to the front. */
    void reopen() {
        atStart(desk::left);
    }

    void openAtStart(Path dayFolder) {
        atStart(() -> Optional.of(dayFolder).filter(f -> !desk.isOpen(f)));
    }

    void demoAtStart() {
        AT_START.post(() -> Waiting.onEventThread(this::demo));
    }

    /**
     * Reads a day while the windows are still being made and then opens it; what is asked for at the start is done one after the other.
     *
     * @param wanted the day, asked for on the event thread; empty where another was opened meanwhile
     */
    private void atStart(Supplier<Optional<Path>> wanted) {
        AT_START.post(() -> {
            AtomicReference<Optional<Path>> folder = new AtomicReference<>(Optional.empty());
            Waiting.onEventThread(() -> folder.set(wanted.get()));
            try {
                Optional<ReadDay> read = folder.get().map(desk::read);
                Waiting.onEventThread(() -> {
                    read.ifPresent(r -> takeOrClose(r, wanted.get().isPresent()));
                    garageWhereNoDay();
                });
            } catch (JournalException e) {
                // said in the ordinary way; a day on a stick that is not plugged in stays remembered until another is opened
                Waiting.onEventThread(() -> {
                    open(folder.get().orElseThrow());
                    garageWhereNoDay();
                });
            }
        });
    }

    private void takeOrClose(ReadDay read, boolean take) {
        if (take) {
            run(() -> desk.take(read));
        } else {
            read.journal().close();
        }
    }

    private void garageWhereNoDay() {
        if (desk.current().journal().isEmpty()) {
            GarageWindow.bringToFront();
        }
    }

    void newDay() {
        Optional<CarChoice> choice = Choices.carAndTitle(desk.library(), Bundle.door_day(today()));
        choice.ifPresent(c -> run(() -> {
            desk.newDay(c.carId(), c.title());
            return List.of();
        }));
    }

    void newDay(String carId) {
        run(() -> {
            desk.newDay(carId, Bundle.door_day(today()));
            return List.of();
        });
    }

    void openDay() {
        Choices.day(desk.library()).ifPresent(this::open);
    }

    /** Every day there is, to find one. */
    void library() {
        new LibraryDialog(desk, new LibraryDialog.Answer() {
            @Override
            public void open(Path dayFolder) {
                GarageDoor.this.open(dayFolder);
            }

            @Override
            public void beginLike(KnownDay day) {
                run(() -> {
                    desk.newDayLike(day.day().folder(), Bundle.door_day(today()));
                    return List.of();
                });
            }

            @Override
            public void begin(String carId) {
                newDay(carId);
            }

            @Override
            public void edit(String carId) {
                editCar(carId);
            }
        }).show();
    }

    void shareCar() {
        new Sharing(desk).share();
    }

    void takeInCar() {
        new Sharing(desk).takeIn();
    }

    void openFolder() {
        File folder = new FileChooserBuilder(GarageDoor.class).setDirectoriesOnly(true).setTitle(Bundle.door_folder())
                .setApproveText(Bundle.door_openFolder()).showOpenDialog();
        if (folder != null) {
            open(folder.toPath());
        }
    }

    void newCar() {
        CarFormDialog.show(frame(), Bundle.door_newCar(), CarDraft.blank(figures(), SuspensionTypes.installed()), car -> desk.save(car, true));
    }

    void editCar() {
        Optional<String> open = desk.current().snapshot().map(s -> s.car().id());
        Optional<String> id = open.isPresent() ? open : Choices.car(desk.library());
        id.ifPresent(this::editCar);
    }

    void editCar(String carId) {
        try {
            Car car = desk.car(carId);
            FigureText figures = figures();
            Waiting.until(Bundle.door_editCar(car.name()), watch -> CarDraft.from(car, figures, SuspensionTypes.installed()))
                    .ifPresent(draft -> CarFormDialog.show(frame(), Bundle.door_editCar(car.name()), draft, changed -> desk.save(changed, false)));
        } catch (JournalException e) {
            Say.message(e.getLocalizedMessage(), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    void closeFile() {
        desk.closeFile();
        GarageWindow.bringToFront();
    }

    /** Opens a day, tells what was noticed, and puts the caret where the next thing is done. */
    private void run(Supplier<List<String>> work) {
        try {
            List<String> noticed = work.get();
            if (!noticed.isEmpty()) {
                Say.message(String.join("\n", noticed), NotifyDescriptor.WARNING_MESSAGE);
            }
        } catch (JournalException e) {
            Say.message(e.getLocalizedMessage(), NotifyDescriptor.ERROR_MESSAGE);
        }
        desk.current().snapshot().ifPresent(s -> SwingUtilities.invokeLater(() -> StageWindow.bringToFront(s.status().next())));
    }

    private FigureText figures() {
        DisplayUnits units = desk.current().units();
        return new FigureText(units.preferences(), units.toeInMm());
    }

    private static Frame frame() {
        return WindowManager.getDefault().getMainWindow();
    }
}
