package quoin.preparation.sheet;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;

/**
 * Pages behind a row of buttons; F6 goes to the next one, Shift+F6 to the one before. Only the page in front takes room. The row
 * stands by itself ({@link #choice()}), so that it stays in sight while the page is scrolled.
 */
@Messages("pages.tip=F6: next page. Shift+F6: the one before")
public final class Pages extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient List<Page> pages;
    private final List<JToggleButton> buttons = new ArrayList<>();
    private final JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), 0));
    private transient DaySnapshot shown;
    private int front;

    public Pages(List<Page> pages) {
        super(new BorderLayout());
        this.pages = List.copyOf(pages);
        row.setBorder(Looks.padding(0.1, 0.6));
        ButtonGroup group = new ButtonGroup();
        for (int i = 0; i < pages.size(); i++) {
            int index = i;
            JToggleButton button = new JToggleButton();
            Mnemonics.setLocalizedText(button, pages.get(i).title());
            button.setToolTipText(Bundle.pages_tip());
            button.setName("page." + i);
            button.addActionListener(e -> open(index));
            group.add(button);
            buttons.add(button);
            row.add(button);
        }
        add(pages.get(0).component(), BorderLayout.CENTER);
        buttons.get(0).setSelected(true);
        for (JComponent on : List.of(row, this)) {
            key(on, 0, 1);
            key(on, InputEvent.SHIFT_DOWN_MASK, -1);
        }
    }

    /** The row of buttons. */
    public JComponent choice() {
        return row;
    }

    private void key(JComponent on, int modifiers, int by) {
        Looks.onKey(on, KeyStroke.getKeyStroke(KeyEvent.VK_F6, modifiers), "page" + by,
                () -> open(Math.floorMod(front + by, pages.size())));
    }

    /** Brings a page to the front with the caret in it. */
    public void open(int index) {
        bring(index);
        scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        pages.get(index).toFirst();
    }

    private void bring(int index) {
        if (index != front) {
            front = index;
            buttons.get(index).setSelected(true);
            removeAll();
            add(pages.get(index).component(), BorderLayout.CENTER);
            if (shown != null) {
                pages.get(index).show(shown);
            }
            revalidate();
            repaint();
        }
    }

    public void show(DaySnapshot day) {
        shown = day;
        pages.get(front).show(day);
    }

    /** Puts the caret into the page where the keyboard is, otherwise into the first page. */
    public void toEntry(boolean keyboardInside) {
        if (!keyboardInside) {
            bring(0);
        }
        pages.get(front).toFirst();
    }
}
