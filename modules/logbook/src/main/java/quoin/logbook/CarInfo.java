package quoin.logbook;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A car as a list shows it.
 *
 * @param id      id of the car: its folder name
 * @param name    what the racer calls it; the id where its file cannot be read
 * @param folder  where it and its days lie
 * @param problem why its file cannot be read, in words; empty = it can
 */
public record CarInfo(String id, String name, Path folder, Optional<String> problem) {
    public CarInfo {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(problem, "problem");
    }
}
