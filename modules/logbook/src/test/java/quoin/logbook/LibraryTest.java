package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
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

    @Test
    void aThirdOfOneNameGetsTheNextNumber() {
        library.save(Samples.bareCar());
        library.save(Samples.bareCar().withId("bare-2", "Bare"));
        assertEquals("bare-3", library.newId("Bare"));
    }

    @Test
    void foldersThatHoldNoCarOrDayAreNotListed() throws IOException {
        library.save(Samples.bareCar());
        Files.createDirectories(folder.resolve("Quoin/cars/sketches"));
        Files.createDirectories(folder.resolve("Quoin/cars/bare/days/2026-03-07-1"));
        Files.createDirectories(folder.resolve("Quoin/cars/Old Car"));
        Files.copy(folder.resolve("Quoin/cars/bare/car.json"), folder.resolve("Quoin/cars/Old Car/car.json"));
        assertEquals(List.of("bare"), library.cars().stream().map(CarInfo::id).toList());
        assertEquals(List.of(), library.days("bare"));
    }

    @Test
    void openingADayThatHasItsCarRecordsNothing() throws IOException {
        library.save(Samples.fullCar());
        try (Journal day = library.createDay(Samples.fullCar(), "")) {
            day.append(Samples.reading(107.9));
        }
        Path file = library.dayFolder("full-1", "2026-03-07-1").resolve(Journal.FILE);
        try (Journal day = library.openDay("full-1", "2026-03-07-1")) {
            assertEquals(2, day.entries().size());
        }
        Files.writeString(file, Files.readString(file) + "{\"torn");
        try (Journal day = library.openDay("full-1", "2026-03-07-1")) {
            assertEquals(List.of(FileFinding.Kind.TORN_END), day.findings().stream().map(FileFinding::kind).toList());
            assertEquals(2, day.entries().size(), "the car is there and is not recorded again");
        }
    }

    /** A day that cannot be opened must not stay locked: the racer mends the car's file and tries again. */
    @Test
    void aDayWithoutAnyCarIsLetGo() throws IOException {
        library.createDay(Samples.bareCar(), "").close();
        Path day = library.dayFolder("bare", "2026-03-07-1");
        Files.writeString(day.resolve(Journal.FILE), Files.readAllLines(day.resolve(Journal.FILE)).get(0) + "\n");
        assertThrows(JournalException.class, () -> library.openDay("bare", "2026-03-07-1"));
        library.save(Samples.bareCar());
        try (Journal again = library.openDay("bare", "2026-03-07-1")) {
            assertEquals(Samples.bareCar(), again.day().car());
        }
    }

    @Test
    void anUnreadableDayStandsUnderTheTimeOfItsFile() throws IOException {
        library.createDay(Samples.bareCar(), "").close();
        Path file = library.dayFolder("bare", "2026-03-07-1").resolve(Journal.FILE);
        Files.writeString(file, "rubbish\n");
        Instant then = Instant.parse("2025-11-02T08:15:00Z");
        Files.setLastModifiedTime(file, FileTime.from(then));
        assertEquals(then, library.days("bare").get(0).created());
    }

    @Test
    void aDayKnowsTheFileOfItsCar() {
        library.save(Samples.bareCar());
        library.createDay(Samples.bareCar(), "").close();
        assertEquals(Optional.of(folder.resolve("Quoin/cars/bare/car.json")), Library.carFileOf(library.dayFolder("bare", "2026-03-07-1")));
        assertEquals(Optional.empty(), Library.carFileOf(folder.resolve("stick/days/2026-03-07-1")));
    }

    @Test
    void onlyWhatLiesInAnArchivedCarIsInOne() {
        library.save(Samples.bareCar());
        Path car = library.cars().get(0).folder();
        assertFalse(library.isInArchivedCar(car));
        library.archiveCar("bare", true);
        assertFalse(library.isInArchivedCar(car));
        assertTrue(library.isInArchivedCar(library.root().resolve("archive/bare/days/2026-03-07-1")));
    }

    @Test
    void liesInTheHomeFolderUnlessToldOtherwise() {
        assertEquals(Path.of(System.getProperty("user.home")).resolve("Quoin"), Library.defaultRoot());
    }
}
