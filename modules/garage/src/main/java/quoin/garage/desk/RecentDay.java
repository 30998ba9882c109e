package quoin.garage.desk;

import java.util.Objects;
import quoin.logbook.DayInfo;

/**
 * A day as the garage lists it.
 *
 * @param car   name of its car
 * @param day   its first line
 * @param state how far it is
 */
public record RecentDay(String car, DayInfo day, State state) {

    /** How far a day is. */
    public enum State { IN_WORK, CLOSED, REHEARSAL, REHEARSAL_CLOSED, UNREADABLE }

    public RecentDay {
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(state, "state");
    }

    /** True where it was begun with the practice car. */
    public boolean isRehearsal() {
        return state == State.REHEARSAL || state == State.REHEARSAL_CLOSED;
    }
}
