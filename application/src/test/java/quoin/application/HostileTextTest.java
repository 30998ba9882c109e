package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.Toolkit;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.ListCellRenderer;
import javax.swing.plaf.basic.BasicHTML;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.windows.TopComponent;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.CarFile;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workbench.InertText;
import quoin.workflow.spi.Stage;

/**
 * A car and a day in which every free text is a page that fetches a picture: no window lays it out, no list, table, choice or tip,
 * and nothing is fetched from the address it names.
 */
class HostileTextTest {

    private static final int LONGEST_SILENCE_MS = 1500;
    private static final Set<String> NO_TEXTS = Set.of("type", "id", "kind", "format");

    @TempDir
    static Path root;
    private static final InertText NET = new InertText();
    private static final AtomicInteger FETCHED = new AtomicInteger();
    private static ServerSocket server;
    private static String markup;
    private static CurrentDay current;
    private static int replaced;

    @BeforeAll
    static void openADay() throws Exception {
        server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        Thread answers = new Thread(HostileTextTest::answer, "answers what is fetched");
        answers.setDaemon(true);
        answers.start();
        markup = "<html><b>x</b><img src='http://127.0.0.1:" + server.getLocalPort() + "/x'>";
        Car car = hostile();
        System.setProperty("quoin.library", root.toString());
        Library library = new Library(root);
        library.save(car);
        Built.onEventThread(() -> {
            Toolkit.getDefaultToolkit().addAWTEventListener(NET, AWTEvent.CONTAINER_EVENT_MASK);
            current = CurrentDay.inUse();
            current.openRehearsal(library.createDay(car, markup), 23);
            fill(car);
        });
    }

    @AfterAll
    static void close() throws Exception {
        Built.onEventThread(() -> {
            current.close();
            Toolkit.getDefaultToolkit().removeAWTEventListener(NET);
        });
        server.close();
        System.clearProperty("quoin.library");
    }

    /** Hangs up on whoever comes, and counts. */
    private static void answer() {
        try {
            while (true) {
                server.accept().close();
                FETCHED.incrementAndGet();
            }
        } catch (IOException e) {
            return; // the server was closed: the tests are over
        }
    }

    /** The practice car, with every text of its file replaced that may be any text. */
    private static Car hostile() throws IOException {
        ObjectNode car = (ObjectNode) JsonMapper.builder().build().readTree(CarFile.toText(Ouzel23.car()));
        replace(car, car);
        assertTrue(replaced > 5, "too few texts of a car may be any text: " + replaced);
        return CarFile.fromText(car.toString());
    }

    private static void replace(JsonNode in, ObjectNode whole) {
        if (in instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            names.stream().filter(name -> !NO_TEXTS.contains(name)).forEach(name -> {
                if (object.get(name).isTextual()) {
                    String was = object.get(name).asText();
                    object.put(name, markup);
                    if (isCar(whole)) {
                        replaced++;
                    } else {
                        object.put(name, was);
                    }
                }
                replace(object.get(name), whole);
            });
        } else if (in instanceof ArrayNode array) {
            array.forEach(item -> replace(item, whole));
        }
    }

    private static boolean isCar(ObjectNode car) {
        try {
            CarFile.fromText(car.toString());
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static void fill(Car car) {
        for (Stage stage : current.stages()) {
            List<ReadingId> readings = stage.readings(car);
            current.practiceReadings(readings).ifPresent(values -> current.record(stage.id(),
                    h -> new Entry.Reading(h, values, Map.of(), Entry.Source.PRACTICE_CAR)));
        }
        current.record("ride-height", h -> new Entry.Adjustment(h, car.adjusters().stream().filter(a -> a.id().kind().isSpringLeg())
                .limit(2).map(a -> new Entry.Turn(a.id(), 0.5, OptionalDouble.empty())).toList(), markup));
        current.record("", h -> new Entry.Condition(h, Conditions.DRIVER, Conditions.OUT, markup));
        current.record("", h -> new Entry.Condition(h, Conditions.DRIVER_NAME, markup, markup));
        current.record("", h -> new Entry.Condition(h, Conditions.PLACE, markup, markup));
        current.record("", h -> new Entry.Note(h, markup));
        long note = current.snapshot().orElseThrow().day().revision();
        current.record("", h -> new Entry.Correction(h, note, Optional.of(new Entry.Note(Header.draft(""), markup)), markup));
        current.record("wheel-angles", h -> new Entry.Reopened(h, markup));
    }

    @Test
    void noWindowLaysItOut() throws Exception {
        Set<String> laidOut = new TreeSet<>();
        Set<String> seen = new TreeSet<>();
        for (Class<?> type : Built.classes(TopComponent.class)) {
            Built.onEventThread(() -> {
                TopComponent window = (TopComponent) type.getDeclaredConstructor().newInstance();
                Built.call(window, "componentOpened");
                Built.call(window, "componentShowing");
                window.setSize(1200, 800);
                window.validate();
                look(window, type.getSimpleName(), laidOut, seen);
            });
        }
        assertEquals(Set.of(), laidOut);
        assertTrue(seen.size() >= 4, "in too few windows does anything begin with the text: " + seen);
        Thread.sleep(LONGEST_SILENCE_MS);
        assertEquals(0, FETCHED.get(), "fetched from the address in the text");
    }

    private static void look(Component component, String where, Set<String> laidOut, Set<String> seen) {
        check(component, where, laidOut, seen);
        if (component instanceof JList<?> list) {
            for (int i = 0; i < list.getModel().getSize(); i++) {
                check(drawn(list, list.getCellRenderer(), list.getModel().getElementAt(i), i), where + " list", laidOut, seen);
            }
        } else if (component instanceof JComboBox<?> box) {
            for (int i = 0; i < box.getItemCount(); i++) {
                check(drawn(new JList<>(), box.getRenderer(), box.getItemAt(i), i), where + " choice", laidOut, seen);
            }
        } else if (component instanceof JTable table) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                check(table.getTableHeader().getDefaultRenderer().getTableCellRendererComponent(table,
                        table.getColumnModel().getColumn(column).getHeaderValue(), false, false, -1, column), where + " heading", laidOut, seen);
                for (int row = 0; row < table.getRowCount(); row++) {
                    check(table.prepareRenderer(table.getCellRenderer(row, column), row, column), where + " table", laidOut, seen);
                }
            }
        } else if (component instanceof JTabbedPane tabs) {
            for (int i = 0; i < tabs.getTabCount(); i++) {
                if (BasicHTML.isHTMLString(tabs.getTitleAt(i))) {
                    laidOut.add(where + " tab");
                }
            }
        }
        if (component instanceof Container container && !(component instanceof JComboBox)) {
            for (Component part : container.getComponents()) {
                look(part, where, laidOut, seen);
            }
        }
    }

    @SuppressWarnings("unchecked") // the renderer belongs to the list the value is from
    private static Component drawn(JList<?> list, ListCellRenderer<?> renderer, Object value, int index) {
        return ((ListCellRenderer<Object>) renderer).getListCellRendererComponent((JList<Object>) list, value, index, false, false);
    }

    private static void check(Component component, String where, Set<String> laidOut, Set<String> seen) {
        if (!(component instanceof JComponent shown)) {
            return;
        }
        String text = shown instanceof JLabel label ? label.getText() : shown instanceof AbstractButton button ? button.getText()
                : shown instanceof JTextComponent words ? words.getText() : "";
        if (text != null && text.startsWith(markup)) {
            seen.add(where.replaceAll(" .*", ""));
        }
        boolean wraps = Boolean.FALSE.equals(shown.getClientProperty("html.disable")) && (text == null || !text.contains(markup));
        if (shown.getClientProperty(BasicHTML.propertyKey) != null && !wraps) {
            laidOut.add(where + ": " + text);
        }
        if (BasicHTML.isHTMLString(shown.getToolTipText())) {
            laidOut.add(where + ": the tip " + shown.getToolTipText());
        }
    }
}
