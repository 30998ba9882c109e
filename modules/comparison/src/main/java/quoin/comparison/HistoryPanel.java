package quoin.comparison;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import quoin.car.AdjusterId;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.DayShelf;
import quoin.logbook.Entry;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.ReadingFormat;
import quoin.workbench.SaveFile;
import quoin.workbench.Typing;
import quoin.workbench.WrapLayout;
import quoin.workbench.WrapText;
import quoin.workflow.ObservedTurns;
import quoin.workflow.TakenOver;

/** All days of a car: search, trend of a reading, positions of the adjusters, what a turn did, what this day took over. */
@Messages({
    "history.search=Search place, driver, tyre, note (&Q):", "history.days=Days of this car",
    "history.date=Date", "history.titled=Title", "history.driver=Driver", "history.tyres=Tyres",
    "# {0} - diagonal", "history.cross={0}, %", "history.state=State",
    "history.notes=Notes", "history.closed=closed", "history.open=open",
    "history.chart=Save cha&rt...", "history.chartTitle=Save the trend", "# {0} - car", "# {1} - reading", "history.chartName={0}: {1}",
    "history.reading=Readin&g:", "history.trend=Trend", "history.adjusters=Adjusters", "history.turns=What a turn did",
    "history.adjuster=Adjuster", "history.moved=Reading", "history.observed=Observed per turn", "history.expected=Expected per turn",
    "history.rounds=Rounds", "history.ratio=Observed / expected",
    "# {0} - day", "history.turnsOf=Turns of {0}, per turn or mm of shim. ± is the 95 % band; what the other adjusters of a round were expected to do is taken off.",
    "history.noTurns=Nothing was turned on that day, or nothing was read on both sides of it.",
    "history.noDay=Open a day first: File, Open Day.", "# {0} - found", "# {1} - all", "history.found={0} of {1} days",
    "# {0} - day", "# {1} - age", "# {2} - number", "history.takenOver=This day began with what {0} taught, {1} days old then: {2} figures, widened by their age.",
    "history.nothingTaken=This day took nothing over.",
    "history.take=&Begin with what the day chosen taught", "history.decline=Do without it (&Y)", "history.nothingLearnt=That day taught nothing: nothing was turned and read.",
    "history.chooseOther=Choose another day in the list above: this one cannot begin with itself.",
    "# {0} - value", "# {1} - band", "history.band={0} ± {1}"})
final class HistoryPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);

    private final transient CurrentDay current;
    private final transient RequestProcessor reader = new RequestProcessor("quoin history", 1, true);
    private final JTextField search = new JTextField(22);
    private final JLabel found = new JLabel();
    private final PlainTable days = new PlainTable(Bundle.history_days(), List.of(Bundle.history_date(), Bundle.history_titled(),
            Bundle.history_driver(), Bundle.history_tyres(), Bundle.history_cross(Corner.crossWords()),
                    Bundle.history_state(), Bundle.history_notes()));
    private final JComboBox<ReadingId> reading = new JComboBox<>();
    private final JPanel trend = new JPanel(new BorderLayout());
    private final PlainTable positions = new PlainTable(Bundle.history_adjusters(), List.of());
    private final PlainTable turns = new PlainTable(Bundle.history_turns(), List.of(Bundle.history_adjuster(), Bundle.history_moved(),
            Bundle.history_observed(), Bundle.history_expected(), Bundle.history_ratio(), Bundle.history_rounds()));
    private final WrapText turnsOf = new WrapText("");
    private final WrapText taken = new WrapText("");
    private final JButton decline;
    private transient CarHistory all = new CarHistory(List.of());
    private transient CarHistory shown = all;
    private transient DayShelf shelf;
    private transient Path shelfFolder;
    private long asked;

    HistoryPanel(CurrentDay current) {
        super(new BorderLayout(0, Looks.em(0.4)));
        this.current = current;
        decline = Looks.button(Bundle.history_decline(), () -> TakeOver.decline(current));
        setBorder(Looks.padding(0.6, 0.9));
        setMinimumSize(new java.awt.Dimension(Looks.em(20), Looks.em(12)));
        add(top(), BorderLayout.NORTH);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, new JScrollPane(days), tabs());
        split.setResizeWeight(0.38);
        split.setBorder(null);
        add(split, BorderLayout.CENTER);
        add(bottom(), BorderLayout.SOUTH);
        days.widths(7, 12, 10, 10, 6, 6, 22);
        turns.widths(10, 14, 12, 12, 10, 6);
        days.getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                showTurns();
            }
        });
        reading.addActionListener(e -> showTrend());
        reading.setRenderer(new ReadingWords());
    }

    private JPanel top() {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, Bundle.history_search());
        label.setLabelFor(search);
        search.setName("history.search");
        search.getDocument().addDocumentListener(new Typing(this::showDays));
        search.addActionListener(e -> days.requestFocusInWindow());
        JPanel line = new JPanel(new WrapLayout());
        line.add(label);
        line.add(search);
        line.add(found);
        return line;
    }

    private JTabbedPane tabs() {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, Bundle.history_reading());
        label.setLabelFor(reading);
        JPanel choice = new JPanel(new WrapLayout());
        choice.add(label);
        choice.add(reading);
        choice.add(Looks.button(Bundle.history_chart(), this::saveChart));
        JPanel trendPart = new JPanel(new BorderLayout());
        trendPart.add(choice, BorderLayout.NORTH);
        trendPart.add(trend, BorderLayout.CENTER);
        JPanel turnPart = new JPanel(new BorderLayout(0, Looks.em(0.3)));
        turnPart.add(turnsOf, BorderLayout.NORTH);
        turnPart.add(new JScrollPane(turns), BorderLayout.CENTER);
        JTabbedPane tabs = new JTabbedPane();
        tabs.addTab(Bundle.history_trend(), trendPart);
        tabs.addTab(Bundle.history_adjusters(), new JScrollPane(positions));
        tabs.addTab(Bundle.history_turns(), turnPart);
        return tabs;
    }

    private JPanel bottom() {
        JPanel buttons = new JPanel(new WrapLayout());
        buttons.add(Looks.button(Bundle.history_take(), this::take));
        buttons.add(decline);
        return Looks.column(taken, buttons);
    }

    void toSearch() {
        search.requestFocusInWindow();
    }

    /** All the entries of all the car's days need not stay in memory while nobody looks: they are read again. */
    void forgetDays() {
        shelf = null;
    }

    /** Reads the days beside the event thread. */
    void refresh() {
        Optional<DaySnapshot> snapshot = current.snapshot();
        if (current.journal().isEmpty() || snapshot.isEmpty()) {
            found.setText(Bundle.history_noDay());
            return;
        }
        showTaken(snapshot.get());
        Path folder = current.journal().get().folder();
        if (shelf == null || !folder.equals(shelfFolder)) {
            shelfFolder = folder;
            shelf = new DayShelf(folder);
        }
        DayShelf from = shelf;
        DayInfo own = current.journal().get().info();
        Day open = snapshot.get().day();
        long number = ++asked;
        reader.post(() -> {
            List<CarHistory.Past> past = new ArrayList<>();
            from.days().stream().filter(d -> !d.id().equals(own.id())).forEach(d -> from.day(d)
                    .ifPresent(day -> past.add(CarHistory.Past.of(d.id(), d.title(), d.created(), day))));
            past.add(CarHistory.Past.of(own.id(), own.title(), own.created(), open));
            EventQueue.invokeLater(() -> {
                if (number == asked) {
                    all = new CarHistory(past);
                    showAll();
                }
            });
        });
    }

    private void showAll() {
        Object before = reading.getSelectedItem();
        reading.setModel(new DefaultComboBoxModel<>(all.readings().toArray(ReadingId[]::new)));
        if (before != null && all.readings().contains(before)) {
            reading.setSelectedItem(before);
        }
        showDays();
    }

    private void showDays() {
        if (current.snapshot().isEmpty()) {
            return;
        }
        ReadingFormat format = current.snapshot().get().format();
        shown = all.search(search.getText());
        List<CarHistory.Past> latestFirst = latestFirst();
        days.show(latestFirst.stream().map(d -> List.of(ComparisonWords.date(d.begun()), d.title(), d.driver(), d.tyres(),
                ComparisonWords.value(d.last().reading(CROSS), CROSS, format), d.closed() ? Bundle.history_closed() : Bundle.history_open(),
                d.notes())).toList());
        found.setText(Bundle.history_found(shown.days().size(), all.days().size()));
        if (days.getSelectedRow() < 0 && !latestFirst.isEmpty()) {
            days.setRowSelectionInterval(0, 0);
        }
        showTrend();
        showPositions();
        showTurns();
    }

    private List<CarHistory.Past> latestFirst() {
        List<CarHistory.Past> list = new ArrayList<>(shown.days());
        Collections.reverse(list);
        return list;
    }

    private void showTrend() {
        trend.removeAll();
        ReadingId id = (ReadingId) reading.getSelectedItem();
        if (id != null && current.snapshot().isPresent()) {
            trend.add(TrendChart.of(shown.trend(id), id, current.snapshot().get().format()), BorderLayout.CENTER);
        }
        trend.revalidate();
        trend.repaint();
    }

    private void saveChart() {
        ReadingId id = (ReadingId) reading.getSelectedItem();
        current.snapshot().filter(s -> id != null).ifPresent(s -> SaveFile.ask(HistoryPanel.class, Bundle.history_chartTitle(),
                SaveFile.chart(() -> TrendChart.chart(shown.trend(id), id, s.format(), Charts.print(),
                        Bundle.history_chartName(s.car().name(), id.words())))));
    }

    private void showPositions() {
        QuantityFormat length = QuantityFormat.of(current.units().preferences().withDecimals(Dimension.LENGTH, 1));
        List<String> heads = Stream.concat(Stream.of(Bundle.history_adjuster()), shown.days().stream().map(d -> ComparisonWords.date(d.begun())))
                .toList();
        List<List<String>> rows = new ArrayList<>();
        for (AdjusterId id : shown.adjusters()) {
            rows.add(Stream.concat(Stream.of(id.words()), shown.positions(id).stream().map(mm -> mm.isPresent()
                    ? length.text(mm.getAsDouble(), Dimension.LENGTH) : "–")).collect(Collectors.toList()));
        }
        positions.show(heads, rows);
    }

    private Optional<CarHistory.Past> chosen() {
        int row = days.getSelectedRow();
        List<CarHistory.Past> list = latestFirst();
        return row >= 0 && row < list.size() ? Optional.of(list.get(row)) : Optional.empty();
    }

    private static Optional<Day> day(DayShelf from, CarHistory.Past past) {
        return from.days().stream().filter(d -> d.id().equals(past.id())).findFirst().flatMap(from::day);
    }

    private void showTurns() {
        Optional<CarHistory.Past> past = chosen();
        if (past.isEmpty() || current.snapshot().isEmpty() || shelf == null) {
            return;
        }
        DayShelf from = shelf;
        ReadingFormat format = current.snapshot().get().format();
        Optional<Day> open = current.snapshot().map(DaySnapshot::day);
        boolean own = current.journal().filter(j -> j.info().id().equals(past.get().id())).isPresent();
        reader.post(() -> {
            List<ObservedTurns> observed = (own ? open : day(from, past.get())).map(d -> ObservedTurns.of(d, SuspensionTypes.installed())).orElse(List.of());
            EventQueue.invokeLater(() -> {
                if (chosen().equals(past)) {
                    turns.show(observed.stream().map(o -> row(o, format)).toList());
                    turnsOf.setText(observed.isEmpty() ? Bundle.history_noTurns()
                            : Bundle.history_turnsOf((ComparisonWords.date(past.get().begun()) + " " + past.get().title()).strip()));
                }
            });
        });
    }

    private static List<String> row(ObservedTurns o, ReadingFormat format) {
        String observed = Bundle.history_band(format.changeNumber(o.reading(), o.observed().amount()), format.text(o.reading(), 2 * o.observed().uncertainty()));
        String expected = o.expected().map(e -> Bundle.history_band(format.changeNumber(o.reading(), e.amount()),
                format.text(o.reading(), 2 * e.uncertainty()))).orElse("–");
        String ratio = o.ratio().isPresent() ? String.format("%.2f", o.ratio().getAsDouble()) : "–";
        return List.of(o.adjuster().words(), o.reading().words(), observed, expected, ratio, String.valueOf(o.rounds()));
    }

    private void showTaken(DaySnapshot day) {
        decline.setEnabled(day.day().takenOver().isPresent());
        taken.setText(day.day().takenOver().map(t -> Bundle.history_takenOver(t.fromDay(),
                Math.round(TakenOver.ageDays(t.learntOn(), t.header().time())), t.effects().size())).orElseGet(Bundle::history_nothingTaken));
    }

    private void take() {
        Optional<CarHistory.Past> past = chosen();
        if (past.isEmpty() || shelf == null) {
            return;
        }
        if (current.journal().filter(j -> j.info().id().equals(past.get().id())).isPresent()) {
            taken.setText(Bundle.history_chooseOther());
            return;
        }
        DayShelf from = shelf;
        reader.post(() -> {
            Optional<Entry.ResponseTakenOver> learnt = from.days().stream().filter(d -> d.id().equals(past.get().id())).findFirst()
                    .flatMap(i -> from.day(i).flatMap(d -> TakeOver.of(d, i)));
            EventQueue.invokeLater(() -> {
                if (learnt.isEmpty()) {
                    taken.setText(Bundle.history_nothingLearnt());
                } else {
                    current.record("", learnt.get()::withHeader);
                }
            });
        });
    }

    private static final class ReadingWords extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected, boolean focused) {
            return super.getListCellRendererComponent(list, value instanceof ReadingId id ? id.words() : "", index, selected, focused);
        }
    }
}
