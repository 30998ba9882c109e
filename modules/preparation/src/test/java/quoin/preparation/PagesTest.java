package quoin.preparation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.GaragePlace;
import quoin.logbook.GaragePlaces;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workflow.CarCheck;
import quoin.workflow.ScaleCorrection;

/** What is typed in the pages of the preparation ends in the journal, and what belongs to the place beside it. */
class PagesTest {

    @TempDir
    Path root;
    private CurrentDay current;
    private PreparationView view;

    @BeforeEach
    void open() throws Exception {
        Library library = new Library(root);
        library.save(Ouzel23.car());
        Journal journal = library.createDay(Ouzel23.car(), "");
        view = onEventThread(() -> {
            current = new CurrentDay(List.of(new PreparationStage()));
            current.open(journal);
            PreparationView made = new PreparationView(current);
            made.show(current.snapshot().orElseThrow());
            current.addListener(() -> current.snapshot().ifPresent(made::show));
            return made;
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

    private <T extends Component> T named(Class<T> type, String name) {
        return all(view.component()).filter(type::isInstance).map(type::cast).filter(c -> name.equals(c.getName())).findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    private void press(String text) throws Exception {
        onEventThread(() -> {
            all(view.component()).filter(AbstractButton.class::isInstance).map(AbstractButton.class::cast)
                    .filter(b -> text.equals(b.getText())).findFirst().orElseThrow(() -> new AssertionError("no button " + text)).doClick();
            return null;
        });
    }

    private AbstractButton pageButton(int index) {
        return all(view.head().orElseThrow()).filter(b -> ("page." + index).equals(b.getName())).map(AbstractButton.class::cast).findFirst()
                .orElseThrow(() -> new AssertionError("no button of page " + index));
    }

    private void page(int index) throws Exception {
        onEventThread(() -> {
            pageButton(index).doClick();
            return null;
        });
    }

    private void type(String... keysAndTexts) throws Exception {
        onEventThread(() -> {
            for (int i = 0; i < keysAndTexts.length; i += 2) {
                named(JTextField.class, "sheet." + keysAndTexts[i]).setText(keysAndTexts[i + 1]);
            }
            return null;
        });
    }

    private void choose(String name, String item) throws Exception {
        onEventThread(() -> {
            JComboBox<?> box = all(view.component()).filter(JComboBox.class::isInstance).map(c -> (JComboBox<?>) c)
                    .filter(b -> name.equals(b.getAccessibleContext().getAccessibleName())).findFirst().orElseThrow();
            for (int i = 0; i < box.getItemCount(); i++) {
                if (box.getItemAt(i).toString().equals(item)) {
                    box.setSelectedIndex(i);
                    return null;
                }
            }
            throw new AssertionError("no " + item);
        });
    }

    private Day day() {
        return current.snapshot().orElseThrow().day();
    }

    @Test
    void padsAreSurveyedShimmedAndRemembered() throws Exception {
        page(1);
        onEventThread(() -> {
            JTextField stock = all(view.component()).filter(JTextField.class::isInstance).map(JTextField.class::cast)
                    .filter(f -> "Shims at hand".equals(f.getAccessibleContext().getAccessibleName())).findFirst().orElseThrow();
            stock.setText("0.5 x 4; 1 x 2");
            return null;
        });
        type("LF", "100", "RF", "100", "LR", "100", "RR", "102");
        press("Record the survey");
        assertEquals(2.0, day().latest(ReadingId.of(ReadingKind.PAD_HEIGHT, Corner.LF)).orElseThrow().value());
        Entry.Check check = day().check("pads").orElseThrow();
        assertEquals("water-level", check.measured().method());
        assertEquals(Optional.of("102"), check.measured().raw("RR"));
        assertEquals(Optional.empty(), day().condition(Conditions.PADS), "2 mm of warp is not levelled");
        press("Shims laid: survey again");
        assertEquals(Optional.of(Conditions.MOVED), day().condition(Conditions.PADS));
        GaragePlace place = new GaragePlaces(root).all().get(0);
        assertEquals(List.of(1.0, 1.0), place.underMm().rr());
        assertEquals(Optional.empty(), place.survey());
        type("LF", "100", "RF", "100", "LR", "100", "RR", "100");
        press("Record the survey");
        assertEquals(Optional.of(Conditions.LEVELLED), day().condition(Conditions.PADS));
        assertEquals(Optional.of("Garage"), day().condition(Conditions.PLACE));
        assertTrue(new GaragePlaces(root).all().get(0).survey().isPresent());
    }

    @Test
    void scalesAreTestedAndWeightsPutRight() throws Exception {
        page(2);
        type("person", "80", "LF.first", "80.8", "RF.first", "80", "LR.first", "80", "RR.first", "80");
        press("Record in the logbook");
        double factor = ScaleCorrection.of(day()).orElseThrow().factors().lf();
        assertTrue(factor > 1.008 && factor < 1.0101, "drawn a little to what is usual: " + factor);
        ReadingId lf = ReadingId.of(ReadingKind.LOAD, Corner.LF);
        boolean recorded = onEventThread(() -> current.record("corner-weights",
                h -> new Entry.Reading(h, Map.of(lf, 101.0), Map.of(), Entry.Source.RACER)));
        assertTrue(recorded);
        assertEquals(101 / factor, day().latest(lf).orElseThrow().value(), 1e-9);
        Entry last = day().effective().get(day().effective().size() - 1);
        assertEquals(Optional.of(101.0), ScaleCorrection.shown((Entry.Reading) last, lf));
    }

    @Test
    void twoScalesUnderEachWheelBecomeWeights() throws Exception {
        page(2);
        choose("Way", "Two scales under one wheel, with a plank");
        type("plank", "4", "LF", "60", "LF.b", "50", "RF", "50", "RF.b", "50", "LR", "60", "LR.b", "70", "RR", "80", "RR.b", "70");
        press("Record in the logbook");
        assertEquals(106, day().latest(ReadingId.of(ReadingKind.LOAD, Corner.LF)).orElseThrow().value(), 1e-9);
        assertEquals(146, day().latest(ReadingId.of(ReadingKind.LOAD, Corner.RR)).orElseThrow().value(), 1e-9);
    }

    @Test
    void whatCannotBeReadStaysAndRecordsNothing() throws Exception {
        page(2);
        type("person", "80", "LF.first", "8o", "RF.first", "80", "LR.first", "80", "RR.first", "80");
        press("Record in the logbook");
        assertFalse(day().check(ScaleCorrection.SUBJECT).isPresent());
        assertEquals("8o", onEventThread(() -> named(JTextField.class, "sheet.LF.first").getText()));
    }

    @Test
    void carIsSoundOnceEveryItemIsSeenTo() throws Exception {
        page(3);
        for (int i = 0; i < 9; i++) {
            press("Good (Y)");
        }
        press("Car is sound: record it");
        assertEquals(Optional.empty(), day().condition(Conditions.SOUND), "one item is left");
        String left = "engagement";
        onEventThread(() -> current.record("preparation", h -> new Entry.Condition(h, CarCheck.key(left), CarCheck.OPEN, "no witness hole")));
        press("Car is sound: record it");
        assertEquals(Optional.of(Conditions.YES), day().condition(Conditions.SOUND));
        assertEquals("left open: Rod end engagement", day().conditionEntry(Conditions.SOUND).orElseThrow().words());
    }

    @Test
    void springsArePressedInPairs() throws Exception {
        page(3);
        type("left.1.mm", "20", "left.1.kg", "40", "left.2.mm", "40", "left.2.kg", "80");
        press("Record the springs");
        Entry.Check check = day().check("springs.FRONT").orElseThrow();
        assertEquals(2 * 9.80665, check.result("LF").getAsDouble(), 1e-9);
        assertEquals(new Header(check.number(), check.header().time(), "preparation"), check.header());
    }
}
