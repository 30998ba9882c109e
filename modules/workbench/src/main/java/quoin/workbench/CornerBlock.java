package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridLayout;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
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

    /** A corner by its name, as that is chosen. */
    private record Named(String name, Cell content) {
    }

    private static final long serialVersionUID = 1L;

    private final transient BuiltFrom built = new BuiltFrom();

    public CornerBlock() {
        super(new BorderLayout(0, Looks.em(0.2)));
        setOpaque(false);
    }

    public void show(Function<Corner, Cell> cells) {
        List<Named> corners = Stream.of(Corner.values()).map(c -> new Named(c.words(), cells.apply(c))).toList();
        if (!built.isNew(corners)) {
            return;
        }
        removeAll();
        JPanel block = new JPanel(new GridLayout(2, 2, Looks.em(0.6), Looks.em(0.6)));
        block.setOpaque(false);
        corners.forEach(c -> block.add(cell(c.name(), c.content())));
        JLabel front = Looks.label(Bundle.block_front(), 0.95, Font.PLAIN);
        front.setHorizontalAlignment(SwingConstants.CENTER);
        add(front, BorderLayout.NORTH);
        add(block, BorderLayout.CENTER);
        revalidate();
        repaint();
    }

    private static JPanel cell(String corner, Cell content) {
        JPanel cell = new JPanel(new BorderLayout(Looks.em(0.6), 0));
        cell.setBorder(Looks.frame(0.5));
        JLabel name = Looks.label(corner, Looks.HEADING, Font.BOLD);
        name.setVerticalAlignment(SwingConstants.TOP);
        JLabel figure = Looks.figure(content.figure());
        JLabel below = Looks.label(content.below(), 1.05, Font.PLAIN);
        below.setHorizontalAlignment(SwingConstants.RIGHT);
        VerdictLabel verdict = new VerdictLabel();
        verdict.show(content.verdict());
        JPanel figures = new JPanel(new BorderLayout());
        figures.add(figure, BorderLayout.NORTH);
        figures.add(below, BorderLayout.CENTER);
        cell.add(name, BorderLayout.LINE_START);
        cell.add(figures, BorderLayout.CENTER);
        if (!content.verdict().word().isEmpty()) {
            cell.add(verdict, BorderLayout.SOUTH);
        }
        cell.getAccessibleContext().setAccessibleName(Bundle.block_spoken(corner, content.figure(), content.below()));
        return cell;
    }
}
