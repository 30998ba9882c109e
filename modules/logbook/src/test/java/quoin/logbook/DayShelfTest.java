package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** The other days of a car, as a day sees them from where it lies. */
class DayShelfTest {

    @TempDir
    Path folder;

    private Path root;

    /** Friday and Sunday were weighed, by Anna and by Ben; Saturday nothing was read, Monday is today. */
    @BeforeEach
    void fourDays() {
        root = folder.resolve("Quoin");
        day(0, "Anna", true);
        day(1, "Anna", false);
        day(2, "Ben", true);
        day(3, "", false);
    }

    private void day(int later, String driver, boolean read) {
        try (Journal day = new Library(root, Clock.offset(Samples.CLOCK, Duration.ofDays(later))).createDay(Samples.bareCar(), "")) {
            if (!driver.isEmpty()) {
                day.append(new Entry.Condition(Header.draft("preparation"), Conditions.DRIVER_NAME, driver, ""));
            }
            if (read) {
                day.append(Samples.reading(107.9));
            }
        }
    }

    private DayShelf shelf() {
        return new DayShelf(root.resolve("cars/bare/days/2026-03-10-1"));
    }

    private static List<String> ids(List<DayInfo> days) {
        return days.stream().map(DayInfo::id).toList();
    }

    private static Optional<String> id(Optional<DayInfo> day) {
        return day.map(DayInfo::id);
    }

    @Test
    void earlierDaysComeLatestFirst() {
        assertEquals(List.of("2026-03-10-1", "2026-03-09-1", "2026-03-08-1", "2026-03-07-1"), ids(shelf().days()));
        assertEquals(List.of("2026-03-08-1", "2026-03-07-1"), ids(shelf().earlier("2026-03-09-1")));
        assertEquals(Optional.of("2026-03-09-1"), id(shelf().before("2026-03-10-1")));
        assertTrue(shelf().before("2026-03-07-1").isEmpty());
        assertTrue(shelf().earlier("elsewhere").isEmpty());
    }

    @Test
    void lastTimeIsTheLastDayWithAReading() {
        assertEquals(Optional.of("2026-03-09-1"), id(shelf().lastTime("2026-03-10-1")));
        assertEquals(Optional.of("2026-03-07-1"), id(shelf().lastTime("2026-03-09-1")));
        assertTrue(shelf().lastTime("2026-03-07-1").isEmpty());
    }

    @Test
    void theOtherDriverIsAnyNamedOneWithAnotherName() {
        assertEquals(Optional.of("2026-03-08-1"), id(shelf().otherDriver("2026-03-10-1", " ben ")));
        assertEquals(Optional.of("2026-03-09-1"), id(shelf().otherDriver("2026-03-10-1", "Anna")));
        assertEquals(Optional.of("2026-03-08-1"), id(shelf().otherDriver("2026-03-09-1", "Cora")), "not the day itself");
    }

    @Test
    void aDayThatCannotBeReadIsLeftOut() throws IOException {
        Files.writeString(root.resolve("cars/bare/days/2026-03-09-1").resolve(Journal.FILE), "rubbish\n");
        assertEquals(List.of("2026-03-10-1", "2026-03-08-1", "2026-03-07-1"), ids(shelf().days()));
        assertEquals(Optional.of("2026-03-07-1"), id(shelf().lastTime("2026-03-10-1")));
    }

    @Test
    void aDayOutsideALibraryStandsAlone() {
        assertTrue(new DayShelf(folder.resolve("stick/day")).days().isEmpty());
        assertTrue(new DayShelf(Path.of("/")).days().isEmpty());
        assertTrue(new DayShelf(root.resolve("other/bare/days/2026-03-10-1")).days().isEmpty());
    }

    /** Letters with accents are found without them, in either case. */
    @Test
    void wordsAreComparedWithoutAccents() {
        assertEquals("nurburgring", LibrarySearch.plain("N\u00fcrburgring"));
        assertEquals("sao paulo", LibrarySearch.plain("S\u00e3o PAULO"));
        assertEquals("plain", LibrarySearch.plain("Plain"));
    }
}
