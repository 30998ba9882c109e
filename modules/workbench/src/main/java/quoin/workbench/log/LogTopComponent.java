package quoin.workbench.log;

import java.awt.BorderLayout;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.UndoRedo;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;

/** The log under the stage windows. */
@TopComponent.Description(preferredID = "day-log", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "quoin-log", openAtStartup = true, position = 100)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Log", preferredID = "day-log")
@ActionID(category = "Window", id = "quoin.workbench.log.LogTopComponent")
@ActionReferences({
    @ActionReference(path = "Menu/Window", position = 200),
    @ActionReference(path = "Shortcuts", name = "O-9")})
@Messages("CTL_Log=&Log")
public final class LogTopComponent extends TopComponent {

    private static final long serialVersionUID = 1L;

    private final transient CurrentDay current = CurrentDay.inUse();
    private final LogPanel panel = new LogPanel(current);
    private final transient Runnable onChange = panel::dayChanged;

    public LogTopComponent() {
        setName(Bundle.log_title());
        putClientProperty(PROP_CLOSING_DISABLED, true);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        putClientProperty(PROP_DRAGGING_DISABLED, true);
        setLayout(new BorderLayout());
        add(panel, BorderLayout.CENTER);
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
        panel.dayChanged();
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
    }

    @Override
    protected void componentActivated() {
        panel.focusList();
    }

    @Override
    public UndoRedo getUndoRedo() {
        return current.undoRedo();
    }
}
