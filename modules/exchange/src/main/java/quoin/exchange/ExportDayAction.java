package quoin.exchange;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.quantities.DecimalMark;
import quoin.workbench.CurrentDay;

/** File menu: the open day as CSV or JSON. */
@ActionID(category = "File", id = "quoin.exchange.ExportDayAction")
@ActionRegistration(displayName = "#CTL_ExportDay")
@ActionReference(path = "Menu/File", position = 550, separatorBefore = 545)
@Messages({"CTL_ExportDay=Ex&port Day...", "exchange.noDay=No day is open. Open or begin a day first.",
    "export.title=Export the day: a name ending in .csv for a spreadsheet, in .json for everything",
    "export.csv=Table for a spreadsheet (*.csv)", "export.json=Everything, for programs (*.json)",
    "# {0} - file", "export.exists={0} exists already. Write over it?",
    "# {0} - file", "# {1} - what went wrong", "export.failed=The day was not exported to {0}: {1}. Choose another folder.",
    "# {0} - file", "export.done=The day is exported to {0}."})
public final class ExportDayAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        CurrentDay current = CurrentDay.inUse();
        Optional<Journal> journal = current.journal();
        if (journal.isEmpty()) {
            say(Bundle.exchange_noDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        File chosen = new FileChooserBuilder(ExportDayAction.class).setTitle(Bundle.export_title())
                .addFileFilter(new FileNameExtensionFilter(Bundle.export_json(), "json"))
                .setFileFilter(new FileNameExtensionFilter(Bundle.export_csv(), "csv")).showSaveDialog();
        if (chosen == null) {
            return;
        }
        boolean json = chosen.getName().toLowerCase(Locale.ROOT).endsWith(".json");
        File file = chosen.getName().contains(".") ? chosen : new File(chosen.getParentFile(), chosen.getName() + ".csv");
        if (file.exists() && DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(Bundle.export_exists(file),
                NotifyDescriptor.OK_CANCEL_OPTION)) != NotifyDescriptor.OK_OPTION) {
            return;
        }
        boolean comma = current.units().preferences().decimalMark() == DecimalMark.COMMA;
        write(file, json, journal.get().folder(), comma);
    }

    private static void write(File file, boolean json, Path day, boolean comma) {
        try {
            Files.write(file.toPath(), json ? DayExport.json(day) : DayExport.csv(day, comma));
            say(Bundle.export_done(file), NotifyDescriptor.INFORMATION_MESSAGE);
        } catch (IOException | UncheckedIOException | JournalException e) {
            say(Bundle.export_failed(file, e.getMessage()), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    static void say(String words, int type) {
        DialogDisplayer.getDefault().notify(new NotifyDescriptor.Message(words, type));
    }
}
