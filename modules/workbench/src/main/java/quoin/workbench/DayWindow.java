package quoin.workbench;

import java.awt.BorderLayout;
import javax.swing.JComponent;
import org.openide.awt.UndoRedo;
import org.openide.windows.TopComponent;

/** A window beside the stages that shows the day in use; it stays where the layout puts it. */
public abstract class DayWindow extends TopComponent {

    private static final long serialVersionUID = 1L;

    private final transient CurrentDay current;
    private final transient Runnable onChange = this::dayChanged;
    private final transient Runnable onPlans = this::plansChanged;

    /**
     * @param name    its title
     * @param current the day it shows
     */
    protected DayWindow(String name, CurrentDay current) {
        this.current = current;
        setName(name);
        putClientProperty(PROP_CLOSING_DISABLED, true);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        putClientProperty(PROP_DRAGGING_DISABLED, true);
        setLayout(new BorderLayout());
    }

    /** Fills the window. */
    protected final void fill(JComponent content) {
        add(content, BorderLayout.CENTER);
    }

    /** The day changed, or another one is in use. */
    protected abstract void dayChanged();

    /** Plans that were asked for are there. */
    protected void plansChanged() {
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
        current.addPlanListener(onPlans);
        dayChanged();
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
        current.removePlanListener(onPlans);
    }

    @Override
    public UndoRedo getUndoRedo() {
        return current.undoRedo();
    }
}
