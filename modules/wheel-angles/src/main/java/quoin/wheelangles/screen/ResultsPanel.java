package quoin.wheelangles.screen;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import org.openide.util.NbBundle.Messages;
import quoin.quantities.Texts;
import quoin.quantities.UnitPreferences;
import quoin.wheelangles.measure.Measured;
import quoin.wheelangles.measure.Outcome;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.WrapText;

/** What follows from the figures typed, in degrees, minutes, millimetres and inches side by side. */
@Messages({
    "results.deg=deg", "results.minutes=deg, min", "results.mm=mm", "results.in=in", "results.u=±",
    "results.recorded=Bold figures are recorded. ± is the 95 % interval that comes from the steps of the instruments alone.",
    "results.none=The result appears here as soon as there are enough figures."})
final class ResultsPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    ResultsPanel() {
        super(new BorderLayout(0, Looks.em(0.4)));
        setOpaque(false);
    }

    void show(Optional<Measured> measured, UnitPreferences units) {
        removeAll();
        if (measured.isEmpty()) {
            add(new WrapText(Bundle.results_none()), BorderLayout.NORTH);
        } else {
            add(table(measured.get(), units), BorderLayout.NORTH);
            add(remarks(measured.get().outcome().remarks()), BorderLayout.CENTER);
        }
        wrapNow(this, getWidth() - Looks.em(1.6));
        revalidate();
        repaint();
    }

    /** A text made anew does not know its width yet, and would be given one line only. */
    private static void wrapNow(Container in, int width) {
        for (Component child : in.getComponents()) {
            if (child instanceof WrapText text && width > 0) {
                text.setSize(width, Short.MAX_VALUE);
            } else if (child instanceof Container container) {
                wrapNow(container, width);
            }
        }
    }

    private static JPanel table(Measured measured, UnitPreferences units) {
        JPanel table = new JPanel(new GridBagLayout());
        table.setOpaque(false);
        List<String[]> texts = new ArrayList<>();
        texts.add(new String[] {"", Bundle.results_deg(), Bundle.results_minutes(), Bundle.results_mm(), Bundle.results_in(), Bundle.results_u()});
        List<FigureLine> lines = lines(measured, units);
        lines.forEach(l -> texts.add(new String[] {l.name(), l.decimal(), l.minutes(), l.mm(), l.inches(), l.uncertainty()}));
        boolean[] used = new boolean[texts.get(0).length];
        for (int column = 0; column < used.length; column++) {
            int at = column;
            used[column] = texts.stream().skip(1).anyMatch(t -> !t[at].equals(FigureLine.NOTHING));
        }
        for (int i = 0; i < texts.size(); i++) {
            row(table, i, i == 0 || lines.get(i - 1).isRecorded() ? Font.BOLD : Font.PLAIN, texts.get(i), used);
        }
        return table;
    }

    private static List<FigureLine> lines(Measured measured, UnitPreferences units) {
        boolean curve = measured.outcome().curve().isPresent();
        List<FigureLine> lines = new ArrayList<>();
        for (int i = 0; i < measured.outcome().results().size(); i++) {
            Outcome.Result result = measured.outcome().results().get(i);
            lines.add(FigureLine.of(result, measured.standardUncertainty().get(i), units, curve || result.reading().isPresent()));
        }
        return lines;
    }

    /** A row; what no result has, such as millimetres of a caster, has no column. */
    private static void row(JPanel table, int row, int style, String[] texts, boolean[] used) {
        for (int i = 0; i < texts.length; i++) {
            if (!used[i]) {
                continue;
            }
            JLabel label = Looks.label(texts[i], 1, style);
            GridBagConstraints cell = Looks.cell(i, row, i == 0 ? 1 : 0);
            cell.insets.top = 0;
            cell.insets.bottom = 0;
            cell.insets.right = Looks.em(i == texts.length - 1 ? 0 : 0.35);
            if (i > 0) {
                label.setHorizontalAlignment(SwingConstants.RIGHT);
                cell.anchor = GridBagConstraints.BASELINE_TRAILING;
            }
            table.add(label, cell);
        }
    }

    private static JPanel remarks(List<Outcome.Remark> remarks) {
        List<Component> lines = new ArrayList<>();
        List<Outcome.Remark> gravestFirst = Stream.concat(remarks.stream().filter(r -> r.kind() == Outcome.Remark.Kind.WARNING),
                remarks.stream().filter(r -> r.kind() != Outcome.Remark.Kind.WARNING)).toList();
        for (Outcome.Remark remark : gravestFirst) {
            lines.add(line(remark.kind() == Outcome.Remark.Kind.WARNING ? Mark.AGAIN : Mark.OPEN, Texts.sentence(remark.words()) + ".",
                    remark.kind() == Outcome.Remark.Kind.HINT ? Font.PLAIN : Font.BOLD));
        }
        lines.add(new WrapText(Bundle.results_recorded()));
        return Looks.column(lines.toArray(Component[]::new));
    }

    /** A sentence with its mark. */
    static JPanel line(Mark shape, String words, int style) {
        JPanel line = new JPanel(new BorderLayout(Looks.em(0.4), 0));
        line.setOpaque(false);
        line.setBorder(Looks.padding(0.1, 0));
        JLabel mark = new JLabel(shape.icon());
        mark.setVerticalAlignment(SwingConstants.TOP);
        line.add(mark, BorderLayout.LINE_START);
        line.add(new WrapText(words, 1, style), BorderLayout.CENTER);
        return line;
    }
}
