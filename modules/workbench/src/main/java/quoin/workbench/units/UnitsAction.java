package quoin.workbench.units;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.CurrentDay;

/** Chooses how figures are shown; what is recorded does not change. */
@ActionID(category = "Tools", id = "quoin.workbench.units.UnitsAction")
@ActionRegistration(displayName = "#CTL_Units")
@ActionReference(path = "Menu/Tools", position = 100)
@Messages({"CTL_Units=&Units and Numbers...", "TITLE_Units=Units and numbers"})
public final class UnitsAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        CurrentDay current = CurrentDay.inUse();
        UnitsForm form = new UnitsForm(current.units());
        Object answer = DialogDisplayer.getDefault().notify(new DialogDescriptor(form, Bundle.TITLE_Units()));
        if (answer == DialogDescriptor.OK_OPTION) {
            current.setUnits(form.chosen());
        }
    }
}
