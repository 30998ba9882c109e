package quoin.setupsheet;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;

/** Day menu: the page of last time, now and the change. The comparison has a button for it. */
@ActionID(category = "Day", id = "quoin.setupsheet.ShowLastTimeAction")
@ActionRegistration(displayName = "#CTL_ShowLastTime", iconBase = "quoin/workbench/icons/clock-history.svg")
@ActionReference(path = "Menu/Day", position = 905)
@Messages("CTL_ShowLastTime=Last Time, &Now, Change...")
public final class ShowLastTimeAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        ShowSheetAction.show(SheetDialog.What.LAST_TIME);
    }
}
