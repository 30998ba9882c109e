package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: Open Day. */
@ActionID(category = "File", id = "quoin.garage.OpenDayAction")
@ActionRegistration(displayName = "#CTL_OpenDay", iconBase = "quoin/workbench/icons/folder2-open.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 300),
    @ActionReference(path = "Shortcuts", name = "D-O")})
@Messages("CTL_OpenDay=&Open Day...")
public final class OpenDayAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().openDay();
    }
}
