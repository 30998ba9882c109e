package quoin.adjustment.bench;

import java.util.ArrayList;
import java.util.List;
import quoin.adjustment.Goal;
import quoin.adjustment.Learner;
import quoin.adjustment.LearningPrior;
import quoin.adjustment.ResponseBelief;
import quoin.adjustment.SettledReading;
import quoin.adjustment.TurnAdvice;

/** Quick trial of trajectories. */
public final class Trial {
    static final List<Goal> GOALS = List.of(Goal.cross(50, 0.2), Goal.height(0, 0, 1), Goal.height(1, 0, 1),
            Goal.height(2, 0, 1), Goal.height(3, 0, 1));

    public static void main(String[] args) {
        int cars = Integer.parseInt(args[0]);
        int max = Integer.parseInt(args[1]);
        String variant = args[2];
        var cond = args.length > 3 && args[3].equals("well") ? SimulatedCar.Conditions.WELL_SETTLED
                : SimulatedCar.Conditions.FULL_NOISE;
        var noise = cond == SimulatedCar.Conditions.WELL_SETTLED ? quoin.adjustment.NoisePrior.wellSettled()
                : quoin.adjustment.NoisePrior.garage();
        double[][] p = new double[cars][max];
        double[][] pa = new double[cars][max];
        boolean[][] in = new boolean[cars][max];
        long t0 = System.nanoTime();
        for (int c = 0; c < cars; c++) {
            Session s = new Session(new SimulatedCar(c, cond), cond);
            LearningPrior prior = s.car().prior(noise);
            List<SettledReading> h = new ArrayList<>();
            if (variant.equals("out0") || variant.equals("out")) {
                h.add(s.read(false));
            }
            h.add(s.read(true));
            if (variant.equals("two")) {
                h.add(s.read(true));
            }
            ResponseBelief b = Learner.learn(prior, h);
            for (int r = 0; r < max; r++) {
                TurnAdvice advice = b.bestSteps(GOALS, new double[] {.25, .25, .25, .25});
                s.turn(advice.steps().stream().mapToInt(i -> i).toArray());
                if (variant.equals("out")) {
                    h.add(s.read(false));
                }
                h.add(s.read(true));
                if (variant.equals("two")) {
                    h.add(s.read(true));
                }
                b = Learner.learn(prior, h);
                p[c][r] = b.probabilityInside(GOALS);
                pa[c][r] = b.bestSteps(GOALS, new double[] {.25, .25, .25, .25}).probabilityAfter();
                in[c][r] = s.trulyInside();
            }
        }
        System.out.printf("%.1f ms per car%n", (System.nanoTime() - t0) / 1e6 / cars);
        for (int r = 0; r < max; r++) {
            double mp = 0, mi = 0, mpa = 0;
            for (int c = 0; c < cars; c++) {
                mp += p[c][r] / cars;
                mpa += pa[c][r] / cars;
                mi += in[c][r] ? 1.0 / cars : 0;
            }
            System.out.printf("round %d mean P %.3f truly %.3f  P after best %.3f%n", r + 1, mp, mi, mpa);
        }
        for (double tau = 0.5; tau < 0.99; tau += 0.05) {
            int w2 = 0, w3 = 0, ti = 0, stop = 0;
            for (int c = 0; c < cars; c++) {
                int r = 0;
                while (r < max && p[c][r] < tau) {
                    r++;
                }
                if (r < 2) w2++;
                if (r < 3) w3++;
                if (r < max) { stop++; ti += in[c][r] ? 1 : 0; }
            }
            System.out.printf("tau %.2f within2 %.1f within3 %.1f truly %.1f (stopped %d)%n", tau, 100.0 * w2 / cars, 100.0 * w3 / cars, 100.0 * ti / stop, stop);
        }
        for (int k = 0; k < 10; k++) {
            int cnt = 0, hit = 0; double sp = 0;
            for (int c = 0; c < cars; c++) for (int r = 0; r < max; r++) if ((int) (p[c][r] * 10) == k || k == 9 && p[c][r] == 1) { cnt++; hit += in[c][r] ? 1 : 0; sp += p[c][r]; }
            System.out.printf("claimed %.3f actual %.3f n %d%n", sp / cnt, (double) hit / cnt, cnt);
        }
    }
}
