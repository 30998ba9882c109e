package quoin.application;

import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;
import org.openide.util.Lookup;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workbench.PlanSource;
import quoin.workflow.spi.Stage;

/**
 * A day that goes on and on: 10,000 entries recorded as the windows record them, among them notes, corrections and undone ones.
 * Prints for every thousand what an Enter cost, the longest time the event thread was not free, and the heap after collection;
 * at the end the heap with the day closed beside the heap before it was opened. Not a test: {@code application/src/bench/long}.
 */
public final class LongRun {

    private static final int ENTRIES = Integer.getInteger("quoin.entries", 10_000);
    private static final int BLOCK = 1000;
    private static final String STAGE = "corner-weights";
    private static final long SEED = 20260411;
    private static final long LOOK_NANOS = 5_000_000;

    private final CurrentDay current = new CurrentDay(Lookup.getDefault().lookupAll(Stage.class), PlanSource.BY_STAGE);
    private final Random random = new Random(SEED);
    private final Car car = Ouzel23.car();
    private final List<ReadingId> readings = car.cornerReadings(ReadingKind.LOAD).stream().toList();
    private final List<AdjusterId> perches = car.adjusters().stream().filter(a -> !a.locked()).map(Adjuster::id)
            .filter(id -> id.kind().isSpringLeg()).toList();
    private final AtomicLong longestNanos = new AtomicLong();

    private LongRun() {
    }

    /** Runs and prints. */
    public static void main(String[] arguments) throws IOException, InterruptedException, InvocationTargetException {
        new LongRun().run(Files.createTempDirectory(Path.of("target"), "long-run"));
        System.exit(0);
    }

    private void run(Path folder) throws InterruptedException, InvocationTargetException {
        if (current.stages().isEmpty()) {
            throw new IllegalStateException("No stage is on the class path: build first, mvn -B package");
        }
        warmUp(folder.resolve("warm-up"));
        double before = heapMb();
        EventQueue.invokeAndWait(() -> current.openRehearsal(Journal.create(folder.resolve("day"), car, "Long"), SEED));
        watchEventThread();
        List<Double> block = new ArrayList<>();
        for (int number = 3; number <= ENTRIES; number++) {
            block.add(record(next(number)));
            if (number % BLOCK == 0) {
                print(number, block);
                block.clear();
                longestNanos.set(0);
            }
        }
        EventQueue.invokeAndWait(current::close);
        System.out.printf("heap with no day open: %.1f MB before, %.1f MB after%n", before, heapMb());
    }

    /** Java has compiled what it will, and every class is loaded, before anything is measured. */
    private void warmUp(Path folder) throws InterruptedException, InvocationTargetException {
        EventQueue.invokeAndWait(() -> current.openRehearsal(Journal.create(folder, car, "Warm-up"), SEED));
        for (int number = 3; number <= BLOCK; number++) {
            record(next(number));
        }
        EventQueue.invokeAndWait(current::close);
    }

    private Function<Header, Entry> next(int number) {
        return switch (number % 5) {
            case 0 -> {
                AdjusterId turned = perches.get(random.nextInt(perches.size()));
                double turns = random.nextBoolean() ? 0.125 : -0.125;
                yield h -> new Entry.Adjustment(h, List.of(new Entry.Turn(turned, turns, OptionalDouble.empty())), "");
            }
            case 1 -> h -> new Entry.Condition(h, Conditions.SETTLED, Conditions.YES, "");
            case 2 -> h -> new Entry.Note(h, "note number " + number);
            case 3 -> h -> new Entry.Correction(h, number - 1L, Optional.empty(), "undo");
            default -> {
                Map<ReadingId, Double> values = current.practiceReadings(readings).orElseThrow();
                yield h -> new Entry.Reading(h, values, Map.of(), Entry.Source.PRACTICE_CAR);
            }
        };
    }

    private double record(Function<Header, Entry> entry) throws InterruptedException, InvocationTargetException {
        double[] spent = new double[1];
        EventQueue.invokeAndWait(() -> {
            long begun = System.nanoTime();
            if (!current.record(STAGE, entry)) {
                throw new IllegalStateException("the entry was not recorded");
            }
            spent[0] = (System.nanoTime() - begun) / 1e6;
        });
        return spent[0];
    }

    /** Asks the event thread every few milliseconds for a sign of life, and notes the longest it took. */
    private void watchEventThread() {
        Thread watch = new Thread(() -> {
            while (true) {
                long asked = System.nanoTime();
                try {
                    EventQueue.invokeAndWait(() -> longestNanos.accumulateAndGet(System.nanoTime() - asked, Math::max));
                } catch (InterruptedException | InvocationTargetException e) {
                    return;
                }
                LockSupport.parkNanos(LOOK_NANOS);
            }
        }, "event thread watch");
        watch.setDaemon(true);
        watch.start();
    }

    private void print(int number, List<Double> times) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        System.out.printf("%6d entries: Enter to recorded median %.1f ms, p99 %.1f ms, worst %.1f ms; event thread held up to %.0f ms;"
                + " heap %.1f MB%n", number, sorted.get(sorted.size() / 2), sorted.get((int) Math.ceil(0.99 * sorted.size()) - 1),
                sorted.get(sorted.size() - 1), longestNanos.get() / 1e6, heapMb());
    }

    private static double heapMb() {
        System.gc();
        System.gc();
        Runtime java = Runtime.getRuntime();
        return (java.totalMemory() - java.freeMemory()) / 1048576.0;
    }
}
