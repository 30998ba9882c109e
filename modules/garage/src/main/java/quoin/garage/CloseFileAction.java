package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: Put the Day Away. */
@ActionID(category = "File", id = "quoin.garage.CloseFileAction")
@ActionRegistration(displayName = "#CTL_CloseFile", iconBase = "quoin/workbench/icons/x-lg.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 600, separatorBefore = 590)})
@Messages("CTL_CloseFile=P&ut the Day Away")
public final class CloseFileAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().closeFile();
    }
}
