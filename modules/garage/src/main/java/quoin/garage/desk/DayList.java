package quoin.garage.desk;

import java.util.List;
import quoin.logbook.Day;
import quoin.logbook.DayInfo;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.logbook.KnownDay;
import quoin.logbook.Library;
import quoin.logbook.LibraryIndex;
import quoin.workbench.CurrentDay;

/** The days of a library. Reads files and may be called on any thread. */
public final class DayList {

    private DayList() {
    }

    /**
     * The latest days of all cars, those in the archive left out.
     *
     * @param most how many at most
     */
    public static List<RecentDay> latest(Library library, int most) {
        return latest(LibraryIndex.of(library), most);
    }

    /** As {@link #latest(Library, int)}, from an index made before. */
    public static List<RecentDay> latest(LibraryIndex index, int most) {
        return index.days().stream().filter(d -> !d.archived()).limit(most).map(DayList::recent).toList();
    }

    /** A day of the index as a list shows it. */
    public static RecentDay recent(KnownDay day) {
        return new RecentDay(day.carName(), day.day(), state(day));
    }

    private static RecentDay.State state(KnownDay day) {
        if (day.day().problem().isPresent()) {
            return RecentDay.State.UNREADABLE;
        }
        return state(day.closed(), day.rehearsal());
    }

    private static RecentDay.State state(boolean closed, boolean rehearsal) {
        if (rehearsal) {
            return closed ? RecentDay.State.REHEARSAL_CLOSED : RecentDay.State.REHEARSAL;
        }
        return closed ? RecentDay.State.CLOSED : RecentDay.State.IN_WORK;
    }

    static RecentDay.State state(DayInfo info) {
        if (info.problem().isPresent()) {
            return RecentDay.State.UNREADABLE;
        }
        try (Journal journal = Journal.openReadOnly(info.folder())) {
            Day day = journal.day();
            return state(day.closed().isPresent(), day.condition(CurrentDay.REHEARSAL).isPresent());
        } catch (JournalException e) {
            return RecentDay.State.UNREADABLE;
        }
    }
}
