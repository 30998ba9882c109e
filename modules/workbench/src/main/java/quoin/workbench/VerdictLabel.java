package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** A shape with its word beside it; long words wrap. */
public final class VerdictLabel extends JPanel {

    private final JLabel shape = new JLabel();
    private final WrapText word;

    public VerdictLabel() {
        this(Font.PLAIN);
    }

    /**
     * @param style of the word, as in {@link Font}
     */
    public VerdictLabel(int style) {
        super(new BorderLayout(Looks.em(0.4), 0));
        word = new WrapText("", 1, style);
        setOpaque(false);
        shape.setVerticalAlignment(SwingConstants.TOP);
        add(shape, BorderLayout.LINE_START);
        add(word, BorderLayout.CENTER);
    }

    public void show(VerdictWords verdict) {
        shape.setIcon(verdict.mark().icon());
        word.setText(verdict.word());
        getAccessibleContext().setAccessibleName(verdict.word());
        shape.setVisible(!verdict.word().isEmpty());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Looks.em(5), getPreferredSize().height);
    }

    @Override
    public int getBaseline(int width, int height) {
        return word.getBaseline(Math.max(1, width), Math.max(1, height));
    }
}
