package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a list of days shows of one, and a search finds it by. */
class DaySummaryTest {

    private static final Instant OTHERWISE = Instant.parse("2025-01-02T03:04:05Z");

    @TempDir
    Path folder;

    private DaySummary summary(Entry... entries) {
        try (Journal day = Journal.create(folder.resolve("day"), Samples.fullCar(), "Track day", Samples.CLOCK)) {
            List.of(entries).forEach(day::append);
        }
        return DaySummary.read(folder.resolve("day").resolve(Journal.FILE), OTHERWISE);
    }

    private static Entry condition(String key, String value, String words) {
        return new Entry.Condition(Header.draft(""), key, value, words);
    }

    @Test
    void itHoldsWhatWasSaidAndNotHowTheCarStood() {
        DaySummary day = summary(Samples.note("ring was stiff"), condition(Conditions.TYRES, "set 3", "from Anna"),
                condition(Conditions.DRIVER, Conditions.IN, ""), condition("front-bar", Conditions.CONNECTED, "by hand"),
                Samples.reading(107.9), Samples.note("  "), Samples.note("ring was stiff"));
        assertEquals("ring was stiff · set 3 · from Anna · by hand", day.words());
        assertEquals("Ann, dressed", day.driver());
        assertEquals(Samples.CLOCK.instant(), day.created());
        assertEquals("Track day", day.title());
        assertFalse(day.closed() || day.rehearsal());
        assertEquals("", day.problem());
    }

    @Test
    void aClosedDayTellsWhatItDidNotProve() {
        DaySummary day = summary(new Entry.DayClosed(Header.draft(""), Optional.empty(), List.of("Ride height: not signed off")));
        assertTrue(day.closed());
        assertEquals("Ride height: not signed off", day.words());
    }

    @Test
    void aRehearsalIsKnownAndItsSeedIsNothingToFindItBy() {
        DaySummary day = summary(condition(Conditions.REHEARSAL, "4711", ""), condition(Conditions.TYRES, "set 3", ""));
        assertTrue(day.rehearsal());
        assertEquals("set 3", day.words());
    }

    @Test
    void whatWasUndoneWasNotSaid() {
        DaySummary day = summary(Samples.note("wrong car"), new Entry.Correction(Header.draft(""), 2, Optional.empty(), "undo"),
                Samples.note("wrong name"), new Entry.Correction(Header.draft(""), 4, Optional.of(Samples.note("right name")), ""));
        assertEquals("right name", day.words());
    }

    @Test
    void manyWordsAreCutToEnoughToFindItBy() {
        DaySummary day = summary(Samples.note("a".repeat(3000)), Samples.note("b".repeat(3000)));
        assertEquals(4000, day.words().length());
        assertTrue(day.words().startsWith("aaa") && day.words().endsWith("bbb"));
    }

    @Test
    void aDamagedLineDoesNotHideTheOthers() throws IOException {
        summary(Samples.note("before"), Samples.note("after"));
        Path file = folder.resolve("day").resolve(Journal.FILE);
        List<String> lines = Files.readAllLines(file);
        Files.writeString(file, String.join("\n", lines.get(0), lines.get(1), lines.get(2), "{\"kind\":\"note\",", lines.get(3)) + "\n");
        assertEquals("before · after", DaySummary.read(file, OTHERWISE).words());
    }

    @Test
    void aDayWithoutItsCarOrItsFirstLineHasAProblem() throws IOException {
        summary(Samples.note("before"));
        Path file = folder.resolve("day").resolve(Journal.FILE);
        List<String> lines = Files.readAllLines(file);
        Files.writeString(file, lines.get(0) + "\n" + lines.get(2) + "\n");
        DaySummary noCar = DaySummary.read(file, OTHERWISE);
        assertFalse(noCar.problem().isEmpty());
        assertEquals("before", noCar.words());
        Files.writeString(file, "rubbish\n");
        DaySummary rubbish = DaySummary.read(file, OTHERWISE);
        assertTrue(rubbish.problem().contains("day.jsonl"), rubbish.problem());
        assertEquals(OTHERWISE, rubbish.created());
        Files.delete(file);
        assertTrue(DaySummary.read(file, OTHERWISE).problem().contains("not found"));
        Files.writeString(file, "");
        assertFalse(DaySummary.read(file, OTHERWISE).problem().isEmpty());
    }
}
