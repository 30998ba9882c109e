package quoin.suspension.solver;

import java.util.List;

/**
 * Two rods that hold one motion between them: their bushes give until the mean of the two fits. Stands for the pair of
 * upper links of a live axle that a lateral link makes one too many.
 */
public record Shared(Rod one, Rod other) implements Constraint {

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row) {
        double[] f = new double[2];
        double[] j = new double[12];
        one.linearise(pose, geometry, f, j, 0);
        other.linearise(pose, geometry, f, j, 1);
        residual[row] = (f[0] + f[1]) / 2;
        for (int i = 0; i < 6; i++) {
            jacobian[6 * row + i] = (j[i] + j[6 + i]) / 2;
        }
    }

    @Override
    public void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row) {
        double[] f = new double[2];
        one.partial(pose, geometry, change, f, 0);
        other.partial(pose, geometry, change, f, 1);
        out[row] = (f[0] + f[1]) / 2;
    }

    @Override
    public List<Segment> outline(Pose pose, Geometry geometry) {
        return List.of(one.outline(pose, geometry).get(0), other.outline(pose, geometry).get(0));
    }
}
