package quoin.preparation;

import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import quoin.preparation.condition.ConditionPage;
import quoin.preparation.pads.PadsPage;
import quoin.preparation.scales.ScalesPage;
import quoin.preparation.sheet.Pages;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.StageView;

/** The list to tick off, and a page each for what takes longer. The list alone is enough for a quick day. */
final class PreparationView implements StageView {

    private final Pages pages;

    PreparationView(CurrentDay current) {
        String stage = PreparationWindow.STAGE;
        pages = new Pages(List.of(new TickPage(current), new PadsPage(current, stage), new ScalesPage(current, stage), new ConditionPage(current, stage)));
    }

    @Override
    public JComponent component() {
        return pages;
    }

    @Override
    public Optional<JComponent> head() {
        return Optional.of(pages.choice());
    }

    @Override
    public void show(DaySnapshot day) {
        pages.show(day);
    }

    @Override
    public void toEntry() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean inside = owner != null && (SwingUtilities.isDescendingFrom(owner, pages) || SwingUtilities.isDescendingFrom(owner, pages.choice()));
        pages.toEntry(inside);
    }
}
