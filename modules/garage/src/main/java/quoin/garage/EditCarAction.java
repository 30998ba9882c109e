package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: Edit Car. */
@ActionID(category = "File", id = "quoin.garage.EditCarAction")
@ActionRegistration(displayName = "#CTL_EditCar", iconBase = "quoin/workbench/icons/pencil.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 500),
    @ActionReference(path = "Shortcuts", name = "D-E")})
@Messages("CTL_EditCar=&Edit Car...")
public final class EditCarAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().editCar();
    }
}
