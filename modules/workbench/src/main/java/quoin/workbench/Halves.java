package quoin.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Children beside each other, all of the same width whatever stands in them, each at its own height from the top. */
final class Halves implements LayoutManager {

    @Override
    public void addLayoutComponent(String name, Component component) {
        // the order of the children says where they stand
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // nothing is kept
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int width = 0;
        int height = 0;
        for (Component child : parent.getComponents()) {
            width = Math.max(width, child.getPreferredSize().width);
            height = Math.max(height, child.getPreferredSize().height);
        }
        return new Dimension(width * parent.getComponentCount(), height);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void layoutContainer(Container parent) {
        int count = parent.getComponentCount();
        for (int i = 0; i < count; i++) {
            int from = parent.getWidth() * i / count;
            int to = parent.getWidth() * (i + 1) / count;
            parent.getComponent(i).setBounds(from, 0, to - from, parent.getComponent(i).getPreferredSize().height);
        }
    }
}
