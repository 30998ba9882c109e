package quoin.wheelangles.screen;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import quoin.workbench.Looks;

/** As wide as the window shows, as high as the content needs. */
final class WidthOfTheView extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1L;

    WidthOfTheView(Component content) {
        super(new BorderLayout());
        add(content, BorderLayout.CENTER);
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
        return false;
    }
}
