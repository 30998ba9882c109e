package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.QuantityFormatException;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.WrapLayout;
import quoin.workbench.WrapText;
import quoin.workflow.Loosened;

/**
 * The list of everything loosened today, to tick off with the torque. Enter in the torque field ticks the selected one and
 * goes to the next that is open; words in place of a figure say why no torque is known. The last tick records that every nut is tight.
 */
@Messages({
    "nuts.list=Loosened today",
    "nuts.none=Nothing was loosened today.",
    "# {0} - part", "nuts.open={0}",
    "# {0} - part", "# {1} - torque", "nuts.torque={0}: {1}",
    "# {0} - part", "nuts.tight={0}: tight, no torque recorded",
    "# {0} - part", "# {1} - why no torque", "nuts.instead={0}: {1}",
    "nuts.handTight=hand-tight, no torque known", "nuts.handTightButton=Hand-tight, no torque known (&Y)",
    "# {0} - part", "nuts.needed={0}: type the torque, or in words why none is known; = takes the last torque.",
    "# {0} - part", "nuts.sayOpen={0}, still open",
    "# {0} - unit", "nuts.torqueLabel=Tor&que, {0}",
    "nuts.tick=Tick off", "nuts.untick=Open again", "nuts.part=Also loosened", "nuts.add=Add",
    "nuts.hint=Torque from the maker of that rod end, then Enter; = takes the last one. Where none is known, say so in words. Hold the rod: the nut turns it. Paint a line across nut and rod.",
    "nuts.safety=At least 1.5 thread diameters in, or past the witness hole; a nylon nut is used once. The local rules and a qualified person come first.",
    "# {0} - problem", "nuts.problem=Torque: {0}.",
    "# {0} - typed", "nuts.impossible=Torque: {0} cannot be right; give what the wrench was set to, or say in words why no torque is known.",
    "nuts.partEmpty=Name the part in the field first.",
    "nuts.done=Every nut is ticked and recorded as tight."})
final class NutsPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int TORQUE_COLUMNS = 8;
    private static final String SAME = "=";
    private static final int PART_COLUMNS = 14;
    /** No nut of a racing car's suspension wants more; a wheel nut may come near. */
    private static final double MOST_NM = 1000;

    private final transient CurrentDay current;
    private final DefaultListModel<Loosened> model = new DefaultListModel<>();
    private final JList<Loosened> list = new JList<>(model);
    private final JTextField torque = Looks.field(TORQUE_COLUMNS, 1.1, Font.BOLD);
    private final JTextField part = new JTextField(PART_COLUMNS);
    private final JLabel torqueLabel = new JLabel();
    private final WrapText message = new WrapText(Bundle.nuts_hint());
    private final WrapText none = new WrapText(Bundle.nuts_none());
    private final JPanel ticking = new JPanel(new WrapLayout());
    private transient DaySnapshot shown;
    private String lastTorque = "";

    NutsPanel(CurrentDay current) {
        super(new BorderLayout(0, Looks.em(0.4)));
        this.current = current;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Line());
        list.setBackground(Looks.ground());
        list.setName("loosened");
        list.getAccessibleContext().setAccessibleName(Bundle.nuts_list());
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "toTorque", torque::requestFocusInWindow);
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), "untick", this::untick);
        torque.addActionListener(e -> tick());
        torque.setName("torque");
        for (int key : new int[] {KeyEvent.VK_UP, KeyEvent.VK_DOWN}) {
            int step = key == KeyEvent.VK_UP ? -1 : 1;
            torque.getInputMap().put(KeyStroke.getKeyStroke(key, 0), "step" + key);
            Looks.onKey(torque, KeyStroke.getKeyStroke(key, 0), "step" + key, () -> select(list.getSelectedIndex() + step));
        }
        part.addActionListener(e -> addPart());
        torqueLabel.setLabelFor(torque);
        ticking.add(torqueLabel);
        ticking.add(torque);
        ticking.add(Looks.button(Bundle.nuts_tick(), this::tick));
        ticking.add(Looks.button(Bundle.nuts_handTightButton(), () -> chosen().ifPresent(l -> record(l, Loosened.TIGHT, Bundle.nuts_handTight()))));
        ticking.add(Looks.button(Bundle.nuts_untick(), this::untick));
        JLabel partLabel = new JLabel();
        Mnemonics.setLocalizedText(partLabel, Bundle.nuts_part());
        partLabel.setLabelFor(part);
        JPanel adding = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), 0));
        adding.add(partLabel);
        adding.add(part);
        adding.add(Looks.button(Bundle.nuts_add(), this::addPart));
        // The field stands above the list: on a long day the list alone fills the window.
        add(Looks.column(none, ticking, message, list), BorderLayout.NORTH);
        add(Looks.column(new WrapText(Bundle.nuts_safety()), adding), BorderLayout.CENTER);
    }

    void show(DaySnapshot day) {
        shown = day;
        int selected = list.getSelectedIndex();
        model.clear();
        Loosened.of(day.day()).forEach(model::addElement);
        none.setVisible(model.isEmpty());
        ticking.setVisible(!model.isEmpty());
        Mnemonics.setLocalizedText(torqueLabel, Bundle.nuts_torqueLabel(day.units().preferences().unit(Dimension.TORQUE).symbol()));
        select(selected < 0 ? firstOpen(0) : Math.min(selected, model.size() - 1));
    }

    private void select(int index) {
        if (index >= 0 && index < model.size()) {
            list.setSelectedIndex(index);
        }
    }

    private int firstOpen(int from) {
        for (int i = 0; i < model.size(); i++) {
            int at = (from + i) % model.size();
            if (!model.get(at).isTicked()) {
                return at;
            }
        }
        return model.isEmpty() ? -1 : Math.min(from, model.size() - 1);
    }

    private Optional<Loosened> chosen() {
        return Optional.ofNullable(list.getSelectedValue()).filter(l -> shown != null);
    }

    /** A figure is a torque, words say why there is none; an empty field ticks nothing. */
    private void tick() {
        Optional<Loosened> chosen = chosen();
        if (chosen.isEmpty()) {
            return;
        }
        String typed = torque.getText().strip();
        String text = typed.equals(SAME) ? lastTorque : typed;
        if (text.isEmpty()) {
            message.setText(Bundle.nuts_needed(chosen.get().words()));
            torque.requestFocusInWindow();
        } else if (Character.isLetter(text.codePointAt(0))) {
            record(chosen.get(), Loosened.TIGHT, text);
        } else {
            torqueOf(text).ifPresent(nm -> {
                lastTorque = text;
                record(chosen.get(), String.format(Locale.ROOT, "%.1f", nm), "");
            });
        }
    }

    /** The torque typed, N m; empty where it cannot be one, which the message then says. */
    private Optional<Double> torqueOf(String text) {
        try {
            double nm = Quantities.parse(text, Dimension.TORQUE, shown.units().preferences());
            if (nm > 0 && nm <= MOST_NM) {
                return Optional.of(nm);
            }
            message.setText(Bundle.nuts_impossible(text));
        } catch (QuantityFormatException e) {
            message.setText(Bundle.nuts_problem(e.problem() + "; " + e.remedy()));
        }
        torque.requestFocusInWindow();
        return Optional.empty();
    }

    private void record(Loosened chosen, String value, String instead) {
        int at = list.getSelectedIndex();
        if (current.record(FinalRecheckWindow.STAGE, h -> new Entry.Condition(h, chosen.key(), value, instead))) {
            torque.setText("");
            message.setText(Bundle.nuts_hint());
            select(firstOpen(at));
            torque.requestFocusInWindow();
            allTicked();
        }
    }

    private void allTicked() {
        List<Loosened> all = Loosened.of(shown.day());
        boolean known = shown.day().condition(Conditions.LOCKNUTS).filter(Conditions.YES::equals).isPresent()
                && shown.day().conditionEntry(Conditions.LOCKNUTS).orElseThrow().number() > all.stream().mapToLong(Loosened::loosened).max().orElse(0);
        if (Loosened.open(all).isEmpty() && !known
                && current.record(FinalRecheckWindow.STAGE, h -> new Entry.Condition(h, Conditions.LOCKNUTS, Conditions.YES, ""))) {
            message.setText(Bundle.nuts_done());
        }
    }

    private void untick() {
        Optional.ofNullable(list.getSelectedValue()).filter(Loosened::isTicked).ifPresent(l -> current.record(FinalRecheckWindow.STAGE,
                h -> new Entry.Condition(h, l.key(), Conditions.NO, "")));
    }

    private void addPart() {
        String words = part.getText().strip();
        if (words.isEmpty()) {
            message.setText(Bundle.nuts_partEmpty());
            part.requestFocusInWindow();
        } else if (current.record(FinalRecheckWindow.STAGE, h -> new Entry.Condition(h, Loosened.keyOfPart(words), Loosened.LOOSE, ""))) {
            part.setText("");
        }
    }

    /** Puts the keyboard on the first that is open. */
    void toFirst() {
        select(firstOpen(0));
        torque.requestFocusInWindow();
        Looks.reveal(torque);
    }

    boolean isOpen() {
        for (int i = 0; i < model.size(); i++) {
            if (!model.get(i).isTicked()) {
                return true;
            }
        }
        return false;
    }

    private String words(Loosened item) {
        if (!item.isTicked()) {
            return Bundle.nuts_open(item.words());
        }
        if (item.torqueNm().isPresent()) {
            return Bundle.nuts_torque(item.words(), QuantityFormat.of(shown.units().preferences())
                    .text(item.torqueNm().getAsDouble(), Dimension.TORQUE));
        }
        return item.instead().isBlank() ? Bundle.nuts_tight(item.words()) : Bundle.nuts_instead(item.words(), item.instead());
    }

    private final class Line extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> in, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(in, value, index, selected, focused);
            Loosened item = (Loosened) value;
            setText(words(item));
            setFont(Looks.font(1.1, item.isTicked() ? Font.PLAIN : Font.BOLD));
            setIcon(item.isTicked() ? Mark.SIGNED.icon() : Mark.READY.icon());
            getAccessibleContext().setAccessibleName(item.isTicked() ? words(item) : Bundle.nuts_sayOpen(item.words()));
            return this;
        }
    }
}
