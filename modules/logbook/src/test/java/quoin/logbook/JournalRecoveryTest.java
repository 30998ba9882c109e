package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalRecoveryTest {

    @TempDir
    Path folder;

    private byte[] whole;
    private List<Entry> entries;

    /** A day of the car and three notes; notes 2 to 4. */
    @BeforeEach
    void record() throws IOException {
        Path day = folder.resolve("original");
        try (Journal journal = Journal.create(day, Samples.bareCar(), "", Samples.CLOCK)) {
            List.of("a", "b", "\u00fc").forEach(words -> journal.append(Samples.note(words)));
            entries = journal.entries();
        }
        whole = Files.readAllBytes(day.resolve("day.jsonl"));
    }

    @Test
    @Tag("slow")
    void lineTornAnywhereIsKeptBesideAndEverythingBeforeStays() throws IOException {
        int start = lineStart(4);
        for (int cut = start + 1; cut < whole.length - 1; cut++) {
            Path day = day("torn" + cut, Arrays.copyOf(whole, cut));
            try (Journal journal = Journal.open(day, Samples.CLOCK)) {
                assertEquals(entries.subList(0, 3), journal.entries());
                assertEquals(List.of(FileFinding.Kind.TORN_END), kinds(journal));
                assertTrue(journal.findings().get(0).words().contains("day.jsonl.torn-20260307-120000"));
            }
            assertArrayEquals(Arrays.copyOfRange(whole, start, cut), Files.readAllBytes(day.resolve("day.jsonl.torn-20260307-120000")));
            assertArrayEquals(Arrays.copyOf(whole, start), Files.readAllBytes(day.resolve("day.jsonl")));
        }
    }

    @Test
    void dayGoesOnAfterATornLine() throws IOException {
        Path day = day("goes-on", Arrays.copyOf(whole, whole.length - 5));
        try (Journal journal = Journal.open(day)) {
            assertEquals(4, journal.append(Samples.note("again")).number());
        }
        try (Journal journal = Journal.open(day)) {
            assertEquals(List.of(), journal.findings());
            assertEquals("again", assertInstanceOf(Entry.Note.class, journal.entries().get(3)).words());
        }
    }

    @Test
    void wholeLastLineWithoutItsEndCounts() throws IOException {
        Path day = day("no-end", Arrays.copyOf(whole, whole.length - 1));
        try (Journal journal = Journal.open(day)) {
            assertEquals(entries, journal.entries());
            assertEquals(List.of(FileFinding.Kind.END_ADDED), kinds(journal));
        }
        assertArrayEquals(whole, Files.readAllBytes(day.resolve("day.jsonl")));
    }

    @Test
    void zerosAndRubbishAtTheEndAreMovedAside() throws IOException {
        for (byte[] rubbish : List.of(new byte[300], "\u0000\u0000\n".getBytes(StandardCharsets.UTF_8), "{\"kind\":\n".getBytes(StandardCharsets.UTF_8),
                new byte[] {(byte) 0xff, (byte) 0xfe})) {
            Path day = day("rubbish" + rubbish.length, join(whole, rubbish));
            try (Journal journal = Journal.open(day, Samples.CLOCK)) {
                assertEquals(entries, journal.entries());
                assertEquals(List.of(FileFinding.Kind.TORN_END), kinds(journal));
            }
            assertArrayEquals(rubbish, Files.readAllBytes(day.resolve("day.jsonl.torn-20260307-120000")));
            assertArrayEquals(whole, Files.readAllBytes(day.resolve("day.jsonl")));
        }
    }

    @Test
    void everyTornLineGetsAFileOfItsOwn() throws IOException {
        Path day = day("often", Arrays.copyOf(whole, whole.length - 3));
        for (int n = 0; n < 3; n++) {
            Journal.open(day, Samples.CLOCK).close();
            Files.write(day.resolve("day.jsonl"), join(Files.readAllBytes(day.resolve("day.jsonl")), "{\"x".getBytes(StandardCharsets.UTF_8)));
        }
        try (Stream<Path> files = Files.list(day)) {
            assertEquals(3, files.filter(f -> f.getFileName().toString().contains(".torn-")).count());
        }
    }

    @Test
    void damagedLineInTheMiddleStaysAndItsNeighboursCount() throws IOException {
        int start = lineStart(3);
        int end = lineStart(4) - 1;
        byte[] badUtf8 = {'{', '"', (byte) 0xc3, '"', ':', '1', '}'};
        byte[] huge = new byte[(1 << 20) + 1];
        Arrays.fill(huge, (byte) 'x');
        for (byte[] damage : List.of("xx".getBytes(StandardCharsets.UTF_8), new byte[0], new byte[40], badUtf8, huge,
                "{\"number\":3}".getBytes(StandardCharsets.UTF_8), "[1,2]".getBytes(StandardCharsets.UTF_8))) {
            byte[] file = join(Arrays.copyOf(whole, start), damage, Arrays.copyOfRange(whole, end, whole.length));
            Path day = day("damaged" + damage.length, file);
            try (Journal journal = Journal.open(day)) {
                assertEquals(List.of(entries.get(0), entries.get(1), entries.get(3)), journal.entries());
                assertEquals(List.of(FileFinding.Kind.DAMAGED_LINE, FileFinding.Kind.NUMBERING), kinds(journal));
                assertEquals(4, journal.findings().get(0).line());
                assertTrue(journal.findings().get(1).words().contains("entry 3 is missing"));
                assertEquals(5, journal.append(Samples.note("on")).number());
            }
            assertArrayEquals(file, Arrays.copyOf(Files.readAllBytes(day.resolve("day.jsonl")), file.length));
        }
    }

    @Test
    void entryThatCannotBeUnderstoodIsShownAndItsNumberIsTaken() throws IOException {
        String odd = "{\"kind\":\"reading\",\"number\":5,\"time\":\"2026-03-07T12:00:00Z\",\"values\":{\"tyre-temperature.LF\":80},"
                + "\"source\":\"racer\"}";
        Path day = day("odd", join(whole, (odd + "\n").getBytes(StandardCharsets.UTF_8)));
        try (Journal journal = Journal.open(day)) {
            assertEquals(List.of(FileFinding.Kind.NOT_UNDERSTOOD), kinds(journal));
            assertTrue(journal.findings().get(0).words().contains("'tyre-temperature.LF' is not a reading"));
            assertEquals(odd, assertInstanceOf(Entry.Unknown.class, journal.entries().get(4)).raw());
            assertEquals(6, journal.append(Samples.note("on")).number());
        }
    }

    @Test
    void entryOfAnUnknownKindIsKeptByteForByte() throws IOException {
        String odd = "{ \"kind\" : \"tyre-temperature\", \"number\":5 , \"time\":\"2026-03-07T12:00:00+00:00\", \"\u00e9\":[1.10, 1e2]}";
        byte[] file = join(whole, (odd + "\n").getBytes(StandardCharsets.UTF_8));
        Path day = day("unknown", file);
        try (Journal journal = Journal.open(day)) {
            assertEquals(List.of(FileFinding.Kind.UNKNOWN_KIND), kinds(journal));
            Entry.Unknown unknown = assertInstanceOf(Entry.Unknown.class, journal.entries().get(4));
            assertEquals(odd, unknown.raw());
            assertEquals("tyre-temperature", unknown.kind());
            journal.append(Samples.note("after"));
            assertEquals(6, journal.day().effective().size());
        }
        assertArrayEquals(file, Arrays.copyOf(Files.readAllBytes(day.resolve("day.jsonl")), file.length));
    }

    @Test
    void oddNumbersAreReportedAndNothingIsDropped() throws IOException {
        Path day = day("numbers", join(whole, note(4), note(9), note(7)));
        try (Journal journal = Journal.open(day)) {
            assertEquals(7, journal.entries().size());
            assertEquals(List.of("there are two entries with the number 4", "entries 5 to 8 are missing", "entry 7 stands after entry 9"),
                    journal.findings().stream().map(FileFinding::words).toList());
            assertEquals(10, journal.append(Samples.note("on")).number());
        }
    }

    @Test
    void readingOnlyLeavesATornLineWhereItIs() throws IOException {
        byte[] file = Arrays.copyOf(whole, whole.length - 3);
        Path day = day("look", file);
        try (Journal journal = Journal.openReadOnly(day)) {
            assertEquals(entries.subList(0, 3), journal.entries());
            assertEquals(List.of(FileFinding.Kind.TORN_END), kinds(journal));
        }
        try (Stream<Path> files = Files.list(day)) {
            assertEquals(1, files.count());
        }
        assertArrayEquals(file, Files.readAllBytes(day.resolve("day.jsonl")));
    }

    private static byte[] note(long number) {
        return ("{\"kind\":\"note\",\"number\":" + number + ",\"time\":\"2026-03-07T12:00:00Z\",\"words\":\"\"}\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static List<FileFinding.Kind> kinds(Journal journal) {
        return journal.findings().stream().map(FileFinding::kind).toList();
    }

    private Path day(String name, byte[] file) throws IOException {
        Path day = Files.createDirectories(folder.resolve(name));
        Files.write(day.resolve("day.jsonl"), file);
        return day;
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    /** Offset of a line, counted from 0. */
    private int lineStart(int line) {
        int at = 0;
        for (int n = 0; n < line; at++) {
            if (whole[at] == '\n') {
                n++;
            }
        }
        return at;
    }
}
