package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictLabel;
import quoin.workbench.VerdictWords;
import quoin.workflow.Comparison;
import quoin.workflow.Difference;
import quoin.workflow.Measured;

/** Every reading beside its signed value, with the difference, its noise and what that says. */
@Messages({
    "compare.reading=Reading", "compare.signed=Signed", "compare.now=Now", "compare.difference=Difference",
    "compare.word=Verdict",
    "compare.same=same", "compare.moved=moved", "compare.tooClose=too close", "compare.notRead=not read",
    "# {0} - difference", "# {1} - noise", "compare.withNoise={0} ± {1}"})
final class ComparisonTable extends JPanel {

    private static final long serialVersionUID = 1L;

    ComparisonTable() {
        super(new BorderLayout());
    }

    void show(List<Comparison> comparisons, ReadingFormat format) {
        removeAll();
        JPanel table = new JPanel(new GridBagLayout());
        addRow(table, 0, Font.BOLD, Bundle.compare_reading(), Bundle.compare_signed(), Bundle.compare_now(), Bundle.compare_difference());
        table.add(Looks.label(Bundle.compare_word(), 1, Font.BOLD), Looks.cell(4, 0, 1));
        int row = 1;
        for (Comparison line : comparisons) {
            addRow(table, row, Font.PLAIN, format.nameWithUnit(line.reading()), number(line.signed(), line, format), number(line.now(), line, format),
                    difference(line, format));
            VerdictWords words = words(line);
            VerdictLabel word = new VerdictLabel();
            word.show(words);
            table.add(word, Looks.cell(4, row, 1));
            row++;
        }
        add(table, BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    /** "+0.10 ± 0.15": how far it moved, and how much of that reading it twice would do as well. */
    private static String difference(Comparison line, ReadingFormat format) {
        return line.difference().map(d -> Bundle.compare_withNoise(format.changeNumber(line.reading(), d.amount()),
                format.number(line.reading(), d.band()))).orElse("–");
    }

    private static String number(Optional<Measured> value, Comparison line, ReadingFormat format) {
        return value.map(m -> format.number(line.reading(), m.value())).orElse("–");
    }

    private static void addRow(JPanel table, int row, int style, String... texts) {
        for (int i = 0; i < texts.length; i++) {
            table.add(Looks.label(texts[i], 1, style), Looks.cell(i, row, 0));
        }
    }

    /** The word with its shape. */
    static VerdictWords words(Comparison line) {
        return switch (line.word()) {
            case SAME -> new VerdictWords(Mark.INSIDE, Bundle.compare_same());
            case MOVED -> new VerdictWords(line.difference().map(Difference::amount).orElse(0.0) > 0 ? Mark.ABOVE : Mark.BELOW, Bundle.compare_moved());
            case TOO_CLOSE -> new VerdictWords(Mark.CLOSE, Bundle.compare_tooClose());
            case NOT_READ -> new VerdictWords(Mark.NONE, Bundle.compare_notRead());
        };
    }
}
