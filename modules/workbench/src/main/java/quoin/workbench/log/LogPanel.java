package quoin.workbench.log;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.awt.font.TextAttribute;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Entry;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.EntryWords;
import quoin.workbench.InertText;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.WrapText;

/** The day's entries, newest first, the struck ones struck through; a line to type a note. */
@Messages({
    "log.title=Log",
    "log.list=Entries of the day, newest first",
    "log.note=N&ote:",
    "log.correct=&Correct...",
    "log.withdraw=Withdraw (&X)",
    "log.empty=Nothing recorded yet: no day is open.",
    "# {0} - number", "# {1} - time", "# {2} - words", "log.line={0}   {1}   {2}",
    "# {0} - line", "log.struck={0} (no longer counts)"})
final class LogPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int NOTE_COLUMNS = 30;
    private static final int NUMBER_WIDTH = 3;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss").withZone(ZoneId.systemDefault());

    private final transient CurrentDay current;
    private final LogLines model = new LogLines();
    private final JList<LogLine> list = new JList<>(model);
    private final JTextField note = new JTextField(NOTE_COLUMNS);
    private final JButton correct = Looks.button(Bundle.log_correct(), this::correct);
    private final JButton withdraw = Looks.button(Bundle.log_withdraw(), this::withdraw);
    private final WrapText whole = new WrapText("");
    private transient EntryWords words;

    LogPanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Line());
        list.setName("log.entries");
        list.getAccessibleContext().setAccessibleName(Bundle.log_list());
        list.addListSelectionListener(e -> enableButtons());
        // One height and width for all: a long day has thousands of lines, and none of them has to be measured.
        list.setFixedCellHeight(Looks.em(1.6));
        list.setFixedCellWidth(1);
        whole.setBorder(Looks.padding(0.3, 0.6));
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), "withdraw", this::withdraw);
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "correct", this::correct);
        note.addActionListener(e -> recordNote());
        note.setName("log.note");
        JScrollPane scroll = new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        add(scroll, BorderLayout.CENTER);
        add(bottom(), BorderLayout.SOUTH);
        enableButtons();
    }

    private JPanel bottom() {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, Bundle.log_note());
        label.setLabelFor(note);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, Looks.em(0.5), 0));
        buttons.add(correct);
        buttons.add(withdraw);
        JPanel line = new JPanel(new BorderLayout(Looks.em(0.5), 0));
        line.setBorder(Looks.padding(0.3, 0.6));
        line.add(label, BorderLayout.LINE_START);
        line.add(note, BorderLayout.CENTER);
        line.add(buttons, BorderLayout.LINE_END);
        JPanel bottom = new JPanel(new BorderLayout());
        bottom.add(whole, BorderLayout.NORTH);
        bottom.add(line, BorderLayout.CENTER);
        return bottom;
    }

    void dayChanged() {
        long selected = selected().map(l -> l.entry().number()).orElse(-1L);
        Optional<DaySnapshot> day = current.snapshot();
        words = day.map(DaySnapshot::entryWords).orElse(null);
        list.clearSelection();
        model.show(day.map(DaySnapshot::day));
        model.indexOf(selected).ifPresent(list::setSelectedIndex);
        note.setEnabled(day.isPresent());
        enableButtons();
    }

    void focusList() {
        list.requestFocusInWindow();
    }

    private Optional<LogLine> selected() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** The selected line is also said in full below the list, where it is too long for one line. */
    private void enableButtons() {
        whole.setText(words == null ? "" : selected().map(this::text).orElse(""));
        whole.setVisible(!whole.getText().isEmpty() && !fits(whole.getText()));
        withdraw.setEnabled(selected().filter(LogLine::canWithdraw).isPresent());
        correct.setEnabled(selected().filter(this::canCorrect).isPresent());
    }

    private boolean fits(String line) {
        return list.getFontMetrics(Looks.font(1, Font.PLAIN)).stringWidth(line) < list.getWidth() - Looks.em(1.4);
    }

    private boolean canCorrect(LogLine line) {
        return !line.struck() && current.snapshot().flatMap(d -> EditedEntry.of(line.entry(), d)).isPresent();
    }

    private void recordNote() {
        String text = note.getText().strip();
        if (!text.isEmpty() && current.record("", h -> new Entry.Note(h, text))) {
            note.setText("");
        }
    }

    private void withdraw() {
        selected().filter(LogLine::canWithdraw).ifPresent(l -> current.record(l.entry().header().stage(),
                h -> new Entry.Correction(h, l.entry().number(), Optional.empty(), "")));
    }

    private void correct() {
        Optional<DaySnapshot> day = current.snapshot();
        selected().filter(this::canCorrect).flatMap(l -> EditedEntry.of(l.entry(), day.orElseThrow()))
                .ifPresent(e -> new CorrectDialog(e, day.orElseThrow()).ask().ifPresent(a -> current.record(e.entry().header().stage(),
                        h -> new Entry.Correction(h, e.entry().number(), Optional.of(a.replacement()), a.why()))));
    }

    private String text(LogLine line) {
        return Bundle.log_line(column(line.entry().number()), TIME.format(line.entry().header().time()), words.of(line.entry()));
    }

    /** Right-aligned by figure spaces, which are as wide as a figure. */
    private static String column(long number) {
        String figures = Long.toString(number);
        return "\u2007".repeat(Math.max(0, NUMBER_WIDTH - figures.length())) + figures;
    }

    private final class Line extends PlainListRenderer {
        private static final long serialVersionUID = 1L;
        private final Font plain = Looks.font(1, Font.PLAIN);
        private final Font through = plain.deriveFont(Map.of(TextAttribute.STRIKETHROUGH, TextAttribute.STRIKETHROUGH_ON));

        @Override
        public Component getListCellRendererComponent(JList<?> in, Object item, int index, boolean isSelected, boolean focused) {
            LogLine line = (LogLine) item;
            String text = words == null ? "" : text(line);
            super.getListCellRendererComponent(in, text, index, isSelected, focused);
            setFont(line.struck() ? through : plain);
            setBorder(Looks.padding(0.1, 0.6));
            setToolTipText(InertText.plain(text));
            getAccessibleContext().setAccessibleName(line.struck() ? Bundle.log_struck(text) : text);
            return this;
        }
    }
}
