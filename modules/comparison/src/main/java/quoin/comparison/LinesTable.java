package quoin.comparison;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableModel;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.PlainTableRenderer;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictWords;
import quoin.workflow.StateComparison;

/** The readings of two states line by line; the arrow keys go through them. */
@Messages({
    "table.name=Readings compared", "table.reading=Reading", "table.from=First", "table.to=Second",
    "table.difference=Difference", "table.word=In words"})
final class LinesTable extends JTable {

    private static final long serialVersionUID = 1L;
    private static final int WORD = 4;

    LinesTable() {
        super(model());
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        PlainTableRenderer.in(this);
        setName("comparison.lines");
        getAccessibleContext().setAccessibleName(Bundle.table_name());
        getTableHeader().setReorderingAllowed(false);
        setFillsViewportHeight(true);
        setPreferredScrollableViewportSize(new Dimension(Looks.em(34), Looks.em(24)));
        setShowVerticalLines(false);
        setRowHeight(Looks.em(1.7));
        setFont(Looks.font(1.05, Font.PLAIN));
        PlainTableRenderer right = new PlainTableRenderer();
        right.setHorizontalAlignment(SwingConstants.RIGHT);
        for (int column = 1; column < WORD; column++) {
            getColumnModel().getColumn(column).setCellRenderer(right);
        }
        getColumnModel().getColumn(WORD).setCellRenderer(new Word());
        double[] widths = {12.8, 5.7, 5.7, 6.8, 9};
        for (int i = 0; i < widths.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(Looks.em(widths[i]));
        }
    }

    /** Where the window leaves less than the texts need, the table is moved sideways instead of being cut. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getMinimumSize().width;
    }

    private static DefaultTableModel model() {
        String[] heads = {Bundle.table_reading(), Bundle.table_from(), Bundle.table_to(), Bundle.table_difference(), Bundle.table_word()};
        return new DefaultTableModel(heads, 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
    }

    /** @param heads of the two states and of their difference */
    void show(List<StateComparison.Line> lines, List<String> heads, ReadingFormat format) {
        for (int i = 0; i < heads.size(); i++) {
            getColumnModel().getColumn(i + 1).setHeaderValue(heads.get(i));
        }
        getTableHeader().repaint();
        DefaultTableModel model = (DefaultTableModel) getModel();
        int selected = getSelectedRow();
        model.setRowCount(0);
        for (StateComparison.Line line : lines) {
            model.addRow(new Object[] {format.nameWithUnit(line.reading()), ComparisonWords.value(line.from(), line.reading(), format),
                ComparisonWords.value(line.to(), line.reading(), format), ComparisonWords.difference(line, format), ComparisonWords.word(line)});
        }
        PlainTableRenderer.fit(this);
        if (!lines.isEmpty()) {
            int row = Math.max(0, Math.min(selected, lines.size() - 1));
            setRowSelectionInterval(row, row);
        }
    }

    private static final class Word extends PlainTableRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            VerdictWords words = (VerdictWords) value;
            JLabel label = (JLabel) super.getTableCellRendererComponent(table, words.word(), selected, focused, row, column);
            label.setIcon(words.mark() == Mark.NONE ? null : words.mark().icon(0.9));
            return label;
        }
    }
}
