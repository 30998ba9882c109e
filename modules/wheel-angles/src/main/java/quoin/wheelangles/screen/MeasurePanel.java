package quoin.wheelangles.screen;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.Timer;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.wheelangles.measure.DraftFile;
import quoin.wheelangles.measure.Measured;
import quoin.wheelangles.measure.Method;
import quoin.wheelangles.measure.Setting;
import quoin.wheelangles.measure.Worksheet;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;

/** The ways of measuring beside each other: a list, the form of the chosen one, its drawing and what follows. */
@Messages({
    "panel.ways=Ways of measuring", "panel.record=&Record the result", "panel.recordTip=Ctrl+Enter, or Enter in the last field",
    "panel.hint=Enter: next field. Ctrl+Enter records. Alt+Up, Alt+Down: another way of measuring. What is typed stays until it is recorded.",
    "# {0} - time", "# {1} - figures", "panel.recorded=Recorded {0}: {1}",
    "# {0} - file", "# {1} - problem", "panel.draftUnread=What was typed before could not be read from {0} ({1}). The readings of the day are not touched.",
    "# {0} - problem", "panel.draft=What is typed could not be kept beside the day ({0}). Record it before closing."})
final class MeasurePanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");
    private static final int KEEP_MS = 600;
    private static final double LEFT_SHARE = 0.49;

    private final transient CurrentDay current;
    private final String stage;
    private final transient Map<String, Map<String, String>> drafts = new TreeMap<>();
    private final transient Timer keep = new Timer(KEEP_MS, e -> keepDrafts());
    private final JList<Method> ways = new JList<>(Method.all().toArray(Method[]::new));
    private final MeasureDrawing drawing = new MeasureDrawing();
    private final ResultsPanel results = new ResultsPanel();
    private final WrapText signs = new WrapText("");
    private final WrapText message = new WrapText(Bundle.panel_hint());
    private final JPanel caution = new JPanel(new BorderLayout());
    private final MeasureForm form = new MeasureForm(this::typed, this::record, this::focused);
    private transient Optional<Path> folder = Optional.empty();
    private transient Worksheet sheet;
    private boolean changed;
    private boolean problemShown;

    /**
     * @param stage id of the stage the readings are recorded in
     */
    MeasurePanel(CurrentDay current, String stage) {
        super(new BorderLayout());
        this.current = current;
        this.stage = stage;
        keep.setRepeats(false);
        ways.setName("measure.ways");
        ways.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        ways.setSelectedIndex(0);
        ways.setCellRenderer(new WayWords());
        ways.setBorder(Looks.padding(0.3, 0.3));
        ways.getAccessibleContext().setAccessibleName(Bundle.panel_ways());
        ways.addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                showWay();
            }
        });
        Looks.onKey(ways, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "toForm", form::toFirst);
        build();
        onKeys();
    }

    private void build() {
        caution.setOpaque(false);
        JButton record = Looks.button(Bundle.panel_record(), this::record);
        record.setName("measure.record");
        record.setToolTipText(Bundle.panel_recordTip());
        JPanel button = new JPanel(new BorderLayout());
        button.setOpaque(false);
        button.add(record, BorderLayout.LINE_START);
        JPanel left = Looks.column(form, button, message);
        left.setBorder(Looks.padding(0.5, 0.9));
        JPanel right = Looks.column(drawing, caution, results, signs);
        right.setBorder(Looks.padding(0.5, 0.6));
        JScrollPane list = new JScrollPane(ways);
        list.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Looks.line()));
        add(list, BorderLayout.LINE_START);
        add(WidthOfTheWindow.scrolledFromTheTop(Looks.twoColumns(left, right, LEFT_SHARE)), BorderLayout.CENTER);
    }

    private void onKeys() {
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK), "record", this::record);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_R, InputEvent.ALT_DOWN_MASK), "recordHere", this::record);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, InputEvent.ALT_DOWN_MASK), "nextWay", () -> step(1));
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_UP, InputEvent.ALT_DOWN_MASK), "lastWay", () -> step(-1));
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_F3, 0), "toFirst", form::toFirst);
    }

    private void step(int by) {
        int count = ways.getModel().getSize();
        ways.setSelectedIndex((ways.getSelectedIndex() + by + count) % count);
        ways.ensureIndexIsVisible(ways.getSelectedIndex());
        form.toFirst();
    }

    /** Puts the caret into the form. */
    void toEntry() {
        form.toFirst();
    }

    /** Shows the day; what is being typed stays. */
    void show(DaySnapshot day) {
        Optional<Path> now = current.journal().map(Journal::folder);
        if (!now.equals(folder)) {
            keepDrafts();
            folder = now;
            Optional<String> problem = readDrafts();
            showWay();
            problem.ifPresent(message::setText);
        } else {
            showWay();
        }
    }

    /** Reads what was typed before; says in words where that cannot be done. */
    private Optional<String> readDrafts() {
        drafts.clear();
        try {
            drafts.putAll(folder.isEmpty() ? Map.of() : new DraftFile(folder.get()).read());
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(Bundle.panel_draftUnread(DraftFile.FILE, e.getLocalizedMessage()));
        }
    }

    /** Writes what is typed beside the day, where something changed since. */
    void keepDrafts() {
        if (folder.isEmpty() || !changed) {
            return;
        }
        keep.stop();
        changed = false;
        try {
            new DraftFile(folder.get()).write(drafts);
        } catch (IOException e) {
            message.setText(Bundle.panel_draft(e.getLocalizedMessage()));
        }
    }

    private void showWay() {
        Method method = ways.getSelectedValue();
        Optional<DaySnapshot> day = current.snapshot();
        if (method == null || day.isEmpty()) {
            return;
        }
        boolean another = sheet == null || sheet.method() != method;
        sheet = new Worksheet(method, new Setting(day.get().day()), day.get().units().preferences(), drafts.getOrDefault(method.id(), Map.of()));
        form.show(sheet);
        if (another) {
            drawing.show(method);
            signs.setText(method.signs());
            caution.removeAll();
            caution.add(ResultsPanel.line(Mark.AGAIN, method.caution(), Font.BOLD));
            say(Optional.empty());
            form.mark(Map.of());
        }
        showResult();
    }

    private void showResult() {
        Worksheet.Check check = sheet.check();
        drawing.curve(check.measured().flatMap(m -> m.outcome().curve()));
        results.show(check.measured(), sheet.units());
    }

    private void focused(String key) {
        drawing.focus(key);
        Map<String, String> problems = sheet.check().problems();
        form.mark(problems);
        if (!problems.isEmpty() || problemShown) {
            say(problems.values().stream().findFirst());
        }
    }

    /** Says what is wrong, or how the form works where nothing is. */
    private void say(Optional<String> problem) {
        problemShown = problem.isPresent();
        message.setText(problem.orElse(Bundle.panel_hint()));
    }

    private void typed(String key, String text) {
        sheet = sheet.with(key, text);
        keepSheet();
        if (sheet.method().choices().stream().anyMatch(c -> c.key().equals(key))) {
            form.show(sheet);
            form.toChoice(key);
        }
        showResult();
    }

    private void keepSheet() {
        drafts.put(sheet.method().id(), sheet.texts());
        changed = true;
        keep.restart();
    }

    /** Records the result; where it cannot, says which field is in the way and goes there. */
    void record() {
        if (sheet == null) {
            return;
        }
        Worksheet.Check check = sheet.check();
        form.mark(check.problems());
        if (check.measured().isEmpty()) {
            String key = check.problems().keySet().stream().findFirst().or(check::missing).orElse("");
            form.toField(key);
            say(Optional.of(check.problems().isEmpty() ? sheet.missingWords(key) : check.problems().get(key)));
            return;
        }
        Measured measured = check.measured().get();
        if (measured.entry(Header.draft(stage)).isPresent() && current.record(stage, h -> measured.entry(h).orElseThrow())) {
            sheet = sheet.recorded();
            keepSheet();
            keepDrafts();
            showWay();
            say(Optional.empty());
            List<Entry> written = current.snapshot().orElseThrow().day().written();
            message.setText(Bundle.panel_recorded(LocalTime.now().format(TIME),
                    current.snapshot().orElseThrow().entryWords().of(written.get(written.size() - 1))));
            form.toFirst();
        }
    }
}
