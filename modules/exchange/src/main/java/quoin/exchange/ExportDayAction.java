package quoin.exchange;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Journal;
import quoin.quantities.DecimalMark;
import quoin.workbench.CurrentDay;
import quoin.workbench.SaveFile;
import quoin.workbench.Say;

/** File menu: the open day as CSV or JSON. */
@ActionID(category = "File", id = "quoin.exchange.ExportDayAction")
@ActionRegistration(displayName = "#CTL_ExportDay", iconBase = "quoin/workbench/icons/file-earmark-arrow-up.svg")
@ActionReference(path = "Menu/File", position = 550, separatorBefore = 545)
@Messages({"CTL_ExportDay=Ex&port Day...", "exchange.noDay=No day is open. Open or begin a day first.",
    "export.title=Export the day: a name ending in .csv for a spreadsheet, in .json for everything",
    "export.point=Table with decimal points, cells parted by commas (*.csv)",
    "export.comma=Table with decimal commas, cells parted by semicolons (*.csv)", "export.json=Everything, for programs (*.json)",
    "# {0} - file", "export.done=The day is exported to {0}."})
public final class ExportDayAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        CurrentDay current = CurrentDay.inUse();
        Optional<Journal> journal = current.journal();
        if (journal.isEmpty()) {
            Say.message(Bundle.exchange_noDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        Path day = journal.get().folder();
        SaveFile.Form point = new SaveFile.Form(Bundle.export_point(), "csv", () -> DayExport.csv(day, false));
        SaveFile.Form comma = new SaveFile.Form(Bundle.export_comma(), "csv", () -> DayExport.csv(day, true));
        SaveFile.Form json = new SaveFile.Form(Bundle.export_json(), "json", () -> DayExport.json(day));
        boolean usual = current.units().preferences().decimalMark() == DecimalMark.COMMA;
        SaveFile.ask(ExportDayAction.class, Bundle.export_title(), usual ? List.of(comma, point, json) : List.of(point, comma, json))
                .ifPresent(file -> Say.message(Bundle.export_done(file), NotifyDescriptor.INFORMATION_MESSAGE));
    }
}
