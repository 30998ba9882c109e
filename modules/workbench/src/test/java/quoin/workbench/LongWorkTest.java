package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;

/** Questions answered beside the event thread. */
class LongWorkTest {

    private final List<Optional<String>> told = new ArrayList<>();
    private final List<Double> progress = new ArrayList<>();
    private final LongWork<String> work = new LongWork<>("test", told::add, progress::add);

    private static void onEventThread(Runnable action) throws Exception {
        EventQueue.invokeAndWait(action);
    }

    private void waitUntilTold(int times) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        int[] now = new int[1];
        while (now[0] < times && System.nanoTime() < end) {
            Thread.sleep(5);
            onEventThread(() -> now[0] = told.size());
        }
        assertEquals(times, now[0]);
    }

    @Test
    void anAnswerIsToldOnceAndKept() throws Exception {
        onEventThread(() -> {
            assertEquals(Optional.empty(), work.ask("one", watch -> {
                assertFalse(EventQueue.isDispatchThread());
                watch.goesOn(0.5);
                watch.goesOn(0.5001);
                return "first";
            }));
            assertTrue(work.isBusy());
        });
        waitUntilTold(1);
        onEventThread(() -> {
            assertEquals(Optional.of("first"), work.ask("one", watch -> "never asked"));
            assertFalse(work.isBusy());
            assertEquals(List.of(Optional.of("first")), told);
            assertEquals(List.of(0.5), progress, "one percent is told once");
        });
    }

    @Test
    void aNewQuestionGivesTheOldOneUp() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch givenUp = new CountDownLatch(1);
        onEventThread(() -> work.ask("slow", watch -> {
            begun.countDown();
            while (watch.goesOn(0)) {
                Thread.onSpinWait();
            }
            givenUp.countDown();
            throw new CancellationException();
        }));
        assertTrue(begun.await(20, TimeUnit.SECONDS));
        onEventThread(() -> work.ask("quick", watch -> "second"));
        assertTrue(givenUp.await(20, TimeUnit.SECONDS));
        waitUntilTold(1);
        onEventThread(() -> assertEquals(List.of(Optional.of("second")), told));
    }

    @Test
    void whatIsStoppedStaysStopped() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        onEventThread(() -> work.ask("slow", watch -> {
            begun.countDown();
            while (watch.goesOn(0)) {
                Thread.onSpinWait();
            }
            return "too late";
        }));
        assertTrue(begun.await(20, TimeUnit.SECONDS));
        onEventThread(work::stop);
        waitUntilTold(1);
        onEventThread(() -> {
            assertEquals(Optional.empty(), work.ask("slow", watch -> "again"));
            assertFalse(work.isBusy(), "the same question does not start by itself");
            work.forget();
            work.ask("slow", watch -> "again");
        });
        waitUntilTold(2);
        onEventThread(() -> assertEquals(List.of(Optional.empty(), Optional.of("again")), told));
    }

    @Test
    void workThatFailsEndsWithoutAnAnswer() throws Exception {
        Logger log = Logger.getLogger(LongWork.class.getName());
        Level before = log.getLevel();
        log.setLevel(Level.OFF);
        try {
            onEventThread(() -> work.ask("odd", watch -> {
                throw new IllegalStateException("a fault");
            }));
            waitUntilTold(1);
            onEventThread(() -> assertEquals(List.of(Optional.empty()), told));
        } finally {
            log.setLevel(before);
        }
    }
}
