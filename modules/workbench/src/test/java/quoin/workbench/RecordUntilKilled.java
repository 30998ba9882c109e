package quoin.workbench;

import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.logbook.ScriptedDay;

/** The scripted day recorded as the windows record, on the event thread by way of {@link CurrentDay}; started to be killed. */
final class RecordUntilKilled {

    private RecordUntilKilled() {
    }

    public static void main(String[] args) throws IOException, InterruptedException, InvocationTargetException {
        Path folder = Path.of(args[0]);
        CurrentDay current = new CurrentDay(List.of());
        current.waitIn(folder.resolveSibling("second"), words -> { });
        current.addFailureListener(System.err::println);
        ScriptedDay.awaitStart();
        EventQueue.invokeAndWait(() -> current.open(Journal.open(folder)));
        while (true) {
            EventQueue.invokeAndWait(() -> recordNext(current));
        }
    }

    private static void recordNext(CurrentDay current) {
        long next = current.snapshot().orElseThrow().day().revision() + 1;
        Entry entry = ScriptedDay.entry(next);
        if (current.record(entry.header().stage(), entry::withHeader)) {
            ScriptedDay.say(next);
        }
    }
}
