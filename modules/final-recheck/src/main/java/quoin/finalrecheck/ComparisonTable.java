package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictWords;
import quoin.workbench.WrapText;
import quoin.workflow.Comparison;
import quoin.workflow.Difference;
import quoin.workflow.Measured;

/** Every reading beside its signed value, with the difference, its noise band, what that says, and why it moved. */
@Messages({
    "compare.reading=Reading", "compare.signed=Signed", "compare.now=Now", "compare.difference=Difference",
    "compare.word=Verdict",
    "compare.same=same", "compare.moved=moved", "compare.tooClose=too close", "compare.notRead=not read",
    "compare.standing=as signed",
    "compare.legend=± is the noise band: an unchanged car reads within it 19 times in 20.",
    "# {0} - difference", "# {1} - noise", "compare.withNoise={0} ± {1}"})
final class ComparisonTable extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int COLUMNS = 5;
    /** Small enough for five columns in half of a narrow window. */
    private static final double SIZE = 0.9;

    ComparisonTable() {
        super(new BorderLayout(0, Looks.em(0.3)));
    }

    /**
     * @param why reason per reading, in words; none while they are being worked out
     */
    void show(List<Comparison> comparisons, Map<ReadingId, String> why, ReadingFormat format) {
        removeAll();
        JPanel table = new JPanel(new GridBagLayout());
        addRow(table, 0, Font.BOLD, Bundle.compare_reading(), Bundle.compare_signed(), Bundle.compare_now(), Bundle.compare_difference());
        table.add(Looks.label(Bundle.compare_word(), 1, Font.BOLD), Looks.closeCell(4, 0, 1));
        int row = 1;
        for (Comparison line : comparisons) {
            addRow(table, row, Font.PLAIN, format.nameWithUnit(line.reading()), number(line.signed(), line, format), number(line.now(), line, format),
                    difference(line, format));
            VerdictWords said = words(line);
            JLabel word = Looks.label(said.word(), SIZE, Font.PLAIN);
            word.setIcon(said.mark().icon(SIZE));
            table.add(word, Looks.closeCell(4, row++, 1));
            String reason = why.getOrDefault(line.reading(), "");
            if (!reason.isEmpty()) {
                table.add(new WrapText(reason, SIZE, Font.ITALIC), new GridBagConstraints(0, row++, COLUMNS, 1, 1, 0,
                        GridBagConstraints.BASELINE_LEADING, GridBagConstraints.HORIZONTAL, new Insets(0, Looks.em(1.4), Looks.em(0.3), 0), 0, 0));
            }
        }
        add(new WrapText(Bundle.compare_legend(), 0.95, Font.PLAIN), BorderLayout.NORTH);
        add(table, BorderLayout.CENTER);
        revalidate();
        repaint();
    }

    /** "+0.10 ± 0.15": how far it moved, and how far reading an unchanged car again could bring it. */
    private static String difference(Comparison line, ReadingFormat format) {
        return line.isStanding() ? "–" : line.difference().map(d -> Bundle.compare_withNoise(format.changeNumber(line.reading(), d.amount()),
                format.number(line.reading(), d.band()))).orElse("–");
    }

    private static String number(Optional<Measured> value, Comparison line, ReadingFormat format) {
        return value.map(m -> format.number(line.reading(), m.value())).orElse("–");
    }

    private static void addRow(JPanel table, int row, int style, String... texts) {
        for (int i = 0; i < texts.length; i++) {
            table.add(Looks.label(texts[i], SIZE, style), Looks.closeCell(i, row, 0));
        }
    }

    /** The word with its shape. */
    static VerdictWords words(Comparison line) {
        if (line.isStanding()) {
            return new VerdictWords(Mark.SIGNED, Bundle.compare_standing());
        }
        return switch (line.word()) {
            case SAME -> new VerdictWords(Mark.INSIDE, Bundle.compare_same());
            case MOVED -> new VerdictWords(line.difference().map(Difference::amount).orElse(0.0) > 0 ? Mark.ABOVE : Mark.BELOW, Bundle.compare_moved());
            case TOO_CLOSE -> new VerdictWords(Mark.CLOSE, Bundle.compare_tooClose());
            case NOT_READ -> new VerdictWords(Mark.NONE, Bundle.compare_notRead());
        };
    }
}
