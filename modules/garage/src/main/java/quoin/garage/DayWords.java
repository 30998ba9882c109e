package quoin.garage;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import org.openide.util.NbBundle.Messages;
import quoin.garage.desk.RecentDay;

/** A day in one line. */
@Messages({
    "state.inWork=in work", "state.closed=closed", "state.rehearsal=rehearsal, in work", "state.rehearsalClosed=rehearsal, closed",
    "state.unreadable=cannot be read",
    "# {0} - car", "# {1} - date", "# {2} - title", "# {3} - state", "day.line={1}   {0}   {2}   ({3})"})
final class DayWords {

    private DayWords() {
    }

    static String line(RecentDay day) {
        String date = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withZone(ZoneId.systemDefault())
                .format(day.day().created());
        return Bundle.day_line(day.car(), date, day.day().title(), state(day.state()));
    }

    private static String state(RecentDay.State state) {
        return switch (state) {
            case IN_WORK -> Bundle.state_inWork();
            case CLOSED -> Bundle.state_closed();
            case REHEARSAL -> Bundle.state_rehearsal();
            case REHEARSAL_CLOSED -> Bundle.state_rehearsalClosed();
            case UNREADABLE -> Bundle.state_unreadable();
        };
    }
}
