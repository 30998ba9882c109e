package quoin.suspension.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Double wishbones for the solver's tests: five rods on an upright, arms, tie rod and driven height. */
final class Wishbones {
    private static final double[] CENTRE = {4, 752, 314};
    /** Inner joints, then the outer joint of each rod: upper front and rear, lower front and rear, tie rod. */
    private static final double[][] INNER = {{141, 378, 433}, {-166, 392, 425}, {164, 296, 170}, {-194, 308, 173}, {-122, 319, 240}};
    private static final double[][] OUTER = {{-8, 691, 458}, {-8, 691, 458}, {0, 721, 191}, {0, 721, 191}, {-116, 699, 241}};

    private Wishbones() {
    }

    static Loops typical() {
        return loops(INNER, OUTER);
    }

    /** Every joint of the typical one moved by up to so many mm. */
    static Loops near(Random random, double spreadMm) {
        double[][] outer = new double[5][];
        double[] upper = moved(OUTER[0], random, spreadMm);
        double[] lower = moved(OUTER[2], random, spreadMm);
        for (int i = 0; i < 5; i++) {
            outer[i] = i < 2 ? upper : i < 4 ? lower : moved(OUTER[4], random, spreadMm);
        }
        double[][] inner = new double[5][];
        for (int i = 0; i < 5; i++) {
            inner[i] = moved(INNER[i], random, spreadMm);
        }
        return loops(inner, outer);
    }

    private static double[] moved(double[] point, Random random, double spreadMm) {
        double[] moved = point.clone();
        for (int i = 0; i < 3; i++) {
            moved[i] += spreadMm * (2 * random.nextDouble() - 1);
        }
        return moved;
    }

    private static Loops loops(double[][] inner, double[][] outer) {
        double[] fixed = new double[18];
        double[] moving = new double[18];
        double[] lengths = new double[5];
        List<Constraint> rods = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            System.arraycopy(inner[i], 0, fixed, 3 * i, 3);
            System.arraycopy(Vectors.minus(outer[i], CENTRE), 0, moving, 3 * i, 3);
            lengths[i] = Vectors.distance(inner[i], outer[i]);
            rods.add(new Rod(i, i, i));
        }
        System.arraycopy(CENTRE, 0, fixed, 15, 3);
        return new Loops(rods, new Geometry(fixed, moving, lengths), CENTRE, new int[] {5}, new int[] {4});
    }
}
