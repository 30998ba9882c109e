package quoin.suspension.solver;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Solved positions a second of processor time on one core, double wishbone, and Hipparchus' Levenberg-Marquardt with the
 * same equations and analytic derivatives in the same run; the best of many rounds of each, taken in turn. Run:
 * {@code mvn -pl modules/suspension -am -Psolver-benchmark -DskipTests test}.
 */
public final class SolverBenchmark {
    private static final int ROUNDS = 60;
    private static final int POSITIONS = 4000;

    /** One round. @param steps evaluations of the equations a position */
    private record Round(double perSecond, double steps) {
        Round best(Round other) {
            return perSecond > other.perSecond ? this : other;
        }
    }

    /** Where the wheel is asked to be, one position after the other. */
    private record Path(String name, double[] travel, double[] rack) {
        static Path of(String name, IntToDoubleFunction travel, IntToDoubleFunction rack) {
            return new Path(name, IntStream.range(0, POSITIONS).mapToDouble(travel).toArray(),
                    IntStream.range(0, POSITIONS).mapToDouble(rack).toArray());
        }
    }

    private SolverBenchmark() {
    }

    public static void main(String[] arguments) {
        Loops loops = Wishbones.typical();
        report(loops, Path.of("sweep, 1 mm steps", i -> 40 * Math.sin(i / 40.0), i -> 0));
        report(loops, Path.of("sweep with steering", i -> 40 * Math.sin(i / 40.0), i -> 15 * Math.sin(i / 25.0)));
        report(loops, Path.of("jumps of up to 60 mm", i -> 30 * Math.sin(i * 2.4), i -> 0));
    }

    private static void report(Loops loops, Path path) {
        Round newton = new Round(0, 0);
        Round withRatio = newton;
        Round other = newton;
        for (int i = 0; i < ROUNDS; i++) {
            newton = newton.best(newton(loops, path, false));
            withRatio = withRatio.best(newton(loops, path, true));
            other = other.best(levenbergMarquardt(loops, path));
        }
        System.out.printf(Locale.ROOT, "%-21s Newton %,9.0f/s (%.1f steps)   with motion ratio %,9.0f/s   "
                + "Levenberg-Marquardt %,8.0f/s (%.1f steps)   ratio %.1f%n", path.name(), newton.perSecond(), newton.steps(),
                withRatio.perSecond(), other.perSecond(), other.steps(), newton.perSecond() / other.perSecond());
    }

    private static Round newton(Loops loops, Path path, boolean ratio) {
        Walker walker = loops.walker();
        Geometry up = loops.heightChange(1);
        double sum = 0;
        long start = processorTime();
        for (int i = 0; i < POSITIONS; i++) {
            if (!walker.moveTo(path.rack()[i], path.travel()[i])) {
                throw new IllegalStateException("not reached");
            }
            sum += ratio ? walker.motion(up)[0] : walker.pose().origin[0];
        }
        return round(start, sum, walker.iterations());
    }

    private static Round levenbergMarquardt(Loops loops, Path path) {
        LevenbergMarquardt other = new LevenbergMarquardt(loops);
        double sum = 0;
        long start = processorTime();
        for (int i = 0; i < POSITIONS; i++) {
            other.moveTo(path.rack()[i], path.travel()[i]);
            sum += other.pose().origin[0];
        }
        return round(start, sum, other.evaluations());
    }

    private static Round round(long start, double sum, long steps) {
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("a position is not a number");
        }
        return new Round(POSITIONS * 1e9 / (processorTime() - start), (double) steps / POSITIONS);
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
