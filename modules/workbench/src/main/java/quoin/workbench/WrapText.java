package quoin.workbench;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.GraphicsConfiguration;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.Arrays;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Text that wraps like a paragraph and looks like a label. It takes no focus; screen readers read it all the same. */
public final class WrapText extends JTextArea {

    private final double factor;
    private final int style;
    private boolean narrow;

    public WrapText(String text) {
        this(text, 1, Font.PLAIN);
    }

    public WrapText(String text, double factor, int style) {
        super(text);
        this.factor = factor;
        this.style = style;
        setLineWrap(true);
        setWrapStyleWord(true);
        setEditable(false);
        setFocusable(false);
        setMargin(new Insets(0, 0, 0, 0));
        dress();
    }

    private void dress() {
        setOpaque(false);
        setBorder(null);
        setFont(Looks.font(factor, style));
        setForeground(UIManager.getColor("Label.foreground"));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (factor > 0) {
            dress();
        }
    }

    /** Lines broken before there was a screen counted the letters of another resolution; on a scaled screen they come out wider. */
    @Override
    public void addNotify() {
        super.addNotify();
        GraphicsConfiguration screen = getGraphicsConfiguration();
        if (screen != null && !screen.getDefaultTransform().isIdentity()) {
            setLineWrap(false);
            setLineWrap(true);
        }
    }

    @Override
    public void setText(String text) {
        if (!text.equals(getText())) {
            super.setText(text);
            getAccessibleContext().setAccessibleName(text);
        }
    }

    /** Wraps at a width before anything is laid out, for a dialog that is made as high as it asks to be at first. */
    public WrapText wide(int columns) {
        setColumns(columns);
        setSize(getPreferredSize().width, Short.MAX_VALUE);
        return this;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean widthChanged = width != getWidth();
        super.setBounds(x, y, width, height);
        if (widthChanged) {
            // The containers are being laid out now and will count as valid afterwards; only then can they be asked again.
            EventQueue.invokeLater(this::askAgain);
        }
    }

    /** A layout keeps the sizes it was told while its container was still invalid, and invalidating the child alone leaves it so. */
    private void askAgain() {
        for (Container above = getParent(); above != null; above = above.getParent()) {
            above.invalidate();
        }
        revalidate();
    }

    /** A changed text moves the caret, and the caret would pull the window to it. */
    @Override
    public void scrollRectToVisible(Rectangle where) {
        // stays where it is
    }

    /** Lets it get as narrow as its longest word. */
    WrapText narrow() {
        narrow = true;
        return this;
    }

    /** Width of the longest word, which is the least a column can have without breaking a word in two. */
    int longestWord() {
        FontMetrics letters = getFontMetrics(getFont());
        return Arrays.stream(getText().split("\\s+")).mapToInt(letters::stringWidth).max().orElse(0) + 1;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(narrow ? longestWord() : Looks.em(8), getPreferredSize().height);
    }

    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }
}
