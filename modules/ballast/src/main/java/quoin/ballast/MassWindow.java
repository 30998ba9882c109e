package quoin.ballast;

import javax.swing.JTabbedPane;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;
import quoin.workbench.Looks;

/** Load case, what if, moving mass, centre of gravity: four pages, turned with Ctrl+Page Up and Down or their underlined letter. */
@TopComponent.Description(preferredID = "day-mass", iconBase = "quoin/workbench/icons/box-seam.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 700)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Mass", preferredID = "day-mass")
@ActionID(category = "Day", id = "quoin.ballast.MassWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 320),
    @ActionReference(path = "Shortcuts", name = "O-8")})
@Messages({"CTL_Mass=&Load Case, Mass and What If", "mass.title=Load case and mass", "mass.loadCase=&Load case", "mass.whatIf=What &if",
    "mass.move=&Move mass", "mass.cg=Centre of &gravity",
    "mass.noDay=No day is open.", "mass.noDayRemedy=Open one, or choose File > Rehearse with the practice car."})
public final class MassWindow extends DayWindow {

    private static final long serialVersionUID = 1L;

    private final JTabbedPane tabs = new JTabbedPane();
    private final LoadCasePanel loadCase = new LoadCasePanel(CurrentDay.inUse());
    private final WhatIfPanel whatIf = new WhatIfPanel(CurrentDay.inUse());
    private final MovePanel move = new MovePanel(CurrentDay.inUse());
    private final CgPanel cg = new CgPanel(CurrentDay.inUse());

    public MassWindow() {
        super(Bundle.mass_title(), CurrentDay.inUse(), Stay.UNTIL_CLOSED);
        Looks.tab(tabs, Bundle.mass_loadCase(), loadCase);
        Looks.tab(tabs, Bundle.mass_whatIf(), whatIf);
        Looks.tab(tabs, Bundle.mass_move(), move);
        Looks.tab(tabs, Bundle.mass_cg(), cg);
        tabs.addChangeListener(e -> turned());
        fill(tabs, Bundle.mass_noDay(), Bundle.mass_noDayRemedy());
    }

    @Override
    protected void dayChanged() {
        if (CurrentDay.inUse().snapshot().isPresent() && isShowing()) {
            update();
        }
    }

    private void update() {
        switch (tabs.getSelectedIndex()) {
            case 0 -> loadCase.update();
            case 1 -> whatIf.update();
            case 2 -> move.update();
            default -> cg.update();
        }
    }

    private void turned() {
        update();
        toFirst();
    }

    private void toFirst() {
        switch (tabs.getSelectedIndex()) {
            case 0 -> loadCase.toFirst();
            case 1 -> whatIf.toFirst();
            case 2 -> move.toFirst();
            default -> cg.toFirst();
        }
    }

    @Override
    protected void componentShowing() {
        refresh();
    }

    @Override
    protected void componentActivated() {
        toFirst();
    }
}
