package quoin.help.firstday;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.Optional;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.awt.Actions;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.CurrentDay;

/** Begins the guided first day, with a rehearsal where none is open; leaves it where it is on. */
@ActionID(category = "Help", id = "quoin.help.firstday.FirstDayAction")
@ActionRegistration(displayName = "#CTL_FirstDay", iconBase = "quoin/workbench/icons/mortarboard.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Help", position = 150),
    @ActionReference(path = "Shortcuts", name = "S-F1")})
@Messages("CTL_FirstDay=Guided &First Day")
public final class FirstDayAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        boolean rehearsal = CurrentDay.inUse().isRehearsal();
        if (!rehearsal) {
            // The garage begins a rehearsal; it is found by the name of its action, never by its class.
            Optional.ofNullable(Actions.forID("File", "quoin.garage.RehearseAction")).ifPresent(a -> a.actionPerformed(event));
        }
        FirstDayWindow.open(!rehearsal || !FirstDayWindow.isOpen());
    }
}
