package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryTest {

    @TempDir
    Path folder;

    private Library library;

    @BeforeEach
    void open() {
        library = new Library(folder.resolve("Quoin"), Samples.CLOCK);
    }

    @Test
    void emptyLibraryHasNothingAndIsNotCreatedByLooking() {
        assertEquals(List.of(), library.cars());
        assertEquals(List.of(), library.days("bare"));
        assertTrue(Files.notExists(folder.resolve("Quoin")));
    }

    @Test
    void carsAreSavedAndListedByName() {
        library.save(Samples.fullCar());
        library.save(Samples.bareCar());
        library.save(Samples.bareCar());
        assertEquals(List.of("bare", "full-1"), library.cars().stream().map(CarInfo::id).toList());
        assertEquals(Samples.fullCar(), library.car("full-1"));
    }

    @Test
    void carThatCannotBeReadIsListedWithItsProblem() throws IOException {
        library.save(Samples.bareCar());
        Files.writeString(folder.resolve("Quoin/cars/bare/car.json"), "{");
        CarInfo info = library.cars().get(0);
        assertEquals("bare", info.name());
        assertTrue(info.problem().orElseThrow().contains("car.json"), info.problem().toString());
    }

    @Test
    void carInAFolderOfAnotherNameIsPointedOut() throws IOException {
        library.save(Samples.bareCar());
        Files.move(folder.resolve("Quoin/cars/bare"), folder.resolve("Quoin/cars/copy"));
        assertTrue(library.cars().get(0).problem().orElseThrow().contains("give both one name"));
    }

    @Test
    void daysAreNumberedWithinADateAndTheLatestComesFirst() {
        library.createDay(Samples.bareCar(), "morning").close();
        library.createDay(Samples.bareCar(), "afternoon").close();
        Library nextDay = new Library(library.root(), Clock.offset(Samples.CLOCK, Duration.ofDays(1)));
        nextDay.createDay(Samples.bareCar(), "Sunday").close();
        assertEquals(List.of("2026-03-08-1", "2026-03-07-2", "2026-03-07-1"), library.days("bare").stream().map(DayInfo::id).toList());
        assertEquals(List.of("Sunday", "afternoon", "morning"), library.days("bare").stream().map(DayInfo::title).toList());
        try (Journal day = library.openDay("bare", "2026-03-07-2")) {
            assertEquals("afternoon", day.info().title());
            assertEquals(Samples.bareCar(), day.day().car());
        }
    }

    @Test
    void dayThatCannotBeReadIsListedWithItsProblem() throws IOException {
        library.createDay(Samples.bareCar(), "").close();
        Files.writeString(folder.resolve("Quoin/cars/bare/days/2026-03-07-1/day.jsonl"), "rubbish\n");
        DayInfo info = library.days("bare").get(0);
        assertTrue(info.problem().orElseThrow().contains("day.jsonl"), info.problem().toString());
    }

    @Test
    void dayWithoutItsCarTakesTheCarFromItsFile() throws IOException {
        library.save(Samples.fullCar());
        try (Journal day = library.createDay(Samples.fullCar(), "")) {
            day.append(Samples.reading(107.9));
        }
        Path file = folder.resolve("Quoin/cars/full-1/days/2026-03-07-1/day.jsonl");
        List<String> lines = Files.readAllLines(file);
        Files.writeString(file, lines.get(0) + "\ndamaged\n" + lines.get(2) + "\n");
        assertThrows(JournalException.class, () -> {
            try (Journal day = Journal.open(file.getParent())) {
                day.day();
            }
        });
        try (Journal day = library.openDay("full-1", "2026-03-07-1")) {
            assertEquals(Samples.fullCar(), day.day().car());
            assertEquals(107.9, day.day().latest(Samples.LF_LOAD).orElseThrow().value());
        }
    }

    @Test
    void namesThatLeaveTheLibraryAreRefused() {
        for (String id : List.of("..", "../x", "a/b", "A", "", "a b", ".", "x\u0000")) {
            assertThrows(IllegalArgumentException.class, () -> library.car(id), id);
            assertThrows(IllegalArgumentException.class, () -> library.openDay("bare", id), id);
        }
    }

    @Test
    void newIdsArePlainAndUnused() {
        assertEquals("bare-no-1", library.newId(" B\u00e4re: no. 1! "));
        assertEquals("car", library.newId("\u8eca"));
        assertEquals("car", library.newId("CON"));
        library.save(Samples.bareCar());
        assertEquals("bare-2", library.newId("Bare"));
        library.save(Samples.bareCar().withId(library.newId("x".repeat(200)), "long"));
        assertEquals(Optional.empty(), library.cars().get(1).problem());
    }
}
