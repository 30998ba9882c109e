package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridLayout;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;

/** Four cells laid out as the corners stand, front at the top, each with one large figure and lines of text below it. */
@Messages({"block.front=front", "# {0} - corner", "# {1} - figure", "# {2} - below", "block.spoken={0}: {1}, {2}"})
public final class CornerBlock extends JPanel {

    /**
     * One corner.
     *
     * @param figure  the large figure
     * @param below   a line below it, such as the share of the total
     * @param verdict shape and word
     */
    public record Cell(String figure, String below, VerdictWords verdict) {
    }

    private static final long serialVersionUID = 1L;

    private final Map<Corner, CornerCell> cells = new EnumMap<>(Corner.class);

    public CornerBlock() {
        super(new BorderLayout(0, Looks.em(0.2)));
        setOpaque(false);
        JPanel block = new JPanel(new GridLayout(2, 2, Looks.em(0.6), Looks.em(0.6)));
        block.setOpaque(false);
        for (Corner corner : Corner.values()) {
            cells.put(corner, new CornerCell());
            block.add(cells.get(corner));
        }
        JLabel front = Looks.label(Bundle.block_front(), 0.95, Font.PLAIN);
        front.setHorizontalAlignment(SwingConstants.CENTER);
        add(front, BorderLayout.NORTH);
        add(block, BorderLayout.CENTER);
    }

    public void show(Function<Corner, Cell> content) {
        cells.forEach((corner, cell) -> cell.show(corner.words(), content.apply(corner)));
    }

    private static final class CornerCell extends JPanel {
        private static final long serialVersionUID = 1L;
        private final JLabel name = Looks.label("", Looks.HEADING, Font.BOLD);
        private final JLabel figure = Looks.figure("");
        private final JLabel below = Looks.label("", 1.05, Font.PLAIN);
        private final VerdictLabel verdict = new VerdictLabel();

        CornerCell() {
            super(new BorderLayout(Looks.em(0.6), 0));
            setBorder(Looks.frame(0.5));
            name.setVerticalAlignment(SwingConstants.TOP);
            below.setHorizontalAlignment(SwingConstants.RIGHT);
            JPanel figures = new JPanel(new BorderLayout());
            figures.add(figure, BorderLayout.NORTH);
            figures.add(below, BorderLayout.CENTER);
            add(name, BorderLayout.LINE_START);
            add(figures, BorderLayout.CENTER);
            add(verdict, BorderLayout.SOUTH);
        }

        void show(String corner, Cell content) {
            name.setText(corner);
            figure.setText(content.figure());
            below.setText(content.below());
            verdict.show(content.verdict());
            verdict.setVisible(!content.verdict().word().isEmpty());
            getAccessibleContext().setAccessibleName(Bundle.block_spoken(corner, content.figure(), content.below()));
        }
    }
}
