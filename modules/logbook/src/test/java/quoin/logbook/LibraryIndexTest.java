package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LibraryIndexTest {

    @TempDir
    private Path folder;
    private Library library;

    @BeforeEach
    void aLibrary() {
        library = new Library(folder.resolve("Quoin"), Samples.CLOCK);
        library.save(Samples.fullCar());
        library.save(Samples.bareCar());
        try (Journal day = library.createDay(Samples.fullCar(), "Hill climb, wet\ttyres \\ <b>")) {
            day.append(new Entry.Note(Header.draft(""), "LF ring was stiff\nand dry"));
            day.append(new Entry.Condition(Header.draft(""), Conditions.TYRES, "set 3, Größe M", "from Anna"));
            day.append(new Entry.Condition(Header.draft(""), Conditions.DRIVER, Conditions.IN, ""));
            day.append(new Entry.Note(Header.draft(""), "withdrawn words"));
            day.append(new Entry.Correction(Header.draft(""), 5, Optional.empty(), "undo"));
            day.append(new Entry.DayClosed(Header.draft(""), Optional.empty()));
        }
        try (Journal day = library.createDay(Samples.bareCar(), "Track day")) {
            day.append(Samples.reading(107.9));
        }
    }

    private LibraryIndex index() {
        return LibraryIndex.of(library);
    }

    private List<String> find(String words) {
        return new LibrarySearch(index().days(), ZoneOffset.UTC).find(words).stream().map(d -> d.day().title()).toList();
    }

    @Test
    void tellsTheSameAsTheFiles() {
        LibraryIndex index = index();
        assertEquals(library.cars(), index.cars().stream().map(LibraryIndex.KnownCar::car).toList());
        for (CarInfo car : library.cars()) {
            assertEquals(library.days(car.id()), index.days().stream().filter(d -> d.carId().equals(car.id())).map(KnownDay::day).toList());
        }
        for (KnownDay day : index.days()) {
            try (Journal journal = Journal.openReadOnly(day.day().folder())) {
                assertEquals(journal.day().closed().isPresent(), day.closed());
                assertEquals(journal.day().car().loadCase().driver(), day.driver());
            }
        }
    }

    @Test
    void everyWordMustStandSomewhere() {
        assertEquals(2, find("  ").size());
        assertEquals(List.of("Hill climb, wet\ttyres \\ <b>"), find("STIFF hill"));
        assertEquals(List.of("Hill climb, wet\ttyres \\ <b>"), find("grosse 3".replace("grosse", "größe")));
        assertEquals(List.of("Hill climb, wet\ttyres \\ <b>"), find("ring anna"));
        assertEquals(List.of("Track day"), find(Samples.bareCar().name()));
        assertEquals(2, find("2026-03-07").size());
        assertEquals(List.of(), find("stiff track"));
        assertEquals(List.of(), find("withdrawn"), "what was undone was not said");
    }

    @Test
    void onlyWhatChangedIsReadAgain() throws IOException {
        assertEquals(4, index().readAgain());
        assertEquals(0, index().readAgain());
        KnownDay day = index().days().get(0);
        try (Journal journal = Journal.open(day.day().folder())) {
            journal.append(new Entry.Note(Header.draft(""), "new words"));
        }
        LibraryIndex again = index();
        assertEquals(1, again.readAgain());
        assertTrue(again.days().stream().anyMatch(d -> d.words().contains("new words")));
        assertEquals(0, index().readAgain());
    }

    /** A copy to a stick gives every file a new time. */
    @Test
    void aCopyIsKnownByTheEndsOfItsFiles() throws IOException {
        index();
        for (KnownDay day : index().days()) {
            Files.setLastModifiedTime(day.day().folder().resolve(Journal.FILE), FileTime.from(Instant.parse("2030-01-01T00:00:00Z")));
        }
        assertEquals(0, index().readAgain());
    }

    @Test
    void aFileChangedByHandWithinItsSizeIsReadAgain() throws IOException {
        index();
        Path file = index().days().stream().filter(d -> d.closed()).findFirst().orElseThrow().day().folder().resolve(Journal.FILE);
        String text = Files.readString(file);
        Files.writeString(file, text.replace("stiff", "loose"));
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2031-01-01T00:00:00Z")));
        assertEquals(1, find("loose").size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "rubbish", "quoin-index 1\n", "quoin-index 2\nx", "quoin-index 1\n0\tcars/bare/car.json\t1\t1\n"})
    void aDamagedIndexLosesNothing(String contents) throws IOException {
        List<KnownDay> before = index().days();
        Files.writeString(library.root().resolve(LibraryIndex.FILE), contents);
        assertEquals(before, index().days());
        assertEquals(0, index().readAgain(), "it was made anew");
    }

    /** Bytes changed at random, from fixed seeds: the list is the same whatever the index holds. */
    @Test
    @Tag("slow")
    void noByteOfTheIndexIsTrusted() throws IOException {
        List<KnownDay> before = index().days();
        Path file = library.root().resolve(LibraryIndex.FILE);
        byte[] good = Files.readAllBytes(file);
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            byte[] bad = good.clone();
            for (int i = 0; i <= random.nextInt(4); i++) {
                bad[random.nextInt(bad.length)] = (byte) random.nextInt(256);
            }
            Files.write(file, bad);
            assertEquals(before, index().days(), "seed " + seed);
        }
        Files.delete(file);
        Files.createDirectory(file);
        assertEquals(before, index().days());
    }

    @Test
    void anUnreadableDayIsListedWithItsProblem() throws IOException {
        Files.writeString(index().days().get(0).day().folder().resolve(Journal.FILE), "rubbish\n", StandardCharsets.UTF_8);
        assertTrue(index().days().stream().anyMatch(d -> d.day().problem().isPresent()));
        assertEquals(2, index().days().size());
    }

    @Test
    void lookingAtNoLibraryMakesNone() {
        Library none = new Library(folder.resolve("none"), Samples.CLOCK);
        assertEquals(List.of(), LibraryIndex.of(none).days());
        assertFalse(Files.exists(none.root()));
    }

    @Test
    void theArchiveIsAFolderToMoveTo() {
        KnownDay day = index().days().stream().filter(KnownDay::closed).findFirst().orElseThrow();
        library.archiveDay(day.carId(), day.day().id(), true);
        assertEquals(List.of(), library.days(day.carId()));
        KnownDay put = index().days().stream().filter(KnownDay::archived).findFirst().orElseThrow();
        assertEquals(day.day().title(), put.day().title());
        assertEquals("2026-03-07-2", idOfNewDay(), "the number of an archived day is not given again");
        library.archiveDay(day.carId(), day.day().id(), false);
        assertEquals(2, library.days(day.carId()).size());
    }

    private String idOfNewDay() {
        try (Journal day = library.createDay(Samples.fullCar(), "again")) {
            return day.info().id();
        }
    }

    @Test
    void aCarGoesIntoTheArchiveWithItsDaysAndComesBack() {
        String id = Samples.fullCar().id();
        try (Journal open = library.openDay(id, "2026-03-07-1")) {
            assertTrue(assertThrows(JournalException.class, () -> library.archiveCar(id, true)).getMessage().contains("close it"));
            assertThrows(JournalException.class, () -> library.archiveDay(id, open.info().id(), true));
        }
        library.archiveCar(id, true);
        assertEquals(List.of("bare"), library.cars().stream().map(CarInfo::id).toList());
        assertEquals(2, index().days().size());
        assertEquals(id + "-2", library.newId(id), "an archived car keeps its id");
        library.archiveCar(id, false);
        assertEquals(Samples.fullCar(), library.car(id));
        assertThrows(IllegalArgumentException.class, () -> library.archiveCar("../x", true));
    }

    @Test
    void carsStandByNameTheArchivedOnesLast() {
        library.save(Samples.bareCar().withId("aa", "Zebra"));
        library.save(Samples.bareCar().withId("zz", "alpha"));
        library.save(Samples.bareCar().withId("b-2", "Bare"));
        library.save(Samples.bareCar().withId("a-old", "Aardvark"));
        library.archiveCar("a-old", true);
        List<String> ids = List.of("zz", "b-2", "bare", "full-1", "aa", "a-old");
        assertEquals(ids, index().cars().stream().map(c -> c.car().id()).toList());
        assertEquals(ids.subList(0, 5), library.cars().stream().map(CarInfo::id).toList());
        assertEquals(List.of("a-old"), index().cars().stream().filter(LibraryIndex.KnownCar::archived).map(c -> c.car().id()).toList());
    }

    @Test
    void theIndexIsWrittenOnlyWhereSomethingChanged() throws IOException {
        index();
        Path file = library.root().resolve(LibraryIndex.FILE);
        FileTime then = FileTime.from(Instant.parse("2026-03-07T12:00:00Z"));
        Files.setLastModifiedTime(file, then);
        index();
        assertEquals(then, Files.getLastModifiedTime(file), "a stick is not written to for nothing");
        KnownDay gone = index().days().get(0);
        Files.delete(gone.day().folder().resolve(Journal.FILE));
        assertEquals(1, index().days().size());
        assertFalse(Files.readString(file).contains(gone.carId() + "/days"), "what is gone is forgotten");
    }

    /** The words of a problem are in the language of the start that wrote them. */
    @Test
    void whatCouldNotBeReadIsTriedEachTime() throws IOException {
        Files.writeString(index().days().get(0).day().folder().resolve(Journal.FILE), "rubbish\n", StandardCharsets.UTF_8);
        Files.writeString(library.root().resolve("cars/bare/car.json"), "{", StandardCharsets.UTF_8);
        assertEquals(2, index().readAgain());
        assertEquals(2, index().readAgain());
        assertTrue(index().cars().stream().anyMatch(c -> c.car().problem().orElse("").contains("car.json")));
    }
}
