package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.Scrollable;

/** As wide as the window shows and at least as high; scrolled up and down where the content needs more. */
public final class WidthOfTheWindow extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1L;

    private WidthOfTheWindow(Component content) {
        super(new BorderLayout());
        add(content, BorderLayout.CENTER);
    }

    /** A content that keeps its own height at the top of a pane that scrolls it. */
    public static JScrollPane scrolledFromTheTop(Component content) {
        JPanel top = new JPanel(new BorderLayout());
        top.add(content, BorderLayout.NORTH);
        return scrolled(top);
    }

    /** A content that fills the height of a pane that scrolls it, without a border of its own. */
    public static JScrollPane scrolled(Component content) {
        JScrollPane scroll = new JScrollPane(new WidthOfTheWindow(content));
        // the other ways draw at once, and what has changed is then drawn a second time
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(2));
        return scroll;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Looks.em(2);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Looks.em(2), visible.height - Looks.em(4));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
