package quoin.logbook;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import quoin.logbook.file.DiskException;
import quoin.logbook.file.LineFile;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/**
 * Brings lines to the day's file in their order. With a waiting room, a line that the file does not take at once is put
 * there instead, and follows into the file when it can; {@link #write} returns when the line is on one disk or the other.
 */
final class DayWriter {

    /** How long the day's own disk may take before a line goes to the other; short enough not to be felt at the keyboard. */
    static final Duration PATIENCE = Duration.ofMillis(60);
    private static final Duration AT_CLOSING = Duration.ofSeconds(3);
    private static final Texts TEXTS = Texts.of(DayWriter.class);
    static final Phrase SLOW = TEXTS.phrase("slow");

    private record Line(Header header, byte[] bytes) {
    }

    private final LineFile file;
    private final Deque<Line> waiting = new ArrayDeque<>();
    private Optional<WaitingRoom> room = Optional.empty();
    private Optional<ExecutorService> hand = Optional.empty();
    private Runnable listener = () -> { };
    private Duration patience = PATIENCE;
    private Header lastInDay;
    private Optional<Phrase> why = Optional.empty();
    private boolean told;

    DayWriter(LineFile file, Header lastInDay) {
        this.file = file;
        this.lastInDay = lastInDay;
    }

    /**
     * Uses a waiting room from now on.
     *
     * @param changed is run, on another thread, when everything that waited is in the day's file
     * @param limit   how long the day's own disk may take
     */
    synchronized void use(WaitingRoom fallback, Runnable changed, Duration limit) {
        room = Optional.of(fallback);
        patience = limit;
        listener = changed;
        ThreadPoolExecutor one = new ThreadPoolExecutor(0, 1, 10, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
            Thread thread = new Thread(work, "day writer");
            thread.setDaemon(true);
            return thread;
        });
        hand = Optional.of(one);
    }

    /** What waits; empty where all is in the day's file. */
    synchronized Optional<Waiting> waiting() {
        return waiting.isEmpty() ? Optional.empty() : room.map(r -> new Waiting(waiting.size(), r.file(), why.map(Phrase::toString).orElse("")));
    }

    /**
     * @throws IOException where neither place takes the line; nothing of it stays in either
     */
    void write(Header header, byte[] bytes) throws IOException {
        if (hand.isEmpty()) {
            file.append(bytes);
            lastInDay = header;
            return;
        }
        Line line = new Line(header, bytes);
        synchronized (this) {
            waiting.add(line);
        }
        Future<?> drained = hand.get().submit(this::drain);
        boolean slow = !within(drained, patience);
        try {
            keep(line, slow);
        } catch (IOException e) {
            if (slow) {
                // the day's disk is still at it, and now the only hope
                within(drained, Duration.ofDays(1));
            }
            giveUp(line, e);
        }
    }

    private synchronized void keep(Line line, boolean slow) throws IOException {
        if (!waiting.contains(line)) {
            return;
        }
        if (slow) {
            why = Optional.of(SLOW);
        }
        room.orElseThrow().put(line.bytes(), lastInDay);
        told = true;
    }

    private synchronized void giveUp(Line line, IOException second) throws IOException {
        if (waiting.remove(line)) {
            throw new DiskException(TEXTS.phrase("norCouldItWait", why.orElse(SLOW), room.orElseThrow().file(), DiskTrouble.of(second)),
                    second);
        }
    }

    /** Tries to bring everything that waits into the day's file, and waits so long for it to be done. */
    void bringHome(Duration limit) {
        if (hand.isPresent() && waiting().isPresent()) {
            within(hand.get().submit(this::drain), limit);
        }
    }

    private void drain() {
        for (Optional<Line> next = next(); next.isPresent(); next = next()) {
            try {
                file.append(next.get().bytes());
            } catch (IOException e) {
                failed(e);
                return;
            }
            done(next.get());
        }
    }

    private synchronized Optional<Line> next() {
        return Optional.ofNullable(waiting.peek());
    }

    private synchronized void failed(IOException e) {
        why = Optional.of(DiskTrouble.of(e));
    }

    private synchronized void done(Line line) {
        waiting.remove(line);
        lastInDay = line.header();
        if (waiting.isEmpty() && told) {
            told = false;
            why = Optional.empty();
            emptyRoom();
            listener.run();
        }
    }

    /** A room that cannot be emptied does no harm: what is in the day already is not taken from it again. */
    private void emptyRoom() {
        try {
            room.orElseThrow().clear();
        } catch (IOException e) {
            why = Optional.of(DiskTrouble.of(e));
        }
    }

    /** True where the work ended in time. An interrupt is kept for the caller: the entry matters more. */
    private static boolean within(Future<?> work, Duration limit) {
        boolean interrupted = Thread.interrupted();
        long end = System.nanoTime() + limit.toNanos();
        try {
            while (true) {
                try {
                    work.get(Math.max(0, end - System.nanoTime()), TimeUnit.NANOSECONDS);
                    return true;
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (TimeoutException e) {
                    return false;
                } catch (ExecutionException e) {
                    throw new IllegalStateException(e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Brings home what can be, then lets go of the files; what still waits stays in the waiting room for the next opening. */
    void close() throws IOException {
        bringHome(AT_CLOSING);
        hand.ifPresent(ExecutorService::shutdown);
        if (room.isPresent()) {
            room.get().close();
        }
        if (hand.isEmpty() || waiting().isEmpty() || !why.equals(Optional.of(SLOW))) {
            file.close();
        }
    }
}
