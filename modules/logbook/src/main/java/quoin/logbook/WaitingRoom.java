package quoin.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.logbook.file.AppendTarget;
import quoin.logbook.file.Disk;
import quoin.logbook.file.Fields;
import quoin.logbook.file.FormatException;
import quoin.logbook.file.LineContents;
import quoin.logbook.file.LineFile;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/**
 * The second place of a day: a file in another folder that takes entries while the day's own file cannot be written. Its
 * first line names the day and the last entry that is in the day's file; then one entry a line, as in the day. It is gone
 * as soon as everything in it is in the day.
 */
final class WaitingRoom {
    private static final Texts TEXTS = Texts.of(WaitingRoom.class);

    private static final int FORMAT = 1;
    private static final int LONGEST_NAME = 64;

    private final Path file;
    private final DayHeader day;
    private LineFile lines;

    /** For the day with this header; nothing is written before an entry has to wait. */
    WaitingRoom(Path folder, DayHeader day) {
        String plain = day.day().replaceAll("[^A-Za-z0-9-]", "_");
        this.file = folder.resolve(plain.substring(0, Math.min(LONGEST_NAME, plain.length())) + "-" + day.created().toEpochMilli()
                + ".jsonl");
        this.day = day;
    }

    Path file() {
        return file;
    }

    /** Adds an entry's line; it is on the disk when this returns. */
    void put(byte[] line, Header lastInDay) throws IOException {
        if (lines == null) {
            if (!Files.exists(file)) {
                Disk.createFolders(file.toAbsolutePath().getParent());
                byte[] first = StrictJson.line(StrictJson.object().put("quoin", "waiting").put("format", FORMAT).put("day", day.day())
                        .put("created", day.created().toString()).put("after", lastInDay.number())
                        .put("afterTime", lastInDay.time().toString()));
                byte[] whole = Arrays.copyOf(first, first.length + 1);
                whole[first.length] = '\n';
                Disk.replace(file, whole);
            }
            lines = LineFile.open(file, LineContents.read(file), AppendTarget::onDisk);
        }
        lines.append(line);
    }

    /** Everything in it is in the day now. */
    void clear() throws IOException {
        if (lines != null) {
            lines.close();
            lines = null;
        }
        Files.deleteIfExists(file);
    }

    void close() throws IOException {
        if (lines != null) {
            lines.close();
            lines = null;
        }
    }

    /** Puts the file out of the way under another name, so that nothing in it is lost and nothing is added to it. */
    Path setAside() throws IOException {
        Path kept = file.resolveSibling(file.getFileName() + ".kept");
        for (int n = 2; Files.exists(kept); n++) {
            kept = file.resolveSibling(file.getFileName() + ".kept-" + n);
        }
        return Files.move(file, kept, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * The entries that wait for a day, numbered to follow it; corrections among them name the new numbers.
     *
     * @param there   entries of the day
     * @param highest highest number in the day
     * @throws FormatException where the file is damaged, or does not follow this day
     */
    List<Entry> waitingFor(List<Entry> there, long highest) throws IOException {
        LineContents contents = LineContents.read(file);
        Fields first = new Fields(StrictJson.read(contents.lines().isEmpty() ? contents.torn() : contents.lines().get(0)));
        if (!first.text("quoin").equals("waiting") || first.whole("format", 1, FORMAT) != FORMAT) {
            throw new FormatException(TEXTS.phrase("notAFileOf"));
        }
        Header after = new Header(first.whole("after", 0, Long.MAX_VALUE), first.parsed("afterTime", Instant::parse), "");
        if (there.stream().noneMatch(e -> e.number() == after.number() && e.header().time().equals(after.time()))) {
            throw new FormatException(TEXTS.phrase("theyFollowEntryOf", after.number()));
        }
        List<Entry> waiting = new ArrayList<>();
        Map<Long, Long> renumbered = new HashMap<>();
        long next = highest;
        for (byte[] line : contents.lines().subList(1, contents.lines().size())) {
            Entry entry = EntryJson.read(new Fields(StrictJson.read(line)), EntryJson.text(line));
            Optional<Entry> taken = there.stream().filter(e -> isSame(e, entry)).findFirst();
            if (taken.isPresent()) {
                renumbered.put(entry.number(), taken.get().number());
            } else {
                next++;
                renumbered.put(entry.number(), next);
                Entry moved = entry.withHeader(new Header(next, entry.header().time(), entry.header().stage()));
                waiting.add(moved instanceof Entry.Correction c && renumbered.containsKey(c.corrects())
                        ? new Entry.Correction(c.header(), renumbered.get(c.corrects()), c.replacement(), c.words()) : moved);
            }
        }
        return waiting;
    }

    /** True where an entry of the day is one that waited, under whatever number it was taken in. */
    private static boolean isSame(Entry inDay, Entry waited) {
        return inDay.header().time().equals(waited.header().time()) && inDay.withHeader(waited.header()).equals(waited);
    }
}
