package quoin.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.car.Car;
import quoin.logbook.file.AppendTarget;
import quoin.logbook.file.DayLock;
import quoin.logbook.file.LineFile;
import quoin.logbook.file.StrictJson;
import quoin.quantities.NotTakenException;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/**
 * The file of one day, {@code day.jsonl} in the day's folder: a first line that names the format, then one entry a line.
 * Entries are only added, and each is on the disk before {@link #append} returns. Any thread may call it; calls wait for
 * one another.
 */
public final class Journal implements AutoCloseable {
    private static final Texts TEXTS = Texts.of(Journal.class);

    /** Name of the file in a day's folder. */
    public static final String FILE = "day.jsonl";

    private final Path folder;
    private final DayHeader header;
    private final Clock clock;
    private final List<FileFinding> findings;
    private final Optional<DayWriter> writer;
    private final Optional<DayLock> lock;
    private GrowingList<Entry> entries;
    private long highestNumber;
    private boolean closed;

    Journal(Path folder, DayHeader header, Clock clock, DayReader read, List<FileFinding> findings, Optional<LineFile> file,
            Optional<DayLock> lock) {
        this.folder = folder;
        this.header = header;
        this.clock = clock;
        this.findings = List.copyOf(findings);
        this.entries = GrowingList.of(read.entries());
        this.highestNumber = read.highestNumber();
        this.writer = file.map(f -> new DayWriter(f, last(read.entries())));
        this.lock = lock;
    }

    private static Header last(List<Entry> entries) {
        return entries.isEmpty() ? new Header(0, Instant.EPOCH, "") : entries.get(entries.size() - 1).header();
    }

    /**
     * Begins a day: writes its file with the car as entry 1 and opens it. The folder's name is the day's id.
     *
     * @throws JournalException where the day exists already or cannot be written
     */
    public static Journal create(Path dayFolder, Car car, String title) {
        return create(dayFolder, car, title, Clock.systemUTC());
    }

    /** As {@link #create(Path, Car, String)} with another clock. */
    public static Journal create(Path dayFolder, Car car, String title, Clock clock) {
        Path file = dayFolder.resolve(FILE);
        if (Files.exists(file)) {
            throw new JournalException(file, TEXTS.phrase("thisDayExistsAlready"));
        }
        JournalOpening.write(file, car, title, clock);
        return open(dayFolder, clock);
    }

    /**
     * Opens a day to go on with it. A last line that was cut off while being written is put into a file beside it.
     *
     * @throws JournalException where another Quoin has it open, or it cannot be read or written; the message says what to do
     */
    public static Journal open(Path dayFolder) {
        return open(dayFolder, Clock.systemUTC());
    }

    /** As {@link #open(Path)} with another clock. */
    public static Journal open(Path dayFolder, Clock clock) {
        return open(dayFolder, clock, AppendTarget::onDisk);
    }

    static Journal open(Path dayFolder, Clock clock, AppendTarget.Opener disk) {
        return new JournalOpening(dayFolder, clock).toWrite(disk);
    }

    /** Opens a day to look at it: nothing is locked, moved or written. */
    public static Journal openReadOnly(Path dayFolder) {
        return new JournalOpening(dayFolder, Clock.systemUTC()).toRead();
    }

    /** The day's folder. */
    public Path folder() {
        return folder;
    }

    public DayInfo info() {
        return new DayInfo(header.day(), header.title(), header.created(), folder, Optional.empty());
    }

    /** True where the day can only be looked at. */
    public boolean isReadOnly() {
        return writer.isEmpty();
    }

    /**
     * From now on an entry that the day's own file does not take at once waits in another folder, and follows into the file
     * when it can. Entries that wait there since an earlier time are taken into the day now.
     *
     * @param second  folder for the entries that wait; made when it is needed
     * @param changed is run, on another thread, when everything that waited is in the day's file
     * @return what was done with entries that waited; empty where none did
     */
    public List<FileFinding> waitIn(Path second, Runnable changed) {
        return waitIn(second, changed, DayWriter.PATIENCE);
    }

    synchronized List<FileFinding> waitIn(Path second, Runnable changed, Duration patience) {
        if (writer.isEmpty()) {
            return List.of();
        }
        WaitingRoom room = new WaitingRoom(second, header);
        List<FileFinding> found = Files.exists(room.file()) ? takeIn(room) : List.of();
        writer.get().use(room, changed, patience);
        return found;
    }

    private List<FileFinding> takeIn(WaitingRoom room) {
        try {
            List<Entry> waited = room.waitingFor(entries, highestNumber);
            for (Entry entry : waited) {
                writer.orElseThrow().write(entry.header(), StrictJson.line(EntryJson.write(entry)));
                highestNumber = entry.number();
                entries = entries.with(entry);
            }
            room.clear();
            return waited.isEmpty() ? List.of() : List.of(new FileFinding(FileFinding.Kind.WAITED, 0, waited.size() == 1 ? TEXTS.say("oneWaited", room.file()) : TEXTS.say("manyWaited", waited.size(), room.file())));
        } catch (IOException | IllegalArgumentException e) {
            return List.of(new FileFinding(FileFinding.Kind.WAITED, 0, setAside(room, e)));
        }
    }

    private static String setAside(WaitingRoom room, Exception cause) {
        Phrase why = DiskTrouble.of(cause);
        if (cause instanceof IOException) {
            return TEXTS.say("waitOn", room.file(), why);
        }
        try {
            return TEXTS.say("setAside", room.file(), why, room.setAside());
        } catch (IOException e) {
            return TEXTS.say("notSetAside", room.file(), why);
        }
    }

    /** Entries that are on a disk but not yet in the day's file; empty where there are none. */
    public Optional<Waiting> waiting() {
        return writer.flatMap(DayWriter::waiting);
    }

    /** Tries once more to bring what waits into the day's file; it is done, or not, a moment later. */
    public void bringHome() {
        writer.ifPresent(w -> w.bringHome(Duration.ZERO));
    }

    /** What was noticed on opening; empty where all was well. */
    public List<FileFinding> findings() {
        return findings;
    }

    /** Every entry in the order of writing. */
    public synchronized List<Entry> entries() {
        return entries;
    }

    /**
     * The day as its entries tell it.
     *
     * @throws JournalException where no entry describes the car
     */
    public Day day() {
        List<Entry> all = entries();
        if (all.stream().noneMatch(Entry.CarDescribed.class::isInstance)) {
            throw new JournalException(folder.resolve(FILE), TEXTS.phrase("noEntryDescribesThe"));
        }
        return Day.of(all);
    }

    /**
     * Records an entry: gives it the next number and the time, and returns it when it is on the disk.
     *
     * @param template the entry under any header; only the header's stage is kept. What replaces a corrected entry gets the header
     *                 of that entry, whatever it came with
     * @throws IllegalArgumentException where a correction names no entry that could be corrected
     * @throws JournalException         where it could not be written; it does not count then and may be tried again
     */
    public synchronized Entry append(Entry template) {
        Path path = folder.resolve(FILE);
        if (closed) {
            throw new IllegalStateException("the day is closed; open it again to record");
        }
        DayWriter lines = writer.orElseThrow(() -> new JournalException(path, TEXTS.phrase("dayIsOpenTo")));
        Entry checked = checked(template);
        Header given = new Header(highestNumber + 1, clock.instant().truncatedTo(ChronoUnit.MILLIS), template.header().stage());
        Entry entry = checked.withHeader(given);
        byte[] line = StrictJson.line(EntryJson.write(entry));
        if (line.length > StrictJson.MAX_BYTES) {
            throw new NotTakenException(TEXTS.phrase("entryMayHoldAt", StrictJson.MAX_BYTES));
        }
        try {
            lines.write(given, line);
        } catch (IOException e) {
            throw new JournalException(path, TEXTS.phrase("entryWasNotRecorded", DiskTrouble.of(e)), e);
        }
        highestNumber++;
        entries = entries.with(entry);
        return entry;
    }

    /** The template, where it may be recorded; a replacement under the header of the entry it stands for. */
    private Entry checked(Entry template) {
        Objects.requireNonNull(template, "template");
        if (template instanceof Entry.Unknown) {
            throw new NotTakenException(TEXTS.phrase("entryOfAnUnknown"));
        }
        if (!(template instanceof Entry.Correction correction)) {
            return template;
        }
        Entry wrong = find(correction.corrects());
        if (correction.replacement().isEmpty()) {
            return correction;
        }
        if (wrong instanceof Entry.Correction) {
            throw new NotTakenException(
                    TEXTS.phrase("entryIsACorrection", wrong.number(), ((Entry.Correction) wrong).corrects()));
        }
        if (correction.replacement().get() instanceof Entry.Unknown) {
            throw new NotTakenException(TEXTS.phrase("entryOfAnUnknownKind"));
        }
        return new Entry.Correction(correction.header(), correction.corrects(),
                correction.replacement().map(r -> r.withHeader(wrong.header())), correction.words());
    }

    /** Looks from the end: mostly it is the last entry that was wrong. */
    private Entry find(long number) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).number() == number) {
                return entries.get(i);
            }
        }
        throw new NotTakenException(TEXTS.phrase("thereIsNoEntry", number));
    }

    /** Lets go of the file and the lock. Closing twice does no harm. */
    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        closed = true;
        try {
            if (writer.isPresent()) {
                writer.get().close();
            }
            if (lock.isPresent()) {
                lock.get().close();
            }
        } catch (IOException e) {
            throw new JournalException(folder.resolve(FILE), TEXTS.phrase("couldNotBeClosed", e), e);
        }
    }
}
