package quoin.workbench.units;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.io.IOException;
import java.nio.file.Path;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.modules.Places;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.CurrentDay;
import quoin.workbench.Say;

/** Chooses how figures are shown; what is recorded does not change. */
@ActionID(category = "Tools", id = "quoin.workbench.units.UnitsAction")
@ActionRegistration(displayName = "#CTL_Units", iconBase = "quoin/workbench/icons/123.svg")
@ActionReference(path = "Menu/Tools", position = 100)
@Messages({"CTL_Units=&Units and Language...", "TITLE_Units=Units, numbers and language",
    "# {0} - file", "units.languageNotKept=The language was not kept: {0} cannot be written. Free it, then choose again."})
public final class UnitsAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        CurrentDay current = CurrentDay.inUse();
        Path file = LanguageChoice.file(Places.getUserDirectory().toPath());
        LanguageChoice language = LanguageChoice.load(file);
        UnitsForm form = new UnitsForm(current.units(), language);
        Object answer = DialogDisplayer.getDefault().notify(new DialogDescriptor(form, Bundle.TITLE_Units()));
        if (answer == DialogDescriptor.OK_OPTION) {
            current.setUnits(form.chosen());
            if (!form.language().equals(language)) {
                keep(form.language(), file);
            }
        }
    }

    private static void keep(LanguageChoice language, Path file) {
        try {
            language.save(file);
        } catch (IOException e) {
            Say.message(Bundle.units_languageNotKept(file), NotifyDescriptor.WARNING_MESSAGE);
        }
    }
}
