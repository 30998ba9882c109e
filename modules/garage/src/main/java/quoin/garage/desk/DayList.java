package quoin.garage.desk;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import quoin.logbook.CarInfo;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.logbook.Library;
import quoin.workbench.CurrentDay;

/** The days of a library. Reads files and may be called on any thread. */
public final class DayList {

    private record Found(CarInfo car, DayInfo day) {
    }

    private DayList() {
    }

    /**
     * The latest days of all cars.
     *
     * @param most how many at most
     */
    public static List<RecentDay> latest(Library library, int most) {
        return library.cars().stream().flatMap(car -> days(library, car))
                .sorted(Comparator.comparing((Found f) -> f.day().created()).thenComparing(f -> f.day().id()).reversed())
                .limit(most).map(f -> new RecentDay(f.car().name(), f.day(), state(f.day()))).toList();
    }

    private static Stream<Found> days(Library library, CarInfo car) {
        return library.days(car.id()).stream().map(day -> new Found(car, day));
    }

    static RecentDay.State state(DayInfo info) {
        if (info.problem().isPresent()) {
            return RecentDay.State.UNREADABLE;
        }
        try (Journal journal = Journal.openReadOnly(info.folder())) {
            Day day = journal.day();
            boolean closed = day.closed().isPresent();
            if (day.condition(CurrentDay.REHEARSAL).isPresent()) {
                return closed ? RecentDay.State.REHEARSAL_CLOSED : RecentDay.State.REHEARSAL;
            }
            return closed ? RecentDay.State.CLOSED : RecentDay.State.IN_WORK;
        } catch (JournalException e) {
            return RecentDay.State.UNREADABLE;
        }
    }
}
