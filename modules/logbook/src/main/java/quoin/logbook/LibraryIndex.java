package quoin.logbook;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import quoin.logbook.file.IndexFile;
import quoin.quantities.Texts;

/**
 * Every car and day of a library, found from its files. What the files said is kept beside them in {@value #FILE}, so that only
 * those that changed are read again: one counts as unchanged where it has the size and time it had, or, after a copy, the same
 * size and the same end. The index is never the truth: without it, or with a damaged one, everything is read from the files.
 */
public final class LibraryIndex {
    private static final Texts TEXTS = Texts.of(LibraryIndex.class);

    /** Name of the file in the library's folder. */
    public static final String FILE = "index.tsv";

    private static final int TAIL_BYTES = 4096;
    private static final int COLUMNS = 11;
    private static final Pattern MILLIS = Pattern.compile("-?\\d{1,18}");
    private static final Comparator<KnownDay> LATEST_FIRST = Comparator.comparing((KnownDay d) -> d.day().created())
            .thenComparing(d -> d.day().id()).reversed();

    private final List<KnownCar> cars;
    private final List<KnownDay> days;
    private final int readAgain;

    /** A car with whether it is in the archive. */
    public record KnownCar(CarInfo car, boolean archived) {
    }

    /** A file as it lies there; the key is its path from the library's folder. */
    private record Found(Path file, String key, long size, long time, boolean archived) {
    }

    /** A car's folder with what lies in it. */
    private record Scanned(Path folder, Found car, List<Found> days) {
    }

    /** What is known of a file, and how it came to be known. */
    private record Row(List<String> cells, boolean read, boolean changed) {
    }

    private LibraryIndex(List<KnownCar> cars, List<KnownDay> days, int readAgain) {
        this.cars = List.copyOf(cars);
        this.days = days.stream().sorted(LATEST_FIRST).toList();
        this.readAgain = readAgain;
    }

    /**
     * Looks through the library. Files may be on a slow stick: not on the event thread.
     *
     * @throws JournalException where its folder cannot be read
     */
    public static LibraryIndex of(Library library) {
        return new Builder(library).build();
    }

    /** Every car by name, the archived ones last. */
    public List<KnownCar> cars() {
        return cars;
    }

    /** Every day, the latest first. */
    public List<KnownDay> days() {
        return days;
    }

    /** How many files had to be read because the index did not know them as they are now. */
    public int readAgain() {
        return readAgain;
    }

    /** Reads what changed and keeps what did not. Looking at very many files waits more than it works, so several do it. */
    private static final class Builder {
        private final Path root;
        private final Map<String, List<String>> known;

        Builder(Library library) {
            root = library.root();
            known = IndexFile.read(root.resolve(FILE), COLUMNS);
        }

        LibraryIndex build() {
            List<Scanned> scanned = Stream.of(Library.CARS, Library.ARCHIVE).flatMap(place -> folders(root.resolve(place)).stream())
                    .toList().parallelStream().map(this::scan).flatMap(Optional::stream).toList();
            List<Found> files = scanned.stream().flatMap(s -> Stream.concat(Stream.of(s.car()), s.days().stream())).toList();
            List<Row> rows = files.parallelStream().map(this::row).toList();
            List<KnownCar> cars = new ArrayList<>();
            List<KnownDay> days = new ArrayList<>();
            int next = 0;
            for (Scanned one : scanned) {
                List<String> cells = rows.get(next++).cells();
                CarInfo car = new CarInfo(one.folder().getFileName().toString(), cells.get(4), one.folder(), text(cells.get(5)));
                cars.add(new KnownCar(car, one.car().archived()));
                for (Found day : one.days()) {
                    days.add(day(car, rows.get(next++).cells(), day));
                }
            }
            cars.sort(Comparator.comparing(KnownCar::archived).thenComparing(c -> c.car().name(), String.CASE_INSENSITIVE_ORDER)
                    .thenComparing(c -> c.car().id()));
            if (rows.stream().anyMatch(Row::changed) || rows.size() != known.size()) {
                save(rows);
            }
            return new LibraryIndex(cars, days, (int) rows.stream().filter(Row::read).count());
        }

        private Optional<Scanned> scan(Path folder) {
            String place = folder.getParent().getFileName().toString();
            String car = place + "/" + folder.getFileName() + "/";
            boolean archived = place.equals(Library.ARCHIVE);
            return found(folder.resolve(Library.CAR_FILE), car + Library.CAR_FILE, archived).map(file -> {
                List<Found> days = new ArrayList<>();
                for (String kind : List.of(Library.DAYS, Library.ARCHIVE)) {
                    for (Path day : folders(folder.resolve(kind))) {
                        found(day.resolve(Journal.FILE), car + kind + "/" + day.getFileName() + "/" + Journal.FILE,
                                archived || kind.equals(Library.ARCHIVE)).ifPresent(days::add);
                    }
                }
                return new Scanned(folder, file, days);
            });
        }

        private static KnownDay day(CarInfo car, List<String> row, Found file) {
            Path folder = file.file().getParent();
            DayInfo info = new DayInfo(folder.getFileName().toString(), row.get(4), Instant.ofEpochMilli(Long.parseLong(row.get(5))), folder,
                    text(row.get(10)));
            return new KnownDay(car.id(), car.name(), info, row.get(6), row.get(7), row.get(8).equals("closed"), row.get(9).equals("rehearsal"),
                    file.archived());
        }

        /** What the index knows of a file where it still holds, else read anew. */
        private Row row(Found file) {
            List<String> old = known.get(file.key());
            if (old != null && holds(file, old)) {
                if (old.get(2).equals(Long.toString(file.time()))) {
                    return new Row(old, false, false);
                }
                List<String> now = new ArrayList<>(old);
                now.set(2, Long.toString(file.time()));
                return new Row(now, false, true);
            }
            List<String> now = new ArrayList<>(List.of(file.key(), Long.toString(file.size()), Long.toString(file.time()), tail(file)));
            now.addAll(isCar(file) ? readCar(file.file().getParent()) : readDay(file));
            return new Row(now, true, !now.equals(old));
        }

        private static boolean isCar(Found file) {
            return file.key().endsWith(Library.CAR_FILE);
        }

        private static List<String> readCar(Path folder) {
            CarInfo info = Library.carInfo(folder);
            return List.of(info.name(), info.problem().orElse(""), "", "", "", "", "");
        }

        private static List<String> readDay(Found file) {
            DaySummary day = DaySummary.read(file.file(), Instant.ofEpochMilli(file.time()));
            return List.of(day.title(), Long.toString(day.created().toEpochMilli()), day.driver(), day.words(), day.closed() ? "closed" : "",
                    day.rehearsal() ? "rehearsal" : "", day.problem());
        }

        /** Words of a problem are in the language of the start that wrote them: such a file is read again. */
        private static boolean holds(Found file, List<String> old) {
            if (!old.get(isCar(file) ? 5 : 10).isEmpty()) {
                return false;
            }
            boolean sane = isCar(file) || MILLIS.matcher(old.get(5)).matches();
            return sane && old.get(1).equals(Long.toString(file.size()))
                    && (old.get(2).equals(Long.toString(file.time())) || old.get(3).equals(tail(file)));
        }

        /** The end of a file: a day only ever grows, and a car's whole file is rarely longer. */
        private static String tail(Found file) {
            try (RandomAccessFile in = new RandomAccessFile(file.file().toFile(), "r")) {
                byte[] bytes = new byte[(int) Math.min(TAIL_BYTES, file.size())];
                in.seek(file.size() - bytes.length);
                in.readFully(bytes);
                CRC32 crc = new CRC32();
                crc.update(bytes);
                return Long.toHexString(crc.getValue());
            } catch (IOException e) {
                return "unreadable";
            }
        }

        private static Optional<Found> found(Path file, String key, boolean archived) {
            try {
                BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
                return attributes.isRegularFile()
                        ? Optional.of(new Found(file, key, attributes.size(), attributes.lastModifiedTime().toMillis(), archived)) : Optional.empty();
            } catch (IOException e) {
                return Optional.empty();
            }
        }

        private static List<Path> folders(Path in) {
            List<Path> found = new ArrayList<>();
            try (DirectoryStream<Path> all = Files.newDirectoryStream(in)) {
                for (Path folder : all) {
                    if (Library.ID.matcher(folder.getFileName().toString()).matches()) {
                        found.add(folder);
                    }
                }
            } catch (NoSuchFileException | NotDirectoryException e) {
                return List.of();
            } catch (IOException e) {
                throw new JournalException(in, TEXTS.phrase("folderCannotBeRead", DiskTrouble.of(e)), e);
            }
            return found;
        }

        private static Optional<String> text(String cell) {
            return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
        }

        /** A stick that may not be written to is read each time. */
        private void save(List<Row> rows) {
            if (!Files.isDirectory(root)) {
                return;
            }
            try {
                IndexFile.write(root.resolve(FILE), rows.stream().map(Row::cells).toList());
            } catch (IOException e) {
                return;
            }
        }
    }
}
