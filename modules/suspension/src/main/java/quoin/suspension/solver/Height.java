package quoin.suspension.solver;

/**
 * Holds a point of the guided body at a height. The height is the z of one of the car's fixed points, which the walker
 * moves.
 */
record Height(int fixedPoint, int movingPoint) implements Constraint {

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public void linearise(Pose pose, Geometry geometry, double[] residual, double[] jacobian, int row) {
        double[] arm = pose.direction(geometry.moving, 3 * movingPoint);
        residual[row] = pose.origin[2] + arm[2] - geometry.fixed[3 * fixedPoint + 2];
        int j = 6 * row;
        jacobian[j] = 0;
        jacobian[j + 1] = 0;
        jacobian[j + 2] = 1;
        jacobian[j + 3] = arm[1];
        jacobian[j + 4] = -arm[0];
        jacobian[j + 5] = 0;
    }

    @Override
    public void residual(Pose pose, Geometry geometry, double[] residual, int row) {
        double[] r = pose.rotation;
        double[] m = geometry.moving;
        int c = 3 * movingPoint;
        residual[row] = pose.origin[2] + r[6] * m[c] + r[7] * m[c + 1] + r[8] * m[c + 2] - geometry.fixed[3 * fixedPoint + 2];
    }

    @Override
    public void partial(Pose pose, Geometry geometry, Geometry change, double[] out, int row) {
        out[row] = pose.direction(change.moving, 3 * movingPoint)[2] - change.fixed[3 * fixedPoint + 2];
    }
}
