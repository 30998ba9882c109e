package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.util.NbBundle.Messages;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.QuantityFormatException;
import quoin.workbench.DisplayUnits;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** A table of named lines with figures to type in, one spare line at the end; a line without a name is taken out. */
@Messages({"rows.name=Name", "# {0} - line", "# {1} - column", "rows.spoken=line {0}, {1}",
    "# {0} - name", "# {1} - column", "rows.missing={0}, {1}: nothing is typed; type the figure or take the name out",
    "# {0} - column", "rows.unnamed={0}: the line has figures but no name; give it a name"})
final class RowsForm extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int NAME_COLUMNS = 11;
    private static final int FIGURE_COLUMNS = 5;

    /** One line as typed, figures in base units. */
    record Line(String name, List<Double> figures) {
        Line {
            figures = List.copyOf(figures);
        }
    }

    /** A column of figures. */
    record Column(String head, Dimension dimension) {
    }

    private final transient List<Column> columns;
    private final transient List<JTextField> names = new ArrayList<>();
    private final transient List<List<JTextField>> fields = new ArrayList<>();
    private final JPanel grid = new JPanel(new GridBagLayout());
    private final WrapText problems = new WrapText("", 1, Font.BOLD);
    private transient List<Line> shown = List.of();
    private transient DisplayUnits shownUnits;

    RowsForm(List<Column> columns) {
        super(new BorderLayout());
        this.columns = List.copyOf(columns);
        add(grid, BorderLayout.CENTER);
        add(problems, BorderLayout.SOUTH);
    }

    /** Shows lines anew where they or the units changed since; what is being typed stays otherwise. */
    void show(List<Line> lines, DisplayUnits units) {
        if (lines.equals(shown) && units.equals(shownUnits)) {
            return;
        }
        shown = List.copyOf(lines);
        shownUnits = units;
        grid.removeAll();
        names.clear();
        fields.clear();
        grid.add(Looks.label(Bundle.rows_name(), 1, Font.BOLD), Looks.closeCell(0, 0, 0));
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            String head = Bundle.form_unit(column.head(), units.preferences().unit(column.dimension()).symbol());
            grid.add(Looks.label(head, 1, Font.BOLD), Looks.closeCell(1 + i, 0, 0));
        }
        grid.add(Looks.label("", 1, Font.PLAIN), Looks.closeCell(1 + columns.size(), 0, 1));
        for (int row = 0; row <= lines.size(); row++) {
            addLine(row, row < lines.size() ? Optional.of(lines.get(row)) : Optional.empty(), units);
        }
        grid.revalidate();
        grid.repaint();
    }

    private void addLine(int row, Optional<Line> line, DisplayUnits units) {
        JTextField name = Looks.field(NAME_COLUMNS, 1, Font.PLAIN);
        name.setText(line.map(Line::name).orElse(""));
        name.getAccessibleContext().setAccessibleName(Bundle.rows_spoken(row + 1, Bundle.rows_name()));
        grid.add(name, Looks.closeCell(0, row + 1, 0));
        names.add(name);
        List<JTextField> figures = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            JTextField field = Looks.field(FIGURE_COLUMNS, 1, Font.PLAIN);
            field.getAccessibleContext().setAccessibleName(Bundle.rows_spoken(row + 1, columns.get(i).head()));
            if (line.isPresent()) {
                field.setText(QuantityFormat.of(units.preferences()).number(line.get().figures().get(i), columns.get(i).dimension()));
            }
            grid.add(field, Looks.closeCell(1 + i, row + 1, 0));
            figures.add(field);
        }
        fields.add(figures);
    }

    /** The lines as typed; empty where something is wrong, which is then named under the table. */
    Optional<List<Line>> lines(DisplayUnits units) {
        problems.setText("");
        List<Line> lines = new ArrayList<>();
        for (int row = 0; row < names.size(); row++) {
            String name = names.get(row).getText().strip();
            boolean blank = fields.get(row).stream().allMatch(f -> f.getText().isBlank());
            if (name.isEmpty() && (blank || row < shown.size())) {
                continue;
            }
            List<Double> figures = new ArrayList<>();
            for (int i = 0; i < columns.size(); i++) {
                figure(name, i, fields.get(row).get(i).getText(), units).ifPresent(figures::add);
            }
            if (name.isEmpty()) {
                problem(Bundle.rows_unnamed(Bundle.rows_name()));
            } else if (figures.size() == columns.size()) {
                lines.add(new Line(name, figures));
            }
        }
        return problems.getText().isEmpty() ? Optional.of(lines) : Optional.empty();
    }

    private OptionalDouble figure(String name, int column, String text, DisplayUnits units) {
        String head = columns.get(column).head();
        if (text.isBlank()) {
            problem(Bundle.rows_missing(name, head));
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Quantities.parse(text, columns.get(column).dimension(), units.preferences()));
        } catch (QuantityFormatException e) {
            problem(Bundle.form_problem(name + ", " + head, e.problem(), e.remedy()));
            return OptionalDouble.empty();
        }
    }

    /** Notes a problem under the table. */
    void problem(String words) {
        problems.setText(problems.getText().isEmpty() ? words : problems.getText() + "\n" + words);
    }

    void toFirst() {
        if (!names.isEmpty()) {
            names.get(0).requestFocusInWindow();
        }
    }
}
