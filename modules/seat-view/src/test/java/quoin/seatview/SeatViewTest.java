package quoin.seatview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;

/** The keypad alone, from the keys to the journal. */
class SeatViewTest {

    @TempDir
    private Path folder;
    private final CurrentDay current = new CurrentDay(List.of());
    private final SeatPanel panel = new SeatPanel(new SeatScale(4, 1));
    private boolean left;
    private final SeatView view = new SeatView(current, panel, Sound.Kind.OFF, () -> left = true);

    @BeforeEach
    void open() {
        current.open(Journal.create(folder.resolve("day"), Ouzel23.car(), "Seat"));
        current.addListener(view::dayChanged);
        view.dayChanged();
    }

    @AfterEach
    void close() {
        current.close();
        assertTrue(left, "the view goes when the day is closed");
    }

    private void press(String keys) {
        for (char key : keys.toCharArray()) {
            int code = key == '\n' ? KeyEvent.VK_ENTER : KeyEvent.VK_UNDEFINED;
            view.keyPressed(event(KeyEvent.KEY_PRESSED, code, key));
            view.keyTyped(event(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, key));
        }
    }

    private KeyEvent event(int id, int code, char key) {
        Component source = panel;
        return new KeyEvent(source, id, 0, 0, code, key);
    }

    private List<Entry.Reading> readings() {
        return current.snapshot().orElseThrow().day().written().stream().filter(Entry.Reading.class::isInstance)
                .map(Entry.Reading.class::cast).toList();
    }

    private static ReadingId load(Corner corner) {
        return ReadingId.of(ReadingKind.LOAD, corner);
    }

    @Test
    void fourFiguresAndEnterAreOneReading() {
        press("161,8\n157\n148.6\n170.1\n");
        assertEquals(1, readings().size());
        List<Corner> walk = Ouzel23.car().walkingOrder();
        double[] typed = {161.8, 157, 148.6, 170.1};
        Map<ReadingId, Double> values = readings().get(0).values();
        for (int i = 0; i < 4; i++) {
            assertEquals(typed[i], values.get(load(walk.get(i))), 1e-9, walk.get(i) + " in walking order");
        }
    }

    @Test
    void minusCorrectsStarRepeats() {
        press("161.8\n157\n148.6\n170.1\n");
        press("161.9-7\n*\n*\n*\n");
        List<Corner> walk = Ouzel23.car().walkingOrder();
        assertEquals(2, readings().size());
        assertEquals(161.7, readings().get(1).values().get(load(walk.get(0))), 1e-9);
        assertEquals(157, readings().get(1).values().get(load(walk.get(1))), 1e-9);
    }

    @Test
    void aFigureThatCannotBeReadIsNotRecordedAndNothingTypedIsLost() {
        press("161.8\n15.7.3\n");
        assertEquals(0, readings().size());
        press("----3\n148.6\n170.1\n");
        assertTrue(readings().size() <= 1);
    }

    @Test
    void slashTurnsTheColoursRoundPlusTurnsSoundOn() {
        press("/");
        assertTrue(panel.isWhiteOnBlack());
        press("+");
        assertEquals(Sound.Kind.BEEP, view.heard());
        press("++");
        assertEquals(Sound.Kind.OFF, view.heard());
    }

    @Test
    void aTextToSpeakIsNeverPartOfACommandLineThatIsRead() {
        for (String system : List.of("Linux", "Mac OS X", "Windows 11")) {
            for (List<String> command : Sound.commands(system, "de", "-x $(reboot)")) {
                assertTrue(command.stream().noneMatch(part -> part.startsWith("-x")), command.toString());
                assertTrue(command.stream().noneMatch(part -> part.contains("reboot")) || !command.get(0).equals("powershell"));
            }
        }
    }

    /** A keypad has no Escape and no Page up: its decimal key in an empty field leads there. */
    @Test
    void theKeypadAloneSizesTurnsRoundMeasuresAndLeaves() {
        double before = panel.scale().factor();
        press(".11");
        assertEquals(before * 1.21, panel.scale().factor(), 1e-9);
        press("2\n161.8\n157\n148.6\n170.1\n");
        assertEquals(1, readings().size(), "after Enter digits are figures again");
        press(".5-");
        assertTrue(panel.isWhiteOnBlack());
        press(".3");
        double rule = panel.scale().pixelsPerMm();
        press("1\n");
        assertTrue(panel.scale().pixelsPerMm() > rule && !panel.isRuling());
        press("161,8");
        assertFalse(left);
        press("-----.0");
        assertTrue(left);
        assertEquals(1, readings().size());
    }

    @Test
    void theLikelyFigureIsTakenAndEnterGoesOn() {
        current.record("preparation", h -> new Entry.Condition(h, Conditions.bar(Axle.FRONT), Conditions.DISCONNECTED, ""));
        press("161.8\n157\n148.6\n170.1\n");
        press("1618\n");
        press("0\n157\n148.6\n170.1\n");
        assertEquals(2, readings().size());
        assertEquals(161.8, readings().get(1).values().get(load(Ouzel23.car().walkingOrder().get(0))), 1e-9);
    }

    @Test
    void aMachineWithoutAHelperIsNoError() {
        assertTrue(KeepAwake.first(List.of(List.of("no-such-program-of-quoin"))).isEmpty());
        for (String system : List.of("Linux", "Mac OS X", "Windows 11")) {
            for (List<String> command : KeepAwake.commands(system, 4711)) {
                assertTrue(command.stream().anyMatch(part -> part.contains("4711")), "ends with Quoin: " + command);
            }
        }
    }
}
