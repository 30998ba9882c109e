package quoin.workings;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.Optional;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** How is this computed? For the figure whose field has the focus, and the other figures of its stage. */
@ActionID(category = "Help", id = "quoin.workings.WorkingsAction")
@ActionRegistration(displayName = "#CTL_Workings", iconBase = "quoin/workbench/icons/calculator.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Help", position = 200),
    @ActionReference(path = "Shortcuts", name = "F7")})
@Messages("CTL_Workings=How Is This &Computed?")
public final class WorkingsAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        WorkingsWindow.open(Optional.ofNullable(focus).map(Component::getName));
    }
}
