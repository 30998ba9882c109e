package quoin.garage.desk;

import java.nio.file.Path;
import java.util.Optional;

/** Keeps, from one run to the next, which day was being worked on. */
public interface LastDay {

    /** The folder of the day that was open last and not put away; empty where there is none. */
    Optional<Path> get();

    /** Remembers a day, or that none is open. */
    void set(Optional<Path> dayFolder);
}
