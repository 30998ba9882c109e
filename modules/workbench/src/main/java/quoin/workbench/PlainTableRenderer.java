package quoin.workbench;

import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/** A cell of a table whose text is shown as it is written, see {@link InertText}. */
public class PlainTableRenderer extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;
    /** More are not looked at for a width. */
    private static final int ROWS = 60;

    public PlainTableRenderer() {
        InertText.in(this);
    }

    /** Shares the width of a table as its texts need it; a head wider than what stands under it takes two lines. No column gets narrower. */
    public static void fit(JTable table) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            TableColumn shown = table.getColumnModel().getColumn(column);
            int width = 0;
            for (int row = 0; row < Math.min(ROWS, table.getRowCount()); row++) {
                width = Math.max(width, table.prepareRenderer(table.getCellRenderer(row, column), row, column).getPreferredSize().width);
            }
            TwoLineHead head = new TwoLineHead(width);
            shown.setHeaderRenderer(head);
            width = Math.max(width, head.getTableCellRendererComponent(table, shown.getHeaderValue(), false, false, -1, column)
                    .getPreferredSize().width);
            width += table.getColumnModel().getColumnMargin() + 1;
            shown.setMinWidth(Math.min(width, shown.getMaxWidth()));
            shown.setPreferredWidth(width);
        }
        table.getTableHeader().revalidate();
    }

    /** Lets every cell of a table that has no renderer of its own be drawn by one of these, and every heading as plainly. */
    public static void in(JTable table) {
        table.setDefaultRenderer(Object.class, new PlainTableRenderer());
        if (table.getTableHeader().getDefaultRenderer() instanceof JComponent heading) {
            InertText.in(heading);
        }
    }
}
