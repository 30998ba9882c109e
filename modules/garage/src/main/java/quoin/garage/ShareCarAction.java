package quoin.garage;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** File menu: a car with its days as one file for a friend. */
@ActionID(category = "File", id = "quoin.garage.ShareCarAction")
@ActionRegistration(displayName = "#CTL_ShareCar", iconBase = "quoin/workbench/icons/box-arrow-up.svg")
@ActionReference(path = "Menu/File", position = 570)
@Messages("CTL_ShareCar=&Share Car...")
public final class ShareCarAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        GarageDoor.inUse().shareCar();
    }
}
