package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.util.NbBundle.Messages;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.workbench.DisplayUnits;
import quoin.workbench.Looks;
import quoin.workbench.Typing;
import quoin.workbench.WrapText;

/** Lines of labelled figures. What cannot be read is named under the form with its remedy; nothing typed is lost. */
@Messages({
    "# {0} - field", "# {1} - problem", "# {2} - remedy", "form.problem={0}: {1}; {2}",
    "# {0} - name", "# {1} - unit", "form.unit={0}, {1}",
    "# {0} - line", "# {1} - corner", "form.spoken={0}, {1}"})
final class Form extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int COLUMNS = 5;
    /** A row of more fields than this has narrower ones, so that it fits beside another column. */
    private static final int WIDE_ROW = 4;

    /** One field. */
    final class Figure {
        private final String name;
        private final Dimension dimension;
        private final JTextField field;

        private Figure(String name, Dimension dimension, int columns) {
            this.name = name;
            this.dimension = dimension;
            this.field = Looks.field(columns, 1.1, Font.PLAIN);
            field.getAccessibleContext().setAccessibleName(name);
            field.getDocument().addDocumentListener(new Typing(Form.this::changed));
        }

        JTextField field() {
            return field;
        }

        boolean isBlank() {
            return field.getText().isBlank();
        }

        void setText(String text) {
            if (!field.getText().equals(text)) {
                field.setText(text);
            }
        }

        String text() {
            return field.getText().strip();
        }

        /** The value in the base unit; empty where the field is blank or its problem has been noted. */
        OptionalDouble value(DisplayUnits units) {
            if (isBlank()) {
                return OptionalDouble.empty();
            }
            try {
                return OptionalDouble.of(Quantities.parse(field.getText(), dimension, units.preferences()));
            } catch (QuantityFormatException e) {
                problem(Bundle.form_problem(name, e.problem(), e.remedy()));
                return OptionalDouble.empty();
            }
        }

        double valueOr(double otherwise, DisplayUnits units) {
            return value(units).orElse(otherwise);
        }
    }

    private final transient Runnable onChange;
    private final JPanel lines = Looks.column();
    private JPanel grid;
    private final WrapText problems = new WrapText("", 1, Font.BOLD);
    private final transient List<Figure> figures = new ArrayList<>();
    private final transient List<JLabel> unitLabels = new ArrayList<>();
    private final transient List<Dimension> unitDimensions = new ArrayList<>();
    private boolean quiet;
    private int row;

    /** @param onChange runs after every change of a field */
    Form(Runnable onChange) {
        super(new BorderLayout());
        this.onChange = onChange;
        add(lines, BorderLayout.CENTER);
        add(problems, BorderLayout.SOUTH);
        problems.setVisible(false);
    }

    /** A line with one field, its unit and a remark. */
    Figure add(String label, Dimension dimension, String remark) {
        if (grid == null) {
            grid = new JPanel(new GridBagLayout());
            grid.setAlignmentX(LEFT_ALIGNMENT);
            lines.add(grid);
            row = 0;
        }
        JLabel name = Looks.label(label, 1, Font.PLAIN);
        Figure figure = new Figure(label, dimension, COLUMNS);
        name.setLabelFor(figure.field());
        grid.add(name, Looks.closeCell(0, row, 0));
        grid.add(figure.field(), Looks.closeCell(1, row, 0));
        grid.add(unit(dimension), Looks.closeCell(2, row, 0));
        grid.add(Looks.label(remark, 1, Font.PLAIN), Looks.closeCell(3, row, 1));
        row++;
        figures.add(figure);
        return figure;
    }

    private JLabel unit(Dimension dimension) {
        JLabel unit = Looks.label("", 1, Font.PLAIN);
        unitLabels.add(unit);
        unitDimensions.add(dimension);
        return unit;
    }

    /** A line with several fields under its label, each with a name of its own such as a corner. */
    List<Figure> addRow(String label, Dimension dimension, List<String> heads) {
        grid = null;
        JPanel line = new JPanel(new GridBagLayout());
        JPanel head = new JPanel(new GridBagLayout());
        head.add(Looks.label(label, 1, Font.PLAIN), Looks.closeCell(0, 0, 0));
        head.add(unit(dimension), Looks.closeCell(1, 0, 1));
        List<Figure> added = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            Figure figure = new Figure(Bundle.form_spoken(label, heads.get(i)), dimension, heads.size() > WIDE_ROW ? COLUMNS - 2 : COLUMNS - 1);
            JLabel name = Looks.label(heads.get(i), 1, Font.BOLD);
            name.setLabelFor(figure.field());
            line.add(name, Looks.closeCell(2 * i, 0, 0));
            line.add(figure.field(), Looks.closeCell(2 * i + 1, 0, 0));
            added.add(figure);
        }
        line.add(Looks.label("", 1, Font.PLAIN), Looks.closeCell(2 * heads.size(), 0, 1));
        for (JPanel part : List.of(head, line)) {
            lines.add(part);
            part.setAlignmentX(LEFT_ALIGNMENT);
        }
        figures.addAll(added);
        return added;
    }

    /** Names the units and forgets the problems noted before; call it before reading the fields. */
    void begin(DisplayUnits units) {
        for (int i = 0; i < unitLabels.size(); i++) {
            unitLabels.get(i).setText(units.preferences().unit(unitDimensions.get(i)).symbol());
        }
        problems.setText("");
        problems.setVisible(false);
    }

    /** Notes a problem, name of the field first and the remedy last. */
    void problem(String words) {
        problems.setText(problems.getText().isEmpty() ? words : problems.getText() + "\n" + words);
        problems.setVisible(true);
    }

    boolean hasProblems() {
        return !problems.getText().isEmpty();
    }

    void clear() {
        fill(() -> figures.forEach(f -> f.setText("")));
    }

    /** Fills fields without telling of each. */
    void fill(Runnable filling) {
        quiet = true;
        filling.run();
        quiet = false;
        onChange.run();
    }

    private void changed() {
        if (!quiet) {
            onChange.run();
        }
    }

    void toFirst() {
        if (!figures.isEmpty()) {
            figures.get(0).field().requestFocusInWindow();
        }
    }
}
