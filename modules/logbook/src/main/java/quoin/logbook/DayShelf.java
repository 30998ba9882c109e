package quoin.logbook;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The other days of a car, found beside the folder of one of them and read when asked for. Files are read and nothing is
 * written. Any thread may call it; a slow disk makes the caller wait.
 */
public final class DayShelf {

    private final Map<String, Optional<Day>> read = new HashMap<>();
    private final Optional<Library> library;
    private final String carId;

    /**
     * @param dayFolder folder of a day; where it lies outside a library there are no other days
     */
    public DayShelf(Path dayFolder) {
        Path car = parent(parent(dayFolder.toAbsolutePath()));
        Path cars = parent(car);
        boolean inLibrary = cars != null && cars.getFileName() != null && cars.getFileName().toString().equals("cars")
                && cars.getParent() != null;
        library = inLibrary ? Optional.of(new Library(cars.getParent())) : Optional.empty();
        carId = inLibrary ? car.getFileName().toString() : "";
    }

    private static Path parent(Path path) {
        return path == null ? null : path.getParent();
    }

    /** The car's days as their first lines tell, the latest first; those that cannot be opened are left out. */
    public List<DayInfo> days() {
        return library.map(l -> l.days(carId)).orElse(List.of()).stream().filter(d -> d.problem().isEmpty()).toList();
    }

    /** The days before another one by their beginning, the latest first; none where that is not one of the car's days. */
    public List<DayInfo> earlier(String dayId) {
        List<DayInfo> days = days();
        for (int i = 0; i < days.size(); i++) {
            if (days.get(i).id().equals(dayId)) {
                return days.subList(i + 1, days.size());
            }
        }
        return List.of();
    }

    /** The day before another one by its beginning; empty where that is the first. */
    public Optional<DayInfo> before(String dayId) {
        return earlier(dayId).stream().findFirst();
    }

    /** The last day before another one on which anything was read; empty where there is none. */
    public Optional<DayInfo> lastTime(String dayId) {
        return earlier(dayId).stream().filter(d -> day(d).filter(DayShelf::isRead).isPresent()).findFirst();
    }

    private static boolean isRead(Day day) {
        return day.effective().stream().anyMatch(Entry.Reading.class::isInstance);
    }

    /** A day; empty where its file cannot be read or holds no car. */
    public synchronized Optional<Day> day(DayInfo info) {
        return read.computeIfAbsent(info.id(), id -> open(info));
    }

    private static Optional<Day> open(DayInfo info) {
        try (Journal journal = Journal.openReadOnly(info.folder())) {
            List<Entry> entries = journal.entries();
            return entries.stream().anyMatch(Entry.CarDescribed.class::isInstance) ? Optional.of(Day.of(entries)) : Optional.empty();
        } catch (JournalException e) {
            return Optional.empty();
        }
    }

    /** The latest other day with another driver; empty where there is none, or a driver is not named. */
    public Optional<DayInfo> otherDriver(String dayId, String driver) {
        return days().stream().filter(d -> !d.id().equals(dayId)).filter(d -> day(d).map(Day::driver)
                .filter(other -> !other.isBlank() && !other.equalsIgnoreCase(driver.strip())).isPresent()).findFirst();
    }
}
