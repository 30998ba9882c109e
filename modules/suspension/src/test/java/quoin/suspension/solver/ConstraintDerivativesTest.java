package quoin.suspension.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Every constraint's derivatives against central differences, near its design position. */
class ConstraintDerivativesTest {
    private static final double[] ORIGIN = {10, 700, 300};
    private static final double H = 1e-5;

    private static Geometry geometry() {
        double[] fixed = {200, 300, 200, -150, 320, 210, 0, 450, 700, 30, 250, 380, -20, -400, 250};
        double[] moving = {190, -395, -95, -160, -380, -90, -5, -80, -120, 20, -200, 70, 0, -210, -60};
        return new Geometry(fixed, moving, new double[] {420, 410, 520, 265, 900});
    }

    private static List<Constraint> all() {
        Geometry design = geometry();
        return List.of(new Rod(0, 1, 0), new Hinge(0, 1, 0, 1), new Slider(2, 2, new double[] {3, -40, 400}),
                new Shared(new Rod(1, 2, 1), new Rod(2, 3, 2)), new Height(3, 2),
                new WattLink(design, ORIGIN, new int[] {3, 4}, new int[] {3, 4}, new int[] {3, 4}, new double[] {5, -205, 5},
                        new double[] {1, 0.02, 0.01}));
    }

    private static Pose pose(Random random) {
        Pose pose = new Pose(ORIGIN);
        pose.move(random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), 0.02 * random.nextGaussian(),
                0.02 * random.nextGaussian(), 0.02 * random.nextGaussian());
        return pose;
    }

    private static double[] residual(Constraint constraint, Pose pose, Geometry geometry) {
        double[] residual = new double[6];
        constraint.linearise(pose, geometry, residual, new double[36], 0);
        return residual;
    }

    @Property(tries = 100)
    void byThePose(@ForAll long seed) {
        Pose pose = pose(new Random(seed));
        for (Constraint constraint : all()) {
            double[] jacobian = new double[36];
            constraint.linearise(pose, geometry(), new double[6], jacobian, 0);
            for (int column = 0; column < 6; column++) {
                double[] above = residual(constraint, moved(pose, column, H), geometry());
                double[] below = residual(constraint, moved(pose, column, -H), geometry());
                for (int row = 0; row < constraint.rows(); row++) {
                    assertEquals((above[row] - below[row]) / (2 * H), jacobian[6 * row + column], 2e-5,
                            constraint + " row " + row + " column " + column);
                }
            }
        }
    }

    private static Pose moved(Pose pose, int column, double by) {
        double[] step = new double[6];
        step[column] = by;
        Pose moved = pose.copy();
        moved.move(step[0], step[1], step[2], step[3], step[4], step[5]);
        return moved;
    }

    /** At the pose where the constraint is nearly met; the length of a rod enters there without a second-order rest. */
    @Property(tries = 100)
    void byTheGeometry(@ForAll long seed) {
        Random random = new Random(seed);
        Geometry change = geometry().noChange();
        for (int i = 0; i < 5; i++) {
            change = change.shiftFixed(i, gaussian(random)).lengthen(i, random.nextGaussian());
        }
        for (Constraint constraint : all()) {
            Pose pose = new Pose(ORIGIN);
            Geometry met = met(constraint);
            double[] partial = new double[6];
            constraint.partial(pose, met, change, partial, 0);
            double[] above = residual(constraint, pose, met.plus(H, change));
            double[] below = residual(constraint, pose, met.plus(-H, change));
            for (int row = 0; row < constraint.rows(); row++) {
                assertEquals((above[row] - below[row]) / (2 * H), partial[row], 1e-6, constraint + " row " + row);
            }
        }
    }

    private static double[] gaussian(Random random) {
        return new double[] {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
    }

    /** The geometry with joints on their axes and rods of the length they span at the design position. */
    private static Geometry met(Constraint constraint) {
        Geometry geometry = geometry();
        if (constraint instanceof Hinge) {
            for (int i = 0; i < 2; i++) {
                double[] at = Vectors.minus(geometry.fixedPoint(i), ORIGIN);
                geometry = geometry.shiftMoving(i, Vectors.minus(at, geometry.movingPoint(i)));
            }
        }
        int[][] rods = constraint instanceof Shared ? new int[][] {{1, 2, 1}, {2, 3, 2}}
                : constraint instanceof WattLink ? new int[][] {{3, 3, 3}, {4, 4, 4}} : new int[][] {{0, 1, 0}};
        for (int[] rod : rods) {
            double span = Vectors.distance(geometry.fixedPoint(rod[0]), Vectors.plus(ORIGIN, 1, geometry.movingPoint(rod[1])));
            geometry = geometry.lengthen(rod[2], span - geometry.lengths[rod[2]]);
        }
        return geometry;
    }
}
