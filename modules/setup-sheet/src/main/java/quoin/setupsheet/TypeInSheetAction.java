package quoin.setupsheet;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.CurrentDay;

/** Day menu: the figures of a sheet that was filled in by hand. */
@ActionID(category = "Day", id = "quoin.setupsheet.TypeInSheetAction")
@ActionRegistration(displayName = "#CTL_TypeInSheet", iconBase = "quoin/workbench/icons/keyboard.svg")
@ActionReference(path = "Menu/Day", position = 910)
@Messages("CTL_TypeInSheet=&Type in a Sheet...")
public final class TypeInSheetAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        ShowSheetAction.openDay().ifPresent(day -> new SheetEntryDialog(CurrentDay.inUse(), day).show());
    }
}
