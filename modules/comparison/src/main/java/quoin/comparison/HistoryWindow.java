package quoin.comparison;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;

/** All days of the car of the open day. */
@TopComponent.Description(preferredID = "history", iconBase = "quoin/workbench/icons/clock-history.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 610)
@TopComponent.OpenActionRegistration(displayName = "#CTL_History", preferredID = "history")
@ActionID(category = "Day", id = "quoin.comparison.HistoryWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 120),
    @ActionReference(path = "Shortcuts", name = "D-H")})
@Messages({"CTL_History=&History of the Car", "history.title=History"})
public final class HistoryWindow extends DayWindow {

    private static final long serialVersionUID = 1L;

    private final HistoryPanel panel = new HistoryPanel(CurrentDay.inUse());

    public HistoryWindow() {
        super(Bundle.history_title(), CurrentDay.inUse(), Stay.UNTIL_CLOSED);
        fill(panel);
    }

    @Override
    protected void componentShowing() {
        panel.refresh();
    }

    @Override
    protected void componentActivated() {
        panel.toSearch();
    }

    @Override
    protected void dayChanged() {
        if (isShowing()) {
            panel.refresh();
        }
    }

    @Override
    protected void forget() {
        panel.forgetDays();
    }
}
