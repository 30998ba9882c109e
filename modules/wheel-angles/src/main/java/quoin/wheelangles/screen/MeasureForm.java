package quoin.wheelangles.screen;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.Box;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.UnitPreferences;
import quoin.wheelangles.measure.Choice;
import quoin.wheelangles.measure.Field;
import quoin.wheelangles.measure.Table;
import quoin.wheelangles.measure.Worksheet;
import quoin.workbench.InertText;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.Typing;
import quoin.workbench.WrapText;

/** The fields of one way of measuring. Enter goes to the next one, from the last it records; a whole line typed spreads. */
final class MeasureForm extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int FIELD_COLUMNS = 4;
    /** Names of wheels and lines are bold. */
    private static final int SHORT = 2;
    private static final String OUTLINE = "JComponent.outline";
    private static final String LATER = "2";

    private final transient BiConsumer<String, String> typed;
    private final transient Runnable record;
    private final transient Consumer<String> focused;
    private final transient Map<String, JTextField> fields = new LinkedHashMap<>();
    private final transient Map<String, JComboBox<Choice.Option>> boxes = new LinkedHashMap<>();
    private final transient List<String> order = new ArrayList<>();
    private transient List<Field> shown = List.of();
    private transient UnitPreferences units;
    private boolean filling;

    /**
     * @param typed   is told the key and the new text of a field, or the key and the option of a choice
     * @param record  records what is typed
     * @param focused is told the key of the field that has the caret
     */
    MeasureForm(BiConsumer<String, String> typed, Runnable record, Consumer<String> focused) {
        super(new BorderLayout());
        this.typed = typed;
        this.record = record;
        this.focused = focused;
        setOpaque(false);
    }

    /** Shows a form; the fields are made anew where they are other ones. */
    void show(Worksheet sheet) {
        List<Field> wanted = sheet.tables().stream().flatMap(Table::fields).toList();
        filling = true;
        try {
            if (!keys(wanted).equals(keys(shown)) || !sheet.units().equals(units) || getComponentCount() == 0) {
                rebuild(sheet);
            }
            shown = wanted;
            units = sheet.units();
            for (Field field : wanted) {
                JTextField at = fields.get(field.key());
                if (!at.getText().equals(sheet.text(field))) {
                    at.setText(sheet.text(field));
                }
            }
        } finally {
            filling = false;
        }
    }

    private static List<String> keys(List<Field> fields) {
        return fields.stream().map(f -> f.key() + f.name()).toList();
    }

    private void rebuild(Worksheet sheet) {
        removeAll();
        fields.clear();
        boxes.clear();
        order.clear();
        List<Component> parts = new ArrayList<>();
        if (!sheet.method().choices().isEmpty()) {
            parts.add(choices(sheet));
        }
        sheet.tables().stream().filter(t -> !t.lines().isEmpty()).forEach(t -> parts.add(table(t, sheet.units())));
        Stream.concat(fields.keySet().stream().filter(k -> !k.endsWith(LATER) || fieldIsCounted(k)),
                fields.keySet().stream().filter(k -> k.endsWith(LATER) && !fieldIsCounted(k))).forEach(order::add);
        add(Looks.column(parts.toArray(Component[]::new)), BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    /** "travel.2" is a second line; "front2" the same once more, half a turn later. */
    private static boolean fieldIsCounted(String key) {
        return key.endsWith("." + LATER);
    }

    private JPanel choices(Worksheet sheet) {
        JPanel panel = new JPanel(new GridBagLayout());
        panel.setOpaque(false);
        int row = 0;
        for (Choice choice : sheet.method().choices()) {
            JComboBox<Choice.Option> box = new JComboBox<>(choice.options().toArray(Choice.Option[]::new));
            box.setRenderer(new OptionWords());
            box.setSelectedItem(choice.option(sheet.chosen().get(choice.key())));
            box.setName("measure." + choice.key());
            box.getAccessibleContext().setAccessibleName(choice.name());
            box.addActionListener(e -> {
                if (!filling) {
                    typed.accept(choice.key(), ((Choice.Option) box.getSelectedItem()).key());
                }
            });
            boxes.put(choice.key(), box);
            panel.add(Looks.label(choice.name(), 1, Font.BOLD), Looks.cell(0, row++, 1));
            panel.add(box, Looks.cell(0, row++, 1));
        }
        return panel;
    }

    private JPanel table(Table table, UnitPreferences units) {
        JPanel panel = new JPanel(new GridBagLayout());
        panel.setOpaque(false);
        int row = 0;
        for (int i = 0; i < table.columns().size(); i++) {
            JPanel head = Looks.column(Stream.of(table.columns().get(i).split("(?<=,) ")).map(part -> Looks.label(part, 1, Font.PLAIN))
                    .toArray(JLabel[]::new));
            GridBagConstraints cell = tight(i + 1, row);
            cell.anchor = GridBagConstraints.LAST_LINE_START;
            panel.add(head, cell);
        }
        row += table.columns().isEmpty() ? 0 : 1;
        int widest = table.lines().stream().mapToInt(l -> l.fields().size()).max().orElse(0);
        for (Table.Line line : table.lines()) {
            panel.add(Looks.label(line.name(), 1, line.name().length() <= SHORT ? Font.BOLD : Font.PLAIN), tight(0, row));
            for (int i = 0; i < line.fields().size(); i++) {
                panel.add(field(line.fields().get(i), units), tight(i + 1, row));
            }
            String unit = units.unit(line.fields().get(line.fields().size() - 1).dimension()).symbol();
            panel.add(Looks.label(unit, 1, Font.PLAIN), tight(line.fields().size() + 1, row));
            row++;
        }
        panel.add(Box.createGlue(), Looks.cell(widest + 2, row, 1));
        JPanel section = Looks.column(new WrapText(table.title(), 1.05, Font.BOLD), panel);
        section.setBorder(Looks.padding(0.35, 0));
        section.getAccessibleContext().setAccessibleName(table.title());
        return section;
    }

    /** A cell with less room beside it than usual: four columns of figures stand beside the drawing. */
    private static GridBagConstraints tight(int column, int row) {
        GridBagConstraints cell = Looks.cell(column, row, 0);
        cell.insets.left = Looks.em(0.1);
        cell.insets.right = Looks.em(0.35);
        return cell;
    }

    private JComponent field(Field field, UnitPreferences units) {
        JTextField text = Looks.field(FIELD_COLUMNS, 1.1, field.isAnew() ? Font.BOLD : Font.PLAIN);
        text.setHorizontalAlignment(SwingConstants.RIGHT);
        text.setName("measure." + field.key());
        text.getAccessibleContext().setAccessibleName(field.name() + ", " + units.unit(field.dimension()).symbol());
        text.setToolTipText(InertText.plain(field.name()));
        fields.put(field.key(), text);
        text.getDocument().addDocumentListener(new Typing(() -> tell(field.key(), text)));
        text.addActionListener(e -> enter(field.key()));
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                text.selectAll();
                Looks.reveal(text);
                focused.accept(field.key());
            }
        });
        step(text, KeyEvent.VK_DOWN, field.key(), 1);
        step(text, KeyEvent.VK_UP, field.key(), -1);
        return text;
    }

    private void step(JTextField text, int key, String from, int by) {
        text.getInputMap().put(KeyStroke.getKeyStroke(key, 0), "step" + key);
        Looks.onKey(text, KeyStroke.getKeyStroke(key, 0), "step" + key, () -> toIndex(order.indexOf(from) + by));
    }

    private void enter(String key) {
        int at = order.indexOf(key);
        List<String> figures = line(key);
        if (figures.size() > 1 && at + figures.size() <= order.size()) {
            for (int i = 0; i < figures.size(); i++) {
                fields.get(order.get(at + i)).setText(figures.get(i));
            }
            at += figures.size() - 1;
        }
        int next = at + 1;
        while (next < order.size() && isFilledOnce(order.get(next))) {
            next++;
        }
        if (next < order.size()) {
            toIndex(next);
        } else {
            record.run();
        }
    }

    /** True for what stays from one reading to the next and is there: Enter goes past it. */
    private boolean isFilledOnce(String key) {
        return !fields.get(key).getText().isBlank() && shown.stream().anyMatch(f -> f.key().equals(key) && !f.isAnew());
    }

    /** The figures of a field that holds a whole line; else none. */
    private List<String> line(String key) {
        Field field = shown.stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
        String text = fields.get(key).getText().strip();
        List<String> parts = Stream.of(text.split("[\\s;|]+")).filter(p -> !p.isEmpty()).toList();
        try {
            boolean isLine = parts.size() > 1
                    && Quantities.parseLine(text, units.unit(field.dimension()), units.decimalMark()).size() == parts.size();
            return isLine ? parts : List.of();
        } catch (QuantityFormatException e) {
            return List.of();
        }
    }

    private void toIndex(int index) {
        if (index >= 0 && index < order.size()) {
            fields.get(order.get(index)).requestFocusInWindow();
        }
    }

    /** Puts the caret into a field, or into the first one where there is no such field. */
    void toField(String key) {
        toIndex(Math.max(0, order.indexOf(key)));
    }

    /** Puts the keyboard back on a choice whose form was made anew. */
    void toChoice(String key) {
        boxes.get(key).requestFocusInWindow();
    }

    /** Puts the caret into the first field that is read anew. */
    void toFirst() {
        toIndex(order.stream().filter(k -> !isFilledOnce(k)).findFirst().map(order::indexOf).orElse(0));
    }

    /** Marks the fields that cannot be read. */
    void mark(Map<String, String> problems) {
        fields.forEach((key, text) -> text.putClientProperty(OUTLINE, problems.containsKey(key) ? "error" : null));
    }

    private void tell(String key, JTextField text) {
        if (!filling) {
            typed.accept(key, text.getText());
        }
    }

    private static final class OptionWords extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
            String words = value instanceof Choice.Option option ? option.words() : "";
            return super.getListCellRendererComponent(list, words, index, isSelected, hasFocus);
        }
    }
}
