package quoin.curves;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;

/** The curves beside the stages; opened from the Window menu. */
@TopComponent.Description(preferredID = "curves", iconBase = "quoin/workbench/icons/graph-up.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 800)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Curves", preferredID = "curves")
@ActionID(category = "Window", id = "quoin.curves.CurvesWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Window", position = 250),
    @ActionReference(path = "Shortcuts", name = "D-G")})
@Messages({"CTL_Curves=&Curves", "window.title=Curves"})
public final class CurvesWindow extends DayWindow {

    private static final long serialVersionUID = 1L;

    private final transient CurvesPanel panel;

    public CurvesWindow() {
        super(Bundle.window_title(), CurrentDay.inUse(), Stay.UNTIL_CLOSED);
        panel = new CurvesPanel(CurrentDay.inUse());
        fill(panel.component());
    }

    @Override
    protected void dayChanged() {
        panel.dayChanged();
    }

    @Override
    protected void componentActivated() {
        panel.toSlider();
    }
}
