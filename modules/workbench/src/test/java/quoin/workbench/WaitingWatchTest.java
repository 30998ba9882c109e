package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.logbook.Entry;
import quoin.logbook.Journal;

class WaitingWatchTest {

    private static final long LIMIT_MS = 30_000;

    @TempDir
    Path folder;

    private final List<String> told = Collections.synchronizedList(new ArrayList<>());
    private final List<String> lines = Collections.synchronizedList(new ArrayList<>());
    private final CurrentDay current = new CurrentDay(List.of());

    private void onEventThread(Runnable work) {
        try {
            EventQueue.invokeAndWait(work);
        } catch (InvocationTargetException e) {
            throw new AssertionError(e.getCause());
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private void note(String words) {
        onEventThread(() -> assertTrue(current.record("", h -> new Entry.Note(h, words)), told.toString()));
    }

    private void await(BooleanSupplier condition) throws InterruptedException {
        long end = System.currentTimeMillis() + LIMIT_MS;
        while (!condition.getAsBoolean()) {
            assertTrue(System.currentTimeMillis() < end, () -> "waited in vain: " + told + lines);
            Thread.sleep(20);
        }
    }

    private void begin(Path day) {
        current.waitIn(folder.resolve("second"), lines::add);
        current.addFailureListener(told::add);
        Journal.create(day, TestCars.car(), "").close();
        onEventThread(() -> current.open(Journal.open(day)));
    }

    @Test
    void racerIsToldOnceWhereEntriesWaitAndWhenTheyAreHome() throws IOException, InterruptedException {
        Path day = folder.resolve("day");
        Path away = folder.resolve("away");
        begin(day);
        note("before");
        Files.move(day, away);
        note("meanwhile");
        note("and more");
        assertTrue(lines.contains("1 entry waits for the day's disk: not found"), lines.toString());
        assertTrue(lines.contains("2 entries wait for the day's disk: not found"), lines.toString());
        await(() -> !told.isEmpty());
        assertTrue(told.get(0).contains("2 entries wait in " + folder.resolve("second")), told.toString());
        assertTrue(told.get(0).contains("nothing is lost"), told.toString());
        Files.move(away, day);
        await(() -> lines.contains("Everything that waited is in the day's file now."));
        assertEquals(1, told.size(), told.toString());
        onEventThread(current::close);
        try (Journal journal = Journal.openReadOnly(day)) {
            assertEquals(4, journal.entries().size());
        }
    }

    @Test
    void dayClosedWhileEntriesWaitSaysWhereTheyAreAndTakesThemInLater() throws IOException {
        Path day = folder.resolve("day");
        Path away = folder.resolve("away");
        begin(day);
        Files.move(day, away);
        note("meanwhile");
        onEventThread(current::close);
        assertTrue(told.get(0).contains("Open the day again when its disk is well"), told.toString());
        Files.move(away, day);
        onEventThread(() -> current.open(Journal.open(day)));
        assertTrue(told.get(1).startsWith("one entry waited in "), told.toString());
        assertEquals(2, current.snapshot().orElseThrow().day().revision());
        onEventThread(current::close);
    }
}
