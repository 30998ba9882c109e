package quoin.preparation;

import java.awt.KeyboardFocusManager;
import java.time.Clock;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import quoin.preparation.condition.ConditionPage;
import quoin.preparation.pads.MovedQuestion;
import quoin.preparation.pads.PadsPage;
import quoin.preparation.scales.ScalesPage;
import quoin.preparation.sheet.Pages;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.StageView;

/** The list to tick off, and a page each for what takes longer. The list alone is enough for a quick day. */
final class PreparationView implements StageView {

    private final MovedQuestion moved;
    private final Pages pages;
    private final JPanel component;

    PreparationView(CurrentDay current) {
        String stage = PreparationWindow.STAGE;
        moved = new MovedQuestion(current, stage, Clock.systemUTC());
        pages = new Pages(List.of(new TickPage(current), new PadsPage(current, stage), new ScalesPage(current, stage), new ConditionPage(current, stage)));
        component = Looks.column(moved, pages);
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        moved.show(day);
        pages.show(day);
    }

    @Override
    public void toEntry() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        pages.toEntry(owner != null && SwingUtilities.isDescendingFrom(owner, pages));
    }
}
