package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: New Day. */
@ActionID(category = "File", id = "quoin.garage.NewDayAction")
@ActionRegistration(displayName = "#CTL_NewDay", iconBase = "quoin/workbench/icons/calendar-plus.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 200, separatorBefore = 190),
    @ActionReference(path = "Shortcuts", name = "D-N")})
@Messages("CTL_NewDay=New &Day...")
public final class NewDayAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().newDay();
    }
}
