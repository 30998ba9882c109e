package quoin.garage;

import java.awt.BorderLayout;
import java.awt.event.KeyEvent;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Vector;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.KnownDay;
import quoin.logbook.LibraryIndex;
import quoin.logbook.LibraryIndex.KnownCar;
import quoin.logbook.LibrarySearch;
import quoin.workbench.Looks;
import quoin.workbench.WrapLayout;

/** The cars of the library, those in the archive where wanted: begin a day with one, edit it, put it away with all its days. */
@Messages({
    "libraryCars.list=Cars: Enter begins a day", "libraryCars.day=New da&y with it", "libraryCars.edit=&Edit",
    "libraryCars.archive=Put the car and its days into the archi&ve", "libraryCars.restore=Take the car bac&k from the archive",
    "# {0} - car", "# {1} - number of days", "libraryCars.line={0}   {1} {1,choice,0#days|1#day|1<days}",
    "# {0} - line", "# {1} - date", "libraryCars.last={0}, last {1}", "# {0} - line", "# {1} - what is wrong", "libraryCars.problem={0}   ({1})"})
final class LibraryCars extends JPanel {

    private static final long serialVersionUID = 1L;

    /** What can be done with a car; the first two end the dialog. */
    interface Answer {

        void begin(String carId);

        void edit(String carId);

        void archive(KnownCar car);
    }

    private final transient Answer answer;
    private final JList<KnownCar> list;
    private final JButton day = new JButton();
    private final JButton edit = new JButton();
    private final JButton put = new JButton();
    private transient LibraryIndex index;
    private final transient Map<String, Integer> days = new HashMap<>();
    private final transient Map<String, Instant> latest = new HashMap<>();

    LibraryCars(Answer answer) {
        super(new BorderLayout(0, Looks.em(0.4)));
        this.answer = answer;
        list = Choices.list(List.of(), this::line);
        list.setName("library.cars");
        list.getAccessibleContext().setAccessibleName(Bundle.libraryCars_list());
        Mnemonics.setLocalizedText(day, Bundle.libraryCars_day());
        Mnemonics.setLocalizedText(edit, Bundle.libraryCars_edit());
        day.addActionListener(e -> begin());
        edit.addActionListener(e -> chosen(c -> answer.edit(c.car().id())));
        put.addActionListener(e -> chosen(answer::archive));
        list.addListSelectionListener(e -> buttons());
        list.addMouseListener(new OpenOnSecondClick(this::begin));
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "day", this::begin);
        JPanel line = new JPanel(new WrapLayout());
        Stream.of(day, edit, put).forEach(line::add);
        add(new JScrollPane(list), BorderLayout.CENTER);
        add(line, BorderLayout.SOUTH);
        buttons();
    }

    private void begin() {
        chosen(c -> {
            if (day.isEnabled()) {
                answer.begin(c.car().id());
            }
        });
    }

    private void chosen(Consumer<KnownCar> act) {
        Optional.ofNullable(list.getSelectedValue()).ifPresent(act);
    }

    /** What the library holds now. */
    void take(LibraryIndex read) {
        index = read;
        days.clear();
        latest.clear();
        for (KnownDay one : read.days()) {
            days.merge(one.carId(), 1, Integer::sum);
            latest.merge(one.carId(), one.day().created(), (a, b) -> a.isAfter(b) ? a : b);
        }
    }

    /** Shows the cars whose names hold every word. */
    void find(String words, boolean withArchive) {
        if (index == null) {
            return;
        }
        Optional<String> before = Optional.ofNullable(list.getSelectedValue()).map(c -> c.car().id());
        List<String> wanted = List.of(LibrarySearch.plain(words).strip().split("\\s+"));
        List<KnownCar> found = new ArrayList<>(index.cars().stream().filter(c -> withArchive || !c.archived())
                .filter(c -> wanted.stream().allMatch(LibrarySearch.plain(c.car().name())::contains)).toList());
        list.setListData(new Vector<>(found));
        int again = before.map(id -> found.stream().map(c -> c.car().id()).toList().indexOf(id)).orElse(0);
        list.setSelectedIndex(found.isEmpty() ? -1 : Math.max(0, again));
        buttons();
    }

    private String line(KnownCar known) {
        String id = known.car().id();
        String line = Bundle.libraryCars_line(known.car().name(), days.getOrDefault(id, 0));
        String dated = latest.containsKey(id) ? Bundle.libraryCars_last(line, DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withZone(ZoneId.systemDefault()).format(latest.get(id))) : line;
        String sound = known.car().problem().map(p -> Bundle.libraryCars_problem(dated, p)).orElse(dated);
        return known.archived() ? Bundle.library_archived(sound) : sound;
    }

    private void buttons() {
        Optional<KnownCar> car = Optional.ofNullable(list.getSelectedValue());
        boolean usable = car.filter(c -> !c.archived() && c.car().problem().isEmpty()).isPresent();
        day.setEnabled(usable);
        edit.setEnabled(usable);
        put.setEnabled(car.isPresent());
        Mnemonics.setLocalizedText(put, car.filter(KnownCar::archived).isPresent() ? Bundle.libraryCars_restore() : Bundle.libraryCars_archive());
    }
}
