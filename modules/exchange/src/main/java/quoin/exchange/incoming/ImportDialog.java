package quoin.exchange.incoming;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.ReadingFormat;
import quoin.workbench.Waiting;
import quoin.workbench.WrapText;

/** Shows the columns of a table, asks what each is, and shows what would be recorded. */
@Messages({
    "import.title=Readings from a table",
    "import.why=Say what each column is. Below stands what will be recorded; nothing is recorded before you press Record.",
    "import.record=Record", "import.cancel=Cancel", "import.ignored=leave out", "import.preview=What will be recorded",
    "import.NAME=what was read", "import.PLACE=where", "import.VALUE=the figure", "import.UNIT=its unit",
    "import.TOGETHER=number of the settling", "import.RECORD=kind of row: only \"reading\" is taken",
    "# {0} - column", "# {1} - heading", "# {2} - examples", "import.column={0}: {1}   ({2})",
    "# {0} - figures", "# {1} - settlings", "import.count={0} figures in {1} settlings:",
    "import.understanding=Reading the table...",
    "import.problems=Not taken:", "# {0} - number", "# {1} - figures", "import.setting={0}. {1}",
    "# {0} - how many", "import.more=and {0} more"})
public final class ImportDialog {

    private static final int MOST_PROBLEMS = 12;
    private static final int MOST_SETTINGS = 40;

    private final ReadingTable table;
    private final ReadingFormat format;
    private final List<JComboBox<ColumnUse>> choices = new ArrayList<>();
    private final JTextArea preview = new JTextArea(12, 70);
    private final DialogDescriptor dialog;
    private ReadingTable.Understood understood;

    public ImportDialog(ReadingTable table, ReadingFormat format) {
        this.table = table;
        this.format = format;
        preview.setEditable(false);
        preview.setLineWrap(true);
        preview.setWrapStyleWord(true);
        preview.getAccessibleContext().setAccessibleName(Bundle.import_preview());
        this.dialog = new DialogDescriptor(content(), Bundle.import_title(), true, new Object[] {Bundle.import_record(), Bundle.import_cancel()},
                Bundle.import_record(), DialogDescriptor.DEFAULT_ALIGN, null, null);
        refresh();
    }

    /** Asks; empty where it was cancelled. */
    public Optional<List<Map<ReadingId, Double>>> ask() {
        return DialogDisplayer.getDefault().notify(dialog) == Bundle.import_record() ? Optional.of(understood.settings()) : Optional.empty();
    }

    private Component content() {
        JPanel columns = new JPanel(new GridBagLayout());
        List<ColumnUse> guessed = table.guess();
        List<String> headings = table.headings();
        for (int i = 0; i < headings.size(); i++) {
            JLabel label = new JLabel(Bundle.import_column(Integer.toString(i + 1), headings.get(i), table.sample(i)));
            label.putClientProperty("html.disable", true);
            label.setMinimumSize(new Dimension(0, label.getPreferredSize().height));
            JComboBox<ColumnUse> choice = new JComboBox<>(uses().toArray(new ColumnUse[0]));
            choice.setRenderer(new Words());
            choice.setSelectedItem(guessed.get(i));
            choice.getAccessibleContext().setAccessibleName(label.getText());
            label.setLabelFor(choice);
            choice.addActionListener(e -> refresh());
            choices.add(choice);
            columns.add(choice, Looks.cell(0, i, 0));
            columns.add(label, Looks.cell(1, i, 1));
        }
        JPanel top = new JPanel(new BorderLayout());
        top.add(columns, BorderLayout.NORTH);
        JScrollPane scroll = new JScrollPane(top, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setPreferredSize(new Dimension(Looks.em(58), Looks.em(16)));
        JPanel all = new JPanel(new BorderLayout(0, Looks.em(0.6)));
        all.add(new WrapText(Bundle.import_why()), BorderLayout.NORTH);
        all.add(scroll, BorderLayout.CENTER);
        all.add(Looks.section(Bundle.import_preview(), new JScrollPane(preview)), BorderLayout.SOUTH);
        all.setBorder(Looks.padding(0.8, 1));
        return all;
    }

    private List<ColumnUse> uses() {
        List<ColumnUse> uses = new ArrayList<>();
        uses.add(ColumnUse.IGNORED);
        for (ColumnUse.Role role : ColumnUse.Role.values()) {
            uses.add(new ColumnUse.Part(role));
        }
        table.readings().forEach(id -> uses.add(new ColumnUse.OneReading(id)));
        return uses;
    }

    private void refresh() {
        List<ColumnUse> uses = choices.stream().map(c -> (ColumnUse) c.getSelectedItem()).toList();
        understood = Waiting.until(Bundle.import_understanding(), watch -> table.read(uses))
                .orElseGet(() -> table.read(Collections.nCopies(uses.size(), ColumnUse.IGNORED)));
        List<String> lines = new ArrayList<>();
        if (understood.figures() > 0) {
            lines.add(Bundle.import_count(Integer.toString(understood.figures()), Integer.toString(understood.settings().size())));
        }
        for (int i = 0; i < Math.min(MOST_SETTINGS, understood.settings().size()); i++) {
            lines.add(Bundle.import_setting(Integer.toString(i + 1), understood.settings().get(i).entrySet().stream()
                    .map(e -> e.getKey().words() + " " + format.text(e.getKey(), e.getValue())).collect(Collectors.joining(", "))));
        }
        more(lines, understood.settings().size() - MOST_SETTINGS);
        if (!understood.problems().isEmpty()) {
            lines.add(Bundle.import_problems());
            lines.addAll(understood.problems().subList(0, Math.min(MOST_PROBLEMS, understood.problems().size())));
            more(lines, understood.problems().size() - MOST_PROBLEMS);
        }
        preview.setText(String.join("\n", lines));
        preview.setCaretPosition(0);
        if (dialog != null) {
            dialog.setValid(understood.figures() > 0);
        }
    }

    private static void more(List<String> lines, int left) {
        if (left > 0) {
            lines.add(Bundle.import_more(Integer.toString(left)));
        }
    }

    private static String words(ColumnUse use) {
        if (use instanceof ColumnUse.OneReading one) {
            return one.reading().words();
        } else if (use instanceof ColumnUse.Part part) {
            return switch (part.role()) {
                case NAME -> Bundle.import_NAME();
                case PLACE -> Bundle.import_PLACE();
                case VALUE -> Bundle.import_VALUE();
                case UNIT -> Bundle.import_UNIT();
                case TOGETHER -> Bundle.import_TOGETHER();
                case RECORD -> Bundle.import_RECORD();
            };
        }
        return Bundle.import_ignored();
    }

    /** Shows a use in words. */
    private static final class Words extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, value == null ? "" : words((ColumnUse) value), index, selected, focused);
            putClientProperty("html.disable", true);
            return this;
        }
    }
}
