package quoin.preparation.condition;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.preparation.sheet.Page;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.WrapText;
import quoin.workflow.CarCheck;

/** The check of the car before the day: a list to tick, leave open with a reason, or lengthen. */
@Messages({
    "page.condition=Car &inspected", "condition.list=Wheels off, car on stands", "condition.springs=Springs pressed over a scale",
    "condition.end=Rod end", "condition.about=How, and how good",
    "condition.lift=Before you lift: hard level floor, the car's own lifting points, jack and stands within their rated load, wheels that stay down chocked. Stands with their own pins under the frame at once, the jack left as a second support, a shake test before you go under. Never under a car on a jack or on blocks, never under a car that stands on scales (HSE, Working under vehicles, HSG261; 29 CFR 1926.305). Local rules and a qualified person come first.",
    "condition.good=Good (&Y)", "condition.open=Leave open (&Z)", "condition.untick=Not looked at (&X)", "condition.reason=Reason", "condition.add=Own item",
    "condition.sound=Car is sound: reco&rd it",
    "condition.hint=Enter or space: good. Insert: leave open with a reason. Delete: not looked at, or an own item off the list.",
    "condition.reasonHint=Type why it stays open, then Enter. It shows when the day is closed.",
    "# {0} - reason", "condition.why=left open: {0}", "condition.noReason=left open, no reason yet",
    "# {0} - item", "# {1} - state", "condition.spoken={0}: {1}", "condition.isGood=good", "condition.isNot=not looked at",
    "# {0} - open items", "condition.soundWith=left open: {0}", "condition.recorded=The car is recorded as sound.",
    "# {0} - number", "condition.left=Still to be looked at, or without a reason: {0}."})
public final class ConditionPage implements Page {

    private static final int COLUMNS = 18;

    private final CurrentDay current;
    private final String stage;
    private final DefaultListModel<CarItem> model = new DefaultListModel<>();
    private final JList<CarItem> list = new JList<>(model);
    private final JTextField reason = new JTextField(COLUMNS);
    private final JTextField own = new JTextField(COLUMNS);
    private final WrapText how = new WrapText("", 1.05, Font.PLAIN);
    private final WrapText message = new WrapText(Bundle.condition_hint());
    private final SpringsForm springs;
    private final JPanel component;
    private DaySnapshot day;

    /** @param stage stage the check is recorded in */
    public ConditionPage(CurrentDay current, String stage) {
        this.current = current;
        this.stage = stage;
        springs = new SpringsForm(current, stage);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Line());
        list.setBackground(Looks.ground());
        list.setName("car-check");
        list.getAccessibleContext().setAccessibleName(Bundle.condition_list());
        list.addListSelectionListener(e -> showSelected());
        Looks.measureLinesWithWidth(list);
        key(KeyEvent.VK_ENTER, "good", this::good);
        key(KeyEvent.VK_SPACE, "goodToo", this::good);
        key(KeyEvent.VK_INSERT, "open", this::leaveOpen);
        key(KeyEvent.VK_DELETE, "untick", this::untick);
        reason.addActionListener(e -> recordOpen());
        reason.getAccessibleContext().setAccessibleName(Bundle.condition_reason());
        own.addActionListener(e -> add());
        own.getAccessibleContext().setAccessibleName(Bundle.condition_add());
        JComponent left = Looks.section(Bundle.condition_list(), Looks.column(message, wide(list), texts(), buttons()));
        JComponent right = Looks.column(Looks.section(Bundle.condition_about(), how),
                Looks.section(Bundle.condition_springs(), springs.springs()), Looks.section(Bundle.condition_end(), springs.rodEnd()));
        WrapText caution = new WrapText(Bundle.condition_lift());
        caution.setBorder(Looks.padding(0.4, 0.9));
        component = Looks.column(caution, Looks.twoColumns(left, right, 0.47));
    }

    private void key(int code, String name, Runnable action) {
        list.getInputMap().put(KeyStroke.getKeyStroke(code, 0), name);
        Looks.onKey(list, KeyStroke.getKeyStroke(code, 0), name, action);
    }

    /** As wide as the column, so that long reasons wrap late. */
    private static JPanel wide(JComponent content) {
        JPanel panel = new JPanel(new BorderLayout());
        panel.add(content, BorderLayout.CENTER);
        return panel;
    }

    private JPanel texts() {
        JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), Looks.em(0.2)));
        JLabel why = new JLabel(Bundle.condition_reason());
        why.setLabelFor(reason);
        JLabel add = new JLabel(Bundle.condition_add());
        add.setLabelFor(own);
        line.add(why);
        line.add(reason);
        JPanel second = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), Looks.em(0.2)));
        second.add(add);
        second.add(own);
        return Looks.column(line, second);
    }

    private JPanel buttons() {
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), Looks.em(0.2)));
        buttons.add(Looks.button(Bundle.condition_good(), this::good));
        buttons.add(Looks.button(Bundle.condition_open(), this::leaveOpen));
        buttons.add(Looks.button(Bundle.condition_untick(), this::untick));
        JPanel sound = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), Looks.em(0.2)));
        sound.add(Looks.button(Bundle.condition_sound(), this::sound));
        return Looks.column(buttons, sound);
    }

    @Override
    public String title() {
        return Bundle.page_condition();
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot shown) {
        day = shown;
        int selected = Math.max(0, list.getSelectedIndex());
        model.clear();
        CarItem.of(shown.day()).forEach(model::addElement);
        list.setSelectedIndex(Math.min(selected, model.size() - 1));
        springs.show(shown);
    }

    private Optional<CarItem> selected() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void showSelected() {
        how.setText(selected().map(i -> i.how().isEmpty() ? i.name() : i.how()).orElse(""));
        reason.setText(selected().filter(CarItem::isOpen).flatMap(CarItem::state).map(CarCheck.Item::reason).orElse(""));
    }

    private boolean record(CarItem item, String value, String words) {
        return current.record(stage, h -> new Entry.Condition(h, item.key(), value, words));
    }

    private void good() {
        selected().ifPresent(item -> {
            if (item.isGood() || record(item, CarCheck.GOOD, "")) {
                next();
            }
        });
    }

    /** On to the next item that is not seen to. */
    private void next() {
        int at = list.getSelectedIndex();
        for (int i = 1; i <= model.size(); i++) {
            int index = (at + i) % model.size();
            if (!model.get(index).isSeenTo()) {
                list.setSelectedIndex(index);
                list.ensureIndexIsVisible(index);
                break;
            }
        }
        message.setText(Bundle.condition_hint());
        list.requestFocusInWindow();
    }

    private void leaveOpen() {
        message.setText(Bundle.condition_reasonHint());
        reason.requestFocusInWindow();
    }

    private void recordOpen() {
        String why = reason.getText().strip();
        if (why.isEmpty()) {
            message.setText(Bundle.condition_reasonHint());
            return;
        }
        selected().filter(i -> record(i, CarCheck.OPEN, why)).ifPresent(i -> next());
    }

    private void untick() {
        selected().filter(i -> i.state().isPresent()).ifPresent(i -> record(i, i.isOwn() ? CarCheck.GONE : Conditions.NO, ""));
    }

    private void add() {
        String name = own.getText().strip();
        if (!name.isEmpty() && current.record(stage, h -> new Entry.Condition(h, CarCheck.ownKey(name), Conditions.NO, ""))) {
            own.setText("");
            list.setSelectedIndex(model.size() - 1);
            list.requestFocusInWindow();
        }
    }

    /** Records the car as sound once every item was seen to; what is left open is named with it. */
    private void sound() {
        if (day == null) {
            return;
        }
        List<CarItem> items = CarItem.of(day.day());
        long left = items.stream().filter(i -> !i.isSeenTo()).count();
        if (left > 0) {
            message.setText(Bundle.condition_left(Long.toString(left)));
            return;
        }
        List<String> open = items.stream().filter(CarItem::isOpen).map(CarItem::name).toList();
        String words = open.isEmpty() ? "" : Bundle.condition_soundWith(String.join(", ", open));
        if (current.record(stage, h -> new Entry.Condition(h, Conditions.SOUND, Conditions.YES, words))) {
            message.setText(Bundle.condition_recorded());
        }
    }

    @Override
    public void toFirst() {
        list.requestFocusInWindow();
    }

    /** Shape, name and what was found; long reasons wrap. */
    private static final class Line implements ListCellRenderer<CarItem> {
        private final JLabel box = new JLabel();
        private final WrapText words = new WrapText("");
        private final JPanel line = new JPanel(new BorderLayout(Looks.em(0.5), 0));

        Line() {
            line.setBorder(Looks.padding(0.12, 0.3));
            box.setVerticalAlignment(JLabel.TOP);
            line.add(box, BorderLayout.LINE_START);
            line.add(words, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(JList<? extends CarItem> in, CarItem item, int index, boolean selected, boolean focused) {
            String why = item.state().map(CarCheck.Item::reason).filter(r -> !r.isBlank()).map(Bundle::condition_why)
                    .orElse(Bundle.condition_noReason());
            words.setText(item.isOpen() ? Bundle.condition_spoken(item.name(), why) : item.name());
            words.setFont(Looks.font(1.05, item.isGood() ? Font.PLAIN : Font.BOLD));
            words.setForeground(selected ? in.getSelectionForeground() : in.getForeground());
            box.setForeground(words.getForeground());
            box.setIcon((item.isGood() ? Mark.SIGNED : item.isOpen() ? Mark.AGAIN : Mark.READY).icon());
            line.setBackground(selected ? in.getSelectionBackground() : in.getBackground());
            words.setSize(Math.max(Looks.em(10), in.getWidth() - Looks.em(1.1) - box.getPreferredSize().width), Short.MAX_VALUE);
            line.getAccessibleContext().setAccessibleName(Bundle.condition_spoken(item.name(),
                    item.isGood() ? Bundle.condition_isGood() : item.isOpen() ? why : Bundle.condition_isNot()));
            return line;
        }
    }
}
