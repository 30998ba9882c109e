package quoin.comparison;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;

/** Two states of the car side by side. */
@TopComponent.Description(preferredID = "comparison", iconBase = "quoin/workbench/icons/layout-split.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 600)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Comparison", preferredID = "comparison")
@ActionID(category = "Day", id = "quoin.comparison.ComparisonWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 100),
    @ActionReference(path = "Shortcuts", name = "D-T")})
@Messages({"CTL_Comparison=&Compare", "comparison.title=Compare"})
public final class ComparisonWindow extends DayWindow {

    private static final long serialVersionUID = 1L;

    private final ComparisonPanel panel = new ComparisonPanel(CurrentDay.inUse());

    public ComparisonWindow() {
        super(Bundle.comparison_title(), CurrentDay.inUse(), Stay.UNTIL_CLOSED);
        fill(panel);
    }

    /** Opens the window on the angles before and after the weights were taken again. */
    static void showAnglesBeforeAndAfter() {
        if (WindowManager.getDefault().findTopComponent("comparison") instanceof ComparisonWindow window) {
            window.open();
            window.requestActive();
            window.panel.showBeforeAndAfterReweigh();
        }
    }

    @Override
    protected void componentShowing() {
        panel.refresh();
    }

    @Override
    protected void componentActivated() {
        panel.toChoice();
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
