package quoin.adjustment;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;

/**
 * Time of the planner on one core, every invocation another problem, and of ojAlgo on the same problems in the same run.
 * Run: {@code mvn -pl modules/adjustment -am -Pplan-benchmark -DskipTests test}, with
 * {@code -Dplan.benchmark=cpu} for processor times only.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 2, time = 1)
@Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=1")
public class PlanBenchmark {

    /** Four adjusters and five readings. */
    @State(Scope.Benchmark)
    public static class Four extends Pool {
        /** How the sensitivities come about. */
        @Param({"CAR", "NEARLY_SINGULAR"})
        public String kind;

        @Override
        StepProblem problem(Random random) {
            return PlanBenchCases.four(random, PlanBenchCases.Kind.valueOf(kind), step, range);
        }
    }

    /** Eight adjusters and eight readings. */
    @State(Scope.Benchmark)
    public static class Eight extends Pool {
        /** How the sensitivities come about. */
        @Param({"PERCH_AND_ROD", "NEARLY_SINGULAR", "PERCH_AND_TOE_LINK", "CHANCE"})
        public String kind;

        @Override
        StepProblem problem(Random random) {
            return PlanBenchCases.eight(random, PlanBenchCases.Kind.valueOf(kind), step, range);
        }
    }

    /** Problems that ojAlgo can be given: no price of turning, and for eight adjusters none of visits either. */
    @State(Scope.Benchmark)
    public static class Shared extends Pool {
        /** Four adjusters with five readings, or eight with eight. */
        @Param({"4", "8"})
        public int adjusters;

        @Override
        StepProblem problem(Random random) {
            StepProblem priced = adjusters == 4 ? PlanBenchCases.four(random, PlanBenchCases.Kind.CAR, step, range)
                    : PlanBenchCases.eight(random, PlanBenchCases.Kind.CHANCE, step, range);
            return new StepProblem(priced.errors(), priced.tolerances(), priced.sensitivityPerTurn(),
                    priced.adjusters(), adjusters == 4 ? 1 : 0, 0);
        }
    }

    /** A thousand problems, taken in turn. */
    @State(Scope.Benchmark)
    public abstract static class Pool {
        /** Step in turns; a quarter goes with a range of 6 turns either way, an eighth with 10. */
        @Param({"0.25", "0.125"})
        public double step;

        double range;
        private final StepProblem[] problems = new StepProblem[1000];
        private int at;

        /** Makes the problems. */
        @Setup
        public void prepare() {
            range = step == 0.25 ? 6 : 10;
            Random random = new Random(77);
            for (int i = 0; i < problems.length; i++) {
                problems[i] = problem(random);
            }
        }

        abstract StepProblem problem(Random random);

        StepProblem next() {
            at = (at + 1) % problems.length;
            return problems[at];
        }
    }

    /** Best plan, four adjusters. */
    @Benchmark
    public StepPlan bestOfFour(Four pool) {
        return PlanSearch.best(pool.next());
    }

    /** Best plan, eight adjusters. */
    @Benchmark
    public StepPlan bestOfEight(Eight pool) {
        return PlanSearch.best(pool.next());
    }

    /** Best plans with none to four visits, eight adjusters. */
    @Benchmark
    public List<StepPlan> perVisitCountOfEight(Eight pool) {
        return PlanSearch.bestPerVisitCount(pool.next(), 4);
    }

    /** Best plan of the problems shared with ojAlgo. */
    @Benchmark
    public StepPlan sharedWithOjAlgo(Shared pool) {
        return PlanSearch.best(pool.next());
    }

    /** The same problems put to ojAlgo. */
    @Benchmark
    public double[] ojAlgo(Shared pool) {
        StepProblem problem = pool.next();
        return pool.adjusters == 4 ? PlanOjAlgo.best(problem, pool.step)
                : PlanOjAlgo.turns(problem, pool.step, new boolean[] {true, true, true, true, true, true, true, true});
    }

    /**
     * Runs all and prints a line per case, then the ratio of the medians to ojAlgo. JMH's times are of the wall clock and
     * mean little on a machine that is busy otherwise, so the processor time of single calls comes first; with the
     * argument {@code cpu} that is all.
     */
    public static void main(String[] arguments) throws RunnerException {
        processorTimes();
        if (List.of(arguments).contains("cpu")) {
            return;
        }
        var options = new OptionsBuilder().include(PlanBenchmark.class.getName());
        var results = List.copyOf(new Runner(options.build()).run());
        System.out.printf(Locale.ROOT, "%n%-78s %10s %10s %10s%n", "case", "median ms", "p99 ms", "worst ms");
        for (RunResult result : results) {
            Statistics times = result.getPrimaryResult().getStatistics();
            System.out.printf(Locale.ROOT, "%-78s %10.3f %10.3f %10.3f%n", name(result), times.getPercentile(50),
                    times.getPercentile(99), times.getMax());
        }
        for (RunResult theirs : results) {
            for (RunResult ours : results) {
                if (name(theirs).replace("ojAlgo", "sharedWithOjAlgo").equals(name(ours)) && theirs != ours) {
                    System.out.printf(Locale.ROOT, "%s: median %.0f times the planner's%n", name(theirs),
                            theirs.getPrimaryResult().getStatistics().getPercentile(50)
                                    / ours.getPrimaryResult().getStatistics().getPercentile(50));
                }
            }
        }
    }

    private static void processorTimes() {
        System.out.printf(Locale.ROOT, "%-78s %10s %10s %10s%n", "processor time", "median ms", "p99 ms", "worst ms");
        for (double step : new double[] {0.25, 0.125}) {
            for (PlanBenchCases.Kind kind : PlanBenchCases.Kind.values()) {
                if (kind == PlanBenchCases.Kind.CAR || kind == PlanBenchCases.Kind.NEARLY_SINGULAR) {
                    Four four = new Four();
                    four.kind = kind.name();
                    processorTime("best of four " + kind, four, step, PlanSearch::best);
                }
                if (kind != PlanBenchCases.Kind.CAR) {
                    Eight eight = new Eight();
                    eight.kind = kind.name();
                    processorTime("best of eight " + kind, eight, step, PlanSearch::best);
                    processorTime("per visit count of eight " + kind, eight, step,
                            problem -> PlanSearch.bestPerVisitCount(problem, 4));
                }
            }
        }
    }

    private static void processorTime(String name, Pool pool, double step, Function<StepProblem, Object> search) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        pool.step = step;
        pool.prepare();
        double[] times = new double[1000];
        int found = 0;
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < times.length; i++) {
                StepProblem problem = pool.next();
                long before = threads.getCurrentThreadCpuTime();
                found += search.apply(problem) == null ? 0 : 1;
                times[i] = (threads.getCurrentThreadCpuTime() - before) / 1e6;
            }
        }
        Arrays.sort(times);
        System.out.printf(Locale.ROOT, "%-78s %10.3f %10.3f %10.3f%n", name + " step=" + step + " (" + found + " calls)",
                times[500], times[990], times[999]);
    }

    private static String name(RunResult result) {
        var parameters = result.getParams();
        StringBuilder name = new StringBuilder(parameters.getBenchmark().replaceAll(".*\\.", ""));
        for (String key : parameters.getParamsKeys()) {
            name.append(' ').append(key).append('=').append(parameters.getParam(key));
        }
        return name.toString();
    }
}
