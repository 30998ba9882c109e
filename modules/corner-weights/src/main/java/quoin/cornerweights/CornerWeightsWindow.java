package quoin.cornerweights;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.StageView;
import quoin.workbench.StageWindow;

/** The window of the stage. */
@TopComponent.Description(preferredID = "stage-corner-weights", iconBase = "quoin/workbench/icons/speedometer2.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 300)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Open", preferredID = "stage-corner-weights")
@ActionID(category = "Stage", id = "quoin.cornerweights.CornerWeightsWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Stage", position = 300),
    @ActionReference(path = "Shortcuts", name = "O-3")})
@Messages({"CTL_Open=&Corner weights", "stage.title=Corner weights"})
public final class CornerWeightsWindow extends StageWindow {

    private static final long serialVersionUID = 1L;
    static final String STAGE = "corner-weights";

    public CornerWeightsWindow() {
        super(STAGE, Bundle.stage_title());
    }

    @Override
    protected StageView createView(CurrentDay currentDay) {
        return new CornerWeightsView(currentDay);
    }
}
