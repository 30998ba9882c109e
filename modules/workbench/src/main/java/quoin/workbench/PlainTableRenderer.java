package quoin.workbench;

import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** A cell of a table whose text is shown as it is written, see {@link InertText}. */
public class PlainTableRenderer extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    public PlainTableRenderer() {
        InertText.in(this);
    }

    /** Lets every cell of a table that has no renderer of its own be drawn by one of these, and every heading as plainly. */
    public static void in(JTable table) {
        table.setDefaultRenderer(Object.class, new PlainTableRenderer());
        if (table.getTableHeader().getDefaultRenderer() instanceof JComponent heading) {
            InertText.in(heading);
        }
    }
}
