package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Font;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** Load case, what if, moving mass, centre of gravity: four pages, turned with Ctrl+Page Up and Down or their underlined letter. */
@TopComponent.Description(preferredID = "day-mass", persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 700)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Mass", preferredID = "day-mass")
@ActionID(category = "Day", id = "quoin.ballast.MassWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 320),
    @ActionReference(path = "Shortcuts", name = "O-8")})
@Messages({"CTL_Mass=&Load Case, Mass and What If", "mass.title=Load case and mass", "mass.loadCase=Load case", "mass.whatIf=What if", "mass.move=Move mass", "mass.cg=Centre of gravity",
    "mass.noDay=No day is open: open one, or choose File > Rehearse with the practice car."})
public final class MassWindow extends DayWindow {

    private static final long serialVersionUID = 1L;
    private static final String EMPTY = "empty";
    private static final String PAGES = "pages";

    private final JTabbedPane tabs = new JTabbedPane();
    private final JPanel cards = new JPanel(new CardLayout());
    private final LoadCasePanel loadCase = new LoadCasePanel(CurrentDay.inUse());
    private final WhatIfPanel whatIf = new WhatIfPanel(CurrentDay.inUse());
    private final MovePanel move = new MovePanel(CurrentDay.inUse());
    private final CgPanel cg = new CgPanel(CurrentDay.inUse());

    public MassWindow() {
        super(Bundle.mass_title(), CurrentDay.inUse());
        putClientProperty(PROP_CLOSING_DISABLED, false);
        tabs.addTab(Bundle.mass_loadCase(), loadCase);
        tabs.addTab(Bundle.mass_whatIf(), whatIf);
        tabs.addTab(Bundle.mass_move(), move);
        tabs.addTab(Bundle.mass_cg(), cg);
        tabs.setMnemonicAt(0, 'L');
        tabs.setMnemonicAt(1, 'I');
        tabs.setMnemonicAt(2, 'M');
        tabs.setMnemonicAt(3, 'G');
        tabs.addChangeListener(e -> turned());
        WrapText empty = new WrapText(Bundle.mass_noDay(), 1.3, Font.BOLD);
        empty.setBorder(Looks.padding(2, 2));
        JPanel none = new JPanel(new BorderLayout());
        none.add(empty, BorderLayout.NORTH);
        cards.add(none, EMPTY);
        cards.add(tabs, PAGES);
        fill(cards);
    }

    @Override
    protected void dayChanged() {
        boolean open = CurrentDay.inUse().snapshot().isPresent();
        ((CardLayout) cards.getLayout()).show(cards, open ? PAGES : EMPTY);
        if (open && isShowing()) {
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
        dayChanged();
    }

    @Override
    protected void componentActivated() {
        toFirst();
    }
}
