package quoin.garage;

import java.io.File;
import java.time.Clock;
import java.util.Optional;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.NbBundle.Messages;
import org.openide.util.NbPreferences;
import quoin.exchange.CarShare;
import quoin.exchange.ShareException;
import quoin.exchange.SharedCar;
import quoin.garage.desk.Desk;
import quoin.logbook.JournalException;
import quoin.workbench.InertText;
import quoin.workbench.Say;
import quoin.workbench.Waiting;

/** Giving a car with its days to a friend as one file, and taking one in. */
@Messages({
    "share.whose=Your name, as your friend will see it beside the car:", "share.whoseTitle=Share a car",
    "share.file=Where does the file go?", "share.type=Shared cars (*.quoin.zip)",
    "# {0} - file", "# {1} - how many days", "share.done=The car is in {0}, with {1} days. Give that one file to your friend.",
    "# {0} - file", "share.exists={0} exists already. Write over it?",
    "# {0} - file", "share.writing=Writing the car with its days into {0}...", "# {0} - file", "takeIn.reading=Reading {0}...",
    "# {0} - car", "takeIn.writing=Taking in {0} with its days...",
    "takeIn.title=Import a shared car", "takeIn.file=The file your friend gave you", "# {0} - file", "# {1} - what is wrong", "takeIn.failed={0}: {1}",
    "# {0} - car", "# {1} - whose", "# {2} - how many days",
    "takeIn.ask=Take in \"{0}\" from {1} with {2} days? It gets a name of its own; your cars stay as they are.",
    "# {0} - name here", "takeIn.done=The car is in the garage as \"{0}\"."})
final class Sharing {

    private static final String NAME = "shareName";

    private final Desk desk;

    Sharing(Desk desk) {
        this.desk = desk;
    }

    void share() {
        Optional<String> car = desk.current().snapshot().map(s -> s.car().id()).filter(this::isInLibrary)
                .or(() -> Choices.car(desk.library()));
        car.ifPresent(this::share);
    }

    private boolean isInLibrary(String carId) {
        return desk.library().cars().stream().anyMatch(c -> c.id().equals(carId));
    }

    private void share(String carId) {
        NotifyDescriptor.InputLine name = new NotifyDescriptor.InputLine(Bundle.share_whose(), Bundle.share_whoseTitle());
        name.setInputText(NbPreferences.forModule(Sharing.class).get(NAME, ""));
        if (DialogDisplayer.getDefault().notify(name) != NotifyDescriptor.OK_OPTION) {
            return;
        }
        NbPreferences.forModule(Sharing.class).put(NAME, name.getInputText().strip());
        File chosen = new FileChooserBuilder(Sharing.class).setTitle(Bundle.share_file())
                .setFileFilter(new FileNameExtensionFilter(Bundle.share_type(), "zip")).showSaveDialog();
        if (chosen == null) {
            return;
        }
        File file = chosen.getName().contains(".") ? chosen : new File(chosen.getParentFile(), chosen.getName() + CarShare.EXTENSION);
        if (file.exists() && DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(InertText.plain(Bundle.share_exists(file)),
                NotifyDescriptor.OK_CANCEL_OPTION)) != NotifyDescriptor.OK_OPTION) {
            return;
        }
        try {
            Waiting.until(Bundle.share_writing(file.getName()),
                    watch -> CarShare.write(desk.library(), carId, name.getInputText(), file.toPath(), Clock.systemUTC(), watch))
                    .ifPresent(days -> Say.message(Bundle.share_done(file, days), NotifyDescriptor.INFORMATION_MESSAGE));
        } catch (ShareException | JournalException e) {
            Say.message(e.getLocalizedMessage(), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    void takeIn() {
        File file = new FileChooserBuilder(Sharing.class).setTitle(Bundle.takeIn_file())
                .setFileFilter(new FileNameExtensionFilter(Bundle.share_type(), "zip")).showOpenDialog();
        if (file == null) {
            return;
        }
        try {
            Optional<SharedCar> read = Waiting.until(Bundle.takeIn_reading(file.getName()), watch -> SharedCar.read(file.toPath()));
            if (read.isEmpty()) {
                return;
            }
            SharedCar shared = read.get();
            boolean yes = DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(
                    InertText.plain(Bundle.takeIn_ask(shared.name(), shared.from(), shared.days())), Bundle.takeIn_title(),
                    NotifyDescriptor.OK_CANCEL_OPTION)) == NotifyDescriptor.OK_OPTION;
            if (yes) {
                Waiting.until(Bundle.takeIn_writing(shared.name()), watch -> shared.importInto(desk.library(), watch))
                        .ifPresent(id -> Say.message(Bundle.takeIn_done(desk.takenIn(id)), NotifyDescriptor.INFORMATION_MESSAGE));
            }
        } catch (ShareException | JournalException e) {
            Say.message(Bundle.takeIn_failed(file.getName(), e.getLocalizedMessage()), NotifyDescriptor.ERROR_MESSAGE);
        }
    }
}
