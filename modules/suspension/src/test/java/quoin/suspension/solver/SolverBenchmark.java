package quoin.suspension.solver;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;

/**
 * Solved positions a second of processor time on one core, double wishbone, and Hipparchus' Levenberg-Marquardt with the
 * same equations and analytic derivatives in the same run. Run:
 * {@code mvn -pl modules/suspension -am -Psolver-benchmark -DskipTests test}.
 */
public final class SolverBenchmark {
    private static final int ROUNDS = 20;
    private static final int POSITIONS = 4000;

    private static double newtonSteps;
    private static double otherSteps;

    private SolverBenchmark() {
    }

    public static void main(String[] arguments) {
        Loops loops = Wishbones.typical();
        report("sweep, 1 mm steps", loops, (i, n) -> 40 * Math.sin(i / 40), (i, n) -> 0);
        report("sweep with steering", loops, (i, n) -> 40 * Math.sin(i / 40), (i, n) -> 15 * Math.sin(i / 25));
        report("jumps of up to 60 mm", loops, (i, n) -> 30 * Math.sin(i * 2.4), (i, n) -> 0);
    }

    private static void report(String name, Loops loops, DoubleBinaryOperator travel, DoubleBinaryOperator rack) {
        double newton = 0;
        double other = 0;
        for (int round = 0; round < ROUNDS; round++) {
            newton = Math.max(newton, newton(loops, travel, rack, false));
            other = Math.max(other, levenbergMarquardt(loops, travel, rack));
        }
        double tangent = 0;
        for (int round = 0; round < ROUNDS; round++) {
            tangent = Math.max(tangent, newton(loops, travel, rack, true));
        }
        System.out.printf(Locale.ROOT, "%-22s Newton %,9.0f/s (%.1f steps)   with motion ratio %,9.0f/s   "
                + "Levenberg-Marquardt %,8.0f/s (%.1f steps)   ratio %.1f%n", name, newton, newtonSteps, tangent, other, otherSteps,
                newton / other);
    }

    private static double newton(Loops loops, DoubleBinaryOperator travel, DoubleBinaryOperator rack, boolean tangent) {
        Walker walker = loops.walker();
        Geometry up = loops.heightChange(1);
        double sum = 0;
        long start = processorTime();
        for (int i = 0; i < POSITIONS; i++) {
            if (!walker.moveTo(rack.applyAsDouble(i, 0), travel.applyAsDouble(i, 0))) {
                throw new IllegalStateException("not reached");
            }
            sum += tangent ? walker.motion(up)[0] : walker.pose().origin[0];
        }
        newtonSteps = (double) walker.iterations() / POSITIONS;
        return rate(start, sum);
    }

    private static double levenbergMarquardt(Loops loops, DoubleBinaryOperator travel, DoubleBinaryOperator rack) {
        LevenbergMarquardt other = new LevenbergMarquardt(loops);
        double sum = 0;
        long start = processorTime();
        for (int i = 0; i < POSITIONS; i++) {
            other.moveTo(rack.applyAsDouble(i, 0), travel.applyAsDouble(i, 0));
            sum += other.pose().origin[0];
        }
        otherSteps = (double) other.evaluations() / POSITIONS;
        return rate(start, sum);
    }

    private static double rate(long start, double sum) {
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("a position is not a number");
        }
        return POSITIONS * 1e9 / (processorTime() - start);
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
