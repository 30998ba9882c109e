package quoin.garage.form;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.garage.draft.Field;
import quoin.garage.draft.FieldTable;
import quoin.garage.draft.Section;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** One page of the form on the screen. */
@Messages({
    "page.copyLeft=Copy &left to right",
    "page.addPoint=&Add a point",
    "page.addMass=&Add a mass",
    "page.remove=Remove",
    "# {0} - what", "page.removeNamed=Remove {0}",
    "# {0} - label", "# {1} - unit", "page.unit={0} ({1})"})
final class PagePanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient CarForm form;
    private final transient List<FieldEditor> editors = new ArrayList<>();

    PagePanel(CarForm form, Section section) {
        super(new BorderLayout());
        this.form = form;
        List<JPanel> parts = new ArrayList<>();
        JPanel head = Looks.column(Looks.label(section.title(), 1.5, Font.BOLD), new WrapText(section.intro()));
        head.setBorder(Looks.padding(0.6, 0.9));
        parts.add(head);
        for (FieldTable table : section.tables()) {
            JPanel grid = leftOf(grid(table));
            parts.add(table.title().isEmpty() ? framed(grid) : Looks.section(table.title(), grid));
        }
        if (!section.extras().isEmpty()) {
            parts.add(extras(section));
        }
        add(Looks.column(parts.toArray(JPanel[]::new)), BorderLayout.NORTH);
    }

    private static JPanel framed(JPanel grid) {
        grid.setBorder(Looks.padding(0.6, 0.9));
        return grid;
    }

    private static JPanel leftOf(JPanel grid) {
        JPanel line = new JPanel(new BorderLayout());
        line.add(grid, BorderLayout.LINE_START);
        return line;
    }

    private JPanel grid(FieldTable table) {
        JPanel grid = new JPanel(new GridBagLayout());
        boolean rowLabels = table.rows().stream().anyMatch(r -> !r.label().isEmpty());
        boolean unitsOnTop = table.rows().stream().anyMatch(r -> r.label().isEmpty());
        int first = rowLabels ? 1 : 0;
        for (int column = 0; column < table.columns().size(); column++) {
            String label = table.columns().get(column);
            grid.add(Looks.label(unitsOnTop ? withUnit(label, unitOfColumn(table, column)) : label, 1, Font.BOLD),
                    Looks.cell(first + column, 0, 0));
        }
        int line = 1;
        for (FieldTable.Row row : table.rows()) {
            row(grid, row, line++, rowLabels, unitsOnTop);
        }
        return grid;
    }

    private void row(JPanel grid, FieldTable.Row row, int line, boolean rowLabels, boolean unitsOnTop) {
        if (!row.label().isEmpty()) {
            String unit = unitsOnTop ? "" : row.cells().stream().flatMap(Optional::stream).map(Field::unit)
                    .filter(u -> !u.isEmpty()).findFirst().orElse("");
            grid.add(Looks.label(withUnit(row.label(), unit), 1, Font.PLAIN), Looks.cell(0, line, 0));
        }
        int column = rowLabels ? 1 : 0;
        for (Optional<Field> cell : row.cells()) {
            if (cell.isPresent()) {
                FieldEditor editor = form.editor(cell.get());
                editors.add(editor);
                GridBagConstraints at = Looks.cell(column, line, 0);
                at.fill = GridBagConstraints.HORIZONTAL;
                grid.add(editor.component(), at);
            }
            column++;
        }
        if (row.removes().isPresent()) {
            int number = row.removes().getAsInt();
            boolean point = row.cells().get(0).map(f -> f.path().startsWith("heightPoints.")).orElse(false);
            JButton remove = Looks.button(Bundle.page_remove(), () -> form.remove(point, number));
            remove.getAccessibleContext().setAccessibleName(Bundle.page_removeNamed(row.cells().get(0).map(Field::label).orElse("")));
            grid.add(remove, Looks.cell(column, line, 0));
        }
    }

    private static String unitOfColumn(FieldTable table, int column) {
        return table.rows().stream().filter(r -> column < r.cells().size()).flatMap(r -> r.cells().get(column).stream())
                .map(Field::unit).filter(u -> !u.isEmpty()).findFirst().orElse("");
    }

    private static String withUnit(String label, String unit) {
        return unit.isEmpty() ? label : Bundle.page_unit(label, unit);
    }

    private JPanel extras(Section section) {
        JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.9), Looks.em(0.4)));
        for (Section.Extra extra : section.extras()) {
            line.add(switch (extra) {
                case COPY_LEFT_TO_RIGHT -> Looks.button(Bundle.page_copyLeft(), form::copyLeftToRight);
                case ADD_HEIGHT_POINT -> Looks.button(Bundle.page_addPoint(), form::addPoint);
                case ADD_MASS -> Looks.button(Bundle.page_addMass(), form::addMass);
            });
        }
        return line;
    }

    List<FieldEditor> editors() {
        return editors;
    }

    /** Puts the caret into the first field. */
    void toFirstField() {
        editors.stream().findFirst().ifPresent(e -> e.component().requestFocusInWindow());
    }

    boolean toField(String path) {
        Optional<FieldEditor> found = editors.stream().filter(e -> e.field().path().equals(path)).findFirst();
        found.ifPresent(e -> e.component().requestFocusInWindow());
        return found.isPresent();
    }
}
