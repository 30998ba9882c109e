package quoin.setupsheet;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Painter;
import quoin.workbench.Looks;

/** Shows pages one under the other, as wide as the window: black on white in every theme, as they come out of the printer. */
final class PagePanel extends JComponent implements Scrollable {

    private static final long serialVersionUID = 1L;
    private static final double LARGEST = 2.5;

    private final transient Painter painter;
    private transient List<Page> pages = List.of();
    private double zoom = 1;

    PagePanel(Painter painter) {
        this.painter = painter;
        setFocusable(true);
        setOpaque(true);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PANEL;
                }
            };
        }
        return accessibleContext;
    }

    void show(List<Page> shown) {
        pages = List.copyOf(shown);
        revalidate();
        repaint();
    }

    List<Page> pages() {
        return pages;
    }

    Painter painter() {
        return painter;
    }

    /** 1 = as wide as the window. */
    void zoom(double factor) {
        zoom = Math.max(1, Math.min(LARGEST, zoom * factor));
        revalidate();
        repaint();
    }

    private int gap() {
        return Looks.em(0.7);
    }

    private double scale() {
        int width = getParent() instanceof JViewport view ? view.getExtentSize().width : getWidth();
        double widest = pages.stream().mapToDouble(p -> p.paper().widthMm()).max().orElse(1);
        return Math.max(1, zoom * (width - 2 * gap()) / widest);
    }

    @Override
    public Dimension getPreferredSize() {
        double scale = scale();
        double width = pages.stream().mapToDouble(p -> p.paper().widthMm() * scale).max().orElse(0);
        double height = pages.stream().mapToDouble(p -> p.paper().heightMm() * scale + gap()).sum();
        return new Dimension((int) width + 2 * gap(), (int) height + gap());
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Looks.line());
        g.fillRect(0, 0, getWidth(), getHeight());
        double scale = scale();
        int y = gap();
        for (Page page : pages) {
            int width = (int) (page.paper().widthMm() * scale);
            int height = (int) (page.paper().heightMm() * scale);
            int x = Math.max(gap(), (getWidth() - width) / 2);
            g.setColor(Color.WHITE);
            g.fillRect(x, y, width, height);
            Graphics place = g.create(x, y, width, height);
            painter.draw(place, page, scale);
            place.dispose();
            y += height + gap();
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(Looks.em(62), Looks.em(42));
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Looks.em(3);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return (orientation == SwingConstants.VERTICAL ? visible.height : visible.width) * 9 / 10;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return zoom <= 1;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
