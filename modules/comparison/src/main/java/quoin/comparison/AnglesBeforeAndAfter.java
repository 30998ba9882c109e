package quoin.comparison;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Day menu: the angles before and after the weights were taken again. The final re-check has a button for it. */
@ActionID(category = "Day", id = "quoin.comparison.AnglesBeforeAndAfter")
@ActionRegistration(displayName = "#CTL_AnglesBeforeAndAfter", iconBase = "quoin/workbench/icons/arrow-left-right.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 110),
    @ActionReference(path = "Shortcuts", name = "D-B")})
@Messages("CTL_AnglesBeforeAndAfter=&Angles before and after the Re-weigh")
public final class AnglesBeforeAndAfter implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        ComparisonWindow.showAnglesBeforeAndAfter();
    }
}
