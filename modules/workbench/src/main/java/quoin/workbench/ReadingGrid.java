package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.logbook.Entry;
import quoin.quantities.QuantityFormatException;
import quoin.workflow.ReadingState;
import quoin.workflow.spi.Finding;

/**
 * Fields for readings in walking order. Enter goes to the next field and records the whole set from the last one; Ctrl+Enter
 * records from anywhere. A whole line typed into a field spreads over the fields after it; blanks are not read; "=" repeats the
 * last value. What cannot be read is marked, said in words below and kept.
 */
@Messages({
    "grid.now=Read now", "grid.last=Last", "grid.target=Target", "grid.verdict=Verdict",
    "grid.record=&Record", "grid.practice=Read the &practice car",
    "grid.recordTip=Records every field that is filled (Ctrl+Enter, or Enter in the last field)",
    "grid.practiceTip=Fills the fields with what the practice car reads now (Alt+P)",
    "# {0} - reading", "# {1} - unit", "grid.fieldName={0} in {1}",
    "grid.hint=Enter: next field, from the last one records. A whole line such as 107,9 93,2 122,8 146,2 fills the fields in this order.",
    "grid.shortHint=Enter: next field, from the last one records.",
    "# {0} - likely figure", "grid.takeLikely=Take {0} (F2)",
    "# {0} - doubt", "# {1} - likely figure", "grid.doubt={0} F2 takes {1}; Enter keeps what is typed.",
    "# {0} - reading", "# {1} - mean", "# {2} - number", "grid.mean={0} {1} of {2}",
    "# {0} - readings", "grid.means=Verdicts are on the mean of what was read of the car as it stands: {0}.",
    "grid.blank=Nothing is typed yet.",
    "# {0} - reading", "# {1} - problem", "grid.problem={0}: {1}.",
    "# {0} - typed", "# {1} - fields", "grid.tooMany=The line holds {0} figures and there are {1} fields left from here; nothing was changed.",
    "# {0} - time", "# {1} - figures", "grid.recorded=Recorded {0}: {1}",
    "grid.filled=The practice car has been read. Enter in the last field records it."})
public final class ReadingGrid extends JPanel {

    private static final int FIELD_COLUMNS = 4;
    private static final String OUTLINE = "JComponent.outline";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");

    private record Row(ReadingId reading, JTextField field, JLabel last, JLabel target, VerdictLabel verdict) {
    }

    private final CurrentDay current;
    private final String stageId;
    private final Function<Car, List<ReadingId>> which;
    private final List<Row> rows = new ArrayList<>();
    private final JPanel fields = new JPanel(new GridBagLayout());
    private final WrapText why = new WrapText("");
    private final WrapText message;
    private final JButton practice = Looks.button(Bundle.grid_practice(), this::readPracticeCar);
    private final EntryDoubts doubts = new EntryDoubts();
    private final JButton takeLikely = Looks.button("", this::takeLikely);
    private final boolean compact;
    private final String hint;
    private Map<ReadingId, String> filled = Map.of();
    private DaySnapshot shown;
    private Optional<Finding> doubt = Optional.empty();

    /**
     * @param stageId stage the readings are recorded in
     * @param which   what is read, in walking order
     */
    public ReadingGrid(CurrentDay current, String stageId, Function<Car, List<ReadingId>> which) {
        this(current, stageId, which, false);
    }

    /** A narrow grid without targets and verdicts, for readings that have none. */
    public static ReadingGrid compact(CurrentDay current, String stageId, Function<Car, List<ReadingId>> which) {
        return new ReadingGrid(current, stageId, which, true);
    }

    private ReadingGrid(CurrentDay current, String stageId, Function<Car, List<ReadingId>> which, boolean compact) {
        super(new BorderLayout(0, Looks.em(0.4)));
        this.current = current;
        this.stageId = stageId;
        this.which = which;
        this.compact = compact;
        this.hint = compact ? Bundle.grid_shortHint() : Bundle.grid_hint();
        this.message = new WrapText(hint);
        setOpaque(false);
        fields.setOpaque(false);
        JButton record = Looks.button(Bundle.grid_record(), this::record);
        record.setToolTipText(Bundle.grid_recordTip());
        practice.setToolTipText(Bundle.grid_practiceTip());
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        buttons.setOpaque(false);
        buttons.add(record);
        buttons.add(practice);
        takeLikely.setVisible(false);
        buttons.add(takeLikely);
        add(fields, BorderLayout.NORTH);
        add(Looks.column(why, message), BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK), "record", this::record);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_R, InputEvent.ALT_DOWN_MASK), "recordHere", this::record);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_F2, 0), "takeLikely", this::takeLikely);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_P, InputEvent.ALT_DOWN_MASK), "practiceHere", this::readPracticeCar);
    }

    /** Shows the last values, targets and verdicts; what is being typed stays. */
    public void show(DaySnapshot day) {
        List<ReadingId> readings = which.apply(day.car());
        if (shown == null || !readings.equals(rows.stream().map(Row::reading).toList()) || !shown.units().equals(day.units())) {
            rebuild(readings, day.format());
        }
        shown = day;
        ReadingFormat format = day.format();
        for (Row row : rows) {
            OptionalDouble last = day.last(row.reading());
            row.last().setText(last.isPresent() ? format.number(row.reading(), last.getAsDouble()) : "–");
            Optional<Target> target = day.day().targets().of(row.reading());
            row.target().setText(target.map(t -> format.bandNumber(row.reading(), t.value(), t.tolerance())).orElse("–"));
            row.verdict().show(VerdictWords.of(day.reading(stageId, row.reading()), format));
        }
        List<ReadingState> states = readings.stream().map(r -> day.reading(stageId, r)).flatMap(Optional::stream).toList();
        why.setText(Stream.of(VerdictWords.why(states), means(states, format)).filter(t -> !t.isEmpty()).collect(Collectors.joining("\n")));
        why.setVisible(!why.getText().isEmpty());
        practice.setVisible(current.isRehearsal());
    }

    /** Where a reading was repeated the verdict is on the mean, which the last value beside it does not show. */
    private static String means(List<ReadingState> states, ReadingFormat format) {
        String list = states.stream().filter(s -> s.count() > 1 && s.verdict().isPresent())
                .map(s -> Bundle.grid_mean(s.reading().words(), format.number(s.reading(), s.value().getAsDouble()), s.count()))
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "" : Bundle.grid_means(list);
    }

    private void rebuild(List<ReadingId> readings, ReadingFormat format) {
        Map<ReadingId, String> kept = new LinkedHashMap<>();
        rows.forEach(r -> kept.put(r.reading(), r.field().getText()));
        rows.clear();
        fields.removeAll();
        String[] heads = {"", Bundle.grid_now(), "", Bundle.grid_last(), Bundle.grid_target(), Bundle.grid_verdict()};
        for (int i = 0; i < columns(); i++) {
            fields.add(Looks.label(heads[i], 1, Font.BOLD), Looks.cell(i, 0, i == columns() - 1 ? 1 : 0));
        }
        for (ReadingId reading : readings) {
            addRow(reading, format, kept.getOrDefault(reading, ""));
        }
        revalidate();
    }

    private void addRow(ReadingId reading, ReadingFormat format, String text) {
        JTextField field = Looks.field(FIELD_COLUMNS, Looks.FIELD, Font.BOLD);
        field.setText(text);
        field.setHorizontalAlignment(SwingConstants.RIGHT);
        field.getAccessibleContext().setAccessibleName(Bundle.grid_fieldName(reading.words(), format.unit(reading)));
        field.setName("reading." + reading);
        JLabel name = Looks.label(reading.words(), 1.1, Font.BOLD);
        name.setLabelFor(field);
        Row row = new Row(reading, field, Looks.label("", 1.1, Font.PLAIN), Looks.label("", 1.1, Font.PLAIN), new VerdictLabel());
        int index = rows.size();
        rows.add(row);
        field.addActionListener(e -> enter(index));
        field.addFocusListener(new ShowsItself());
        step(field, KeyEvent.VK_DOWN, index + 1);
        step(field, KeyEvent.VK_UP, index - 1);
        Component[] parts = {name, field, Looks.label(format.unit(reading), 1, Font.PLAIN), row.last(), row.target(), row.verdict()};
        for (int i = 0; i < columns(); i++) {
            fields.add(parts[i], Looks.cell(i, index + 1, i == columns() - 1 ? 1 : 0));
        }
    }

    private int columns() {
        return compact ? 4 : 6;
    }

    private void step(JTextField field, int key, int to) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key, 0), "step" + key);
        Looks.onKey(field, KeyStroke.getKeyStroke(key, 0), "step" + key, () -> focus(to));
    }

    private void focus(int index) {
        if (index >= 0 && index < rows.size()) {
            rows.get(index).field().requestFocusInWindow();
        }
    }

    /** Puts the caret into the first field. */
    public void toFirst() {
        focus(0);
    }

    /** What stands in the fields now. */
    public TypedSet typed() {
        return new TypedSet(rows.stream().map(Row::reading).toList(), rows.stream().map(r -> r.field().getText()).toList());
    }

    private void enter(int index) {
        if (shown == null) {
            return;
        }
        int next = index + 1;
        TypedSet typed = typed();
        if (typed.isLine(index, shown.format())) {
            try {
                TypedSet spread = typed.spread(index, shown.format());
                fill(spread);
                int end = index + spread.room(index);
                next = end < rows.size() ? end : rows.size() - 1;
            } catch (TypedSet.TooManyFigures e) {
                say(Bundle.grid_tooMany(e.typed(), e.fields()));
                return;
            } catch (QuantityFormatException e) {
                say(Bundle.grid_problem(rows.get(index).reading().words(), e.getLocalizedMessage()));
                return;
            }
        }
        if (isDoubted(markProblems())) {
            return;
        }
        if (next < rows.size()) {
            focus(next);
        } else {
            record();
        }
    }

    private void fill(TypedSet set) {
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).field().setText(set.texts().get(i));
        }
    }

    private TypedSet.Understood markProblems() {
        TypedSet.Understood understood = typed().read(shown.format(), shown::last);
        for (Row row : rows) {
            row.field().putClientProperty(OUTLINE, understood.problems().containsKey(row.reading()) ? "error" : null);
        }
        say(understood.problems().entrySet().stream().findFirst()
                .map(p -> Bundle.grid_problem(p.getKey().words(), p.getValue())).orElse(hint));
        return understood;
    }

    /** Raises a doubt about a typed figure, once: the caret goes to it; Enter keeps it, F2 takes the likely one. */
    private boolean isDoubted(TypedSet.Understood understood) {
        if (understood.typed().equals(filled)) {
            return false;
        }
        doubt = doubts.next(shown.day(), understood.values());
        takeLikely.setVisible(doubt.isPresent());
        doubt.ifPresent(d -> {
            ReadingId about = d.about().orElseThrow();
            Row row = rows.stream().filter(r -> r.reading().equals(about)).findFirst().orElseThrow();
            row.field().putClientProperty(OUTLINE, "warning");
            String likely = shown.format().text(about, d.suggested().getAsDouble());
            takeLikely.setText(Bundle.grid_takeLikely(likely));
            say(Bundle.grid_doubt(d.words(), likely));
            row.field().requestFocusInWindow();
        });
        return doubt.isPresent();
    }

    private void takeLikely() {
        doubt.ifPresent(d -> {
            ReadingId about = d.about().orElseThrow();
            int index = rows.stream().map(Row::reading).toList().indexOf(about);
            JTextField field = rows.get(index).field();
            String typed = field.getText();
            field.setText(shown.format().exact(about, d.suggested().getAsDouble()));
            rows.stream().filter(r -> d.exchanged().filter(r.reading()::equals).isPresent()).forEach(r -> r.field().setText(typed));
            doubt = Optional.empty();
            takeLikely.setVisible(false);
            enter(index);
        });
    }

    private void say(String words) {
        message.setText(words);
    }

    /** Records what is typed; does nothing but say so where a field cannot be read or all are blank. */
    public void record() {
        if (shown == null) {
            return;
        }
        TypedSet typed = typed();
        TypedSet.Understood understood = markProblems();
        if (!understood.problems().isEmpty()) {
            ReadingId first = understood.problems().keySet().iterator().next();
            focus(typed.readings().indexOf(first));
            return;
        }
        if (understood.values().isEmpty()) {
            say(Bundle.grid_blank());
            return;
        }
        if (isDoubted(understood)) {
            return;
        }
        Entry.Source source = understood.typed().equals(filled) ? Entry.Source.PRACTICE_CAR : Entry.Source.RACER;
        if (current.record(stageId, h -> new Entry.Reading(h, understood.values(), understood.typed(), source))) {
            rows.forEach(r -> r.field().setText(""));
            filled = Map.of();
            doubts.forget();
            Entry recorded = shown.day().written().get(shown.day().written().size() - 1);
            say(Bundle.grid_recorded(LocalTime.now().format(TIME), shown.entryWords().of(recorded)));
            focus(0);
        }
    }

    private void readPracticeCar() {
        List<ReadingId> wanted = rows.stream().map(Row::reading).toList();
        current.practiceReadings(wanted).ifPresent(values -> {
            Map<ReadingId, String> texts = new LinkedHashMap<>();
            for (Row row : rows) {
                Double value = values.get(row.reading());
                if (value != null) {
                    String text = shown.format().number(row.reading(), value);
                    row.field().setText(text);
                    texts.put(row.reading(), text);
                }
            }
            filled = texts;
            say(Bundle.grid_filled());
            focus(rows.size() - 1);
        });
    }

    private static final class ShowsItself extends FocusAdapter {
        @Override
        public void focusGained(FocusEvent e) {
            JTextField field = (JTextField) e.getComponent();
            field.selectAll();
            Looks.reveal(field);
        }
    }
}
