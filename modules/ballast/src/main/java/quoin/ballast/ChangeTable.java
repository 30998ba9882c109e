package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictLabel;
import quoin.workbench.VerdictWords;

/** Readings now, after a change, and the difference, each against its target. */
@Messages({"change.reading=Reading", "change.now=Now", "change.then=Then", "change.difference=Difference", "change.target=Target",
    "change.inside=inside", "# {0} - by", "change.outside=outside by {0}"})
final class ChangeTable extends JPanel {

    private static final long serialVersionUID = 1L;

    ChangeTable() {
        super(new BorderLayout());
    }

    void show(DaySnapshot day, Map<ReadingId, Double> now, Map<ReadingId, Double> then) {
        removeAll();
        JPanel table = new JPanel(new GridBagLayout());
        String[] heads = {Bundle.change_reading(), Bundle.change_now(), Bundle.change_then(), Bundle.change_difference(), Bundle.change_target()};
        for (int i = 0; i < heads.length; i++) {
            table.add(Looks.label(heads[i], 1, Font.BOLD), Looks.closeCell(i, 0, 0));
        }
        ReadingFormat format = day.format();
        int row = 1;
        for (Map.Entry<ReadingId, Double> line : now.entrySet()) {
            ReadingId id = line.getKey();
            double after = then.get(id);
            Optional<Target> target = day.status().reading(id).target();
            String[] texts = {format.nameWithUnit(id), format.number(id, line.getValue()), format.number(id, after),
                format.changeNumber(id, after - line.getValue()),
                target.map(t -> format.bandNumber(id, t.value(), t.tolerance())).orElse("–")};
            for (int i = 0; i < texts.length; i++) {
                table.add(Looks.label(texts[i], 1.05, i == 2 ? Font.BOLD : Font.PLAIN), Looks.closeCell(i, row, 0));
            }
            VerdictLabel verdict = new VerdictLabel();
            verdict.show(target.map(t -> words(id, after, t, format)).orElse(new VerdictWords(Mark.NONE, "")));
            table.add(verdict, Looks.closeCell(texts.length, row, 1));
            row++;
        }
        add(table, BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    private static VerdictWords words(ReadingId id, double value, Target target, ReadingFormat format) {
        if (target.contains(value)) {
            return new VerdictWords(Mark.INSIDE, Bundle.change_inside());
        }
        double off = value - target.value();
        return new VerdictWords(off > 0 ? Mark.ABOVE : Mark.BELOW, Bundle.change_outside(format.change(id, off)));
    }
}
