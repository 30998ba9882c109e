package quoin.setupsheet;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.time.ZoneId;
import java.util.Optional;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Journal;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Say;
import quoin.workbench.Waiting;

/** Day menu: the sheet of the open day. */
@ActionID(category = "Day", id = "quoin.setupsheet.ShowSheetAction")
@ActionRegistration(displayName = "#CTL_ShowSheet", iconBase = "quoin/workbench/icons/printer.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 900, separatorBefore = 890),
    @ActionReference(path = "Shortcuts", name = "D-P")})
@Messages({"CTL_ShowSheet=&Set-up Sheet...", "MSG_NoDay=No day is open. Open or begin a day first.",
    "MSG_LayingOut=Laying out the set-up sheet..."})
public final class ShowSheetAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        show(SheetDialog.What.DAY);
    }

    /** Opens the window of the sheet on one of its pages. */
    static void show(SheetDialog.What what) {
        openDay().ifPresent(day -> {
            Journal journal = CurrentDay.inUse().journal().orElseThrow();
            SetupSheet sheet = new SetupSheet(day, journal.info().title(), ZoneId.systemDefault(), journal.folder());
            Waiting.until(Bundle.MSG_LayingOut(), watch -> SheetDialog.Letters.read())
                    .ifPresent(letters -> new SheetDialog(sheet, letters).show(what));
        });
    }

    /** The open day; empty where none is, which is then said. */
    static Optional<DaySnapshot> openDay() {
        Optional<DaySnapshot> open = CurrentDay.inUse().snapshot();
        if (open.isEmpty()) {
            Say.message(Bundle.MSG_NoDay(), NotifyDescriptor.INFORMATION_MESSAGE);
        }
        return open;
    }
}
