package quoin.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/**
 * Two children beside each other, both begin at the top. The left one takes its share of the width; one whose longest words want
 * more gets that, where the other can spare it.
 */
final class TwoColumns implements LayoutManager {

    private final double leftShare;

    TwoColumns(double leftShare) {
        this.leftShare = leftShare;
    }

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
        Dimension left = parent.getComponent(0).getPreferredSize();
        Dimension right = parent.getComponent(1).getPreferredSize();
        return new Dimension(left.width + right.width, Math.max(left.height, right.height));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void layoutContainer(Container parent) {
        Component left = parent.getComponent(0);
        Component right = parent.getComponent(1);
        int share = (int) Math.round(leftShare * parent.getWidth());
        int least = left.getMinimumSize().width;
        int most = parent.getWidth() - right.getMinimumSize().width;
        int middle = least <= share && share <= most || least > most ? share : share < least ? least : most;
        left.setBounds(0, 0, middle, left.getPreferredSize().height);
        right.setBounds(middle, 0, parent.getWidth() - middle, right.getPreferredSize().height);
    }
}
