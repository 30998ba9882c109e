package quoin.application;

import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.stream.Stream;
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
 * What one Enter costs late in a long day: from the record call until the entry is flushed, the day folded and its status known
 * (all on the event thread), and from then until the plans of the next round are there (beside it). The day is one of the practice
 * car: rounds of turning, settling and reading everything. Not a test: run it with {@code application/src/bench/entry}.
 */
public final class EntryBenchmark {

    private static final int ENTRIES = 500;
    private static final int MEASURED = 200;
    private static final String STAGE = "corner-weights";
    private static final long SEED = 20260411;

    private final CurrentDay current = new CurrentDay(Lookup.getDefault().lookupAll(Stage.class), PlanSource.BY_STAGE);
    private final Random random = new Random(SEED);
    private final Car car = Ouzel23.car();
    private final List<ReadingId> readings = Stream.concat(car.cornerReadings(ReadingKind.LOAD).stream(), car.heightReadings().stream())
            .toList();
    private final List<AdjusterId> perches = car.adjusters().stream().filter(a -> !a.locked()).map(Adjuster::id)
            .filter(id -> id.kind().isSpringLeg()).toList();
    private final List<Double> recordedMs = new ArrayList<>();
    private final List<Double> replannedMs = new ArrayList<>();

    private EntryBenchmark() {
    }

    /** Measures and prints. */
    public static void main(String[] arguments) throws IOException, InterruptedException, InvocationTargetException {
        Path folder = Files.createTempDirectory(Path.of("target"), "entries");
        new EntryBenchmark().run(folder);
        System.exit(0);
    }

    private void run(Path folder) throws InterruptedException, InvocationTargetException {
        if (current.stages().isEmpty()) {
            throw new IllegalStateException("No stage is on the class path: build first, mvn -B package");
        }
        EventQueue.invokeAndWait(() -> current.openRehearsal(Journal.create(folder, car, "Entries"), SEED));
        for (int number = 3; number <= ENTRIES; number++) {
            Function<Header, Entry> entry = next(number);
            boolean measured = number > ENTRIES - MEASURED;
            double recorded = record(entry);
            double planned = measured ? replanned() : 0;
            if (measured) {
                recordedMs.add(recorded);
                replannedMs.add(recorded + planned);
            }
        }
        print("recorded, folded, status known (event thread)", recordedMs);
        print("replanned (beside the event thread)", replannedMs);
    }

    private Function<Header, Entry> next(int number) {
        return switch (number % 3) {
            case 0 -> {
                AdjusterId turned = perches.get(random.nextInt(perches.size()));
                double turns = random.nextBoolean() ? 0.125 : -0.125;
                yield h -> new Entry.Adjustment(h, List.of(new Entry.Turn(turned, turns, OptionalDouble.empty())), "");
            }
            case 1 -> h -> new Entry.Condition(h, Conditions.SETTLED, Conditions.YES, "");
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

    /** Asks for the plans as a window does, and waits until they are there. */
    private double replanned() throws InterruptedException, InvocationTargetException {
        long begun = System.nanoTime();
        CountDownLatch there = new CountDownLatch(1);
        Runnable listener = () -> {
            if (!current.isPlanning(STAGE)) {
                there.countDown();
            }
        };
        EventQueue.invokeAndWait(() -> {
            current.addPlanListener(listener);
            current.plans(STAGE);
        });
        there.await();
        EventQueue.invokeAndWait(() -> current.removePlanListener(listener));
        return (System.nanoTime() - begun) / 1e6;
    }

    private static void print(String name, List<Double> times) {
        double[] sorted = times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf("%-48s median %.1f ms, p99 %.1f ms, worst %.1f ms (n = %d)%n", name, sorted[sorted.length / 2],
                sorted[(int) Math.ceil(0.99 * sorted.length) - 1], Arrays.stream(sorted).max().orElse(0), sorted.length);
    }
}
