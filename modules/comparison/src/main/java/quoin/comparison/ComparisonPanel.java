package quoin.comparison;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.Font;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.openide.awt.Actions;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.DayShelf;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.SaveFile;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapLayout;
import quoin.workbench.WrapText;
import quoin.workflow.CarState;
import quoin.workflow.StateComparison;

/** Two states side by side: what is chosen, the table, the chart, what stands otherwise. */
@Messages({
    "compare.from=&First:", "compare.to=Se&cond:", "compare.part=Sho&w:",
    "compare.all=All readings", "compare.weights=Weights and heights", "compare.angles=Angles",
    "compare.asFound=&As found and now", "compare.reweigh=&Before and after the re-weigh", "compare.lastTime=&Last time and now",
    "compare.target=Tar&get and now", "compare.driver=An&other driver", "compare.swap=Swap (&X)",
    "compare.page=As a &page...", "compare.chart=Save cha&rt...", "compare.chartTitle=Save the chart of the differences",
    "compare.headLast=Last time", "compare.headNow=Now", "compare.headChange=Change",
    "# {0} - first", "# {1} - second", "compare.chartName={0}, {1}",
    "compare.noDay=Open a day first: File, Open Day.",
    "compare.noOther=There is no other day of this car yet.", "compare.noDriver=No other day of this car names another driver.",
    "compare.nothing=Nothing of this kind was read in either state yet. Read it first, or choose another kind beside Show.",
    "compare.unreadable=That day cannot be read.",
    "compare.legend=± is the noise band of the difference: an unchanged car reads within it 19 times in 20. Inside it: no change.",
    "# {0} - adjusters", "compare.positions=Adjusters that stand otherwise: {0}",
    "# {0} - adjuster", "# {1} - length", "compare.position={0} {1}"})
final class ComparisonPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final String CATEGORY = "Day";
    /** Where another module may have put the page of last time, now and the change; its button is there when the action is. */
    private static final String LAST_TIME_PAGE = "quoin.setupsheet.ShowLastTimeAction";
    private static final StateComparison.Part[] PARTS = StateComparison.Part.values();

    private final transient CurrentDay current;
    private final transient RequestProcessor reader = new RequestProcessor("quoin comparison", 1, true);
    private final StateChooser from = new StateChooser(Bundle.compare_from(), () -> load(this.fromChooser()), this::compare);
    private final StateChooser to = new StateChooser(Bundle.compare_to(), () -> load(this.toChooser()), this::compare);
    private final JComboBox<String> part = new JComboBox<>(new String[] {Bundle.compare_all(), Bundle.compare_weights(), Bundle.compare_angles()});
    private final LinesTable table = new LinesTable();
    private final JPanel chart = new JPanel(new BorderLayout());
    private final WrapText message = new WrapText(Bundle.compare_legend());
    private final WrapText positions = new WrapText("", 1.05, Font.PLAIN);
    private transient Path shelfFolder;
    private transient DayShelf shelf;
    private transient Runnable whenListed;
    private transient Optional<DayInfo> lastTime = Optional.empty();
    private transient StateComparison shown;

    ComparisonPanel(CurrentDay current) {
        super(new BorderLayout(0, Looks.em(0.5)));
        this.current = current;
        setBorder(Looks.padding(0.6, 0.9));
        // The buttons wrap and the table scrolls: what they would like to have must not push the window off the screen.
        setMinimumSize(new java.awt.Dimension(Looks.em(20), Looks.em(12)));
        part.addActionListener(e -> compare());
        JLabel show = new JLabel();
        Mnemonics.setLocalizedText(show, Bundle.compare_part());
        show.setLabelFor(part);
        JPanel presets = new JPanel(new WrapLayout());
        presets.add(Looks.button(Bundle.compare_asFound(), this::asFoundAndNow));
        presets.add(Looks.button(Bundle.compare_reweigh(), this::beforeAndAfterReweigh));
        presets.add(Looks.button(Bundle.compare_lastTime(), this::lastTime));
        presets.add(Looks.button(Bundle.compare_target(), this::targetAndNow));
        presets.add(Looks.button(Bundle.compare_driver(), this::otherDriver));
        presets.add(Looks.button(Bundle.compare_swap(), this::swap));
        Optional.ofNullable(Actions.forID(CATEGORY, LAST_TIME_PAGE)).ifPresent(page -> presets.add(Looks.button(Bundle.compare_page(),
                () -> page.actionPerformed(null))));
        presets.add(Looks.button(Bundle.compare_chart(), this::saveChart));
        to.add(show);
        to.add(part);
        add(Looks.column(presets, from, to, message), BorderLayout.NORTH);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, new JScrollPane(table), WidthOfTheWindow.scrolled(chart));
        split.setResizeWeight(0.56);
        split.setBorder(null);
        // Until something is compared the chart has no size of its own, and the table would take the window.
        chart.setPreferredSize(new java.awt.Dimension(Looks.em(27), Looks.em(18)));
        add(split, BorderLayout.CENTER);
        add(positions, BorderLayout.SOUTH);
    }

    private StateChooser fromChooser() {
        return from;
    }

    private StateChooser toChooser() {
        return to;
    }

    /** The days that were compared need not stay in memory while nobody looks: they are read again. */
    void forgetDays() {
        shelf = null;
    }

    /** The day changed, or the window comes up: the days are listed anew beside the event thread. */
    void refresh() {
        Optional<Path> folder = current.journal().map(j -> j.folder());
        if (folder.isEmpty() || current.snapshot().isEmpty()) {
            message.setText(Bundle.compare_noDay());
            return;
        }
        boolean first = !folder.get().equals(shelfFolder);
        shelfFolder = folder.get();
        shelf = first || shelf == null ? new DayShelf(shelfFolder) : shelf;
        DayShelf asked = shelf;
        DayInfo own = current.journal().orElseThrow().info();
        reader.post(() -> {
            List<DayInfo> siblings = asked.days();
            List<DayInfo> days = siblings.stream().anyMatch(d -> d.id().equals(own.id())) ? siblings : List.of(own);
            EventQueue.invokeLater(() -> listed(asked, days, own, first));
        });
    }

    private void listed(DayShelf asked, List<DayInfo> days, DayInfo own, boolean first) {
        Optional<DaySnapshot> snapshot = current.snapshot();
        if (asked != shelf || snapshot.isEmpty()) {
            return;
        }
        from.offer(days, own.id(), snapshot.get()::stageTitle);
        to.offer(days, own.id(), snapshot.get()::stageTitle);
        for (StateChooser side : List.of(from, to)) {
            if (first) {
                days.stream().filter(d -> d.id().equals(own.id())).findFirst().ifPresent(side::choose);
            }
            if (isOwn(side)) {
                side.show(Optional.of(snapshot.get().day()));
            }
        }
        if (whenListed != null) {
            whenListed.run();
            whenListed = null;
        } else if (first) {
            asFoundAndNow();
        } else {
            compare();
        }
    }

    private boolean isOwn(StateChooser side) {
        return side.day().filter(d -> d.id().equals(current.journal().orElseThrow().info().id())).isPresent();
    }

    /** Once the days are listed: the angles before and after the weights were taken again. */
    void showBeforeAndAfterReweigh() {
        whenListed = this::beforeAndAfterReweigh;
        refresh();
    }

    private void load(StateChooser side) {
        load(side, () -> { });
    }

    private void load(StateChooser side, Runnable then) {
        Optional<DayInfo> day = side.day();
        if (day.isEmpty() || current.snapshot().isEmpty()) {
            return;
        }
        Consumer<Optional<Day>> shown = d -> {
            side.show(d);
            message.setText(d.isPresent() ? Bundle.compare_legend() : Bundle.compare_unreadable());
            then.run();
            compare();
        };
        if (isOwn(side)) {
            shown.accept(current.snapshot().map(DaySnapshot::day));
            return;
        }
        DayShelf asked = shelf;
        if (asked == null) {
            return;
        }
        reader.post(() -> {
            Optional<Day> read = asked.day(day.get());
            EventQueue.invokeLater(() -> {
                if (side.day().equals(day)) {
                    shown.accept(read);
                }
            });
        });
    }

    private void own(Runnable then) {
        Optional<String> id = current.journal().map(j -> j.info().id());
        List<DayInfo> days = shelf == null || id.isEmpty() ? List.of() : List.of(current.journal().orElseThrow().info());
        days.forEach(d -> {
            from.choose(d);
            to.choose(d);
        });
        load(from, () -> load(to, then));
    }

    private void asFoundAndNow() {
        own(() -> {
            from.choose(Moment.Kind.AS_FOUND, Moment.Kind.ROUND);
            to.choose(Moment.Kind.LAST);
        });
    }

    private void beforeAndAfterReweigh() {
        part.setSelectedIndex(StateComparison.Part.ANGLES.ordinal());
        own(() -> {
            from.choose(Moment.Kind.BEFORE_REWEIGH, Moment.Kind.SIGNED, Moment.Kind.AS_FOUND);
            to.choose(Moment.Kind.LAST);
        });
    }

    private void targetAndNow() {
        own(() -> {
            from.chooseTarget();
            to.choose(Moment.Kind.LAST);
        });
    }

    private void lastTime() {
        other(s -> current.journal().flatMap(j -> s.lastTime(j.info().id())), Bundle.compare_noOther(), found -> lastTime = Optional.of(found));
    }

    private void otherDriver() {
        String driver = current.snapshot().map(s -> s.day().driver()).orElse("");
        other(s -> current.journal().flatMap(j -> s.otherDriver(j.info().id(), driver)), Bundle.compare_noDriver(), found -> { });
    }

    private void other(Function<DayShelf, Optional<DayInfo>> which, String none, Consumer<DayInfo> then) {
        if (shelf == null || current.journal().isEmpty()) {
            return;
        }
        DayShelf asked = shelf;
        reader.post(() -> {
            Optional<DayInfo> found = which.apply(asked);
            EventQueue.invokeLater(() -> {
                if (found.isEmpty()) {
                    message.setText(none);
                } else {
                    then.accept(found.get());
                    own(() -> {
                        to.choose(Moment.Kind.LAST);
                        from.choose(found.get());
                        load(from, () -> from.choose(Moment.Kind.LAST));
                    });
                }
            });
        });
    }

    private void swap() {
        Optional<DayInfo> first = from.day();
        Optional<DayInfo> second = to.day();
        Optional<Moment> firstMoment = from.moment();
        Optional<Moment> secondMoment = to.moment();
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        from.choose(second.get());
        to.choose(first.get());
        load(from, () -> {
            from.choose(secondMoment);
            load(to, () -> to.choose(firstMoment));
        });
    }

    private void compare() {
        Optional<CarState> first = from.state();
        Optional<CarState> second = to.state();
        Optional<DaySnapshot> snapshot = current.snapshot();
        if (first.isEmpty() || second.isEmpty() || snapshot.isEmpty()) {
            return;
        }
        StateComparison compared = StateComparison.of(first.get(), second.get(), PARTS[Math.max(0, part.getSelectedIndex())]);
        shown = compared;
        table.show(compared.lines(), heads(), snapshot.get().format());
        chart.removeAll();
        chart.setPreferredSize(null);
        chart.add(compared.lines().isEmpty() ? new WrapText(Bundle.compare_nothing(), 1.2, Font.PLAIN)
                : DifferenceChart.of(compared, snapshot.get().format()), BorderLayout.CENTER);
        chart.revalidate();
        positions.setText(compared.positions().isEmpty() ? "" : Bundle.compare_positions(words(compared, snapshot.get())));
    }

    /** Heads of the columns: what is compared, in a word or two each. */
    private List<String> heads() {
        boolean lastAndNow = lastTime.isPresent() && from.day().equals(lastTime) && from.isLast() && isOwn(to) && to.isLast();
        return lastAndNow ? List.of(Bundle.compare_headLast(), Bundle.compare_headNow(), Bundle.compare_headChange())
                : List.of(from.head(isOwn(from)), to.head(isOwn(to)), Bundle.table_difference());
    }

    private void saveChart() {
        Optional<DaySnapshot> snapshot = current.snapshot();
        if (shown != null && snapshot.isPresent()) {
            String title = Bundle.compare_chartName(snapshot.get().car().name(), String.join(" – ", heads().subList(0, 2)));
            StateComparison compared = shown;
            SaveFile.ask(ComparisonPanel.class, Bundle.compare_chartTitle(),
                    SaveFile.chart(() -> DifferenceChart.chart(compared, snapshot.get().format(), Charts.print(), title)));
        }
    }

    private static String words(StateComparison compared, DaySnapshot day) {
        QuantityFormat length = QuantityFormat.of(day.units().preferences().withDecimals(Dimension.LENGTH, 2)).signed();
        return compared.positions().entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(e -> Bundle.compare_position(e.getKey().words(), length.text(e.getValue(), Dimension.LENGTH)))
                .collect(Collectors.joining(", "));
    }

    void toChoice() {
        table.requestFocusInWindow();
    }
}
