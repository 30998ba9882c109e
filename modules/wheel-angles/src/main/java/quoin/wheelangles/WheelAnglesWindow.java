package quoin.wheelangles;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.StageView;
import quoin.workbench.StageWindow;

/** The window of the stage. */
@TopComponent.Description(preferredID = "stage-wheel-angles", iconBase = "quoin/workbench/icons/compass.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 400)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Open", preferredID = "stage-wheel-angles")
@ActionID(category = "Stage", id = "quoin.wheelangles.WheelAnglesWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Stage", position = 400),
    @ActionReference(path = "Shortcuts", name = "O-4")})
@Messages({"CTL_Open=&Wheel angles", "stage.title=Wheel angles"})
public final class WheelAnglesWindow extends StageWindow {

    private static final long serialVersionUID = 1L;
    static final String STAGE = "wheel-angles";

    public WheelAnglesWindow() {
        super(STAGE, Bundle.stage_title());
    }

    @Override
    protected StageView createView(CurrentDay currentDay) {
        return new WheelAnglesView(currentDay);
    }
}
