package quoin.rideheight;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.StageView;
import quoin.workbench.StageWindow;

/** The window of the stage. */
@TopComponent.Description(preferredID = "stage-ride-height", iconBase = "quoin/workbench/icons/rulers.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 200)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Open", preferredID = "stage-ride-height")
@ActionID(category = "Stage", id = "quoin.rideheight.RideHeightWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Stage", position = 200),
    @ActionReference(path = "Shortcuts", name = "O-2")})
@Messages({"CTL_Open=&Ride height", "stage.title=Ride height"})
public final class RideHeightWindow extends StageWindow {

    private static final long serialVersionUID = 1L;
    static final String STAGE = "ride-height";

    public RideHeightWindow() {
        super(STAGE, Bundle.stage_title());
    }

    @Override
    protected StageView createView(CurrentDay currentDay) {
        return new RideHeightView(currentDay);
    }
}
