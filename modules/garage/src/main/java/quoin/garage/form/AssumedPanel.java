package quoin.garage.form;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableModel;
import org.openide.util.NbBundle.Messages;
import quoin.garage.draft.Assumed;
import quoin.workbench.Looks;
import quoin.workbench.PlainTableRenderer;
import quoin.workbench.WrapText;

/** Every value that is used because none was typed, with the rule; Enter goes to the field. */
@Messages({
    "assumed.title=Assumed values",
    "assumed.intro=Each of these is used because its field is blank, and is marked as assumed wherever it enters a figure. The readings of the day correct what they show to be wrong. Enter goes to the field.",
    "assumed.nothing=Nothing is assumed: everything is known.",
    "assumed.notYet=Shown as soon as nothing keeps the car from being saved.",
    "assumed.what=What",
    "assumed.value=Assumed",
    "assumed.rule=Rule"})
final class AssumedPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    AssumedPanel(List<Assumed> assumed, Consumer<Assumed> jump) {
        super(new BorderLayout());
        JPanel head = Looks.column(Looks.label(Bundle.assumed_title(), 1.5, Font.BOLD),
                new WrapText(assumed.isEmpty() ? Bundle.assumed_nothing() : Bundle.assumed_intro()));
        head.setBorder(Looks.padding(0.6, 0.9));
        add(head, BorderLayout.NORTH);
        if (assumed.isEmpty()) {
            return;
        }
        DefaultTableModel model = new DefaultTableModel(
                new Object[] {Bundle.assumed_what(), Bundle.assumed_value(), Bundle.assumed_rule()}, 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
        assumed.forEach(a -> model.addRow(new Object[] {a.field(), a.value(), a.rule()}));
        JTable table = new JTable(model);
        PlainTableRenderer.in(table);
        table.setRowHeight(Looks.em(1.9));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getColumnModel().getColumn(0).setPreferredWidth(Looks.em(16));
        table.getColumnModel().getColumn(1).setPreferredWidth(Looks.em(9));
        table.getColumnModel().getColumn(2).setPreferredWidth(Looks.em(32));
        table.getAccessibleContext().setAccessibleName(Bundle.assumed_title());
        Looks.onKey(table, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "jump", () -> {
            if (table.getSelectedRow() >= 0) {
                jump.accept(assumed.get(table.getSelectedRow()));
            }
        });
        add(new JScrollPane(table), BorderLayout.CENTER);
    }
}
