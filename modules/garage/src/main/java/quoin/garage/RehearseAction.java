package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: Rehearse with the Practice Car. */
@ActionID(category = "File", id = "quoin.garage.RehearseAction")
@ActionRegistration(displayName = "#CTL_Rehearse", iconBase = "quoin/workbench/icons/play-circle.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 100)})
@Messages("CTL_Rehearse=&Rehearse with the Practice Car")
public final class RehearseAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().rehearse();
    }
}
