package quoin.workbench;

import java.awt.EventQueue;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.util.RequestProcessor;
import quoin.mechanics.SearchWatch;

/**
 * Answers questions that take long beside the event thread. A new question gives the one before up, and the last answer is kept
 * for as long as the same is asked. Everything here is called on the event thread, and so are those who are told.
 *
 * @param <T> an answer
 */
public final class LongWork<T> {

    private final RequestProcessor worker;
    private final Consumer<Optional<T>> ended;
    private final Consumer<Double> progress;
    private final AtomicLong wanted = new AtomicLong();
    private Object question;
    private boolean busy;
    private Optional<T> answer = Optional.empty();

    /**
     * @param name     of the thread
     * @param ended    told the answer; empty where the work was stopped or failed
     * @param progress told how far the work is, 0 to 1
     */
    public LongWork(String name, Consumer<Optional<T>> ended, Consumer<Double> progress) {
        this.worker = new RequestProcessor(name, 1, true);
        this.ended = ended;
        this.progress = progress;
    }

    /**
     * The answer to a question where it is known; otherwise the work on it begins, unless it has already or was stopped.
     *
     * @param asked equal to the last one = the same question
     * @param work  finds the answer on another thread; asks its watch now and then whether to go on
     */
    public Optional<T> ask(Object asked, Function<SearchWatch, T> work) {
        if (!Objects.equals(question, asked)) {
            question = asked;
            answer = Optional.empty();
            busy = true;
            long number = wanted.incrementAndGet();
            worker.post(() -> run(number, work));
        }
        return answer;
    }

    public boolean isBusy() {
        return busy;
    }

    /** Gives the present work up; the same question is not worked on again before another was asked. */
    public void stop() {
        if (busy) {
            wanted.incrementAndGet();
            busy = false;
            ended.accept(Optional.empty());
        }
    }

    /** Gives the present work up and forgets the last answer. */
    public void forget() {
        wanted.incrementAndGet();
        busy = false;
        question = null;
        answer = Optional.empty();
    }

    private void run(long number, Function<SearchWatch, T> work) {
        if (number != wanted.get()) {
            return;
        }
        Optional<T> found = Optional.empty();
        try {
            found = Optional.of(work.apply(new Told(number)));
        } catch (CancellationException e) {
            // Given up: another question was asked, or nobody wants to know any more.
            found = Optional.empty();
        } catch (RuntimeException e) {
            Logger.getLogger(LongWork.class.getName()).log(Level.WARNING, "the work could not be done", e);
        }
        Optional<T> result = found;
        EventQueue.invokeLater(() -> end(number, result));
    }

    private void end(long number, Optional<T> result) {
        if (number == wanted.get() && busy) {
            busy = false;
            answer = result;
            ended.accept(result);
        }
    }

    /** Tells of every percent, not of every step. */
    private final class Told implements SearchWatch {
        private final long number;
        private long percent = -1;

        Told(long number) {
            this.number = number;
        }

        @Override
        public boolean goesOn(double share) {
            long now = Math.round(100 * share);
            if (now != percent) {
                percent = now;
                EventQueue.invokeLater(() -> {
                    if (number == wanted.get()) {
                        progress.accept(share);
                    }
                });
            }
            return number == wanted.get();
        }
    }
}
