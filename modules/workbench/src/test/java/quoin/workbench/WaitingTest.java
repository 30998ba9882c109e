package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import javax.swing.Timer;
import org.junit.jupiter.api.Test;
import quoin.mechanics.SearchWatch;

/** Work that the racer waits for never holds the event thread up, and can be stopped where it takes long. */
class WaitingTest {

    /** A window without a screen: a loop of events that ends when it is closed, by itself after so many milliseconds where above zero. */
    private record Loop(SecondaryLoop loop, int stoppedAfterMs) implements Waiting.Shown {

        @Override
        public void untilGone() {
            if (stoppedAfterMs > 0) {
                Timer timer = new Timer(stoppedAfterMs, e -> loop.exit());
                timer.setRepeats(false);
                timer.start();
            }
            loop.enter();
        }

        @Override
        public void close() {
            loop.exit();
        }
    }

    private static <T> Optional<T> until(Function<SearchWatch, T> work) throws Exception {
        return until(work, 0);
    }

    private static <T> Optional<T> until(Function<SearchWatch, T> work, int stoppedAfterMs) throws Exception {
        AtomicReference<Optional<T>> answer = new AtomicReference<>();
        AtomicReference<RuntimeException> failure = new AtomicReference<>();
        EventQueue.invokeAndWait(() -> {
            try {
                answer.set(Waiting.until("Making the sheet...", work,
                        content -> new Loop(Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop(), stoppedAfterMs)));
            } catch (RuntimeException e) {
                failure.set(e);
            }
        });
        if (failure.get() != null) {
            throw failure.get();
        }
        return answer.get();
    }

    private static void sleep(int ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void quickWorkGivesItsAnswerAndIsDoneOnAnotherThread() throws Exception {
        assertEquals(Optional.of(false), until(watch -> EventQueue.isDispatchThread()));
    }

    @Test
    void whatTheWorkEndsWithComesToTheCaller() {
        assertEquals("no room", assertThrows(IllegalArgumentException.class, () -> until(watch -> {
            throw new IllegalArgumentException("no room");
        })).getMessage());
    }

    @Test
    void workThatGivesItselfUpHasNoAnswer() throws Exception {
        assertEquals(Optional.empty(), until(watch -> {
            throw new CancellationException("stopped");
        }));
    }

    @Test
    void longWorkLetsEventsThroughAndGoesByItself() throws Exception {
        AtomicInteger ticks = new AtomicInteger();
        Timer timer = new Timer(20, e -> ticks.incrementAndGet());
        timer.start();
        assertEquals(Optional.of("done"), until(watch -> {
            for (int i = 0; i < 10; i++) {
                sleep(100);
                watch.goesOn(i / 10.0);
            }
            return "done";
        }));
        timer.stop();
        assertTrue(ticks.get() > 10, "events meanwhile: " + ticks);
    }

    @Test
    void longWorkThatIsStoppedHearsOfIt() throws Exception {
        AtomicBoolean heard = new AtomicBoolean();
        assertEquals(Optional.empty(), until(watch -> {
            while (watch.goesOn(0.5)) {
                sleep(20);
            }
            heard.set(true);
            throw new CancellationException("stopped");
        }, 200));
        for (int i = 0; i < 100 && !heard.get(); i++) {
            sleep(20);
        }
        assertTrue(heard.get());
    }
}
