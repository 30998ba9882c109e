package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: a friend's car into the library. */
@ActionID(category = "File", id = "quoin.garage.TakeInCarAction")
@ActionRegistration(displayName = "#CTL_TakeInCar", iconBase = "quoin/workbench/icons/box-arrow-in-down.svg")
@ActionReference(path = "Menu/File", position = 580)
@Messages("CTL_TakeInCar=&Import Shared Car...")
public final class TakeInCarAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().takeInCar();
    }
}
