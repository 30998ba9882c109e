package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.awt.UndoRedo;
import org.openide.windows.TopComponent;

/** A window beside the stages that shows the day in use; it stays where the layout puts it, and may be closed or not. */
public abstract class DayWindow extends TopComponent {

    /** Whether a window may be closed. */
    protected enum Stay {
        /** Belongs to every day and has no cross to close it. */
        ALWAYS,
        /** Opened where it is wanted, and closed again. */
        UNTIL_CLOSED
    }

    private static final long serialVersionUID = 1L;
    private static final String NO_DAY = "no day";
    private static final String DAY = "day";

    private final transient CurrentDay current;
    private final transient Runnable onChange = this::refresh;
    private final transient Runnable onPlans = this::plansChanged;
    private final JPanel cards = new JPanel(new CardLayout());

    /**
     * @param name    its title
     * @param current the day it shows
     * @param stay    whether it may be closed
     */
    protected DayWindow(String name, CurrentDay current, Stay stay) {
        this.current = current;
        setName(name);
        setDisplayName(name);
        putClientProperty(PROP_CLOSING_DISABLED, stay == Stay.ALWAYS);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        putClientProperty(PROP_DRAGGING_DISABLED, true);
        setLayout(new BorderLayout());
    }

    /** Fills the window. */
    protected final void fill(JComponent content) {
        add(content, BorderLayout.CENTER);
    }

    /** Fills the window while a day is open, and with other words while none is. */
    protected final void fill(JComponent content, String... whenNoDay) {
        cards.add(empty(whenNoDay), NO_DAY);
        cards.add(content, DAY);
        fill(cards);
    }

    /** What a window shows in place of a day: what is missing first, then the remedy. */
    static JPanel empty(String... lines) {
        JComponent[] texts = new JComponent[lines.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = new WrapText(lines[i], i == 0 ? 1.5 : 1.2, i == 0 ? Font.BOLD : Font.PLAIN);
        }
        JPanel empty = new JPanel(new BorderLayout());
        empty.add(Looks.column(texts), BorderLayout.NORTH);
        empty.setBorder(Looks.padding(2, 2));
        return empty;
    }

    /** Brings the window up to date, as after every change of the day. */
    protected final void refresh() {
        if (cards.getComponentCount() > 0) {
            ((CardLayout) cards.getLayout()).show(cards, current.snapshot().isPresent() ? DAY : NO_DAY);
        }
        dayChanged();
        if (!isShowing() && current.snapshot().isEmpty()) {
            forget();
        }
    }

    /** The day changed, or another one is in use, or none. */
    protected abstract void dayChanged();

    /** Nobody looks: what can be read or made again need not stay in memory. */
    protected void forget() {
    }

    /** Plans that were asked for are there. */
    protected void plansChanged() {
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
        current.addPlanListener(onPlans);
        refresh();
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
        current.removePlanListener(onPlans);
        forget();
    }

    @Override
    public UndoRedo getUndoRedo() {
        return current.undoRedo();
    }
}
