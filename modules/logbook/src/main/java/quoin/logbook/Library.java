package quoin.logbook;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.text.Normalizer;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quoin.car.Car;
import quoin.logbook.file.DayLock;
import quoin.logbook.file.Disk;
import quoin.quantities.Texts;

/**
 * The folder that holds the racer's cars and days: {@code cars/<car id>/car.json} and
 * {@code cars/<car id>/days/<date>-<n>/day.jsonl}. A car's folder can be copied as it is. What is put into the archive moves to
 * {@code archive/<car id>} or {@code cars/<car id>/archive/<day id>} and can be moved back. Beside the cars lie the
 * {@link GaragePlaces}.
 */
public final class Library {
    private static final Texts TEXTS = Texts.of(Library.class);

    static final String CAR_FILE = "car.json";
    static final String CARS = "cars";
    static final String DAYS = "days";
    /** Beside the cars for a whole car, in a car's folder for its days. */
    static final String ARCHIVE = "archive";
    static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
    /** Names that one of the usual systems keeps for its devices. */
    private static final Set<String> TAKEN = Set.of("con", "prn", "aux", "nul");

    private final Path root;
    private final Clock clock;

    /** The library in a folder, which need not exist yet. Dates are those of the clock's zone. */
    public Library(Path root, Clock clock) {
        this.root = root;
        this.clock = clock;
    }

    public Library(Path root) {
        this(root, Clock.systemDefaultZone());
    }

    /** Where the library lies unless the racer chose another place: {@code Quoin} in the home folder. */
    public static Path defaultRoot() {
        return Path.of(System.getProperty("user.home"), "Quoin");
    }

    public Path root() {
        return root;
    }

    /** Every car, by name. One whose file cannot be read is listed with its problem. */
    public List<CarInfo> cars() {
        return folders(root.resolve(CARS)).stream().filter(f -> Files.exists(f.resolve(CAR_FILE))).map(Library::carInfo)
                .sorted(Comparator.comparing(CarInfo::name, String.CASE_INSENSITIVE_ORDER).thenComparing(CarInfo::id)).toList();
    }

    /** A car's days, the latest first. One whose file cannot be read is listed with its problem. */
    public List<DayInfo> days(String carId) {
        return folders(folder(carId).resolve(DAYS)).stream().filter(f -> Files.exists(f.resolve(Journal.FILE)))
                .map(Library::dayInfo).sorted(Comparator.comparing(DayInfo::created).thenComparing(DayInfo::id).reversed()).toList();
    }

    /**
     * Reads a car.
     *
     * @throws JournalException where it is not there or cannot be read
     */
    public Car car(String carId) {
        return CarFile.read(folder(carId).resolve(CAR_FILE));
    }

    /**
     * Saves a car under its id, in place of an older description.
     *
     * @throws JournalException where it cannot be written
     */
    public void save(Car car) {
        CarFile.write(folder(car.id()).resolve(CAR_FILE), car);
    }

    /** An id for a new car made from its name, unlike every id in the library. */
    public String newId(String name) {
        return freeId(name, "car", id -> Stream.of(CARS, ARCHIVE).anyMatch(place -> Files.exists(root.resolve(place).resolve(id))));
    }

    /**
     * An id made from a name that is not taken yet.
     *
     * @param otherwise what it begins with where nothing of the name can be used
     */
    static String freeId(String name, String otherwise, Predicate<String> taken) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String start = plain.isEmpty() || TAKEN.contains(plain) ? otherwise : plain.substring(0, Math.min(48, plain.length()));
        String id = start;
        for (int n = 2; taken.test(id); n++) {
            id = start + "-" + n;
        }
        return id;
    }

    /**
     * Begins a day with a car as it is now.
     *
     * @return the day, open
     * @throws JournalException where it cannot be written
     */
    public Journal createDay(Car car, String title) {
        Path days = folder(car.id()).resolve(DAYS);
        try {
            Disk.createFolders(days);
            for (int n = 1;; n++) {
                Path day = days.resolve(LocalDate.now(clock) + "-" + n);
                if (Files.exists(folder(car.id()).resolve(ARCHIVE).resolve(day.getFileName()))) {
                    continue;
                }
                try {
                    Files.createDirectory(day);
                    Disk.forceFolder(days);
                    return Journal.create(day, car, title, clock);
                } catch (FileAlreadyExistsException e) {
                    // that number is taken; the next one may be free
                }
            }
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new JournalException(days, TEXTS.phrase("dayCouldNotBeBegun", DiskTrouble.of(e)), e);
        }
    }

    /**
     * Opens a day to go on with it. Where the entry that describes the car is damaged, the car's own file is recorded anew.
     *
     * @throws JournalException where it cannot be opened
     */
    public Journal openDay(String carId, String dayId) {
        Journal journal = Journal.open(dayFolder(carId, dayId), clock);
        boolean lost = journal.findings().stream().anyMatch(f -> f.kind() == FileFinding.Kind.NO_CAR);
        if (lost && !journal.isReadOnly()) {
            try {
                journal.append(new Entry.CarDescribed(Header.draft(""), car(carId)));
            } catch (RuntimeException e) {
                journal.close();
                throw e;
            }
        }
        return journal;
    }

    /** The file of the car that a day's folder belongs to; empty where the day lies in no library. */
    public static Optional<Path> carFileOf(Path dayFolder) {
        Path car = dayFolder.toAbsolutePath().normalize().resolve("../..").normalize().resolve(CAR_FILE);
        return Files.exists(car) ? Optional.of(car) : Optional.empty();
    }

    /**
     * Puts a day into the archive or takes it back.
     *
     * @throws JournalException where it is open in a Quoin, or cannot be moved
     */
    public void archiveDay(String carId, String dayId, boolean archive) {
        Path car = folder(carId);
        Path from = car.resolve(archive ? DAYS : ARCHIVE).resolve(checked(dayId));
        mustBeFree(from);
        move(from, car.resolve(archive ? ARCHIVE : DAYS).resolve(dayId));
    }

    /**
     * Puts a car with its days into the archive or takes it back.
     *
     * @throws JournalException where one of its days is open in a Quoin, or it cannot be moved
     */
    public void archiveCar(String carId, boolean archive) {
        Path from = root.resolve(archive ? CARS : ARCHIVE).resolve(checked(carId));
        for (String kind : List.of(DAYS, ARCHIVE)) {
            folders(from.resolve(kind)).forEach(Library::mustBeFree);
        }
        move(from, root.resolve(archive ? ARCHIVE : CARS).resolve(carId));
    }

    /** True for the folder of a car, or anything in it, that was put into the archive whole. */
    public boolean isInArchivedCar(Path folder) {
        return folder.startsWith(root.resolve(ARCHIVE));
    }

    private static void mustBeFree(Path day) {
        if (!Files.exists(day.resolve(Journal.FILE))) {
            return;
        }
        try {
            DayLock.tryTake(day.resolve("day.lock")).orElseThrow(() -> new JournalException(day,
                    TEXTS.phrase("dayIsOpenClose"))).close();
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new JournalException(day, TEXTS.phrase("dayCannotBeMoved", DiskTrouble.of(e)), e);
        }
    }

    private static void move(Path from, Path to) {
        try {
            Disk.createFolders(to.toAbsolutePath().getParent());
            if (Files.exists(to)) {
                throw new FileAlreadyExistsException(to.toString());
            }
            Files.move(from, to);
            Disk.forceFolder(to.toAbsolutePath().getParent());
            Disk.forceFolder(from.toAbsolutePath().getParent());
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new JournalException(from, TEXTS.phrase("wasNotMovedCheck", DiskTrouble.of(e)), e);
        }
    }

    /** The folder of a day. */
    public Path dayFolder(String carId, String dayId) {
        return folder(carId).resolve(DAYS).resolve(checked(dayId));
    }

    private Path folder(String carId) {
        return root.resolve(CARS).resolve(checked(carId));
    }

    private static String checked(String id) {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("'" + id + "' cannot name a folder; use small letters, digits and hyphens");
        }
        return id;
    }

    private static List<Path> folders(Path in) {
        if (!Files.isDirectory(in)) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(in)) {
            return found.filter(Files::isDirectory).filter(f -> ID.matcher(f.getFileName().toString()).matches()).sorted().toList();
        } catch (IOException e) {
            throw new JournalException(in, TEXTS.phrase("folderCannotBeRead", DiskTrouble.of(e)), e);
        }
    }

    static CarInfo carInfo(Path folder) {
        String id = folder.getFileName().toString();
        try {
            Car car = CarFile.read(folder.resolve(CAR_FILE));
            Optional<String> problem = car.id().equals(id) ? Optional.empty()
                    : Optional.of(TEXTS.say("folderOfAnother", id, car.id()));
            return new CarInfo(id, car.name(), folder, problem);
        } catch (JournalException e) {
            return new CarInfo(id, id, folder, Optional.of(e.getLocalizedMessage()));
        }
    }

    private static DayInfo dayInfo(Path folder) {
        String id = folder.getFileName().toString();
        try {
            DayHeader header = JournalOpening.firstLine(folder.resolve(Journal.FILE));
            return new DayInfo(id, header.title(), header.created(), folder, Optional.empty());
        } catch (JournalException e) {
            return new DayInfo(id, "", fileTime(folder), folder, Optional.of(e.getLocalizedMessage()));
        }
    }

    private static Instant fileTime(Path folder) {
        try {
            return Files.getLastModifiedTime(folder.resolve(Journal.FILE)).toInstant();
        } catch (IOException e) {
            return Instant.EPOCH;
        }
    }
}
