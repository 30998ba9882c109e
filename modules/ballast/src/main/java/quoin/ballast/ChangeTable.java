package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.util.Map;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.quantities.Texts;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictWords;

/** Readings now, after a change, and the difference, each against its target. */
@Messages({"change.reading=Reading", "change.now=Now", "change.then=Then", "change.difference=Difference", "change.target=Target",
    "change.inside=inside", "# {0} - by", "change.outside=off {0}"})
final class ChangeTable extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int LAST_FIGURES = 3;

    ChangeTable() {
        super(new BorderLayout());
    }

    /**
     * Shows the table.
     *
     * @param now  readings as they are; a height that was not read is 0 and shows its difference only
     * @param then the same readings after the change
     */
    void show(DaySnapshot day, Map<ReadingId, Double> now, Map<ReadingId, Double> then) {
        removeAll();
        JPanel table = new JPanel(new GridBagLayout());
        String[] heads = {Bundle.change_reading(), Bundle.change_now(), Bundle.change_then(), Bundle.change_difference(), Bundle.change_target()};
        for (int i = 0; i < heads.length; i++) {
            table.add(Looks.label(heads[i], 1, Font.BOLD), column(i, 0));
        }
        ReadingFormat format = day.format();
        int row = 1;
        for (Map.Entry<ReadingId, Double> line : now.entrySet()) {
            ReadingId id = line.getKey();
            double after = then.get(id);
            boolean read = day.status().reading(id).value().isPresent();
            Optional<Target> target = day.status().reading(id).target();
            String[] texts = {Texts.sentence(format.nameWithUnit(id)), read ? format.number(id, line.getValue()) : "–", read ? format.number(id, after) : "–",
                format.changeNumber(id, after - line.getValue()),
                target.map(t -> format.bandNumber(id, t.value(), t.tolerance())).orElse("")};
            for (int i = 0; i < texts.length; i++) {
                table.add(Looks.label(texts[i], 1, i == 2 ? Font.BOLD : Font.PLAIN), column(i, row));
            }
            JLabel verdict = Looks.label("", 1, Font.PLAIN);
            target.filter(t -> read).map(t -> words(id, after, t, format)).ifPresent(v -> {
                verdict.setIcon(v.mark().icon());
                verdict.setText(v.word());
            });
            table.add(verdict, Looks.closeCell(texts.length, row, 1));
            row++;
        }
        add(table, BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    /** Figures stand with their last digits one under the other. */
    private static GridBagConstraints column(int column, int row) {
        GridBagConstraints cell = Looks.closeCell(column, row, 0);
        boolean figures = column >= 1 && column <= LAST_FIGURES;
        cell.anchor = figures ? GridBagConstraints.BASELINE_TRAILING : GridBagConstraints.BASELINE_LEADING;
        cell.insets.left = Looks.em(column == 0 ? 0.1 : 0.25);
        return cell;
    }

    private static VerdictWords words(ReadingId id, double value, Target target, ReadingFormat format) {
        if (target.contains(value)) {
            return new VerdictWords(Mark.INSIDE, Bundle.change_inside());
        }
        double off = value - target.value();
        return new VerdictWords(off > 0 ? Mark.ABOVE : Mark.BELOW, Bundle.change_outside(format.changeNumber(id, off)));
    }
}
