package quoin.garage;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.Actions;
import org.openide.awt.UndoRedo;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.garage.desk.DayList;
import quoin.garage.desk.RecentDay;
import quoin.logbook.CarInfo;
import quoin.logbook.LibraryIndex;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** The garage: what to begin with, the latest days, the cars. */
@TopComponent.Description(preferredID = "garage", iconBase = "quoin/workbench/icons/house.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 50)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Garage", preferredID = "garage")
@ActionID(category = "Window", id = "quoin.garage.GarageWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Window", position = 50),
    @ActionReference(path = "Shortcuts", name = "O-6")})
@Messages({
    "CTL_Garage=&Garage", "garage.title=Garage",
    "garage.begin=What is it today?",
    "garage.rehearse=&Rehearse with the practice car", "garage.newDay=New &day for a car", "garage.newCar=&New car",
    "garage.firstDay=&Guided first day",
    "garage.rehearseWhy=Walk a whole set-up day without a car. The practice car answers to the spanner as a real one does.",
    "garage.latest=Latest days: Enter goes on with one", "garage.cars=Cars: Enter begins a day, E edits the car",
    "garage.noDays=No day yet. The guided first day walks through one with the practice car, about half an hour.", "garage.noCars=No car yet. Only wheelbase and tracks have to be known for a new one."})
public final class GarageWindow extends TopComponent {

    private static final long serialVersionUID = 1L;
    private static final int MOST = 30;
    private static final RequestProcessor READER = new RequestProcessor("garage list", 1);

    private final transient GarageDoor door = GarageDoor.inUse();
    private final transient Runnable onChange = this::refresh;
    private final JButton rehearse = Looks.button(Bundle.garage_rehearse(), () -> door.rehearse());
    private final JPanel days = new JPanel(new BorderLayout());
    private final JPanel cars = new JPanel(new BorderLayout());

    public GarageWindow() {
        setName(Bundle.garage_title());
        setDisplayName(Bundle.garage_title());
        putClientProperty(PROP_CLOSING_DISABLED, true);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        putClientProperty(PROP_DRAGGING_DISABLED, true);
        setLayout(new BorderLayout(0, Looks.em(1)));
        setBorder(Looks.padding(1.2, 0.7));
        add(begin(), BorderLayout.NORTH);
        add(Looks.twoColumns(days, cars), BorderLayout.CENTER);
    }

    private JComponent begin() {
        JButton newDay = Looks.button(Bundle.garage_newDay(), door::newDay);
        JButton newCar = Looks.button(Bundle.garage_newCar(), door::newCar);
        JPanel choices = new JPanel();
        choices.setLayout(new BoxLayout(choices, BoxLayout.LINE_AXIS));
        choices.setBorder(Looks.padding(0.6, 0));
        JButton firstDay = Looks.button(Bundle.garage_firstDay(), GarageWindow::firstDay);
        for (JButton button : List.of(rehearse, newDay, newCar, firstDay)) {
            button.setFont(Looks.font(1.3, Font.PLAIN));
            button.setMargin(new Insets(Looks.em(0.6), Looks.em(1), Looks.em(0.6), Looks.em(1)));
            choices.add(button);
            choices.add(Box.createHorizontalStrut(Looks.em(0.8)));
        }
        JPanel begin = Looks.column(new WrapText(Bundle.garage_begin(), 1.5, Font.BOLD), choices,
                new WrapText(Bundle.garage_rehearseWhy(), 1.1, Font.PLAIN));
        begin.setBorder(Looks.padding(0, 0.9));
        return begin;
    }

    /** The guide belongs to the help, which is found by the name of its action, never by its class. */
    private static void firstDay() {
        Optional.ofNullable(Actions.forID("Help", "quoin.help.firstday.FirstDayAction"))
                .ifPresent(a -> a.actionPerformed(new ActionEvent(GarageWindow.class, ActionEvent.ACTION_PERFORMED, "")));
    }

    static void bringToFront() {
        if (WindowManager.getDefault().findTopComponent("garage") instanceof GarageWindow window) {
            window.open();
            window.requestActive();
            // At start it is active before it is on the screen, and the keyboard would stay nowhere.
            WindowManager.getDefault().invokeWhenUIReady(() -> EventQueue.invokeLater(window::toBegin));
        }
    }

    @Override
    protected void componentOpened() {
        door.desk().addListener(onChange);
        refresh();
    }

    @Override
    protected void componentClosed() {
        door.desk().removeListener(onChange);
    }

    /** Undo is the day's, also from here. */
    @Override
    public UndoRedo getUndoRedo() {
        return door.desk().current().undoRedo();
    }

    @Override
    protected void componentActivated() {
        rehearse.requestFocusInWindow();
    }

    private void toBegin() {
        if (TopComponent.getRegistry().getActivated() == this) {
            rehearse.requestFocusInWindow();
        }
    }

    /** Folders may be on a slow stick: read beside the event thread. */
    private void refresh() {
        var library = door.desk().library();
        READER.post(() -> {
            LibraryIndex index = LibraryIndex.of(library);
            List<RecentDay> latest = DayList.latest(index, MOST);
            List<CarInfo> known = index.cars().stream().filter(c -> !c.archived()).map(LibraryIndex.KnownCar::car).toList();
            EventQueue.invokeLater(() -> show(latest, known));
        });
    }

    private void show(List<RecentDay> latest, List<CarInfo> known) {
        JList<RecentDay> dayList = Choices.list(latest, DayWords::line);
        act(dayList, KeyEvent.VK_ENTER, "open", () -> door.open(dayList.getSelectedValue().day().folder()));
        fill(days, Bundle.garage_latest(), Bundle.garage_noDays(), dayList);
        JList<CarInfo> carList = Choices.list(known, CarInfo::name);
        act(carList, KeyEvent.VK_ENTER, "day", () -> door.newDay(carList.getSelectedValue().id()));
        act(carList, KeyEvent.VK_E, "edit", () -> door.editCar(carList.getSelectedValue().id()));
        fill(cars, Bundle.garage_cars(), Bundle.garage_noCars(), carList);
    }

    private static <T> void act(JList<T> list, int key, String name, Runnable action) {
        Runnable guarded = () -> {
            if (list.getSelectedValue() != null) {
                action.run();
            }
        };
        Looks.onKey(list, KeyStroke.getKeyStroke(key, 0), name, guarded);
        if (key == KeyEvent.VK_ENTER) {
            list.addMouseListener(new OpenOnSecondClick(guarded));
        }
    }

    private static void fill(JPanel place, String heading, String empty, JList<?> list) {
        place.removeAll();
        list.getAccessibleContext().setAccessibleName(heading);
        JComponent content = list.getModel().getSize() == 0 ? new WrapText(empty) : new JScrollPane(list);
        place.add(Looks.section(heading, content), BorderLayout.CENTER);
        place.revalidate();
        place.repaint();
    }
}
