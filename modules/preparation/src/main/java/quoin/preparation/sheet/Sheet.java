package quoin.preparation.sheet;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import org.openide.util.NbBundle.Messages;
import quoin.quantities.UnitPreferences;
import quoin.workbench.Looks;
import quoin.workbench.Typing;

/** Fields of a form. Enter goes to the next one and from the last one finishes; what cannot be read is marked and kept. */
@Messages({"# {0} - field", "# {1} - unit", "sheet.spoken={0} in {1}"})
public final class Sheet extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int COLUMNS = 5;
    private static final String OUTLINE = "JComponent.outline";

    private final transient Runnable changed;
    private final transient Runnable finished;
    private final Map<String, JTextField> fields = new LinkedHashMap<>();
    private final Map<String, String> kept = new LinkedHashMap<>();
    private final List<JTextField> order = new ArrayList<>();
    private transient Lines lines = Lines.of();
    private transient UnitPreferences units = UnitPreferences.metric();

    /**
     * @param changed  what follows whenever something was typed
     * @param finished what Enter in the last field does
     */
    public Sheet(Runnable changed, Runnable finished) {
        super(new BorderLayout());
        this.changed = changed;
        this.finished = finished;
        setOpaque(false);
    }

    /** Shows these fields; what was typed under a key stays. */
    public void show(Lines shown, UnitPreferences preferences) {
        if (shown.equals(lines) && preferences.equals(units)) {
            return;
        }
        kept.putAll(texts());
        lines = shown;
        units = preferences;
        fields.clear();
        order.clear();
        removeAll();
        JPanel grid = new JPanel(new GridBagLayout());
        grid.setOpaque(false);
        int row = 0;
        boolean headed = shown.heads().isEmpty();
        int widest = shown.lines().stream().mapToInt(l -> l.cells().size()).max().orElse(0);
        for (Lines.Line line : shown.lines()) {
            // Heads stand over the lines they belong to: those with several fields.
            if (!headed && line.cells().size() == shown.heads().size()) {
                for (int i = 0; i < shown.heads().size(); i++) {
                    grid.add(Looks.label(shown.heads().get(i), 1, Font.BOLD), Looks.cell(i + 1, row, 0));
                }
                headed = true;
                row++;
            }
            JLabel name = Looks.label(line.name(), 1.05, Font.BOLD);
            grid.add(name, Looks.cell(0, row, 0));
            for (int i = 0; i < line.cells().size(); i++) {
                JTextField field = field(line.cells().get(i));
                if (i == 0) {
                    name.setLabelFor(field);
                }
                grid.add(field, Looks.cell(i + 1, row, 0));
            }
            // Where the fields of a line have several units, its heads name them.
            boolean oneUnit = line.cells().stream().map(Cell::dimension).distinct().count() == 1;
            if (!line.cells().isEmpty()) {
                grid.add(Looks.label(oneUnit ? unit(line.cells().get(0)) : "", 1, Font.PLAIN), Looks.cell(line.cells().size() + 1, row, line.cells().size() == widest ? 1 : 0));
            }
            row++;
        }
        add(grid, BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    private String unit(Cell cell) {
        return units.unit(cell.dimension()).symbol();
    }

    private JTextField field(Cell cell) {
        JTextField field = Looks.field(COLUMNS, 1.2, Font.BOLD);
        field.setHorizontalAlignment(SwingConstants.RIGHT);
        field.setName("sheet." + cell.key());
        field.getAccessibleContext().setAccessibleName(Bundle.sheet_spoken(cell.name(), unit(cell)));
        field.setText(kept.getOrDefault(cell.key(), cell.usual().orElse("")));
        int index = order.size();
        order.add(field);
        fields.put(cell.key(), field);
        field.addActionListener(e -> enter(index));
        step(field, KeyEvent.VK_DOWN, index + 1);
        step(field, KeyEvent.VK_UP, index - 1);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                field.selectAll();
                Looks.reveal(field);
            }
        });
        field.getDocument().addDocumentListener(new Typing(changed));
        return field;
    }

    private void step(JTextField field, int key, int to) {
        Looks.onKey(field, KeyStroke.getKeyStroke(key, 0), "step" + key, () -> {
            if (to >= 0 && to < order.size()) {
                order.get(to).requestFocusInWindow();
            }
        });
    }

    private void enter(int index) {
        if (index + 1 < order.size()) {
            order.get(index + 1).requestFocusInWindow();
        } else {
            finished.run();
        }
    }

    private Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.forEach((key, field) -> texts.put(key, field.getText()));
        return texts;
    }

    /** What is typed now; fields that cannot be read are marked. */
    public Figures figures() {
        Figures figures = Figures.read(lines.cells(), texts(), units);
        fields.forEach((key, field) -> field.putClientProperty(OUTLINE, figures.problems().containsKey(key) ? "error" : null));
        return figures;
    }

    /** Puts a text into a field that is there. */
    public void type(String key, String text) {
        JTextField field = fields.get(key);
        if (field != null && !field.getText().equals(text)) {
            field.setText(text);
        }
    }

    /** Empties the fields with these keys. */
    public void clear(List<String> keys) {
        keys.forEach(k -> {
            kept.remove(k);
            type(k, "");
        });
    }

    /** Puts the caret into the first blank field, or the first of all. */
    public void toFirst() {
        order.stream().filter(f -> f.getText().isBlank()).findFirst().or(() -> order.stream().findFirst())
                .ifPresent(JTextField::requestFocusInWindow);
    }
}
