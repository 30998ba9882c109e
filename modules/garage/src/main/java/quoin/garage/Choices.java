package quoin.garage;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Vector;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.garage.desk.DayList;
import quoin.garage.desk.RecentDay;
import quoin.logbook.CarInfo;
import quoin.logbook.Library;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.Say;

/** The garage's questions: which car, which day. All answered by arrow keys and Enter. */
@Messages({
    "choose.car=&Car", "choose.day=&Day", "choose.title=&Title of the day", "choose.carTitle=Which car?",
    "choose.newDayTitle=New day", "choose.dayTitle=Open a day"})
final class Choices {

    /** Days offered in the list; older ones are opened by their folder. */
    private static final int MOST_DAYS = 200;
    private static final int ROWS = 10;

    private Choices() {
    }

    static Optional<String> car(Library library) {
        return cars(library).flatMap(list -> ask(Bundle.choose_carTitle(), labelled(list, Bundle.choose_car()), list)
                .map(CarInfo::id));
    }

    static Optional<CarChoice> carAndTitle(Library library, String usualTitle) {
        Optional<JList<CarInfo>> cars = cars(library);
        if (cars.isEmpty()) {
            return Optional.empty();
        }
        JTextField title = new JTextField(usualTitle, 28);
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, Bundle.choose_title());
        label.setLabelFor(title);
        JPanel all = new JPanel(new BorderLayout(0, Looks.em(0.8)));
        all.add(labelled(cars.get(), Bundle.choose_car()), BorderLayout.CENTER);
        JPanel named = Looks.column(label, title);
        named.setBorder(Looks.padding(0, 0.8));
        all.add(named, BorderLayout.SOUTH);
        return ask(Bundle.choose_newDayTitle(), all, cars.get())
                .map(c -> new CarChoice(c.id(), title.getText().isBlank() ? usualTitle : title.getText()));
    }

    static Optional<Path> day(Library library) {
        List<RecentDay> days = DayList.latest(library, MOST_DAYS);
        if (days.isEmpty()) {
            Say.message(Bundle.door_noDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return Optional.empty();
        }
        JList<RecentDay> list = list(days, DayWords::line);
        return ask(Bundle.choose_dayTitle(), labelled(list, Bundle.choose_day()), list).map(d -> d.day().folder());
    }

    private static Optional<JList<CarInfo>> cars(Library library) {
        List<CarInfo> cars = library.cars();
        if (cars.isEmpty()) {
            Say.message(Bundle.door_noCar(), NotifyDescriptor.INFORMATION_MESSAGE);
            return Optional.empty();
        }
        return Optional.of(list(cars, CarInfo::name));
    }

    static <T> JList<T> list(List<T> items, Function<T, String> words) {
        JList<T> list = new JList<>();
        list.setListData(new Vector<>(items));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(items.isEmpty() ? -1 : 0);
        list.setVisibleRowCount(ROWS);
        list.setFont(Looks.font(1.15, Font.PLAIN));
        list.setCellRenderer(new Words<>(words));
        return list;
    }

    private static JComponent labelled(JList<?> list, String words) {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, words);
        label.setLabelFor(list);
        list.getAccessibleContext().setAccessibleName(label.getText());
        JPanel panel = new JPanel(new BorderLayout(0, Looks.em(0.3)));
        panel.add(label, BorderLayout.NORTH);
        panel.add(new JScrollPane(list), BorderLayout.CENTER);
        panel.setBorder(Looks.padding(0.5, 0.8));
        return panel;
    }

    private static <T> Optional<T> ask(String title, JComponent content, JList<T> list) {
        DialogDescriptor dialog = new DialogDescriptor(content, title);
        list.addMouseListener(new OpenOnSecondClick(() -> dialog.setValue(NotifyDescriptor.OK_OPTION)));
        SwingUtilities.invokeLater(list::requestFocusInWindow);
        boolean ok = DialogDisplayer.getDefault().notify(dialog) == NotifyDescriptor.OK_OPTION;
        return ok ? Optional.ofNullable(list.getSelectedValue()) : Optional.empty();
    }

    /** Shows list items by their words. */
    private static final class Words<T> extends PlainListRenderer {
        private static final long serialVersionUID = 1L;
        private final transient Function<T, String> words;

        Words(Function<T, String> words) {
            this.words = words;
        }

        @Override
        @SuppressWarnings("unchecked")
        public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected,
                boolean focused) {
            super.getListCellRendererComponent(list, words.apply((T) value), index, selected, focused);
            setBorder(Looks.padding(0.25, 0.6));
            putClientProperty("html.disable", true);
            return this;
        }
    }
}
