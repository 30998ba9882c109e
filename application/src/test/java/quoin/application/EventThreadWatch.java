package quoin.application;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javax.swing.RepaintManager;

/**
 * Watches the event thread of a running application from inside it: every 10 ms it asks to be called there and notes how long
 * that took, what the thread was at meanwhile, and how much of the time it had a processor. It also times every Enter until what
 * it changed is drawn. A Java agent, started by {@code application/src/bench/watch}; its argument is the file of its report:
 *
 * <pre>
 * block  TIME  WALL_MS  PROCESSOR_MS  LAST_KEY  WHERE
 * enter  TIME  HANDLED_MS  DRAWN_MS  PROCESSOR_MS  KEY
 * </pre>
 */
public final class EventThreadWatch {

    private static final int EVERY_MS = 10;
    private static final int LOOK_MS = 8;
    private static final double WORTH_A_LOOK_MS = 30;
    private static final double REPORTED_MS = 50;
    private static final int FRAMES = 4;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Path report;
    private volatile Thread eventThread;
    private volatile String lastKey = "-";

    private EventThreadWatch(Path report) {
        this.report = report;
    }

    /** Begins to watch as soon as there is an event thread. */
    public static void premain(String file) {
        Thread thread = new Thread(new EventThreadWatch(Path.of(file))::run, "event thread watch");
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        try {
            while (Thread.getAllStackTraces().keySet().stream().noneMatch(t -> t.getName().startsWith("AWT-EventQueue"))) {
                Thread.sleep(100);
            }
            EventQueue.invokeLater(this::listen);
            while (true) {
                once();
                Thread.sleep(EVERY_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void listen() {
        Timed timed = new Timed();
        RepaintManager.setCurrentManager(timed);
        Toolkit.getDefaultToolkit().addAWTEventListener(event -> {
            if (event instanceof KeyEvent key && key.getID() == KeyEvent.KEY_PRESSED) {
                lastKey = KeyEvent.getModifiersExText(key.getModifiersEx()) + " " + KeyEvent.getKeyText(key.getKeyCode());
                if (key.getKeyCode() == KeyEvent.VK_ENTER) {
                    timed.enter(lastKey.strip());
                }
            }
        }, AWTEvent.KEY_EVENT_MASK);
    }

    /** Asks to be called on the event thread and waits for it. */
    private void once() throws InterruptedException {
        CountDownLatch called = new CountDownLatch(1);
        Thread before = eventThread;
        long cpu = before == null ? 0 : THREADS.getThreadCpuTime(before.getId());
        long asked = System.nanoTime();
        String key = lastKey;
        EventQueue.invokeLater(() -> {
            eventThread = Thread.currentThread();
            called.countDown();
        });
        Map<String, Integer> seen = new LinkedHashMap<>();
        while (!called.await(LOOK_MS, TimeUnit.MILLISECONDS)) {
            if (before != null && ms(asked) > WORTH_A_LOOK_MS) {
                seen.merge(where(before.getStackTrace()), 1, Integer::sum);
            }
        }
        double wall = ms(asked);
        if (wall >= REPORTED_MS && before != null) {
            double spent = (THREADS.getThreadCpuTime(before.getId()) - cpu) / 1e6;
            String often = seen.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).limit(3)
                    .map(e -> e.getValue() + "x " + e.getKey()).collect(Collectors.joining(" | "));
            write("block\t%s\t%.0f\t%.0f\t%s\t%s%n".formatted(Instant.now(), wall, spent, lastKey.equals(key) ? key : key + " > " + lastKey, often));
        }
    }

    /** The uppermost frames of Quoin, and what they were at. */
    private static String where(StackTraceElement[] stack) {
        String own = Arrays.stream(stack).filter(f -> f.getClassName().startsWith("quoin.") && !f.getClassName().contains("EventThreadWatch"))
                .limit(FRAMES).map(EventThreadWatch::shortly).collect(Collectors.joining(" < "));
        String top = stack.length == 0 ? "" : shortly(stack[0]);
        String loading = Arrays.stream(stack).anyMatch(f -> f.getMethodName().equals("loadClass")) ? " (loads a class)" : "";
        Optional<String> platform = own.isEmpty() ? Arrays.stream(stack).filter(f -> f.getClassName().startsWith("org.") || f.getClassName().startsWith("com."))
                .findFirst().map(EventThreadWatch::shortly) : Optional.empty();
        return top + loading + " in " + platform.orElse(own);
    }

    private static String shortly(StackTraceElement frame) {
        String name = frame.getClassName();
        return name.substring(name.lastIndexOf('.') + 1) + "." + frame.getMethodName() + ":" + frame.getLineNumber();
    }

    private static double ms(long since) {
        return (System.nanoTime() - since) / 1e6;
    }

    private synchronized void write(String line) {
        try {
            Files.writeString(report, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Draws as ever and notes when what an Enter changed has been drawn. On the event thread only. */
    private final class Timed extends RepaintManager {
        private long pressed;
        private long handled;
        private long cpu;
        private String key;

        void enter(String pressedKey) {
            key = pressedKey;
            pressed = System.nanoTime();
            handled = 0;
            cpu = THREADS.getCurrentThreadCpuTime();
            // the key itself is being dispatched; this comes after it, and before or after the drawing
            EventQueue.invokeLater(() -> handled = System.nanoTime());
        }

        @Override
        public void paintDirtyRegions() {
            super.paintDirtyRegions();
            if (pressed != 0 && handled == 0) {
                handled = System.nanoTime();
            }
            if (pressed != 0) {
                write("enter\t%s\t%.1f\t%.1f\t%.1f\t%s%n".formatted(Instant.now(), (handled - pressed) / 1e6, ms(pressed),
                        (THREADS.getCurrentThreadCpuTime() - cpu) / 1e6, key));
                pressed = 0;
            }
        }
    }
}
