package quoin.help;

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
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;

/** Help on where the racer is: the page of the window in front, at the place of the field that has the focus. */
@ActionID(category = "Help", id = "quoin.help.HelpAction")
@ActionRegistration(displayName = "#CTL_Help", iconBase = "quoin/workbench/icons/question-circle.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Help", position = 100),
    @ActionReference(path = "Shortcuts", name = "F1")})
@Messages("CTL_Help=&Help on This")
public final class HelpAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        TopComponent window = TopComponent.getRegistry().getActivated();
        if (window instanceof HelpWindow) {
            return;
        }
        HelpWindow.open(HelpTopic.of(Optional.ofNullable(window).map(w -> WindowManager.getDefault().findTopComponentID(w)),
                Optional.ofNullable(focus).map(Component::getName)));
    }
}
