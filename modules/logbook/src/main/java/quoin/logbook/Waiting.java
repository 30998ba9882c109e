package quoin.logbook;

import java.nio.file.Path;
import java.util.Objects;

/**
 * Entries that are on a disk, but not yet in the day's own file.
 *
 * @param count how many; 0 = none
 * @param place the file they wait in
 * @param why   what keeps them from the day's file, in words; empty where none wait
 */
public record Waiting(int count, Path place, String why) {

    public Waiting {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(why, "why");
    }
}
