package quoin.wheelangles.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;
import quoin.wheelangles.measure.DraftFile;
import quoin.workbench.CurrentDay;
import quoin.workbench.WrapText;

/** What is typed in a measuring form ends in the journal, and nothing typed is lost on the way. */
class MeasurePanelTest {

    private static final ReadingId CAMBER = ReadingId.of(ReadingKind.CAMBER, Corner.RF);

    @TempDir
    Path library;
    private CurrentDay current;
    private MeasurePanel panel;

    @BeforeEach
    void open() throws Exception {
        Journal.create(library.resolve("day"), Ouzel23.car(), "").close();
        current = new CurrentDay(List.of());
        current.open(Journal.open(library.resolve("day")));
        panel = another();
    }

    @AfterEach
    void close() {
        current.close();
    }

    private MeasurePanel another() throws Exception {
        return onEventThread(() -> {
            MeasurePanel made = new MeasurePanel(current, "wheel-angles");
            made.show(current.snapshot().orElseThrow());
            return made;
        });
    }

    private static <T> T onEventThread(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    private static <T extends Component> Stream<T> all(Container in, Class<T> type) {
        List<Component> found = new ArrayList<>();
        for (Component child : in.getComponents()) {
            found.add(child);
            if (child instanceof Container container) {
                all(container, Component.class).forEach(found::add);
            }
        }
        return found.stream().filter(type::isInstance).map(type::cast);
    }

    private static <T extends Component> T named(MeasurePanel panel, Class<T> type, String name) {
        return all(panel, type).filter(c -> name.equals(c.getName())).findFirst().orElseThrow(() -> new AssertionError("no " + name));
    }

    private void choose(int way) throws Exception {
        onEventThread(() -> {
            named(panel, JList.class, "measure.ways").setSelectedIndex(way);
            return null;
        });
    }

    private void type(String key, String text) throws Exception {
        onEventThread(() -> {
            named(panel, JTextField.class, "measure." + key).setText(text);
            return null;
        });
    }

    private String said() {
        return String.join(" ", all(panel, WrapText.class).map(WrapText::getText).toList());
    }

    private static Day onDisk(Path folder) {
        try (Journal journal = Journal.openReadOnly(folder)) {
            return journal.day();
        }
    }

    @Test
    void aFigureTypedEndsInTheJournalWithItsRawFigures() throws Exception {
        choose(4);
        type("RF.top", "52,5");
        type("RF.bottom", "38");
        onEventThread(() -> {
            panel.record();
            return null;
        });
        Day day = onDisk(library.resolve("day"));
        assertEquals(Math.toDegrees(Math.asin(-14.5 / 372)), day.latest(CAMBER).orElseThrow().value(), 1e-12);
        Entry.Reading entry = (Entry.Reading) day.written().get(1);
        assertEquals("wheel-angles", entry.header().stage());
        assertEquals("plumb-camber", entry.measured().orElseThrow().method());
        assertEquals(Optional.of("52,5"), entry.measured().orElseThrow().raw("RF.top"));
        assertTrue(said().contains("by plumb line and rule"), said());
        assertEquals("", named(panel, JTextField.class, "measure.RF.top").getText(), "ready for the next reading");
    }

    @Test
    void whatIsMissingIsSaidAndNothingIsRecorded() throws Exception {
        choose(4);
        type("RF.top", "52,5");
        onEventThread(() -> {
            panel.record();
            return null;
        });
        assertTrue(said().contains("RF, Bottom is not typed yet."), said());
        type("RF.bottom", "3x8");
        onEventThread(() -> {
            panel.record();
            return null;
        });
        assertTrue(said().contains("RF, Bottom: "), said());
        assertEquals(1, onDisk(library.resolve("day")).written().size());
        assertEquals("3x8", named(panel, JTextField.class, "measure.RF.bottom").getText());
    }

    @Test
    void whatIsTypedStaysWhenTheWayChangesAndTheWindowCloses() throws Exception {
        choose(0);
        type("LF.front", "140,5");
        choose(1);
        type("plate", "500");
        choose(0);
        assertEquals("140,5", named(panel, JTextField.class, "measure.LF.front").getText());
        onEventThread(() -> {
            panel.keepDrafts();
            return null;
        });
        assertEquals(Map.of("string-toe", Map.of("LF.front", "140,5"), "plate-toe", Map.of("plate", "500")),
                new DraftFile(library.resolve("day")).read());
        panel = another();
        assertEquals("140,5", named(panel, JTextField.class, "measure.LF.front").getText());
    }

    @Test
    void aChoiceChangesTheForm() throws Exception {
        choose(0);
        onEventThread(() -> {
            JComboBox<?> cords = named(panel, JComboBox.class, "measure.cords");
            cords.setSelectedIndex(2);
            return null;
        });
        assertTrue(all(panel, JTextField.class).noneMatch(f -> "measure.track.FRONT".equals(f.getName())));
        type("LR.front", "150");
        type("LR.rear", "149.2");
        onEventThread(() -> {
            panel.record();
            return null;
        });
        assertEquals(Math.toDegrees(Math.asin(0.8 / 372)),
                onDisk(library.resolve("day")).latest(ReadingId.of(ReadingKind.TOE, Corner.LR)).orElseThrow().value(), 1e-12);
    }

    @Test
    void aBrokenDraftIsSaidAndDoesNotStopTheDay() throws Exception {
        Files.writeString(library.resolve("day").resolve(DraftFile.FILE), "string-toe/LF.front=\\u00zz\n");
        panel = another();
        assertEquals("", named(panel, JTextField.class, "measure.LF.front").getText());
        assertTrue(said().contains(DraftFile.FILE), said());
    }
}
