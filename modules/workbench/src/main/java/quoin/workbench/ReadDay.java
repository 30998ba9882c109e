package quoin.workbench;

import quoin.logbook.Day;
import quoin.logbook.Journal;
import quoin.workflow.DayStatus;

/**
 * A day that has been read and judged but is not open yet; what takes long at opening is done by then.
 *
 * @param journal its file; whoever does not open it closes it
 * @param day     as its entries tell it
 * @param status  what the order of work says about it
 */
public record ReadDay(Journal journal, Day day, DayStatus status) {
}
