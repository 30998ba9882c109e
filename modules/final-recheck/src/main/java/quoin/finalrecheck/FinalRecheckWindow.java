package quoin.finalrecheck;

import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.StageView;
import quoin.workbench.StageWindow;

/** The window of the stage. */
@TopComponent.Description(preferredID = "stage-final-recheck", iconBase = "quoin/workbench/icons/arrow-repeat.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 500)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Open", preferredID = "stage-final-recheck")
@ActionID(category = "Stage", id = "quoin.finalrecheck.FinalRecheckWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Stage", position = 500),
    @ActionReference(path = "Shortcuts", name = "O-5")})
@Messages({"CTL_Open=&Final re-check", "stage.title=Final re-check"})
public final class FinalRecheckWindow extends StageWindow {

    private static final long serialVersionUID = 1L;
    static final String STAGE = "final-recheck";

    public FinalRecheckWindow() {
        super(STAGE, Bundle.stage_title());
    }

    @Override
    protected StageView createView(CurrentDay currentDay) {
        return new FinalRecheckView(currentDay);
    }
}
