package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.workflow.RequirementState;
import quoin.workflow.spi.Requirement;

/**
 * The conditions of a stage as a list to tick off: Enter or the space bar records the selected one and goes to the next that is
 * open; Delete records that it no longer holds. The caution of the selected one stands below.
 */
@Messages({
    "req.list=Conditions of this stage",
    "req.hint=Enter: done. Delete: no longer so.",
    "# {0} - words", "req.done={0} – done",
    "# {0} - words", "req.open={0} – open",
    "req.value=Value:",
    "req.typeValue=Type the value above and press Enter.",
    "# {0} - what is asked", "# {1} - problem", "req.problem={0}: {1}.",
    "req.untick=No longer so (&K)"})
public final class RequirementsList extends JPanel {

    private static final int VALUE_COLUMNS = 8;
    private static final Map<String, String> OPPOSITE = Map.ofEntries(
            Map.entry(Conditions.IN, Conditions.OUT), Map.entry(Conditions.OUT, Conditions.IN),
            Map.entry(Conditions.SOFT, Conditions.RUNNING), Map.entry(Conditions.RUNNING, Conditions.SOFT),
            Map.entry(Conditions.LOCKED, Conditions.FREE), Map.entry(Conditions.FREE, Conditions.LOCKED),
            Map.entry(Conditions.LEVELLED, Conditions.MOVED),
            Map.entry(Conditions.CONNECTED, Conditions.DISCONNECTED), Map.entry(Conditions.DISCONNECTED, Conditions.CONNECTED),
            Map.entry(Conditions.YES, Conditions.NO));

    private final CurrentDay current;
    private final String stageId;
    private final DefaultListModel<RequirementState> model = new DefaultListModel<>();
    private final JList<RequirementState> list = new JList<>(model);
    private final WrapText caution = new WrapText(Bundle.req_hint());
    private final JTextField value = new JTextField(VALUE_COLUMNS);
    private final transient BuiltFrom shown = new BuiltFrom();
    private Runnable allHold = () -> { };
    private transient Predicate<Requirement> elsewhere = r -> false;
    private final JPanel valueLine = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), 0));

    public RequirementsList(CurrentDay current, String stageId) {
        super(new BorderLayout(0, Looks.em(0.4)));
        this.current = current;
        this.stageId = stageId;
        setOpaque(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Line());
        list.getAccessibleContext().setAccessibleName(Bundle.req_list());
        list.setName("requirements." + stageId);
        list.addListSelectionListener(e -> showCaution());
        list.setBackground(Looks.ground());
        Looks.measureLinesWithWidth(list);
        for (int key : new int[] {KeyEvent.VK_ENTER, KeyEvent.VK_SPACE}) {
            list.getInputMap().put(KeyStroke.getKeyStroke(key, 0), "tick");
        }
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "tick", this::tick);
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), "untick", this::untick);
        value.addActionListener(e -> tickWithValue());
        value.getAccessibleContext().setAccessibleName(Bundle.req_value());
        valueLine.add(new JLabel(Bundle.req_value()));
        valueLine.add(value);
        valueLine.setVisible(false);
        JPanel below = Looks.column(valueLine, caution, new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0)));
        ((JPanel) below.getComponent(2)).add(Looks.button(Bundle.req_untick(), this::untick));
        add(list, BorderLayout.NORTH);
        add(below, BorderLayout.CENTER);
    }

    public void show(List<RequirementState> states) {
        if (shown.isNew(states)) {
            int selected = list.getSelectedIndex();
            model.clear();
            model.addAll(states);
            if (!states.isEmpty()) {
                list.setSelectedIndex(selected < 0 || selected >= states.size() ? firstOpen(0) : selected);
            }
        }
        showCaution();
    }

    /** What follows when the last open condition has been recorded. */
    public void onAllHold(Runnable next) {
        allHold = next;
    }

    /**
     * Conditions that are not recorded by a tick here.
     *
     * @param goes true where the condition is seen to elsewhere and the keyboard has been taken there
     */
    public void onTick(Predicate<Requirement> goes) {
        elsewhere = goes;
    }

    private int firstOpen(int from) {
        for (int i = 0; i < model.size(); i++) {
            int index = (from + i) % model.size();
            if (!model.get(index).holds()) {
                return index;
            }
        }
        return Math.min(from, model.size() - 1);
    }

    /** Puts the keyboard on the first condition that does not hold. */
    public void toFirst() {
        if (!model.isEmpty()) {
            list.setSelectedIndex(firstOpen(0));
        }
        focusSelected();
    }

    /** The keyboard goes to the list, or to the value where the selected condition wants one. */
    private void focusSelected() {
        if (valueLine.isVisible()) {
            value.requestFocusInWindow();
            Looks.reveal(value);
        } else {
            list.requestFocusInWindow();
            Looks.reveal(list);
        }
    }

    private Optional<RequirementState> selected() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void showCaution() {
        boolean wantsValue = selected().filter(s -> !s.holds() && s.requirement().value().isEmpty()).isPresent();
        valueLine.setVisible(wantsValue);
        caution.setText(selected().filter(s -> !s.holds()).flatMap(s -> s.requirement().caution()).orElse(Bundle.req_hint()));
    }

    private void tick() {
        Optional<RequirementState> state = selected().filter(s -> !s.holds());
        if (state.isEmpty()) {
            list.setSelectedIndex(firstOpen(Math.max(0, list.getSelectedIndex())));
        } else if (state.get().requirement().value().isEmpty()) {
            value.requestFocusInWindow();
            caution.setText(Bundle.req_typeValue());
        } else if (!elsewhere.test(state.get().requirement())) {
            recordAndGoOn(state.get().requirement(), state.get().requirement().value());
        }
    }

    private void tickWithValue() {
        String typed = value.getText().strip();
        selected().filter(s -> !typed.isEmpty()).ifPresent(s -> {
            try {
                if (recordAndGoOn(s.requirement(), ConditionFigure.of(s.requirement().key(), typed))) {
                    value.setText("");
                }
            } catch (IllegalArgumentException e) {
                caution.setText(Bundle.req_problem(s.requirement().words(), e.getLocalizedMessage()));
                value.selectAll();
            }
        });
    }

    private boolean recordAndGoOn(Requirement requirement, String recorded) {
        int at = list.getSelectedIndex();
        boolean done = current.record(stageId, h -> new Entry.Condition(h, requirement.key(), recorded, ""));
        if (done && !model.isEmpty()) {
            list.setSelectedIndex(firstOpen(at));
            boolean open = selected().filter(s -> !s.holds()).isPresent();
            if (open) {
                focusSelected();
            } else {
                list.requestFocusInWindow();
                allHold.run();
            }
        }
        return done;
    }

    private void untick() {
        selected().filter(RequirementState::holds).ifPresent(s -> current.record(stageId, h -> new Entry.Condition(h,
                s.requirement().key(), opposite(s.requirement()), "")));
    }

    /** What is recorded where a condition no longer holds. */
    static String opposite(Requirement requirement) {
        if (requirement.key().equals(Conditions.BRAKES)) {
            return requirement.value().equals(Conditions.FREE) ? Conditions.ON : Conditions.FREE;
        }
        return OPPOSITE.getOrDefault(requirement.value(), Conditions.NO);
    }

    /** The box and the words, which wrap where the list is narrow. */
    private static final class Line implements ListCellRenderer<RequirementState> {
        private final JLabel box = new JLabel();
        private final WrapText words = new WrapText("");
        private final JPanel line = new JPanel(new BorderLayout(Looks.em(0.5), 0));

        Line() {
            line.setBorder(Looks.padding(0.2, 0.3));
            box.setVerticalAlignment(SwingConstants.TOP);
            line.add(box, BorderLayout.LINE_START);
            line.add(words, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(JList<? extends RequirementState> in, RequirementState state, int index,
                boolean selected, boolean focused) {
            String said = state.requirement().words();
            words.setText(said);
            words.setFont(Looks.font(1.1, state.holds() ? Font.PLAIN : Font.BOLD));
            words.setForeground(selected ? in.getSelectionForeground() : in.getForeground());
            box.setForeground(words.getForeground());
            box.setIcon(state.holds() ? Mark.SIGNED.icon() : Mark.READY.icon());
            line.setBackground(selected ? in.getSelectionBackground() : in.getBackground());
            words.setSize(Math.max(Looks.em(10), in.getWidth() - Looks.em(0.6) - Looks.em(0.5) - box.getPreferredSize().width), Short.MAX_VALUE);
            line.getAccessibleContext().setAccessibleName(state.holds() ? Bundle.req_done(said) : Bundle.req_open(said));
            return line;
        }
    }
}
