package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: Open Day Folder. */
@ActionID(category = "File", id = "quoin.garage.OpenFolderAction")
@ActionRegistration(displayName = "#CTL_OpenFolder", iconBase = "quoin/workbench/icons/folder.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 350)})
@Messages("CTL_OpenFolder=Open Day &Folder...")
public final class OpenFolderAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().openFolder();
    }
}
