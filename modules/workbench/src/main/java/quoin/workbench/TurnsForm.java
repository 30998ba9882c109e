package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Car;
import quoin.logbook.Entry;
import quoin.workflow.CornerMove;
import quoin.workflow.RoundPlan;

/**
 * Records what was really turned, one field per adjuster in walking order, filled from the plan. The racer changes what he did
 * otherwise, empties what he left, and may type the thread length he measured.
 */
@Messages({
    "turns.adjuster=Adjuster", "turns.done=Really turned", "turns.length=Thread, mm", "# {0} - amount", "turns.today=today in all: {0}",
    "turns.here=Done",
    "# {0} - adjuster", "turns.hereName={0} done: records this adjuster alone (Shift+Enter in its field)",
    "turns.oneRecorded=Recorded. The round goes on at the next corner.",
    "turns.record=Record the t&urns",
    "turns.recordTip=Records what stands in the fields (Ctrl+Enter, or Enter in the last field)",
    "turns.hint=Such as 2 turns + 3 notches down, 2t 3n up, -2 1/4. Empty: left alone.",
    "turns.barHint=Such as 1/2 turn loads left, 2t loads right. Empty: left alone.",
    "turns.linkHint=Such as 3 flats toe out, 1/2 turn top in, -2f. Empty: left alone.",
    "turns.nothing=Nothing was turned; nothing is recorded.",
    "turns.recorded=Recorded. Now settle the car: bounce each end three times, roll it back and forth.",
    "# {0} - adjuster", "# {1} - problem", "turns.problem={0}: {1}.",
    "# {0} - adjuster", "turns.fieldName={0}, really turned",
    "# {0} - adjuster", "turns.lengthName={0}, thread length in mm"})
public final class TurnsForm extends JPanel {

    private static final int TURN_COLUMNS = 10;
    private static final int LENGTH_COLUMNS = 4;
    /** Takes what room there is: "2 turns + 4 notches up" must not hide which way. */
    private static final int TURNS_COLUMN = 1;
    private static final String OUTLINE = "JComponent.outline";

    private record Row(AdjusterId adjuster, JTextField turns, JTextField length, JButton done, WrapText today) {
    }

    private final CurrentDay current;
    private final String stageId;
    private final Function<Car, List<AdjusterId>> which;
    private final JPanel fields = new JPanel(new GridBagLayout());
    private final WrapText message = new WrapText(Bundle.turns_hint());
    private final List<Row> rows = new ArrayList<>();
    private Map<AdjusterId, String> prefilled = Map.of();
    private DaySnapshot shown;
    private Runnable recorded = () -> { };

    /**
     * @param which the adjusters that may be turned, in walking order
     */
    public TurnsForm(CurrentDay current, String stageId, Function<Car, List<AdjusterId>> which) {
        super(new BorderLayout(0, Looks.em(0.4)));
        this.current = current;
        this.stageId = stageId;
        this.which = which;
        setOpaque(false);
        fields.setOpaque(false);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        buttons.setOpaque(false);
        var record = Looks.button(Bundle.turns_record(), this::record);
        record.setToolTipText(Bundle.turns_recordTip());
        buttons.add(record);
        add(fields, BorderLayout.NORTH);
        add(message, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK), "recordTurns", this::record);
    }

    /** Adjusters of a stage as the car has them, in walking order, without those that are locked. */
    public static List<AdjusterId> adjusters(Car car, Set<AdjusterKind> kinds) {
        AssumedCar assumed = Assumptions.complete(car);
        return car.walkingOrder().stream().flatMap(c -> {
            List<Adjuster> fitted = car.corners().get(c).adjusters();
            boolean noLeg = fitted.stream().noneMatch(a -> a.id().kind().isSpringLeg());
            return noLeg ? Stream.concat(assumed.corners().get(c).springLeg().stream(), fitted.stream()) : fitted.stream();
        }).filter(a -> kinds.contains(a.id().kind()) && !a.locked()).map(Adjuster::id).toList();
    }

    /** Shows what was turned today and fills the fields from the plan; what was typed stays. */
    public void show(DaySnapshot day, Optional<RoundPlan> plan) {
        List<AdjusterId> adjusters = which.apply(day.car());
        if (!adjusters.equals(rows.stream().map(Row::adjuster).toList())) {
            rebuild(adjusters);
        }
        showTurned(day);
        Map<AdjusterId, String> planned = planned(plan, day.adjusterWords());
        for (Row row : rows) {
            String before = prefilled.getOrDefault(row.adjuster(), "");
            if (row.turns().getText().equals(before)) {
                row.turns().setText(planned.getOrDefault(row.adjuster(), ""));
                row.turns().setCaretPosition(0);
            }
        }
        prefilled = planned;
    }

    /** Shows what was turned today; what stands in the fields stays, as the plan they come from is still being followed. */
    public void showTurned(DaySnapshot day) {
        shown = day;
        AdjusterWords words = day.adjusterWords();
        for (Row row : rows) {
            double today = day.day().turned(row.adjuster());
            row.today().setText(today == 0 ? "" : Bundle.turns_today(words.amount(row.adjuster(), today)));
            row.today().setVisible(today != 0);
        }
    }

    private static Map<AdjusterId, String> planned(Optional<RoundPlan> plan, AdjusterWords words) {
        Map<AdjusterId, String> planned = new HashMap<>();
        plan.map(RoundPlan::moves).orElse(List.of())
                .forEach((CornerMove m) -> planned.put(m.adjuster(), words.amount(m.adjuster(), m.turns())));
        return planned;
    }

    private String hint() {
        if (rows.stream().allMatch(r -> r.adjuster().kind() == AdjusterKind.BAR_LINK)) {
            return Bundle.turns_barHint();
        }
        return rows.stream().anyMatch(r -> r.adjuster().kind().isSpringLeg()) ? Bundle.turns_hint() : Bundle.turns_linkHint();
    }

    private void rebuild(List<AdjusterId> adjusters) {
        rows.clear();
        fields.removeAll();
        String[] heads = {Bundle.turns_adjuster(), Bundle.turns_done(), Bundle.turns_length(), ""};
        for (int i = 0; i < heads.length; i++) {
            fields.add(Looks.label(heads[i], 1, Font.BOLD), Looks.cell(i, 0, i == TURNS_COLUMN ? 1 : 0));
        }
        adjusters.forEach(this::addRow);
        prefilled = Map.of();
        message.setText(hint());
        revalidate();
    }

    private void addRow(AdjusterId adjuster) {
        JTextField turns = Looks.field(TURN_COLUMNS, 1.1, Font.BOLD);
        turns.getAccessibleContext().setAccessibleName(Bundle.turns_fieldName(adjuster.words()));
        turns.setName("turns." + adjuster);
        JTextField length = Looks.field(LENGTH_COLUMNS, 1.1, Font.PLAIN);
        length.getAccessibleContext().setAccessibleName(Bundle.turns_lengthName(adjuster.words()));
        JLabel name = Looks.label(adjuster.words(), 1.1, Font.BOLD);
        name.setLabelFor(turns);
        int index = rows.size();
        JButton done = Looks.button(Bundle.turns_here(), () -> recordOne(index));
        // Narrow, so that the row has room for the words of any language.
        done.setMargin(new Insets(2, 5, 2, 5));
        done.putClientProperty("JComponent.minimumWidth", 0);
        done.setMinimumSize(done.getPreferredSize());
        done.setToolTipText(InertText.plain(Bundle.turns_hereName(adjuster.words())));
        done.getAccessibleContext().setAccessibleName(Bundle.turns_hereName(adjuster.words()));
        rows.add(new Row(adjuster, turns, length, done, new WrapText("")));
        Looks.onKey(turns, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK), "recordOne", () -> recordOne(index));
        turns.addActionListener(e -> enter(index));
        length.addActionListener(e -> enter(index));
        Component[] parts = {name, turns, length, done};
        for (int i = 0; i < parts.length; i++) {
            fields.add(parts[i], Looks.cell(i, 2 * index + 1, i == TURNS_COLUMN ? 1 : 0));
        }
        GridBagConstraints below = Looks.cell(1, 2 * index + 2, 1);
        below.gridwidth = GridBagConstraints.REMAINDER;
        fields.add(rows.get(index).today(), below);
    }

    /** What follows when turns have been recorded. */
    void onRecorded(Runnable next) {
        recorded = next;
    }

    /** Puts the caret into the first field that is filled, or else into the first. */
    public void toFirst() {
        focus(rows.stream().filter(r -> !r.turns().getText().isBlank()).findFirst().map(rows::indexOf).orElse(0));
    }

    private void focus(int index) {
        if (index < rows.size()) {
            JTextField field = rows.get(index).turns();
            field.requestFocusInWindow();
            field.selectAll();
            Looks.reveal(field);
        }
    }

    private void enter(int index) {
        if (index + 1 < rows.size()) {
            read(rows);
            focus(index + 1);
        } else {
            record();
        }
    }

    /** What the fields say; empty where one of them cannot be read, which is then marked and said. */
    private Optional<List<Entry.Turn>> read(List<Row> of) {
        AdjusterWords words = shown.adjusterWords();
        List<Entry.Turn> turned = new ArrayList<>();
        String problem = null;
        for (Row row : of) {
            row.turns().putClientProperty(OUTLINE, null);
            row.length().putClientProperty(OUTLINE, null);
            JTextField reading = row.turns();
            try {
                double amount = words.parse(row.adjuster(), row.turns().getText());
                reading = row.length();
                OptionalDouble length = words.parseLength(row.length().getText());
                if (amount != 0 || length.isPresent()) {
                    turned.add(new Entry.Turn(row.adjuster(), amount, length));
                }
            } catch (IllegalArgumentException e) {
                reading.putClientProperty(OUTLINE, "error");
                problem = problem == null ? Bundle.turns_problem(row.adjuster().words(), e.getLocalizedMessage()) : problem;
            }
        }
        message.setText(problem == null ? hint() : problem);
        return problem == null ? Optional.of(turned) : Optional.empty();
    }

    /** Records what stands in the fields as one adjustment. */
    public void record() {
        if (record(rows)) {
            message.setText(Bundle.turns_recorded());
            recorded.run();
        }
    }

    /** Records one adjuster and goes to the next that has turns in its field; after the last one the round is done. */
    private void recordOne(int index) {
        if (!record(List.of(rows.get(index)))) {
            return;
        }
        for (int i = 1; i < rows.size(); i++) {
            int next = (index + i) % rows.size();
            if (!rows.get(next).turns().getText().isBlank()) {
                message.setText(Bundle.turns_oneRecorded());
                focus(next);
                return;
            }
        }
        message.setText(Bundle.turns_recorded());
        recorded.run();
    }

    private boolean record(List<Row> which) {
        Optional<List<Entry.Turn>> turned = shown == null ? Optional.empty() : read(which);
        if (turned.isEmpty()) {
            return false;
        }
        if (turned.get().isEmpty()) {
            message.setText(Bundle.turns_nothing());
            return false;
        }
        Map<Row, String> before = new HashMap<>();
        which.forEach(r -> before.put(r, r.turns().getText()));
        prefilled = new HashMap<>(prefilled);
        which.forEach(r -> prefilled.remove(r.adjuster()));
        if (!current.record(stageId, h -> new Entry.Adjustment(h, turned.get(), ""))) {
            return false;
        }
        for (Row row : which) {
            row.length().setText("");
            if (row.turns().getText().equals(before.get(row))) {
                row.turns().setText("");
            }
        }
        return true;
    }
}
