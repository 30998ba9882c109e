package quoin.workbench;

import java.awt.Component;
import java.awt.FontMetrics;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;

/** The head of a column as the table draws it, in two lines where one is wider than what stands under it. */
final class TwoLineHead implements TableCellRenderer {

    private final int roomPx;

    /** @param roomPx width of the widest cell of the column */
    TwoLineHead(int roomPx) {
        this.roomPx = roomPx;
    }

    @Override
    public Component getTableCellRendererComponent(JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        TableCellRenderer usual = table.getTableHeader().getDefaultRenderer();
        String words = String.valueOf(value);
        FontMetrics letters = table.getTableHeader().getFontMetrics(table.getTableHeader().getFont());
        String[] lines = broken(words, letters);
        boolean wraps = lines.length > 1 && usual instanceof JComponent && letters.stringWidth(words) > roomPx;
        if (usual instanceof JComponent head) {
            if (wraps) {
                InertText.laidOut(head);
            } else {
                InertText.in(head);
            }
        }
        return usual.getTableCellRendererComponent(table, wraps ? InertText.inLines(lines) : words, selected, focused, row, column);
    }

    /** Broken at the gap between words that leaves the wider line narrowest. */
    private static String[] broken(String words, FontMetrics letters) {
        String[] best = {words};
        int narrowest = Integer.MAX_VALUE;
        for (int gap = words.indexOf(' '); gap > 0; gap = words.indexOf(' ', gap + 1)) {
            int wider = Math.max(letters.stringWidth(words.substring(0, gap)), letters.stringWidth(words.substring(gap + 1)));
            if (wider < narrowest) {
                narrowest = wider;
                best = new String[] {words.substring(0, gap), words.substring(gap + 1)};
            }
        }
        return best;
    }
}
