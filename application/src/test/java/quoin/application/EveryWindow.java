package quoin.application;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JToggleButton;
import javax.swing.Timer;
import javax.swing.UIManager;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.util.Lookup;
import org.openide.util.lookup.Lookups;
import org.openide.util.lookup.ProxyLookup;
import org.openide.windows.TopComponent;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workflow.spi.Stage;

/**
 * Builds every window and dialog that the layers name, with a day of the practice car open, at the room each has on a screen of
 * 1366 by 768 pixels,
         and prints a line for each text that is clipped and each control without a name. Run by {@link ClippingIT} in a process of its own, in the
 * language that process is started in; the argument is the class of the look and feel.
 */
public final class EveryWindow {

    private static final Dimension MIDDLE = new Dimension(1090, 540);
    private static final Dimension ORDER = new Dimension(245, 690);
    private static final Dimension LOG = new Dimension(1090, 120);
    private static final Dimension DIALOG = new Dimension(1330, 650);
    private static final int LISTED_PAGES = 20;
    private static final long SETTLE_MS = 400;
    private static final int LOOK_FOR_DIALOGS_MS = 300;
    private static final long SEED = 23;

    /** Actions that ask for a file, open a window or paint a page instead. */
    private static final Pattern NO_DIALOG = Pattern.compile(".*\\.(ExportDay|ImportReadings|OpenFolder|ShareCar|TakeInCar|OpenDay|CloseFile"
            + "|Rehearse|OpenSeatView|Help|Workings|ShowLastTime)Action|.*\\.AnglesBeforeAndAfter");

    private final JFrame frame = new JFrame();
    private int looked;

    /** What the windows look up: dialogs are laid out here instead of being waited for. */
    public static final class TestLookup extends ProxyLookup {
        public TestLookup() {
            super(Lookups.fixed(new LaidOut(), EveryWindow.class.getClassLoader()), Lookups.metaInfServices(EveryWindow.class.getClassLoader()));
        }
    }

    /** Takes the component of a dialog. */
    private static final class LaidOut extends DialogDisplayer {
        private final List<Consumer<Component>> takers = new ArrayList<>();

        @Override
        public Object notify(NotifyDescriptor descriptor) {
            if (descriptor.getMessage() instanceof Component content) {
                takers.forEach(t -> t.accept(content));
            }
            return NotifyDescriptor.CLOSED_OPTION;
        }

        @Override
        public Dialog createDialog(DialogDescriptor descriptor) {
            return new JDialog() {
                private static final long serialVersionUID = 1L;

                @Override
                public void setVisible(boolean visible) {
                    if (visible) {
                        LaidOut.this.notify(descriptor);
                    }
                }
            };
        }
    }

    private EveryWindow() {
        frame.setUndecorated(true);
    }

    /** Prints what is clipped, and last how many windows were looked at. */
    public static void main(String[] arguments) throws Exception {
        System.setProperty("org.openide.util.Lookup", TestLookup.class.getName());
        System.setProperty("netbeans.user", Files.createTempDirectory(Path.of("target"), "windows-user").toAbsolutePath().toString());
        System.setProperty("quoin.library", Files.createTempDirectory(Path.of("target"), "windows-library").toString());
        UIManager.setLookAndFeel(arguments[0]);
        try {
            new EveryWindow().run(Files.createTempDirectory(Path.of("target"), "windows"));
            System.exit(0);
        } catch (InvocationTargetException e) {
            // The event thread would keep the process alive.
            e.printStackTrace();
            System.exit(1);
        }
    }

    private void run(Path folder) throws IOException, InterruptedException, InvocationTargetException {
        CurrentDay current = CurrentDay.inUse();
        EventQueue.invokeAndWait(() -> {
            current.openRehearsal(Journal.create(folder.resolve("day"), Ouzel23.car(), "Ouzel"), SEED);
            fill(current);
        });
        for (String window : named("<instance class=\"(quoin[\\w.]+)\"")) {
            Dimension room = window.endsWith("OrderTopComponent") ? ORDER : window.endsWith("LogTopComponent") ? LOG : MIDDLE;
            look(window, () -> shown((TopComponent) made(window)), room);
        }
        LaidOut dialogs = (LaidOut) Lookup.getDefault().lookup(DialogDisplayer.class);
        for (String action : named("name=\"delegate\" newvalue=\"(quoin[\\w.]+)\"")) {
            if (!NO_DIALOG.matcher(action).matches()) {
                List<Component> contents = new ArrayList<>();
                dialogs.takers.add(contents::add);
                Timer modal = new Timer(LOOK_FOR_DIALOGS_MS, e -> takeApart(contents));
                modal.start();
                EventQueue.invokeAndWait(() -> ((ActionListener) made(action)).actionPerformed(new ActionEvent(frame, 0, "")));
                modal.stop();
                dialogs.takers.clear();
                for (Component content : contents) {
                    look(action, () -> content, null);
                }
            }
        }
        System.out.println("looked at " + looked);
    }

    /** A dialog that makes its own window waits for its user: its content is taken out to be looked at, and it is closed. */
    private static void takeApart(List<Component> contents) {
        for (Window window : Window.getWindows()) {
            if (window instanceof JDialog dialog && dialog.isModal() && dialog.isShowing()) {
                Container content = dialog.getContentPane();
                content.setPreferredSize(content.getSize());
                contents.add(content);
                dialog.setContentPane(new JPanel());
                dialog.dispose();
            }
        }
    }

    /** Something of everything: read, turned, settled and noted. */
    private static void fill(CurrentDay current) {
        for (Stage stage : current.stages()) {
            List<ReadingId> readings = stage.readings(Ouzel23.car());
            current.practiceReadings(readings).ifPresent(values -> current.record(stage.id(),
                    h -> new Entry.Reading(h, values, Map.of(), Entry.Source.PRACTICE_CAR)));
        }
        current.record("ride-height", h -> new Entry.Adjustment(h, Ouzel23.car().adjusters().stream().filter(a -> a.id().kind().isSpringLeg())
                .limit(2).map(a -> new Entry.Turn(a.id(), 0.5, OptionalDouble.empty())).toList(), ""));
        current.record("", h -> new Entry.Condition(h, Conditions.DRIVER, Conditions.OUT, ""));
        current.record("", h -> new Entry.Note(h, "tyre tape 1812"));
    }

    private interface Maker {
        Component make();
    }

    private void look(String name, Maker maker, Dimension room) throws InterruptedException, InvocationTargetException {
        Component[] made = new Component[1];
        EventQueue.invokeAndWait(() -> {
            made[0] = maker.make();
            frame.getContentPane().removeAll();
            frame.getContentPane().add(made[0]);
            Dimension wanted = made[0].getPreferredSize();
            frame.setSize(room != null ? room : new Dimension(Math.min(wanted.width, DIALOG.width), Math.min(wanted.height, DIALOG.height)));
            frame.setVisible(true);
            frame.validate();
        });
        looked++;
        tell(name);
        for (Runnable page : pages(made[0], room == null)) {
            EventQueue.invokeAndWait(page);
            tell(name);
        }
    }

    private void tell(String name) throws InterruptedException, InvocationTargetException {
        Thread.sleep(SETTLE_MS);
        EventQueue.invokeAndWait(() -> {
            frame.validate();
            List<String> wrong = new ArrayList<>(Clipped.in(frame.getContentPane()));
            NamedControlsTest.look(frame.getContentPane(), "no name", wrong);
            wrong.forEach(line -> System.out.println(name.replaceAll(".*\\.", "") + ": " + line));
        });
    }

    /** What brings the other pages of a window to the front. */
    private static List<Runnable> pages(Component in, boolean lists) {
        List<Runnable> pages = new ArrayList<>();
        if (in instanceof JTabbedPane tabs) {
            for (int i = 1; i < tabs.getTabCount(); i++) {
                int index = i;
                pages.add(() -> tabs.setSelectedIndex(index));
            }
        } else if (in instanceof JToggleButton button && Objects.requireNonNullElse(button.getName(), "").startsWith("page.")) {
            pages.add(((AbstractButton) button)::doClick);
        } else if (in instanceof JList<?> list && lists && list.getModel().getSize() <= LISTED_PAGES) {
            for (int i = 1; i < list.getModel().getSize(); i++) {
                int index = i;
                pages.add(() -> list.setSelectedIndex(index));
            }
        }
        if (in instanceof Container container) {
            for (Component child : container.getComponents()) {
                pages.addAll(pages(child, lists));
            }
        }
        return pages;
    }

    private static Component shown(TopComponent window) {
        for (String step : List.of("componentOpened", "componentShowing")) {
            try {
                Method method = TopComponent.class.getDeclaredMethod(step);
                method.setAccessible(true);
                method.invoke(window);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(window.getClass().getName(), e);
            }
        }
        return window;
    }

    private static Object made(String type) {
        try {
            return Thread.currentThread().getContextClassLoader().loadClass(type).getConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type, e);
        }
    }

    /** Every class that a layer of ours names like this. */
    private static TreeSet<String> named(String pattern) throws IOException {
        TreeSet<String> names = new TreeSet<>();
        for (String module : Tree.moduleFolders()) {
            Path layer = Tree.TOP.resolve("modules").resolve(module).resolve("target/classes/META-INF/generated-layer.xml");
            if (Files.exists(layer)) {
                Matcher found = Pattern.compile(pattern).matcher(Files.readString(layer));
                while (found.find()) {
                    names.add(found.group(1));
                }
            }
        }
        return names;
    }
}
