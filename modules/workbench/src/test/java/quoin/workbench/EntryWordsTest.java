package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.LoadCase;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.CarFile;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.logbook.Measurement;
import quoin.workflow.Closing;
import quoin.workflow.OrderOfWork;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;

/** What the log and the Edit menu call an entry. */
class EntryWordsTest {

    private static final ReadingId LF = ReadingId.of(ReadingKind.LOAD, Corner.LF);
    private static final Header H = Header.draft("corner-weights");
    private final Locale before = Locale.getDefault();

    @TempDir
    private Path folder;

    @AfterEach
    void back() {
        Locale.setDefault(before);
    }

    private static DaySnapshot snapshot(Day day) {
        return new DaySnapshot(day, new OrderOfWork(List.of()).status(day), DisplayUnits.usual());
    }

    private static Car changed(Car car) {
        LoadCase was = car.loadCase();
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), car.corners(), car.masses(), car.heightPoints(), car.targets(),
                new LoadCase(was.driver(), OptionalDouble.of(11), was.pressureBar()), car.instruments(),
                List.of(Corner.RF, Corner.LF, Corner.LR, Corner.RR));
    }

    /** One entry of every kind there is. */
    private static List<Entry> everyKind() {
        Measurement measured = new Measurement("string-toe", Map.of(), "", Map.of());
        Entry.Reading reading = new Entry.Reading(H, Map.of(LF, 107.9), Map.of(), Entry.Source.RACER);
        return List.of(new Entry.CarDescribed(H, changed(TestCars.car())), reading,
                new Entry.BumpSteer(H, Corner.LF, List.of(new Entry.BumpSteer.Point(-20, 0.1), new Entry.BumpSteer.Point(20, -0.1)), measured),
                new Entry.Check(H, "pads", Map.of("LF", 0.0), measured),
                new Entry.Adjustment(H, List.of(new Entry.Turn(new AdjusterId(AdjusterKind.PERCH, Corner.LF), 2.5, OptionalDouble.empty())), ""),
                new Entry.Condition(H, Conditions.DRIVER, Conditions.IN, ""),
                new Entry.TargetSet(H, ReadingId.ofCar(ReadingKind.CROSS), new Target(50, 0.3)),
                new Entry.GoalSet(H, CrossGoal.EQUAL_FRONTS),
                new Entry.ResponseTakenOver(H, "2026-04-11-1", Instant.EPOCH, 470,
                        List.of(new Entry.ResponseTakenOver.Effect("load.LF/perch.LF", 1, 1.1, 0.1))),
                new Entry.Note(H, "rain"), new Entry.SignOff(H, Optional.empty()), new Entry.Reopened(H, "perch knocked"),
                new Entry.DayClosed(H, Optional.of("tow truck waits"), List.of()), new Entry.Correction(H, 2, Optional.of(reading), "misread"),
                new Entry.Unknown(H, "weather", "{}"));
    }

    @Test
    void everyKindOfEntryHasANameInTheMenuAndInTheLog() {
        Set<Class<?>> kinds = everyKind().stream().map(Object::getClass).collect(Collectors.toSet());
        assertEquals(Set.copyOf(Arrays.asList(Entry.class.getPermittedSubclasses())), kinds, "a kind of entry has no example here");
        Set<String> names = new HashSet<>();
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Locale.setDefault(language);
            for (Entry entry : everyKind()) {
                Day day = TestCars.day().read(Map.of(LF, 107.8)).add("corner-weights", entry::withHeader).build();
                Entry written = day.written().get(2);
                EntryWords words = snapshot(day).entryWords();
                assertFalse(words.of(written).isBlank(), entry::toString);
                assertTrue(names.add(words.of(written)), () -> "same in both languages: " + words.of(written));
                Day undone = day.with(new Entry.Correction(new Header(4, Instant.EPOCH, ""), 3, Optional.empty(), UndoHistory.UNDO));
                String taken = snapshot(undone).entryWords().of(undone.written().get(3));
                assertTrue(taken.endsWith(words.of(written)), taken);
                Day again = undone.with(new Entry.Correction(new Header(5, Instant.EPOCH, ""), 4, Optional.empty(), UndoHistory.REDO));
                String redone = snapshot(again).entryWords().of(again.written().get(4));
                assertTrue(redone.endsWith(words.of(written)) && !redone.equals(taken), redone);
            }
        }
    }

    @Test
    void undoIsCalledByWhatItTakesBack() {
        Day day = TestCars.day().read(Map.of(LF, 107.9)).withdraw(2, UndoHistory.UNDO).withdraw(3, UndoHistory.REDO).withdraw(2, "wet pads").build();
        EntryWords words = snapshot(day).entryWords();
        assertEquals(List.of("Undone: Weight: LF 107.9 kg", "Done again: Weight: LF 107.9 kg", "Entry 2 withdrawn (wet pads): Weight: LF 107.9 kg"),
                day.written().subList(2, 5).stream().map(words::of).toList());
    }

    @Test
    void aChangedCarIsCalledByWhatChanged() {
        Day day = TestCars.day().add("", h -> new Entry.CarDescribed(h, changed(TestCars.car()))).build();
        EntryWords words = snapshot(day).entryWords();
        assertEquals("Car: Ouzel 23", words.of(day.written().get(0)));
        assertEquals("Car changed: load case, walking order, now RF LF LR RR", words.of(day.written().get(1)));
    }

    /** A state that is ticked, and what is recorded where it no longer holds. */
    @Test
    void everyConditionThatIsTickedHasWordsOfItsOwn() {
        Day day = TestCars.day().build();
        List<Requirement> ticked = Stream.of(List.of(Requirements.sound(), Requirements.pressuresSet(), Requirements.scalesZeroed(),
                Requirements.steeringLocked(), Requirements.barOff(Axle.REAR)), Requirements.forReading(day.car()),
                Closing.states(day).stream().map(s -> s.requirement()).toList()).flatMap(List::stream).toList();
        assertTrue(ticked.size() > 12, ticked.toString());
        for (Requirement requirement : ticked) {
            for (String value : List.of(requirement.value(), RequirementsList.opposite(requirement))) {
                String words = EntryWords.condition(requirement.key(), value);
                assertFalse(words.endsWith(": " + value), words);
            }
        }
    }

    @Test
    void aCarChangeThatIsUndoneLeavesTheCarsFileToo() {
        Library library = new Library(folder);
        Car car = TestCars.car();
        library.save(car);
        CurrentDay current = new CurrentDay(List.of());
        current.open(library.createDay(car, "Test"));
        Path file = Library.carFileOf(current.journal().orElseThrow().folder()).orElseThrow();
        assertTrue(current.keepOnCar(EntryWordsTest::changed));
        assertEquals(changed(car).walkingOrder(), CarFile.read(file).walkingOrder());
        current.undoRedo().undo();
        assertEquals(car, current.snapshot().orElseThrow().car());
        assertEquals(car.walkingOrder(), CarFile.read(file).walkingOrder());
        assertEquals(car.loadCase(), CarFile.read(file).loadCase());
        current.undoRedo().redo();
        assertEquals(changed(car).walkingOrder(), CarFile.read(file).walkingOrder());
        current.close();
    }
}
