package quoin.garage.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import quoin.car.Car;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.Entry;
import quoin.logbook.FileFinding;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.logbook.KnownDay;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workbench.ReadDay;

/**
 * Where a racer chooses a car and a day. Opens days for the workbench, saves cars, and remembers the day that was open.
 * Everything that opens or saves is called on the event thread, if it does not say otherwise, and throws {@link JournalException} with words for the
 * racer where the file will not have it; the day that was open then stays open.
 */
public final class Desk {

    /** Seed of the first rehearsal in a library; each later one takes the next, so that no two read alike. */
    static final long FIRST_SEED = 23;

    private final CurrentDay current;
    private final LastDay lastDay;
    private final Clock clock;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Library library;

    /**
     * @param current the day that is open
     * @param root    folder of the library; need not exist
     * @param lastDay remembers the open day
     * @param clock   dates of new days, in its zone
     */
    public Desk(CurrentDay current, Path root, LastDay lastDay, Clock clock) {
        this.current = Objects.requireNonNull(current, "current");
        this.lastDay = Objects.requireNonNull(lastDay, "lastDay");
        this.clock = Objects.requireNonNull(clock, "clock");
        this.library = new Library(root, clock);
    }

    public CurrentDay current() {
        return current;
    }

    public Library library() {
        return library;
    }

    /** Works in another library folder from now on; an open day stays open. */
    public void useLibrary(Path root) {
        library = new Library(root, clock);
        changed();
    }

    /** Is told when cars or days were added or changed. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void changed() {
        listeners.forEach(Runnable::run);
    }

    /**
     * Reads a day to go on with it; it is open once it is taken. On any thread.
     *
     * @throws JournalException where its file will not have it
     */
    public ReadDay read(Path dayFolder) {
        Path folder = dayFolder.toAbsolutePath().normalize();
        return judged(inLibrary(folder) ? library.openDay(folder.getParent().getParent().getFileName().toString(),
                folder.getFileName().toString()) : Journal.open(folder, clock));
    }

    /**
     * Reads a day to look at only: nothing is locked or written, and what is typed is refused with a message. On any thread.
     *
     * @throws JournalException where it cannot even be read
     */
    public ReadDay readToLookAt(Path dayFolder) {
        return judged(Journal.openReadOnly(dayFolder.toAbsolutePath().normalize()));
    }

    private ReadDay judged(Journal journal) {
        try {
            return current.read(journal);
        } catch (JournalException e) {
            journal.close();
            throw e;
        }
    }

    /**
     * Opens a day that has been read.
     *
     * @return what was noticed in its file, in words; empty where all was well
     */
    public List<String> take(ReadDay read) {
        current.open(read);
        lastDay.set(Optional.of(read.journal().folder().toAbsolutePath().normalize()));
        changed();
        return read.journal().findings().stream().map(FileFinding::words).toList();
    }

    /**
     * Reads a day and opens it, unless it is the one that is open.
     *
     * @return what was noticed in its file, in words; empty where all was well
     */
    public List<String> open(Path dayFolder) {
        return isOpen(dayFolder) ? List.of() : take(read(dayFolder));
    }

    /** Whether this day is the one that is open. */
    public boolean isOpen(Path dayFolder) {
        Path folder = dayFolder.toAbsolutePath().normalize();
        return current.journal().map(j -> j.folder().toAbsolutePath().normalize().equals(folder)).orElse(false);
    }

    private boolean inLibrary(Path folder) {
        Path cars = library.root().resolve("cars").toAbsolutePath().normalize();
        return folder.startsWith(cars) && folder.getNameCount() == cars.getNameCount() + 3;
    }

    /** Begins a day with a car of the library, its adjusters where its last day left them. */
    public void newDay(String carId, String title) {
        begin(library.car(carId), title);
    }

    /** The car's own file is told where the adjusters stand, so that what is measured there later is known to be newer. */
    private void begin(Car car, String title) {
        Optional<Car> file = filed(car.id());
        Car standing = lastDay(car.id()).map(last -> DayTemplate.standing(car, file, last)).orElse(car);
        take(judged(library.createDay(standing, title.strip())));
        file.map(f -> DayTemplate.withAdjustersOf(f, standing)).filter(f -> !f.equals(file.get())).ifPresent(library::save);
    }

    /** The car as its file has it; empty where there is none that can be read. */
    private Optional<Car> filed(String carId) {
        try {
            return Optional.of(library.car(carId));
        } catch (JournalException e) {
            return Optional.empty();
        }
    }

    /** The last day of a car that can be read; a rehearsal moves no real adjuster. */
    private Optional<Day> lastDay(String carId) {
        return library.days(carId).stream().filter(d -> d.problem().isEmpty()).map(this::read).flatMap(Optional::stream)
                .filter(d -> d.condition(CurrentDay.REHEARSAL).isEmpty()).findFirst();
    }

    private Optional<Day> read(DayInfo info) {
        try (Journal journal = Journal.openReadOnly(info.folder())) {
            return Optional.of(journal.day());
        } catch (JournalException e) {
            return Optional.empty();
        }
    }

    /**
     * Begins a day with the car, the targets and the load case of another day and no readings: its adjusters stand where the last
     * day of the car left them.
     */
    public void newDayLike(Path dayFolder, String title) {
        try (Journal other = Journal.openReadOnly(dayFolder)) {
            begin(DayTemplate.car(other.day()), title);
        }
    }

    /** Puts a day into the archive or takes it back. */
    public void archive(KnownDay day, boolean archive) {
        library.archiveDay(day.carId(), day.day().id(), archive);
        changed();
    }

    /** Puts a car with its days into the archive or takes it back. */
    public void archiveCar(String carId, boolean archive) {
        library.archiveCar(carId, archive);
        changed();
    }

    /**
     * Shows a friend's car that has come into the library.
     *
     * @return its name here
     */
    public String takenIn(String carId) {
        String name = library.car(carId).name();
        changed();
        return name;
    }

    /** Begins a rehearsal with the practice car. */
    public void rehearse(String title) {
        Car car = Ouzel23.carInWords();
        boolean known = library.cars().stream().anyMatch(c -> c.id().equals(car.id()));
        if (!known) {
            library.save(car);
        }
        long seed = FIRST_SEED + library.days(car.id()).size();
        Journal journal = library.createDay(car, title.strip());
        current.openRehearsal(journal, seed);
        lastDay.set(Optional.of(journal.folder().toAbsolutePath().normalize()));
        changed();
    }

    /** Goes on with today's last unfinished rehearsal, or begins one. */
    public void demo(String title) {
        if (current.isRehearsal() && current.snapshot().map(s -> s.day().closed().isEmpty()).orElse(false)) {
            return;
        }
        for (Path day : unfinishedRehearsals()) {
            try {
                open(day);
                return;
            } catch (JournalException e) {
                // open in another window or damaged: the next one, or a new one, will do for a demo
            }
        }
        rehearse(title);
    }

    private List<Path> unfinishedRehearsals() {
        List<Path> found = new ArrayList<>();
        for (DayInfo day : library.days(Ouzel23.car().id())) {
            boolean today = LocalDate.ofInstant(day.created(), clock.getZone()).equals(LocalDate.now(clock));
            if (today && DayList.state(day) == RecentDay.State.REHEARSAL) {
                found.add(day.folder());
            }
        }
        return found;
    }

    /** The day that was open when Quoin was last left, to go on with; empty where there is none, or another is open already. */
    public Optional<Path> left() {
        return current.journal().isPresent() ? Optional.empty() : lastDay.get();
    }

    /** Puts the open day away; nothing is reopened at the next start. */
    public void closeFile() {
        current.close();
        lastDay.set(Optional.empty());
        changed();
    }

    /**
     * Saves a car; where it is the car of the open day, its changed description becomes an entry of the day too.
     *
     * @param car   the car
     * @param isNew true where it gets an id of its own from its name
     * @return the car as saved
     */
    public Car save(Car car, boolean isNew) {
        Car named = isNew ? car.withId(library.newId(car.name()), car.name()) : car;
        library.save(named);
        boolean ofTheDay = !isNew && current.snapshot().map(s -> s.car().id().equals(named.id())).orElse(false);
        if (ofTheDay && !current.snapshot().orElseThrow().car().equals(named)) {
            current.record("", header -> new Entry.CarDescribed(header, named));
        }
        changed();
        return named;
    }

    /** The car as it is now: as the open day has it, targets of the day included, else as the library has it. */
    public Car car(String carId) {
        return current.snapshot().filter(s -> s.car().id().equals(carId))
                .map(s -> s.car().withTargets(s.day().targets())).orElseGet(() -> library.car(carId));
    }
}
