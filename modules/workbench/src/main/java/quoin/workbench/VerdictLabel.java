package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** A shape with its word beside it; long words wrap. */
public final class VerdictLabel extends JPanel {

    private static final double GAP = 0.4;
    private static final double LEAST = 5;

    private final transient BuiltFrom shown = new BuiltFrom();
    private final JLabel shape = new JLabel();
    private final WrapText word;

    public VerdictLabel() {
        this(Font.PLAIN);
    }

    /**
     * @param style of the word, as in {@link Font}
     */
    public VerdictLabel(int style) {
        super(new BorderLayout(Looks.em(GAP), 0));
        word = new WrapText("", 1, style);
        setOpaque(false);
        shape.setVerticalAlignment(SwingConstants.TOP);
        add(shape, BorderLayout.LINE_START);
        add(word, BorderLayout.CENTER);
    }

    public void show(VerdictWords verdict) {
        if (!shown.isNew(verdict)) {
            return;
        }
        shape.setIcon(verdict.mark().icon());
        word.setText(verdict.word());
        getAccessibleContext().setAccessibleName(verdict.word());
        shape.setVisible(!verdict.word().isEmpty());
    }

    @Override
    public Dimension getMinimumSize() {
        int beside = shape.isVisible() ? shape.getPreferredSize().width + Looks.em(GAP) : 0;
        return new Dimension(Math.max(Looks.em(LEAST), beside + word.longestWord()), getPreferredSize().height);
    }

    @Override
    public int getBaseline(int width, int height) {
        return word.getBaseline(Math.max(1, width), Math.max(1, height));
    }
}
