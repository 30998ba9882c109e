package quoin.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/**
 * Two children beside each other, both begin at the top. The left one takes its share of the width; one whose longest words want
 * more gets that, where the other can spare it. Where the left one can have neither, the right one goes below it.
 */
final class TwoColumns implements LayoutManager {

    /** Share of the width the left one may take of the right one before that goes below. */
    private static final double SPARED = 0.59;

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
        return isOneBelowTheOther(parent) ? new Dimension(Math.max(left.width, right.width), left.height + right.height)
                : new Dimension(left.width + right.width, Math.max(left.height, right.height));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    /** Too narrow for the words of the left child, even if the right one had no more than its own. */
    private boolean isOneBelowTheOther(Container parent) {
        int least = parent.getComponent(0).getMinimumSize().width;
        return parent.getWidth() > 0 && least > Math.max(share(parent), SPARED * parent.getWidth()) && least > most(parent);
    }

    private int share(Container parent) {
        return (int) Math.round(leftShare * parent.getWidth());
    }

    private static int most(Container parent) {
        return parent.getWidth() - parent.getComponent(1).getMinimumSize().width;
    }

    @Override
    public void layoutContainer(Container parent) {
        Component left = parent.getComponent(0);
        Component right = parent.getComponent(1);
        int width = parent.getWidth();
        int leftHeight = left.getPreferredSize().height;
        int rightHeight = right.getPreferredSize().height;
        if (isOneBelowTheOther(parent)) {
            left.setBounds(0, 0, width, leftHeight);
            right.setBounds(0, leftHeight, width, rightHeight);
            return;
        }
        int share = share(parent);
        int least = left.getMinimumSize().width;
        int middle = least > most(parent) ? Math.max(share, least) : Math.max(least, Math.min(share, most(parent)));
        left.setBounds(0, 0, middle, leftHeight);
        right.setBounds(middle, 0, width - middle, rightHeight);
    }
}
