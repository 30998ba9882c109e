package quoin.comparison;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workflow.CarState;

/** One side of a comparison: which day, and which moment of it or its targets. */
@Messages({"chooser.day=day", "chooser.moment=state", "# {0} - which", "# {1} - what", "chooser.spoken={0}, {1}",
    "# {0} - day", "chooser.thisDay={0} (this day)"})
final class StateChooser extends JPanel {

    private static final long serialVersionUID = 1L;

    /**
     * What is chosen in the second list.
     *
     * @param moment of the day; empty = its targets
     */
    record Choice(Optional<Moment> moment) {
        boolean is(Moment.Kind kind) {
            return moment.filter(m -> m.kind() == kind).isPresent();
        }
    }

    private final JComboBox<DayInfo> days = new JComboBox<>();
    private final JComboBox<Choice> moments = new JComboBox<>();
    private transient UnaryOperator<String> stageTitle = id -> id;
    private String openDay = "";
    private transient Optional<Day> shown = Optional.empty();
    private boolean quiet;

    /**
     * @param label        with its mnemonic
     * @param dayChosen    run when another day was chosen, whose entries have to be shown then
     * @param momentChosen run when another state was chosen
     */
    StateChooser(String label, Runnable dayChosen, Runnable momentChosen) {
        super(new FlowLayout(FlowLayout.LEADING, Looks.em(0.4), 0));
        JLabel name = new JLabel();
        Mnemonics.setLocalizedText(name, label);
        name.setLabelFor(days);
        name.setPreferredSize(new Dimension(Looks.em(4.5), name.getPreferredSize().height));
        days.getAccessibleContext().setAccessibleName(Bundle.chooser_spoken(name.getText(), Bundle.chooser_day()));
        moments.getAccessibleContext().setAccessibleName(Bundle.chooser_spoken(name.getText(), Bundle.chooser_moment()));
        days.setRenderer(new InWords());
        moments.setRenderer(new InWords());
        days.addActionListener(e -> tell(dayChosen));
        moments.addActionListener(e -> tell(momentChosen));
        add(name);
        add(days);
        add(moments);
    }

    private void tell(Runnable listener) {
        if (!quiet) {
            listener.run();
        }
    }

    /** Offers these days and keeps the choice where it is still among them. */
    void offer(List<DayInfo> known, String open, UnaryOperator<String> titles) {
        openDay = open;
        stageTitle = titles;
        Optional<DayInfo> before = day();
        quietly(() -> {
            days.setModel(new DefaultComboBoxModel<>(known.toArray(DayInfo[]::new)));
            before.flatMap(b -> known.stream().filter(d -> d.id().equals(b.id())).findFirst())
                    .or(() -> known.stream().filter(d -> d.id().equals(open)).findFirst()).ifPresent(days::setSelectedItem);
        });
    }

    /** Shows the moments of the day chosen, keeping the choice of the same kind. */
    void show(Optional<Day> day) {
        shown = day;
        Choice before = (Choice) moments.getSelectedItem();
        quietly(() -> {
            DefaultComboBoxModel<Choice> model = new DefaultComboBoxModel<>();
            day.ifPresent(d -> {
                Moment.of(d).forEach(m -> model.addElement(new Choice(Optional.of(m))));
                model.addElement(new Choice(Optional.empty()));
            });
            moments.setModel(model);
            choose(before);
        });
    }

    private void choose(Choice like) {
        int size = moments.getItemCount();
        int found = Math.max(0, size - 2);
        for (int i = 0; i < size && like != null; i++) {
            Choice other = moments.getItemAt(i);
            boolean same = other.equals(like) || other.moment().isPresent() && like.moment().isPresent()
                    && other.moment().get().kind() == like.moment().get().kind() && other.moment().get().round() == like.moment().get().round()
                    && other.moment().get().stage().equals(like.moment().get().stage());
            found = same ? i : found;
        }
        if (size > 0) {
            moments.setSelectedIndex(found);
        }
    }

    /** Chooses a day without telling. */
    void choose(DayInfo day) {
        quietly(() -> days.setSelectedItem(day));
    }

    /** Chooses the last of these kinds that the day has, in the order given; the last state where it has none. */
    void choose(Moment.Kind... kinds) {
        quietly(() -> {
            for (Moment.Kind kind : kinds) {
                for (int i = moments.getItemCount() - 1; i >= 0; i--) {
                    if (moments.getItemAt(i).is(kind)) {
                        moments.setSelectedIndex(i);
                        return;
                    }
                }
            }
            moments.setSelectedIndex(moments.getItemCount() - 2);
        });
    }

    /** Chooses a moment of the day, or its targets; the last state where the day has no such moment. */
    void choose(Optional<Moment> moment) {
        if (moment.isEmpty()) {
            chooseTarget();
        } else {
            quietly(() -> choose(new Choice(moment)));
        }
    }

    void chooseTarget() {
        quietly(() -> moments.setSelectedIndex(moments.getItemCount() - 1));
    }

    private void quietly(Runnable change) {
        boolean before = quiet;
        quiet = true;
        change.run();
        quiet = before;
    }

    Optional<DayInfo> day() {
        return Optional.ofNullable((DayInfo) days.getSelectedItem());
    }

    /** The moment chosen; empty where it is the targets or nothing. */
    Optional<Moment> moment() {
        return Optional.ofNullable((Choice) moments.getSelectedItem()).flatMap(Choice::moment);
    }

    /** The state chosen; empty where its day is not read yet or cannot be read. */
    Optional<CarState> state() {
        Choice choice = (Choice) moments.getSelectedItem();
        return shown.filter(d -> choice != null).map(d -> choice.moment().map(m -> CarState.at(day().map(DayInfo::id).orElse(""), d, m.entry()))
                .orElseGet(() -> CarState.targets(d)));
    }

    /** True where the last state of its day is chosen. */
    boolean isLast() {
        return moment().filter(m -> m.kind() == Moment.Kind.LAST).isPresent();
    }

    /** What is chosen, short enough for the head of a column: the date where it is another day's last state, else the moment. */
    String head(boolean ownDay) {
        Optional<String> other = day().filter(d -> !ownDay && isLast()).map(d -> ComparisonWords.date(d.created()));
        return other.orElseGet(() -> moment().map(m -> ComparisonWords.moment(m.kind(), m.round(), m.stage(), stageTitle))
                .orElseGet(Bundle::moment_target));
    }

    void toDay() {
        days.requestFocusInWindow();
    }

    private final class InWords extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String words = "";
            if (value instanceof DayInfo day) {
                words = day.id().equals(openDay) ? Bundle.chooser_thisDay(ComparisonWords.day(day)) : ComparisonWords.day(day);
            } else if (value instanceof Choice choice) {
                words = choice.moment().map(m -> ComparisonWords.moment(m, stageTitle)).orElseGet(Bundle::moment_target);
            }
            return super.getListCellRendererComponent(list, words, index, selected, focused);
        }
    }
}
