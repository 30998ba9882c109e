package quoin.comparison;

import java.awt.Font;
import java.util.List;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableModel;
import quoin.workbench.Looks;
import quoin.workbench.PlainTableRenderer;

/** A table of texts that is only read; the arrow keys go through it. */
final class PlainTable extends JTable {

    private static final long serialVersionUID = 1L;

    PlainTable(String spoken, List<String> heads) {
        super(new DefaultTableModel(heads.toArray(), 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        });
        PlainTableRenderer.in(this);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getAccessibleContext().setAccessibleName(spoken);
        getTableHeader().setReorderingAllowed(false);
        setFillsViewportHeight(true);
        setShowVerticalLines(false);
        setRowHeight(Looks.em(1.7));
        setFont(Looks.font(1.05, Font.PLAIN));
    }

    /** Widths of the columns to begin with, em; what is left over is shared in proportion. */
    void widths(double... em) {
        for (int i = 0; i < em.length && i < getColumnCount(); i++) {
            getColumnModel().getColumn(i).setPreferredWidth(Looks.em(em[i]));
        }
    }

    /** New heads where the columns change, and the rows. */
    void show(List<String> heads, List<? extends List<String>> rows) {
        DefaultTableModel model = (DefaultTableModel) getModel();
        int selected = getSelectedRow();
        model.setDataVector(rows.stream().map(r -> r.toArray(String[]::new)).toArray(String[][]::new), heads.toArray());
        if (selected >= 0 && selected < rows.size()) {
            setRowSelectionInterval(selected, selected);
        }
    }

    void show(List<? extends List<String>> rows) {
        DefaultTableModel model = (DefaultTableModel) getModel();
        int selected = getSelectedRow();
        model.setRowCount(0);
        rows.forEach(r -> model.addRow(r.toArray()));
        if (selected >= 0 && selected < rows.size()) {
            setRowSelectionInterval(selected, selected);
        }
    }
}
