package quoin.setupsheet;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** The blank sheet on the screen: Enter goes from figure to figure in the order of the paper and records from the last. */
@Messages({"typeIn.title=Type in a sheet", "typeIn.record=&Record", "typeIn.cancel=Cancel",
    "typeIn.why=In the order of the paper: Enter goes to the next figure and records from the last. Leave out what was not read.",
    "typeIn.whole=Elsewhere", "typeIn.notes=Notes", "# {0} - figure", "# {1} - unit", "typeIn.field={0}, {1}"})
final class SheetEntryDialog {

    private final CurrentDay current;
    private final DaySnapshot snapshot;
    private final SheetEntry sheet;
    private final Map<ReadingId, JTextField> fields = new LinkedHashMap<>();
    private final JTextField notes = Looks.field(40, 1, Font.PLAIN);
    private final WrapText message = new WrapText(Bundle.typeIn_why());
    private final JButton record = new JButton();

    SheetEntryDialog(CurrentDay current, DaySnapshot snapshot) {
        this.current = current;
        this.snapshot = snapshot;
        this.sheet = new SheetEntry(snapshot);
        Mnemonics.setLocalizedText(record, Bundle.typeIn_record());
    }

    void show() {
        JPanel corners = new JPanel(new GridLayout(2, 2, Looks.em(1), Looks.em(0.4)));
        for (Corner corner : Corner.values()) {
            corners.add(Looks.section(corner.words(), column(sheet.at(corner), corner)));
        }
        List<JComponent> parts = new ArrayList<>(List.of(corners));
        if (!sheet.others().isEmpty()) {
            parts.add(Looks.section(Bundle.typeIn_whole(), column(sheet.others(), null)));
        }
        notes.getAccessibleContext().setAccessibleName(Bundle.typeIn_notes());
        parts.add(Looks.section(Bundle.typeIn_notes(), notes));
        JPanel all = Looks.column(parts.toArray(new JComponent[0]));
        JScrollPane scroll = new JScrollPane(all, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setPreferredSize(new Dimension(Math.max(Looks.em(52), all.getPreferredSize().width + Looks.em(2)),
                Math.min(Looks.em(38), all.getPreferredSize().height + Looks.em(1))));
        JPanel content = new JPanel(new BorderLayout(0, Looks.em(0.5)));
        content.add(scroll, BorderLayout.CENTER);
        content.add(message, BorderLayout.SOUTH);
        content.setBorder(Looks.padding(0.5, 0.8));
        DialogDescriptor dialog = new DialogDescriptor(content, Bundle.typeIn_title(), true,
                new Object[] {record, Bundle.typeIn_cancel()}, null, DialogDescriptor.DEFAULT_ALIGN, null, null);
        dialog.setClosingOptions(new Object[] {Bundle.typeIn_cancel()});
        record.addActionListener(e -> record());
        order();
        DialogDisplayer.getDefault().notify(dialog);
    }

    private JComponent column(List<ReadingId> readings, Corner corner) {
        JPanel rows = new JPanel(new GridBagLayout());
        for (int i = 0; i < readings.size(); i++) {
            ReadingId id = readings.get(i);
            JTextField field = Looks.field(8, 1.1, Font.PLAIN);
            JLabel label = new JLabel(Bundle.typeIn_field(corner == null ? id.words() : id.kind().words(), snapshot.format().unit(id)));
            label.setLabelFor(field);
            field.getAccessibleContext().setAccessibleName(Bundle.typeIn_field(id.words(), snapshot.format().unit(id)));
            rows.add(label, Looks.cell(0, i, 1));
            rows.add(field, Looks.cell(1, i, 0));
            fields.put(id, field);
        }
        JPanel top = new JPanel(new BorderLayout());
        top.add(rows, BorderLayout.NORTH);
        return top;
    }

    /** Enter goes on; the first field has the caret at the start. */
    private void order() {
        List<JTextField> order = new ArrayList<>();
        sheet.readings().forEach(id -> order.add(fields.get(id)));
        order.add(notes);
        for (int i = 0; i < order.size(); i++) {
            JTextField next = i + 1 < order.size() ? order.get(i + 1) : null;
            order.get(i).addActionListener(e -> {
                if (next == null) {
                    record();
                } else {
                    next.requestFocusInWindow();
                    Looks.reveal(next);
                }
            });
        }
        SwingUtilities.invokeLater(order.get(0)::requestFocusInWindow);
    }

    /** What is wrong is said and stays in its field; nothing is recorded before everything can be read. */
    private void record() {
        List<String> texts = sheet.readings().stream().map(id -> fields.get(id).getText()).toList();
        List<String> problems = sheet.problems(texts, notes.getText());
        if (!problems.isEmpty()) {
            message.setText(String.join(" ", problems));
            return;
        }
        for (Entry entry : sheet.entries(texts, notes.getText())) {
            if (!current.record(entry.header().stage(), entry::withHeader)) {
                return;
            }
        }
        SwingUtilities.getWindowAncestor(notes).setVisible(false);
    }
}
