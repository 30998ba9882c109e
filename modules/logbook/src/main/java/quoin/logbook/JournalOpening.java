package quoin.logbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import quoin.car.Car;
import quoin.logbook.file.AppendTarget;
import quoin.logbook.file.DayLock;
import quoin.logbook.file.Disk;
import quoin.logbook.file.LineContents;
import quoin.logbook.file.LineFile;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/** Opening a day's file: lock, first line, recovery of a torn end. */
final class JournalOpening {
    private static final Texts TEXTS = Texts.of(JournalOpening.class);

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

    private static final int MOST_HEADER_BYTES = 64 << 10;

    private final Path folder;
    private final Path file;
    private final Clock clock;

    JournalOpening(Path folder, Clock clock) {
        this.folder = folder;
        this.file = folder.resolve(Journal.FILE);
        this.clock = clock;
    }

    /** Writes a day's file with the car as its only entry. */
    static void write(Path file, Car car, String title, Clock clock) {
        Path folder = file.toAbsolutePath().getParent();
        Header first = new Header(1, clock.instant().truncatedTo(ChronoUnit.MILLIS), "");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(new DayHeader(DayHeader.FORMAT, folder.getFileName().toString(), title, first.time()).line());
        bytes.write('\n');
        bytes.writeBytes(StrictJson.line(EntryJson.write(new Entry.CarDescribed(first, car))));
        bytes.write('\n');
        try {
            Disk.createFolders(folder);
            Disk.replace(file, bytes.toByteArray());
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new JournalException(file, TEXTS.phrase("dayCouldNotBe", DiskTrouble.of(e)), e);
        }
    }

    Journal toRead() {
        LineContents contents = contents();
        DayHeader header = header(contents);
        return readOnly(contents, header);
    }

    private Journal readOnly(LineContents contents, DayHeader header) {
        DayReader read = DayReader.read(contents.lines());
        List<FileFinding> findings = new ArrayList<>(read.findings());
        if (header.isNewer()) {
            findings.add(0, new FileFinding(FileFinding.Kind.NEWER_FORMAT, 1, TEXTS.say("dayWasWrittenBy", header.format(), DayHeader.FORMAT)));
        }
        if (contents.torn().length > 0) {
            findings.add(new FileFinding(FileFinding.Kind.TORN_END, contents.lines().size() + 1, TEXTS.say("lastLineIsNot")));
        }
        return new Journal(folder, header, clock, read, findings, Optional.empty(), Optional.empty());
    }

    Journal toWrite(AppendTarget.Opener disk) {
        if (!Files.isRegularFile(file)) {
            throw notThere();
        }
        DayLock lock = lock();
        try {
            LineContents contents = contents();
            DayHeader header = header(contents);
            if (header.isNewer()) {
                lock.close();
                return readOnly(contents, header);
            }
            DayReader read = DayReader.read(contents.lines());
            List<FileFinding> findings = new ArrayList<>(read.findings());
            keepTornEnd(contents).ifPresent(findings::add);
            if (contents.endMissing()) {
                findings.add(new FileFinding(FileFinding.Kind.END_ADDED, contents.lines().size(), TEXTS.say("lastLineIsWhole")));
            }
            LineFile lines = LineFile.open(file, contents, disk);
            return new Journal(folder, header, clock, read, findings, Optional.of(lines), Optional.of(lock));
        } catch (IOException e) {
            release(lock, e);
            throw notWritable(e);
        } catch (RuntimeException e) {
            release(lock, e);
            throw e;
        }
    }

    private DayLock lock() {
        Path lockFile = folder.resolve("day.lock");
        try {
            return DayLock.tryTake(lockFile).orElseThrow(() -> new JournalException(file,
                    TEXTS.phrase("dayIsOpenIn"), null, true));
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw notWritable(e);
        }
    }

    private LineContents contents() {
        try {
            return LineContents.read(file);
        } catch (NoSuchFileException e) {
            throw notThere();
        } catch (IOException e) {
            throw notReadable(file, e);
        }
    }

    /** Reads only what a list of days shows. */
    static DayHeader firstLine(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] start = in.readNBytes(MOST_HEADER_BYTES);
            int end = 0;
            while (end < start.length && start[end] != '\n') {
                end++;
            }
            return header(file, Arrays.copyOf(start, end));
        } catch (IOException e) {
            throw notReadable(file, e);
        }
    }

    private DayHeader header(LineContents contents) {
        return header(file, contents.lines().isEmpty() ? contents.torn() : contents.lines().get(0));
    }

    static DayHeader header(Path file, byte[] line) {
        try {
            return DayHeader.read(line);
        } catch (IllegalArgumentException e) {
            throw new JournalException(file, TEXTS.phrase("thisIsNoDay", e), e);
        }
    }

    private Optional<FileFinding> keepTornEnd(LineContents contents) throws IOException {
        if (contents.torn().length == 0) {
            return Optional.empty();
        }
        String name = Journal.FILE + ".torn-" + STAMP.format(clock.instant());
        Path kept = folder.resolve(name);
        for (int n = 2; Files.exists(kept); n++) {
            kept = folder.resolve(name + "-" + n);
        }
        Disk.writeForced(kept, contents.torn());
        Disk.forceFolder(folder);
        return Optional.of(new FileFinding(FileFinding.Kind.TORN_END, contents.lines().size() + 1, TEXTS.say("lastLineWasCut", kept.getFileName())));
    }

    private static JournalException notReadable(Path file, IOException e) {
        return new JournalException(file, TEXTS.phrase("dayCannotBeRead", DiskTrouble.of(e)), e);
    }

    private JournalException notThere() {
        return new JournalException(file, TEXTS.phrase("thereIsNoDay", Journal.FILE));
    }

    private JournalException notWritable(Exception e) {
        return new JournalException(file, TEXTS.phrase("dayCannotBeWritten", DiskTrouble.of(e)), e, true);
    }

    private static void release(DayLock lock, Exception cause) {
        try {
            lock.close();
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }
}
