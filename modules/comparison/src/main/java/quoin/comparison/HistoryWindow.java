package quoin.comparison;

import java.awt.BorderLayout;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;

/** All days of the car of the open day. */
@TopComponent.Description(preferredID = "history", persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 610)
@TopComponent.OpenActionRegistration(displayName = "#CTL_History", preferredID = "history")
@ActionID(category = "Day", id = "quoin.comparison.HistoryWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 120),
    @ActionReference(path = "Shortcuts", name = "D-H")})
@Messages({"CTL_History=&History of the Car", "history.title=History"})
public final class HistoryWindow extends TopComponent {

    private static final long serialVersionUID = 1L;

    private final transient CurrentDay current = CurrentDay.inUse();
    private final HistoryPanel panel = new HistoryPanel(current);
    private final transient Runnable onChange = this::dayChanged;

    public HistoryWindow() {
        setName(Bundle.history_title());
        setDisplayName(Bundle.history_title());
        setLayout(new BorderLayout());
        add(panel, BorderLayout.CENTER);
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
    }

    @Override
    protected void componentShowing() {
        panel.refresh();
    }

    @Override
    protected void componentActivated() {
        panel.toSearch();
    }

    private void dayChanged() {
        if (isShowing()) {
            panel.refresh();
        }
    }
}
