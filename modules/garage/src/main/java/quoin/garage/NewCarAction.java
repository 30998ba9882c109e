package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: New Car. */
@ActionID(category = "File", id = "quoin.garage.NewCarAction")
@ActionRegistration(displayName = "#CTL_NewCar", iconBase = "quoin/workbench/icons/car-front.svg")
@ActionReferences({
    @ActionReference(path = "Menu/File", position = 400, separatorBefore = 390),
    @ActionReference(path = "Shortcuts", name = "DS-N")})
@Messages("CTL_NewCar=New &Car...")
public final class NewCarAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().newCar();
    }
}
