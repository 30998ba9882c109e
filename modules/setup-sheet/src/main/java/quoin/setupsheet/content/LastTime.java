package quoin.setupsheet.content;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.DayShelf;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workflow.ObservedTurns;

/**
 * The day before this one on which the car was read.
 *
 * @param info  which
 * @param day   the whole day
 * @param turns what its turns did
 */
public record LastTime(DayInfo info, Day day, List<ObservedTurns> turns) {

    public LastTime {
        turns = List.copyOf(turns);
    }

    /**
     * Looks for it beside the folder of a day; empty where there is none. Reads files: not on the event thread.
     *
     * @param dayFolder folder of the day that goes on now
     */
    public static Optional<LastTime> before(Path dayFolder) {
        DayShelf shelf = new DayShelf(dayFolder);
        return shelf.lastTime(dayFolder.toAbsolutePath().normalize().getFileName().toString())
                .flatMap(info -> shelf.day(info).map(day -> new LastTime(info, day, ObservedTurns.of(day, SuspensionTypes.installed()))));
    }
}
