package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: the days of the library. */
@ActionID(category = "File", id = "quoin.garage.LibraryAction")
@ActionRegistration(displayName = "#CTL_Library", iconBase = "quoin/workbench/icons/bookshelf.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 320),
    @ActionReference(path = "Shortcuts", name = "D-L")})
@Messages("CTL_Library=&Library...")
public final class LibraryAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().library();
    }
}
