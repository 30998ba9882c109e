package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WaitingRoomTest {

    private static final int LONG_MS = 1500;
    /** A machine busy with other work does not make a disk slow. */
    private static final Duration PATIENT = Duration.ofMinutes(1);

    @TempDir
    Path folder;

    private final SickDisk disk = new SickDisk();
    private final CountDownLatch home = new CountDownLatch(1);
    private Path day;
    private Path second;

    @BeforeEach
    void begin() {
        day = folder.resolve("day");
        second = folder.resolve("second");
        Journal.create(day, Samples.bareCar(), "", Samples.CLOCK).close();
    }

    private Journal open() {
        return open(PATIENT);
    }

    private Journal open(Duration patience) {
        Journal journal = Journal.open(day, Samples.CLOCK, disk);
        assertEquals(List.of(), journal.waitIn(second, home::countDown, patience));
        return journal;
    }

    private static List<String> notes(Journal journal) {
        return journal.entries().stream().filter(Entry.Note.class::isInstance).map(e -> ((Entry.Note) e).words()).toList();
    }

    private List<Path> inSecond() throws IOException {
        if (!Files.exists(second)) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(second)) {
            return found.toList();
        }
    }

    private List<String> onDisk() {
        try (Journal journal = Journal.openReadOnly(day)) {
            assertEquals(List.of(), journal.findings());
            assertEquals(LongStream.rangeClosed(1, journal.entries().size()).boxed().toList(),
                    journal.entries().stream().map(Entry::number).toList());
            return notes(journal);
        }
    }

    @Test
    void nothingIsWrittenElsewhereWhileTheDiskIsWell() throws IOException {
        try (Journal journal = open()) {
            journal.append(Samples.note("well"));
            assertEquals(Optional.empty(), journal.waiting());
            assertEquals(List.of("well"), onDisk());
        }
        assertEquals(List.of(), inSecond());
    }

    @Test
    void entriesOfAFullDiskWaitAndFollowInTheirOrder() throws IOException, InterruptedException {
        try (Journal journal = open()) {
            disk.room = 30;
            for (String words : List.of("a", "b", "c")) {
                journal.append(Samples.note(words));
            }
            Waiting waiting = journal.waiting().orElseThrow();
            assertEquals(3, waiting.count());
            assertEquals("No space left on device", waiting.why());
            assertEquals(4, Files.readAllLines(waiting.place()).size(), "its first line and three entries");
            assertEquals(List.of(), onDisk());
            assertEquals(List.of("a", "b", "c"), notes(journal), "the work goes on with them");
            disk.room = Long.MAX_VALUE;
            journal.append(Samples.note("d"));
            assertTrue(home.await(5, TimeUnit.SECONDS));
            assertEquals(Optional.empty(), journal.waiting());
            assertEquals(List.of("a", "b", "c", "d"), onDisk());
        }
        assertEquals(List.of(), inSecond());
    }

    @Test
    void waitingEntriesFollowWithoutAnotherEntry() throws InterruptedException {
        try (Journal journal = open()) {
            disk.forceFails = true;
            journal.append(Samples.note("a"));
            journal.bringHome();
            assertEquals(1, journal.waiting().orElseThrow().count());
            disk.forceFails = false;
            journal.bringHome();
            assertTrue(home.await(5, TimeUnit.SECONDS));
            assertEquals(List.of("a"), onDisk());
        }
    }

    @Test
    void entriesThatStillWaitAreTakenInAtTheNextOpening() throws IOException {
        try (Journal journal = open()) {
            disk.room = 0;
            journal.append(Samples.note("a"));
            journal.append(new Entry.Correction(Header.draft(""), 2, Optional.empty(), "undo"));
        }
        assertEquals(List.of(), onDisk());
        try (Journal journal = Journal.open(day)) {
            List<FileFinding> found = journal.waitIn(second, home::countDown);
            assertEquals(List.of(FileFinding.Kind.WAITED), found.stream().map(FileFinding::kind).toList());
            assertTrue(found.get(0).words().startsWith("2 entries waited in "), found.get(0).words());
            assertEquals(3, journal.entries().size());
            assertEquals(4, journal.append(Samples.note("b")).number());
        }
        assertEquals(List.of("a", "b"), onDisk());
        assertEquals(List.of(), inSecond());
    }

    @Test
    void entriesThatCameHomeBeforeTheRoomWasEmptiedAreNotTakenTwice() throws IOException {
        Path kept = folder.resolve("copy");
        try (Journal journal = open()) {
            disk.room = 0;
            journal.append(Samples.note("a"));
            Files.copy(journal.waiting().orElseThrow().place(), kept);
            disk.room = Long.MAX_VALUE;
            journal.append(Samples.note("b"));
        }
        Path place = new WaitingRoom(second, new DayHeader(1, "day", "", Samples.CLOCK.instant())).file();
        Files.createDirectories(second);
        Files.copy(kept, place, StandardCopyOption.REPLACE_EXISTING);
        try (Journal journal = Journal.open(day)) {
            assertEquals(List.of(), journal.waitIn(second, home::countDown, PATIENT));
        }
        assertEquals(List.of("a", "b"), onDisk());
        assertFalse(Files.exists(place));
    }

    /** Something of the same name lies where the entries should: it is named and left alone, and the day goes on. */
    @Test
    void aRoomThatCannotBeReadIsNamedAndLeftAlone() throws IOException {
        Path place = new WaitingRoom(second, new DayHeader(1, "day", "", Samples.CLOCK.instant())).file();
        Files.createDirectories(place);
        try (Journal journal = Journal.open(day)) {
            FileFinding found = journal.waitIn(second, home::countDown).get(0);
            assertEquals(FileFinding.Kind.WAITED, found.kind());
            assertTrue(found.words().contains(place.toString()), found.words());
            assertEquals(2, journal.append(Samples.note("well")).number());
        }
        assertTrue(Files.isDirectory(place));
        assertEquals(List.of("well"), onDisk());
    }

    @Test
    void closingLetsGoOfTheFileWhateverWaits() {
        open().close();
        assertEquals(0, disk.open);
        try (Journal journal = open()) {
            assertEquals(1, disk.open);
            disk.room = 0;
            journal.append(Samples.note("waits"));
        }
        assertEquals(0, disk.open, "a full disk is not one that is still at work");
    }

    @Test
    void anInterruptLosesNoEntryAndIsPassedOn() {
        try (Journal journal = open()) {
            Thread.currentThread().interrupt();
            journal.append(Samples.note("interrupted"));
            assertTrue(Thread.interrupted());
            assertEquals(Optional.empty(), journal.waiting());
            journal.append(Samples.note("after"));
        }
        assertEquals(List.of("interrupted", "after"), onDisk());
    }

    @Test
    void tornLineOfTheRoomIsLeftOutAndTheOthersAreTaken() throws IOException {
        Path place;
        try (Journal journal = open()) {
            disk.room = 0;
            journal.append(Samples.note("a"));
            place = journal.waiting().orElseThrow().place();
        }
        Files.writeString(place, "{\"kind\":\"note\",\"numb", StandardOpenOption.APPEND);
        try (Journal journal = Journal.open(day)) {
            assertEquals(1, journal.waitIn(second, home::countDown, PATIENT).size());
        }
        assertEquals(List.of("a"), onDisk());
    }

    @Test
    void folderThatWentAwayAndCameBackGoesOn() throws IOException, InterruptedException {
        Path away = folder.resolve("away");
        try (Journal journal = open()) {
            journal.append(Samples.note("before"));
            Files.move(day, away);
            journal.append(Samples.note("meanwhile"));
            assertEquals("not found", journal.waiting().orElseThrow().why());
            Files.move(away, day);
            journal.bringHome();
            assertTrue(home.await(5, TimeUnit.SECONDS));
            assertEquals(List.of("before", "meanwhile"), onDisk());
        }
    }

    @Test
    void stickThatComesBackAsAnotherDiskGoesOnWhereItStopped() throws IOException, InterruptedException {
        try (Journal journal = open()) {
            journal.append(Samples.note("before"));
            byte[] whole = Files.readAllBytes(day.resolve(Journal.FILE));
            Files.delete(day.resolve(Journal.FILE));
            journal.append(Samples.note("meanwhile"));
            Files.write(day.resolve(Journal.FILE), whole);
            journal.bringHome();
            assertTrue(home.await(5, TimeUnit.SECONDS));
            assertEquals(List.of("before", "meanwhile"), onDisk());
        }
    }

    @Test
    void fileThatAnotherProgramSavedAnewIsNotOverwritten() throws IOException {
        Path file = day.resolve(Journal.FILE);
        byte[] theirs = (Files.readString(file) + "{\"kind\":\"note\",\"number\":2,\"time\":\"2026-03-07T12:00:01Z\",\"words\":\"theirs\"}\n")
                .getBytes(StandardCharsets.UTF_8);
        try (Journal journal = open()) {
            Files.write(day.resolve("saved"), theirs);
            Files.move(day.resolve("saved"), file, StandardCopyOption.REPLACE_EXISTING);
            journal.append(Samples.note("ours"));
            assertTrue(journal.waiting().orElseThrow().why().contains("changed by another program"));
            assertArrayEquals(theirs, Files.readAllBytes(file));
        }
        try (Journal journal = Journal.open(day)) {
            assertEquals(1, journal.waitIn(second, home::countDown, PATIENT).size());
        }
        assertEquals(List.of("theirs", "ours"), onDisk());
    }

    @Test
    void correctionsAmongWaitingEntriesNameTheNewNumbers() throws IOException {
        Path file = day.resolve(Journal.FILE);
        try (Journal journal = open()) {
            Files.writeString(file, "{\"kind\":\"note\",\"number\":2,\"time\":\"2026-03-07T12:00:01Z\",\"words\":\"theirs\"}\n",
                    StandardOpenOption.APPEND);
            journal.append(Samples.note("ours"));
            journal.append(new Entry.Correction(Header.draft(""), 2, Optional.empty(), "undo"));
        }
        try (Journal journal = Journal.open(day)) {
            journal.waitIn(second, home::countDown, PATIENT);
            assertEquals(3, assertInstanceOf(Entry.Correction.class, journal.entries().get(3)).corrects());
            assertEquals(List.of("theirs"), journal.day().effective().stream().filter(Entry.Note.class::isInstance)
                    .map(e -> ((Entry.Note) e).words()).toList());
        }
    }

    /** The power goes while entries that got other numbers are taken in: the second try does not take them twice. */
    @Test
    void takingInThatWasInterruptedGoesOnWhereItStopped() throws IOException {
        Path kept = folder.resolve("kept");
        try (Journal journal = open()) {
            Files.writeString(day.resolve(Journal.FILE), "{\"kind\":\"note\",\"number\":2,\"time\":\"2026-03-07T12:00:01Z\",\"words\":\"theirs\"}\n",
                    StandardOpenOption.APPEND);
            journal.append(Samples.note("ours"));
            journal.append(Samples.note("ours too"));
            Files.copy(journal.waiting().orElseThrow().place(), kept);
        }
        Path place = inSecond().get(0);
        try (Journal journal = Journal.open(day)) {
            journal.waitIn(second, home::countDown, PATIENT);
        }
        Files.copy(kept, place, StandardCopyOption.REPLACE_EXISTING);
        byte[] all = Files.readAllBytes(day.resolve(Journal.FILE));
        String text = new String(all, StandardCharsets.UTF_8);
        Files.writeString(day.resolve(Journal.FILE), text.substring(0, text.lastIndexOf("{\"kind\"")));
        try (Journal journal = Journal.open(day)) {
            journal.waitIn(second, home::countDown, PATIENT);
        }
        assertEquals(List.of("theirs", "ours", "ours too"), onDisk());
    }

    @Test
    void anotherCopyOfTheDayDoesNotTakeThem() throws IOException {
        Path copy = Files.createDirectories(folder.resolve("copy"));
        Files.copy(day.resolve(Journal.FILE), copy.resolve(Journal.FILE));
        try (Journal journal = open()) {
            journal.append(Samples.note("only here"));
            disk.room = 0;
            journal.append(Samples.note("waits"));
        }
        try (Journal journal = Journal.open(copy)) {
            FileFinding found = journal.waitIn(second, home::countDown, PATIENT).get(0);
            assertTrue(found.words().contains("do not fit this day") && found.words().contains("kept in"), found.words());
            assertEquals(1, journal.entries().size());
        }
        assertEquals(1, inSecond().size());
        assertTrue(Files.readString(inSecond().get(0)).contains("waits"));
    }

    @Test
    @Tag("slow")
    void slowDiskDoesNotHoldUpTheHands() throws InterruptedException {
        try (Journal journal = open(DayWriter.PATIENCE)) {
            disk.forceTakesMs = LONG_MS;
            long begun = System.nanoTime();
            journal.append(Samples.note("slow"));
            long tookMs = (System.nanoTime() - begun) / 1_000_000;
            assertTrue(tookMs < LONG_MS, "held up for " + tookMs + " ms");
            assertEquals(DayWriter.SLOW.toString(), journal.waiting().orElseThrow().why());
            assertTrue(home.await(20, TimeUnit.SECONDS));
            assertEquals(List.of("slow"), onDisk());
            assertEquals(Optional.empty(), journal.waiting());
        }
    }

    @Test
    void entryThatNeitherPlaceTakesIsNotRecorded() throws IOException {
        Files.writeString(second, "a file where the folder should be");
        try (Journal journal = open()) {
            disk.room = 10;
            JournalException e = assertThrows(JournalException.class, () -> journal.append(Samples.note("lost")));
            assertTrue(e.getMessage().contains("No space left on device") && e.getMessage().contains("nor could it wait in"), e.getMessage());
            assertEquals(1, journal.entries().size());
            disk.room = Long.MAX_VALUE;
            assertEquals(2, journal.append(Samples.note("again")).number());
        }
        assertEquals(List.of("again"), onDisk());
    }

    @Test
    void slowDiskWithoutASecondPlaceIsWaitedFor() throws IOException {
        Files.writeString(second, "a file where the folder should be");
        try (Journal journal = open(DayWriter.PATIENCE)) {
            disk.forceTakesMs = LONG_MS / 3;
            assertEquals(2, journal.append(Samples.note("late")).number());
            assertEquals(Optional.empty(), journal.waiting());
            assertEquals(List.of("late"), onDisk());
        }
    }

    @Test
    void nameOfADayCannotLeadOutOfTheFolder() {
        for (String name : List.of("../../out", "..\\out", "C:\\x", "a/b", ".", "..", "\0", "x".repeat(500))) {
            Path file = new WaitingRoom(second, new DayHeader(1, name, "", Samples.CLOCK.instant())).file();
            assertEquals(second, file.getParent());
            assertTrue(file.getFileName().toString().length() < 100);
        }
    }

    @Test
    void readOnlyDayHasNothingToWait() {
        try (Journal journal = Journal.openReadOnly(day)) {
            assertEquals(List.of(), journal.waitIn(second, home::countDown, PATIENT));
            assertThrows(JournalException.class, () -> journal.append(Samples.note("x")));
            assertEquals(Optional.empty(), journal.waiting());
        }
    }

    @Test
    @Tag("slow")
    void manyEntriesWhileTheDiskComesAndGoesAllArriveOnce() {
        try (Journal journal = open()) {
            for (int n = 0; n < 60; n++) {
                disk.forceFails = n % 7 < 3;
                journal.append(Samples.note("n" + n));
            }
            disk.forceFails = false;
        }
        assertEquals(IntStream.range(0, 60).mapToObj(n -> "n" + n).toList(), onDisk());
    }
}
