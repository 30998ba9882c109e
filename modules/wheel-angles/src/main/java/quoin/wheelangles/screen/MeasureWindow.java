package quoin.wheelangles.screen;

import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;
import quoin.workbench.Looks;
import quoin.workbench.StageWindow;

/** Measuring by cords, plates, gauges, a sweep; the results go into the day as readings of the wheel angles. */
@TopComponent.Description(preferredID = MeasureWindow.ID, iconBase = "quoin/workbench/icons/crosshair.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 410)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Measure", preferredID = MeasureWindow.ID)
@ActionID(category = "Stage", id = "quoin.wheelangles.screen.MeasureWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Stage", position = 410),
    @ActionReference(path = "Shortcuts", name = "D-M")})
@Messages({"CTL_Measure=&Measure angles", "measure.title=Measure angles",
    "measure.noDay=No day is open.", "measure.noDayRemedy=Open a day or begin one in the garage; then the figures have a place to go."})
public final class MeasureWindow extends DayWindow {

    static final String ID = "measure-angles";
    private static final long serialVersionUID = 1L;
    private static final String STAGE = "wheel-angles";

    private final transient CurrentDay current;
    private final MeasurePanel panel;

    public MeasureWindow() {
        this(CurrentDay.inUse());
    }

    private MeasureWindow(CurrentDay current) {
        super(Bundle.measure_title(), current, Stay.UNTIL_CLOSED);
        this.current = current;
        panel = new MeasurePanel(current, STAGE);
        fill(panel, Bundle.measure_noDay(), Bundle.measure_noDayRemedy());
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "back", () -> StageWindow.bringToFront(STAGE));
    }

    /** Opens the window and brings it to the front. */
    public static void bringToFront() {
        TopComponent window = WindowManager.getDefault().findTopComponent(ID);
        if (window != null) {
            window.open();
            window.requestActive();
        }
    }

    @Override
    protected void dayChanged() {
        current.snapshot().ifPresent(panel::show);
    }

    @Override
    protected void componentActivated() {
        if (current.snapshot().isPresent()) {
            panel.toEntry();
        }
    }

    @Override
    protected void componentHidden() {
        panel.keepDrafts();
    }

    @Override
    protected void componentClosed() {
        super.componentClosed();
        panel.keepDrafts();
    }
}
