package quoin.application;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.plaf.basic.BasicHTML;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumnModel;

/**
 * Texts that do not fit: labels and buttons that got less room than they ask for, or that stick out of what they stand in.
 * What wraps and what scrolls takes the room it gets.
 */
final class Clipped {

    /** Fonts are measured in whole pixels. */
    private static final int ROUNDING = 1;
    private static final int ROWS = 40;

    private Clipped() {
    }

    /** One line for each text of a laid out window that cannot be read whole. */
    static List<String> in(Container window) {
        List<String> found = new ArrayList<>();
        collect(window, found);
        return found;
    }

    private static void collect(Component component, List<String> found) {
        if (!component.isVisible()) {
            return;
        }
        String text = text(component);
        if (!text.isBlank()) {
            Dimension wanted = component.getPreferredSize();
            if (wanted.width > component.getWidth() + ROUNDING || wanted.height > component.getHeight() + ROUNDING) {
                found.add(name(component, text) + " has " + component.getWidth() + "x" + component.getHeight() + ", needs "
                        + wanted.width + "x" + wanted.height);
            } else if (sticksOut(component)) {
                found.add(name(component, text) + " sticks out of what it stands in");
            }
        }
        if (component instanceof JTable table) {
            cells(table, found);
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                collect(child, found);
            }
        }
    }

    /** Cells and heads of a table whose text is wider than their column; what wraps in a cell does not ask for more. */
    private static void cells(JTable table, List<String> found) {
        TableColumnModel columns = table.getColumnModel();
        for (int column = 0; column < columns.getColumnCount(); column++) {
            int width = columns.getColumn(column).getWidth();
            if (table.getTableHeader() != null && table.getTableHeader().isShowing()) {
                TableCellRenderer renderer = columns.getColumn(column).getHeaderRenderer() == null
                        ? table.getTableHeader().getDefaultRenderer() : columns.getColumn(column).getHeaderRenderer();
                cell(renderer.getTableCellRendererComponent(table, columns.getColumn(column).getHeaderValue(), false, false, -1, column),
                        width, "head of a table", found);
            }
            for (int row = 0; row < Math.min(ROWS, table.getRowCount()); row++) {
                cell(table.prepareRenderer(table.getCellRenderer(row, column), row, column),
                        width - columns.getColumnMargin(), "cell of a table", found);
            }
        }
    }

    private static void cell(Component shown, int width, String what, List<String> found) {
        if (!text(shown).isBlank() && shown.getPreferredSize().width > width + ROUNDING) {
            found.add(what + " '" + text(shown) + "' has " + width + ", needs " + shown.getPreferredSize().width);
        }
    }

    /** The text of a label or button; empty for anything else, and where it wraps. */
    private static String text(Component component) {
        if (component instanceof JComponent part && part.getClientProperty(BasicHTML.propertyKey) != null) {
            return "";
        }
        String text = component instanceof JLabel label ? label.getText() : component instanceof AbstractButton button ? button.getText() : "";
        return text == null ? "" : text;
    }

    private static boolean sticksOut(Component component) {
        Rectangle at = component.getBounds();
        for (Container in = component.getParent(); in != null && !(in instanceof JViewport); in = in.getParent()) {
            if (at.x + at.width > in.getWidth() + ROUNDING || at.y + at.height > in.getHeight() + ROUNDING || at.x < -ROUNDING) {
                return true;
            }
            at.translate(in.getX(), in.getY());
            if (in.getParent() instanceof JViewport) {
                return false;
            }
        }
        return false;
    }

    private static String name(Component component, String text) {
        return component.getClass().getSimpleName().replaceAll("^$", "part of a window") + " '" + text + "'";
    }
}
