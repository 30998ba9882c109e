package quoin.workbench.log;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;

/** The log under the stage windows. */
@TopComponent.Description(preferredID = "day-log", iconBase = "quoin/workbench/icons/journal-text.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "quoin-log", openAtStartup = true, position = 100)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Log", preferredID = "day-log")
@ActionID(category = "Window", id = "quoin.workbench.log.LogTopComponent")
@ActionReferences({
    @ActionReference(path = "Menu/Window", position = 200),
    @ActionReference(path = "Shortcuts", name = "O-9")})
@Messages("CTL_Log=&Log")
public final class LogTopComponent extends DayWindow {

    private static final long serialVersionUID = 1L;

    private final LogPanel panel;

    public LogTopComponent() {
        super(Bundle.log_title(), CurrentDay.inUse(), Stay.ALWAYS);
        panel = new LogPanel(CurrentDay.inUse());
        fill(panel);
    }

    @Override
    protected void dayChanged() {
        panel.dayChanged();
    }

    @Override
    protected void componentActivated() {
        panel.focusList();
    }
}
