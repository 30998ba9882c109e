package quoin.garage;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Vector;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import quoin.garage.desk.DayList;
import quoin.garage.desk.Desk;
import quoin.logbook.JournalException;
import quoin.logbook.KnownDay;
import quoin.logbook.LibraryIndex;
import quoin.logbook.LibrarySearch;
import quoin.workbench.Looks;
import quoin.workbench.Say;
import quoin.workbench.Typing;
import quoin.workbench.WrapLayout;

/** Every day of the library: find one by what is remembered of it, open it, begin the next like it, put it away. */
@Messages({
    "library.title=Library", "library.search=&Find by car, place, driver, tyres, note or date",
    "library.days=Days: Enter opens one", "library.withArchive=With the a&rchive",
    "library.reading=Reading the library...", "# {0} - found", "# {1} - all", "library.count={0} of {1} days",
    "# {0} - shown", "# {1} - found", "# {2} - all", "library.countCut=The latest {0} of {1} found, of {2} days: type more to find fewer",
    "library.none=No day has all of these words. Type fewer of them.",
    "library.open=&Open", "library.template=&New day like it", "library.archive=&Put into the archive", "library.restore=Take &back from the archive",
    "library.close=Close", "# {0} - line", "library.archived={0}   archive",
    "library.takeBackFirst=This day is in the archive. Take it back first, then open it.",
    "# {0} - car", "library.carFirst={0} is in the archive with all its days. Take the car back first, on the page Cars.",
    "library.daysTab=&Days", "library.carsTab=&Cars",
    "library.noDays=No day in the library yet: begin one with New day (Ctrl+N), or rehearse with the practice car."})
final class LibraryDialog {

    private static final int MOST_SHOWN = 500;
    private static final RequestProcessor READER = new RequestProcessor("library index", 1);

    private final Desk desk;
    private final JTextField words = new JTextField(34);
    private final JCheckBox archive = new JCheckBox();
    private final JList<KnownDay> list;
    private final JLabel count = new JLabel(Bundle.library_reading());
    private final JButton open = button(Bundle.library_open());
    private final JButton template = button(Bundle.library_template());
    private final JButton put = button(Bundle.library_archive());
    private final JButton close = button(Bundle.library_close());
    private final DialogDescriptor dialog;
    private final LibraryCars cars;
    private LibrarySearch search;
    private int all;
    private Optional<Runnable> chosen = Optional.empty();

    /** What is done with a day once the dialog is gone. */
    interface Answer {

        void open(Path dayFolder);

        void beginLike(KnownDay day);

        void begin(String carId);

        void edit(String carId);
    }

    LibraryDialog(Desk desk, Answer answer) {
        this.desk = desk;
        this.list = Choices.list(List.of(), LibraryDialog::line);
        list.getAccessibleContext().setAccessibleName(Bundle.library_days());
        Mnemonics.setLocalizedText(archive, Bundle.library_withArchive());
        cars = new LibraryCars(carAnswer(answer));
        dialog = new DialogDescriptor(content(), Bundle.library_title(), true, new Object[] {close}, close,
                DialogDescriptor.DEFAULT_ALIGN, null, null);
        dialog.setClosingOptions(new Object[] {close});
        open.addActionListener(e -> open(answer));
        template.addActionListener(e -> end(day -> answer.beginLike(day)));
        put.addActionListener(e -> selected().ifPresent(this::archive));
        archive.addActionListener(e -> find());
        list.addListSelectionListener(e -> buttons());
        list.addMouseListener(new OpenOnSecondClick(() -> open(answer)));
        keys(answer);
        buttons();
    }

    private LibraryCars.Answer carAnswer(Answer answer) {
        return new LibraryCars.Answer() {
            @Override
            public void begin(String carId) {
                leave(() -> answer.begin(carId));
            }

            @Override
            public void edit(String carId) {
                leave(() -> answer.edit(carId));
            }

            @Override
            public void archive(LibraryIndex.KnownCar car) {
                move(() -> desk.archiveCar(car.car().id(), !car.archived()));
            }
        };
    }

    private static String line(KnownDay day) {
        String line = DayWords.line(DayList.recent(day));
        return day.archived() ? Bundle.library_archived(line) : line;
    }

    void show() {
        read();
        SwingUtilities.invokeLater(words::requestFocusInWindow);
        DialogDisplayer.getDefault().notify(dialog);
        chosen.ifPresent(Runnable::run);
    }

    private JPanel content() {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, Bundle.library_search());
        label.setLabelFor(words);
        words.setFont(Looks.font(1.2, Font.PLAIN));
        words.getDocument().addDocumentListener(new Typing(this::find));
        JPanel below = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        below.add(count);
        JPanel top = new JPanel(new BorderLayout(Looks.em(0.8), Looks.em(0.2)));
        top.add(label, BorderLayout.NORTH);
        top.add(words, BorderLayout.CENTER);
        top.add(archive, BorderLayout.EAST);
        top.add(below, BorderLayout.SOUTH);
        JPanel panel = new JPanel(new BorderLayout(0, Looks.em(0.5)));
        panel.add(top, BorderLayout.NORTH);
        JPanel line = new JPanel(new WrapLayout());
        Stream.of(open, template, put).forEach(line::add);
        JPanel days = new JPanel(new BorderLayout(0, Looks.em(0.4)));
        days.add(new JScrollPane(list), BorderLayout.CENTER);
        days.add(line, BorderLayout.SOUTH);
        JTabbedPane tabs = new JTabbedPane();
        Looks.tab(tabs, Bundle.library_daysTab(), days);
        Looks.tab(tabs, Bundle.library_carsTab(), cars);
        tabs.setPreferredSize(new Dimension(Looks.em(56), Looks.em(28)));
        panel.add(tabs, BorderLayout.CENTER);
        panel.setBorder(Looks.padding(0.6, 0.8));
        return panel;
    }

    private static JButton button(String text) {
        JButton button = new JButton();
        Mnemonics.setLocalizedText(button, text);
        return button;
    }

    /** The arrows move in the list while the caret stays in the field. */
    private void keys(Answer answer) {
        move(KeyEvent.VK_DOWN, 1);
        move(KeyEvent.VK_UP, -1);
        move(KeyEvent.VK_PAGE_DOWN, 10);
        move(KeyEvent.VK_PAGE_UP, -10);
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "open", () -> open(answer));
        words.addActionListener(e -> open(answer));
    }

    private void move(int key, int by) {
        Looks.onKey(words, KeyStroke.getKeyStroke(key, 0), "move" + by, () -> {
            int last = list.getModel().getSize() - 1;
            if (last >= 0) {
                list.setSelectedIndex(Math.max(0, Math.min(last, list.getSelectedIndex() + by)));
                list.ensureIndexIsVisible(list.getSelectedIndex());
            }
        });
    }

    /** Files may be on a slow stick: read beside the event thread. */
    private void read() {
        READER.post(() -> {
            try {
                LibraryIndex index = LibraryIndex.of(desk.library());
                LibrarySearch made = new LibrarySearch(index.days(), ZoneId.systemDefault());
                EventQueue.invokeLater(() -> {
                    search = made;
                    all = index.days().size();
                    cars.take(index);
                    find();
                });
            } catch (JournalException e) {
                EventQueue.invokeLater(() -> count.setText(e.getLocalizedMessage()));
            }
        });
    }

    private void find() {
        if (search == null) {
            return;
        }
        KnownDay before = list.getSelectedValue();
        List<KnownDay> found = search.find(words.getText()).stream().filter(d -> archive.isSelected() || !d.archived()).toList();
        List<KnownDay> shown = found.subList(0, Math.min(MOST_SHOWN, found.size()));
        list.setListData(new Vector<>(shown));
        list.setSelectedIndex(shown.isEmpty() ? -1 : Math.max(0, before == null ? 0 : shown.indexOf(before)));
        count.setText(words(shown.size(), found.size()));
        cars.find(words.getText(), archive.isSelected());
        buttons();
    }

    private String words(int shown, int found) {
        if (all == 0) {
            return Bundle.library_noDays();
        }
        if (found == 0) {
            return Bundle.library_none();
        }
        return shown < found ? Bundle.library_countCut(shown, found, all) : Bundle.library_count(found, all);
    }

    private Optional<KnownDay> selected() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void buttons() {
        Optional<KnownDay> day = selected();
        boolean away = day.map(KnownDay::archived).orElse(false);
        open.setEnabled(day.isPresent());
        template.setEnabled(day.map(d -> d.day().problem().isEmpty()).orElse(false));
        put.setEnabled(day.isPresent());
        Mnemonics.setLocalizedText(put, away ? Bundle.library_restore() : Bundle.library_archive());
    }

    private void open(Answer answer) {
        if (selected().map(KnownDay::archived).orElse(false)) {
            Say.message(Bundle.library_takeBackFirst(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        end(day -> answer.open(day.day().folder()));
    }

    /** Closes the dialog first: opening a day puts the caret where the next thing is done. */
    private void end(Consumer<KnownDay> act) {
        selected().ifPresent(day -> leave(() -> act.accept(day)));
    }

    private void leave(Runnable then) {
        chosen = Optional.of(then);
        dialog.setValue(close);
        SwingUtilities.getWindowAncestor(words).setVisible(false);
    }

    private void archive(KnownDay day) {
        if (day.archived() && desk.library().isInArchivedCar(day.day().folder())) {
            Say.message(Bundle.library_carFirst(day.carName()), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        move(() -> desk.archive(day, !day.archived()));
    }

    private void move(Runnable moving) {
        try {
            moving.run();
        } catch (JournalException e) {
            Say.message(e.getLocalizedMessage(), NotifyDescriptor.WARNING_MESSAGE);
        }
        read();
    }
}
