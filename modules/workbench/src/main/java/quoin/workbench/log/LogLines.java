package quoin.workbench.log;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.AbstractListModel;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/** The lines of the day, the newest first; only those that are seen are made. */
final class LogLines extends AbstractListModel<LogLine> {
    private static final long serialVersionUID = 1L;
    private transient Optional<Day> day = Optional.empty();

    void show(Optional<Day> shown) {
        int before = getSize();
        day = shown;
        fireContentsChanged(this, 0, Math.max(before, getSize()));
    }

    /** The line of an entry, looked for from the newest. */
    OptionalInt indexOf(long number) {
        return IntStream.range(0, number < 0 ? 0 : getSize()).filter(i -> entry(i).number() == number).findFirst();
    }

    private Entry entry(int index) {
        return day.orElseThrow().written().get(getSize() - 1 - index);
    }

    @Override
    public int getSize() {
        return day.map(d -> d.written().size()).orElse(0);
    }

    @Override
    public LogLine getElementAt(int index) {
        return LogLine.of(day.orElseThrow(), entry(index));
    }
}
