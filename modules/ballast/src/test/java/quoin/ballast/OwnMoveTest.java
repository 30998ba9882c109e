package quoin.ballast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.ballast.MoveChoices.Way;
import quoin.car.KnownMass;
import quoin.car.PerCorner;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.SpacePoint;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;

/** A move of mass of the racer's own, as it is typed. The loads it gives are checked by moments about the centre line. */
class OwnMoveTest {

    private static final PerCorner<Double> LOADS = new PerCorner<>(158.0, 174.0, 152.0, 154.0);
    private static final double MEAN_TRACK_MM = 1430;

    @TempDir
    Path root;
    private CurrentDay current;
    private OwnMove form;
    private int told;

    @BeforeEach
    void open() throws Exception {
        Library library = new Library(root);
        library.save(Ouzel23.car());
        Journal journal = library.createDay(Ouzel23.car(), "");
        onEventThread(() -> {
            current = new CurrentDay(List.of());
            current.open(journal);
            form = new OwnMove(current, () -> told++);
            form.show(current.snapshot().orElseThrow());
            return null;
        });
    }

    @AfterEach
    void close() throws Exception {
        onEventThread(() -> {
            current.close();
            return null;
        });
    }

    private static <T> T onEventThread(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    private static Stream<Component> all(Container in) {
        return Stream.of(in.getComponents()).flatMap(c -> c instanceof Container container ? Stream.concat(Stream.of(c), all(container)) : Stream.of(c));
    }

    private void type(String field, String text) throws Exception {
        onEventThread(() -> {
            all(form).filter(JTextComponent.class::isInstance).map(JTextComponent.class::cast)
                    .filter(f -> field.equals(f.getAccessibleContext().getAccessibleName())).findFirst()
                    .orElseThrow(() -> new AssertionError("no " + field)).setText(text);
            return null;
        });
    }

    private void choose(int index) throws Exception {
        onEventThread(() -> {
            JComboBox<?> box = (JComboBox<?>) all(form).filter(JComboBox.class::isInstance).findFirst().orElseThrow();
            box.setSelectedIndex(index < 0 ? box.getItemCount() - 1 : index);
            return null;
        });
    }

    private Optional<Way> way() throws Exception {
        return onEventThread(() -> form.way(current.snapshot().orElseThrow()));
    }

    private String problems() throws Exception {
        return onEventThread(() -> String.join(" ", all(form).filter(JTextArea.class::isInstance).map(c -> ((JTextArea) c).getText()).toList()));
    }

    private static Equilibrium after(Way way) {
        return Standing.of(Ouzel23.car(), LOADS, Map.of(), List.of()).after(way.masses());
    }

    @Test
    void aListedThingMovesWhereItIsTyped() throws Exception {
        KnownMass battery = MoveChoices.movable(Ouzel23.car()).get(0);
        assertEquals(Optional.empty(), way(), "nothing typed, nothing moved");
        type("Goes to, left", "310");
        Way way = way().orElseThrow();
        assertTrue(told > 0);
        assertEquals(0, way.addedKg(), 1e-12);
        KnownMass moved = new KnownMass(battery.name(), battery.role(), battery.massKg(), battery.xMm(), 310, battery.zMm());
        assertTrue(way.kept().contains(moved) && !way.kept().contains(battery), "blank = as before: " + way.kept());
        assertTrue(way.words().contains(battery.name()) && way.words().contains("310 mm left"), way.words());
        double share = after(way).shares().leftPercent() - 100 * (LOADS.lf() + LOADS.lr()) / 638;
        double byMoments = 100 * battery.massKg() * (310 - battery.yMm()) / MEAN_TRACK_MM / 638;
        assertEquals(byMoments, share, 0.06 * byMoments, "the body rolls a little further than the moments say");
    }

    @Test
    void aThingTakenOffIsGone() throws Exception {
        KnownMass battery = MoveChoices.movable(Ouzel23.car()).get(0);
        onEventThread(() -> {
            ((JCheckBox) all(form).filter(JCheckBox.class::isInstance).findFirst().orElseThrow()).doClick();
            return null;
        });
        Way way = way().orElseThrow();
        assertEquals(-battery.massKg(), way.addedKg(), 1e-12);
        assertEquals(638 - battery.massKg(), after(way).shares().totalKgf(), 1e-9);
        assertTrue(way.kept().stream().noneMatch(battery::equals));
    }

    @Test
    void somethingElseIsTypedByItsMassAndPlaces() throws Exception {
        choose(-1);
        type("Its name", "toolbox");
        type("Its mass", "5");
        type("Goes to, ahead", "-1190");
        type("Goes to, left", "0");
        assertEquals(Optional.empty(), way());
        assertTrue(problems().contains("Goes to: type all three figures"), problems());
        type("Goes to, high", "150");
        Way put = way().orElseThrow();
        assertEquals(5, put.addedKg(), 1e-12, "blank in all three = not on board yet");
        assertTrue(put.kept().contains(new KnownMass("toolbox", KnownMass.Role.BALLAST, 5, -1190, 0, 150)));
        type("Is now at, ahead", "-2000");
        type("Is now at, left", "200");
        type("Is now at, high", "150");
        Way moved = way().orElseThrow();
        assertEquals(0, moved.addedKg(), 1e-12);
        assertEquals(new SpacePoint(-2000, 200, 150), moved.masses().get(0).place());
        type("Its mass", "");
        assertEquals(Optional.empty(), way());
        assertTrue(problems().contains("Its mass: nothing is typed"), problems());
        type("Its mass", "5 bolts");
        assertEquals(Optional.empty(), way());
        assertTrue(problems().contains("Its mass:"), problems());
    }
}
