package quoin.mechanics;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;
import quoin.car.PerCorner;

/**
 * Time of the exact equilibrium on one core, every call another car with everything on it, and of a general-purpose
 * solver on the same cars in the same run. Run: {@code mvn -pl modules/mechanics -am -Ploads-benchmark -DskipTests test},
 * with {@code -Dloads.benchmark=cpu} for processor times only.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=1")
public class LoadsBenchmark {
    /** Calls per car; the quickest counts, because on a busy machine Java's own compiler comes late. */
    private static final int ROUNDS = 25;

    /** A thousand cars, taken in turn. */
    @State(Scope.Benchmark)
    public static class Pool {
        private final CarModel[] cars = new CarModel[1000];
        private final Turns[] turns = new Turns[cars.length];
        private int at;

        /** Draws the cars. */
        @Setup
        public void prepare() {
            for (int i = 0; i < cars.length; i++) {
                AnyCar any = new AnyCar(i);
                cars[i] = any.withEverything();
                turns[i] = any.turns(3);
            }
        }

        <T> T next(BiFunction<CarModel, Turns, T> work) {
            at = (at + 1) % cars.length;
            return work.apply(cars[at], turns[at]);
        }
    }

    /** Loads, shares, heights. */
    @Benchmark
    public Equilibrium exact(Pool pool) {
        return pool.next(CornerLoads::solve);
    }

    /** The same with what a turn of every perch and rod does there. */
    @Benchmark
    public CornerLoads.Response exactWithSensitivities(Pool pool) {
        return pool.next(LoadsBenchmark::response);
    }

    /** The same equations put to Hipparchus' Levenberg-Marquardt. */
    @Benchmark
    public PerCorner<Double> generalSolver(Pool pool) {
        return pool.next(LoadsByGeneralSolver::loadsKgf);
    }

    private static CornerLoads.Response response(CarModel car, Turns turns) {
        return CornerLoads.response(car, turns, CornerLoads.ADJUSTERS);
    }

    /** Prints processor times of single calls first: JMH's wall clock means little on a machine that is busy otherwise. */
    public static void main(String[] arguments) throws RunnerException {
        Pool pool = new Pool();
        pool.prepare();
        System.out.printf(Locale.ROOT, "%-28s %12s %12s %12s%n", "processor time a car", "median us", "p99 us", "worst us");
        double exact = processorTime("exact", pool, CornerLoads::solve);
        processorTime("exactWithSensitivities", pool, LoadsBenchmark::response);
        double general = processorTime("generalSolver", pool, LoadsByGeneralSolver::loadsKgf);
        System.out.printf(Locale.ROOT, "general solver: %.1f times the exact solution's median%n", general / exact);
        if (List.of(arguments).contains("cpu")) {
            return;
        }
        for (RunResult result : new Runner(new OptionsBuilder().include(LoadsBenchmark.class.getName()).build()).run()) {
            Statistics times = result.getPrimaryResult().getStatistics();
            System.out.printf(Locale.ROOT, "%-28s %12.1f %12.1f %12.1f%n",
                    result.getParams().getBenchmark().replaceAll(".*\\.", ""), times.getPercentile(50),
                    times.getPercentile(99), times.getMax());
        }
    }

    private static double processorTime(String name, Pool pool, BiFunction<CarModel, Turns, ?> work) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double[] times = new double[pool.cars.length];
        Arrays.fill(times, Double.POSITIVE_INFINITY);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < times.length; i++) {
                long before = threads.getCurrentThreadCpuTime();
                Object found = pool.next(work);
                times[i] = Math.min(times[i], found == null ? 0 : (threads.getCurrentThreadCpuTime() - before) / 1e3);
            }
        }
        Arrays.sort(times);
        double median = times[times.length / 2];
        System.out.printf(Locale.ROOT, "%-28s %12.1f %12.1f %12.1f%n", name, median, times[times.length * 99 / 100],
                times[times.length - 1]);
        return median;
    }
}
