package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.logbook.file.StrictJson;

class JournalTest {

    @TempDir
    Path folder;

    private Path day() {
        return folder.resolve("2026-03-07-1");
    }

    private Journal create() {
        return Journal.create(day(), Samples.fullCar(), "First day", Samples.CLOCK);
    }

    @Test
    void givesEveryEntryItsNumberAndTime() {
        try (Journal journal = create()) {
            assertEquals(new Header(2, Samples.NOON.truncatedTo(java.time.temporal.ChronoUnit.MILLIS), "corner-weights"),
                    journal.append(Samples.reading(107.9)).header());
            assertEquals(3, journal.append(Samples.note("b")).number());
            assertEquals(List.of(1L, 2L, 3L), journal.entries().stream().map(Entry::number).toList());
        }
    }

    @Test
    void everyKindOfEntryIsThereAfterReopening() {
        List<Entry> recorded = new ArrayList<>();
        try (Journal journal = create()) {
            recorded.addAll(journal.entries());
            Samples.everyKind().forEach(e -> recorded.add(journal.append(e)));
        }
        try (Journal journal = Journal.open(day())) {
            assertEquals(recorded, journal.entries());
            assertEquals(List.of(), journal.findings());
            assertEquals("First day", journal.info().title());
            assertEquals("2026-03-07-1", journal.info().id());
            assertEquals(Samples.bareCar(), journal.day().car());
        }
    }

    @Test
    void firstLineNamesFormatAndUnits() throws IOException {
        create().close();
        String first = Files.readAllLines(day().resolve("day.jsonl")).get(0);
        assertTrue(first.startsWith("{\"quoin\":\"day\",\"format\":1,\"day\":\"2026-03-07-1\",\"title\":\"First day\","
                + "\"created\":\"2026-03-07T12:00:00.125Z\",\"units\":{\"load\":\"kg\",\"height\":\"mm\",\"camber\":\"deg\""), first);
    }

    @Test
    void isCreatedOnlyOnce() {
        create().close();
        JournalException e = assertThrows(JournalException.class, this::create);
        assertTrue(e.getMessage().contains("day.jsonl") && e.getMessage().contains("open it instead"), e.getMessage());
    }

    @Test
    void hasOneWriterAndAnyNumberOfReaders() {
        try (Journal journal = create()) {
            JournalException e = assertThrows(JournalException.class, () -> Journal.open(day()));
            assertTrue(e.getMessage().contains("open in another Quoin"), e.getMessage());
            journal.append(Samples.note("seen by the reader"));
            try (Journal reader = Journal.openReadOnly(day())) {
                assertTrue(reader.isReadOnly());
                assertEquals(journal.entries(), reader.entries());
                assertThrows(JournalException.class, () -> reader.append(Samples.note("no")));
            }
        }
        try (Journal again = Journal.open(day())) {
            assertFalse(again.isReadOnly());
        }
    }

    @Test
    void newerFormatCanOnlyBeLookedAt() throws IOException {
        create().close();
        Path file = day().resolve("day.jsonl");
        Files.writeString(file, Files.readString(file).replaceFirst("\"format\":1", "\"format\":2") + "{\"half");
        String before = Files.readString(file);
        try (Journal journal = Journal.open(day())) {
            assertTrue(journal.isReadOnly());
            assertEquals(List.of(FileFinding.Kind.NEWER_FORMAT, FileFinding.Kind.TORN_END),
                    journal.findings().stream().map(FileFinding::kind).toList());
            assertEquals(Samples.fullCar(), journal.day().car());
            assertThrows(JournalException.class, () -> journal.append(Samples.note("no")));
        }
        assertEquals(before, Files.readString(file));
    }

    @Test
    void whatIsNoDayIsRefusedAndLeftAlone() throws IOException {
        assertTrue(assertThrows(JournalException.class, () -> Journal.open(day())).getMessage().contains("there is no day here"));
        assertThrows(JournalException.class, () -> Journal.openReadOnly(day()));
        Files.createDirectories(day());
        for (String text : List.of("", "hello\n", "{\"quoin\":\"car\",\"format\":1}\n", "{\"quoin\":\"day\",\"format\":0}\n", "{\"quoin\":\"da")) {
            Path file = day().resolve("day.jsonl");
            Files.writeString(file, text);
            assertThrows(JournalException.class, () -> Journal.open(day()), text);
            assertEquals(text, Files.readString(file));
        }
    }

    @Test
    void correctionsMustNameAnEntry() {
        try (Journal journal = create()) {
            Entry reading = journal.append(Samples.reading(34.5));
            Entry first = journal.append(correction(reading.number(), Optional.of(Samples.reading(43.5))));
            assertThrows(IllegalArgumentException.class, () -> journal.append(correction(99, Optional.empty())));
            IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
                    () -> journal.append(correction(first.number(), Optional.of(Samples.reading(44)))));
            assertTrue(e.getMessage().contains("correct entry 2 itself"), e.getMessage());
            assertThrows(IllegalArgumentException.class, () -> journal.append(new Entry.Unknown(Samples.header(1), "x", "{}")));
            assertEquals(3, journal.entries().size());
        }
    }

    /** A replacement that came without a number stands under that of the entry it replaces, in memory and in the file. */
    @Test
    void aReplacementGetsTheNumberOfTheOldEntry() {
        List<Entry> written;
        try (Journal journal = create()) {
            Entry reading = journal.append(Samples.reading(34.5));
            journal.append(correction(reading.number(), Optional.of(Samples.reading(43.5).withHeader(Header.draft("ride-height")))));
            written = journal.entries();
            assertEquals(reading.header(), ((Entry.Correction) written.get(2)).replacement().orElseThrow().header());
        }
        try (Journal journal = Journal.open(day())) {
            assertEquals(List.of(), journal.findings());
            assertEquals(written, journal.entries());
            assertEquals(List.of(43.5), journal.day().history(Samples.LF_LOAD).stream().map(Figure::value).toList());
        }
    }

    @Test
    @Tag("slow")
    void severalThreadsWriteWholeLines() throws InterruptedException {
        try (Journal journal = create()) {
            List<Thread> writers = LongStream.range(0, 4).mapToObj(t -> new Thread(() -> {
                for (int i = 0; i < 25; i++) {
                    journal.append(Samples.note("thread " + t + " note " + i));
                }
            })).toList();
            writers.forEach(Thread::start);
            for (Thread writer : writers) {
                writer.join();
            }
        }
        try (Journal journal = Journal.open(day())) {
            assertEquals(LongStream.rangeClosed(1, 101).boxed().toList(), journal.entries().stream().map(Entry::number).toList());
            assertEquals(List.of(), journal.findings());
        }
    }

    @Test
    void closedJournalRefusesAndClosesAgain() {
        Journal journal = create();
        journal.close();
        journal.close();
        assertThrows(IllegalStateException.class, () -> journal.append(Samples.note("late")));
    }

    @Test
    void theCarItselfCanBeCorrected() {
        try (Journal journal = create()) {
            journal.append(correction(1, Optional.of(new Entry.CarDescribed(Header.draft(""), Samples.bareCar()))));
            assertEquals(Samples.bareCar(), journal.day().car());
            assertEquals(day(), journal.folder());
        }
    }

    /** An entry is as long as can be read again, and not a byte longer; what is longer leaves nothing behind. */
    @Test
    void theLongestEntryThatIsTakenIsRead() throws IOException {
        String longest;
        try (Journal journal = create()) {
            journal.append(Samples.note(""));
            int frame = Files.readAllLines(day().resolve("day.jsonl")).get(2).length();
            longest = "x".repeat(StrictJson.MAX_BYTES - frame);
            assertThrows(IllegalArgumentException.class, () -> journal.append(Samples.note(longest + "x")));
            assertEquals(3, journal.append(Samples.note(longest)).number());
        }
        try (Journal journal = Journal.open(day())) {
            assertEquals(List.of(), journal.findings());
            assertEquals(longest, ((Entry.Note) journal.entries().get(2)).words());
        }
    }

    /** The mark that programs put where they could not read a letter is a letter too. */
    @Test
    void theMarkOfAnUnreadableLetterIsKept() {
        try (Journal journal = create()) {
            journal.append(Samples.note("caf\uFFFD"));
        }
        try (Journal journal = Journal.open(day())) {
            assertEquals(List.of(), journal.findings());
            assertEquals("caf\uFFFD", ((Entry.Note) journal.entries().get(1)).words());
        }
    }

    @Test
    void aReaderHasNothingThatWaits() {
        create().close();
        try (Journal reader = Journal.openReadOnly(day())) {
            assertEquals(List.of(), reader.waitIn(folder.resolve("second"), () -> { }));
            reader.bringHome();
            assertEquals(Optional.empty(), reader.waiting());
        }
    }

    private static Entry correction(long number, Optional<Entry> replacement) {
        return new Entry.Correction(Header.draft(""), number, replacement, "typed wrongly");
    }
}
