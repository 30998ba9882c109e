package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictWords;
import quoin.workflow.Comparison;

/** Every reading beside its signed value, with the difference, its noise and what that says. */
@Messages({
    "compare.reading=Reading", "compare.signed=Signed", "compare.now=Now", "compare.difference=Difference", "compare.noise=Noise",
    "compare.word=In words",
    "compare.same=same", "compare.moved=moved", "compare.tooClose=too close to call", "compare.notRead=not read since",
    "# {0} - noise", "compare.plusMinus=± {0}"})
final class ComparisonTable extends JPanel {

    private static final long serialVersionUID = 1L;

    ComparisonTable() {
        super(new BorderLayout());
    }

    void show(List<Comparison> comparisons, ReadingFormat format) {
        removeAll();
        JPanel table = new JPanel(new GridBagLayout());
        addRow(table, 0, Font.BOLD, Bundle.compare_reading(), Bundle.compare_signed(), Bundle.compare_now(), Bundle.compare_difference(),
                Bundle.compare_noise());
        table.add(Looks.label(Bundle.compare_word(), 1, Font.BOLD), Looks.cell(5, 0, 1));
        int row = 1;
        for (Comparison line : comparisons) {
            addRow(table, row, Font.PLAIN, format.nameWithUnit(line.reading()), number(line.signed(), line, format), number(line.now(), line, format),
                    line.difference().isPresent() ? format.changeNumber(line.reading(), line.difference().getAsDouble()) : "–",
                    Bundle.compare_plusMinus(format.number(line.reading(), line.noise())));
            VerdictWords words = words(line);
            JLabel word = Looks.label(words.word(), 1.05, line.word() == Comparison.Word.MOVED ? Font.BOLD : Font.PLAIN);
            word.setIcon(words.mark().icon());
            table.add(word, Looks.cell(5, row, 1));
            row++;
        }
        add(table, BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    private static String number(OptionalDouble value, Comparison line, ReadingFormat format) {
        return value.isPresent() ? format.number(line.reading(), value.getAsDouble()) : "–";
    }

    private static void addRow(JPanel table, int row, int style, String... texts) {
        for (int i = 0; i < texts.length; i++) {
            table.add(Looks.label(texts[i], 1.05, style), Looks.cell(i, row, 0));
        }
    }

    /** The word with its shape. */
    static VerdictWords words(Comparison line) {
        return switch (line.word()) {
            case SAME -> new VerdictWords(Mark.INSIDE, Bundle.compare_same());
            case MOVED -> new VerdictWords(line.difference().orElse(0) > 0 ? Mark.ABOVE : Mark.BELOW, Bundle.compare_moved());
            case TOO_CLOSE -> new VerdictWords(Mark.CLOSE, Bundle.compare_tooClose());
            case NOT_READ -> new VerdictWords(Mark.NONE, Bundle.compare_notRead());
        };
    }
}
