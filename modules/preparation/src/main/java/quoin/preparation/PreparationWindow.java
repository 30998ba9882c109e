package quoin.preparation;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.StageView;
import quoin.workbench.StageWindow;

/** The window of the stage. */
@TopComponent.Description(preferredID = "stage-preparation", iconBase = "quoin/workbench/icons/list-check.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 100)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Open", preferredID = "stage-preparation")
@ActionID(category = "Stage", id = "quoin.preparation.PreparationWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Stage", position = 100),
    @ActionReference(path = "Shortcuts", name = "O-1")})
@Messages({"CTL_Open=&Preparation", "stage.title=Preparation"})
public final class PreparationWindow extends StageWindow {

    private static final long serialVersionUID = 1L;
    static final String STAGE = "preparation";

    public PreparationWindow() {
        super(STAGE, Bundle.stage_title());
    }

    @Override
    protected StageView createView(CurrentDay currentDay) {
        return new PreparationView(currentDay);
    }
}
