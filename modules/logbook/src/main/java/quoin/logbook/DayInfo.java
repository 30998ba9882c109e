package quoin.logbook;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * A day as a list shows it, read from its first line only.
 *
 * @param id      id of the day: its folder name
 * @param title   what the racer calls it; may be empty
 * @param created when it was begun; the file's own time where the first line cannot be read
 * @param folder  where it lies
 * @param problem why it cannot be opened, in words; empty = it can
 */
public record DayInfo(String id, String title, Instant created, Path folder, Optional<String> problem) {
    public DayInfo {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(created, "created");
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(problem, "problem");
    }
}
