package quoin.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;

/** Children one after the other in lines, as many lines as the width asks for. */
public final class WrapLayout extends FlowLayout {

    private static final long serialVersionUID = 1L;

    public WrapLayout() {
        super(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.1));
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int width = parent.getParent() == null || parent.getParent().getWidth() == 0 ? Integer.MAX_VALUE : parent.getParent().getWidth();
        int line = getHgap();
        int widest = 0;
        int lineHeight = 0;
        int height = getVgap();
        for (Component child : parent.getComponents()) {
            Dimension size = child.getPreferredSize();
            if (line > getHgap() && line + size.width + getHgap() > width) {
                height += lineHeight + getVgap();
                line = getHgap();
                lineHeight = 0;
            }
            line += size.width + getHgap();
            widest = Math.max(widest, line);
            lineHeight = Math.max(lineHeight, size.height);
        }
        return new Dimension(widest, height + lineHeight + getVgap());
    }

    /** As narrow as the widest child: the others go into lines below. */
    @Override
    public Dimension minimumLayoutSize(Container parent) {
        int widest = 0;
        for (Component child : parent.getComponents()) {
            widest = Math.max(widest, child.getMinimumSize().width);
        }
        return new Dimension(widest + 2 * getHgap(), preferredLayoutSize(parent).height);
    }
}
