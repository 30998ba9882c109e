package quoin.suspension.solver;

import java.util.Arrays;

/**
 * Moves a linkage from position to position without leaving the assembled branch. Newton's method from the last position;
 * a step is halved where Newton does not settle, where its corrections outgrow its first step (which is the prediction
 * along the tangent), or where the determinant changes sign: that is the fold where the linkage locks. More than a right
 * angle from its design position the body is not followed: far out, a linkage of rods can be walked to another assembly
 * without locking, through places where real links would have met. Mutable; for one thread.
 */
public final class Walker {
    private static final double LONGEST_STEP_MM = 80;
    private static final double SHORTEST_STEP_MM = 1e-3;
    private static final int ITERATIONS = 12;
    /** Settled where the next correction, told by the shrinking of the last two, would be smaller; mm. */
    static final double SETTLED = 2e-10;
    /** Corrections together, as a share of the first step, beyond which the prediction was too far off. */
    private static final double LARGEST_CORRECTION = 0.3;
    /** Share of the correction before above which the derivatives are renewed. */
    private static final double SMALL_SHARE = 0.02;
    /** Lever that makes radians comparable to mm. */
    private static final double SCALE_MM = 200;
    /** Share of the design position's determinant under which the linkage counts as locked. */
    private static final double LOCKED = 1e-3;

    private final Loops loops;
    private final Geometry geometry;
    private final Pose pose;
    private final Pose saved;
    private final double[] drive;
    private final double[] from;
    private final double[] residual = new double[Loops.UNKNOWNS];
    private final double[] jacobian = new double[Loops.UNKNOWNS * Loops.UNKNOWNS];
    private final Linear6 linear = new Linear6();
    private final double designDeterminant;
    /** Whether the equations are taken apart at the very pose. */
    private boolean fresh;
    /** Whether they were taken apart near enough to the pose. */
    private boolean usable;
    private long iterations;

    Walker(Loops loops) {
        this.loops = loops;
        geometry = loops.design.plus(0, loops.design.noChange());
        pose = new Pose(loops.origin);
        saved = pose.copy();
        drive = new double[loops.drives() + 1];
        from = new double[drive.length];
        linearise();
        designDeterminant = linear.decompose(jacobian, SCALE_MM);
    }

    /** Whether the linkage is locked at its design position already. */
    public boolean isLocked() {
        return !(Math.abs(designDeterminant) > 1e-9);
    }

    /**
     * Moves to a position.
     *
     * @param rackMm    rack travel along y from the design position
     * @param heightsMm of the driven points above the design position
     * @return true where it was reached; else the linkage stands at the last position reached
     */
    public boolean moveTo(double rackMm, double... heightsMm) {
        double[] wanted = new double[drive.length];
        System.arraycopy(heightsMm, 0, wanted, 0, heightsMm.length);
        wanted[heightsMm.length] = rackMm;
        double step = LONGEST_STEP_MM;
        while (true) {
            double distance = largest(wanted, drive);
            double share = distance <= step ? 1 : step / distance;
            System.arraycopy(drive, 0, from, 0, drive.length);
            saved.set(pose);
            for (int i = 0; i < drive.length; i++) {
                drive[i] = share == 1 ? wanted[i] : drive[i] + share * (wanted[i] - drive[i]);
            }
            applyDrive();
            if (settle()) {
                if (share == 1) {
                    return true;
                }
                step = Math.min(LONGEST_STEP_MM, 2 * step);
            } else {
                pose.set(saved);
                fresh = false;
                usable = false;
                System.arraycopy(from, 0, drive, 0, drive.length);
                applyDrive();
                step = Math.min(step, distance) / 2;
                if (step < SHORTEST_STEP_MM) {
                    settle();
                    return false;
                }
            }
        }
    }

    private static double largest(double[] a, double[] b) {
        double largest = 0;
        for (int i = 0; i < a.length; i++) {
            largest = Math.max(largest, Math.abs(a[i] - b[i]));
        }
        return largest;
    }

    private void applyDrive() {
        for (int i = 0; i < loops.heightPoints.length; i++) {
            int z = 3 * loops.heightPoints[i] + 2;
            geometry.fixed[z] = loops.design.fixed[z] + drive[i];
        }
        for (int point : loops.rackPoints) {
            int y = 3 * point + 1;
            geometry.fixed[y] = loops.design.fixed[y] + drive[drive.length - 1];
        }
    }

    /**
     * Newton. The derivatives are kept, from the position before too, as long as each correction is a small share of the
     * one before: the linkage is then nearly linear between, and no fold lies there.
     */
    private boolean settle() {
        double first = 0;
        double last = 0;
        double corrections = 0;
        boolean renew = !usable;
        usable = false;
        for (int i = 0; i < ITERATIONS; i++) {
            iterations++;
            if (renew && !decompose()) {
                return false;
            }
            residuals();
            linear.solve(residual, SCALE_MM);
            double step = size(residual);
            pose.move(-residual[0], -residual[1], -residual[2], -residual[3], -residual[4], -residual[5]);
            fresh = false;
            double share = i == 0 ? 1 : step / last;
            if (step * Math.min(1, share) < SETTLED) {
                usable = !(share > SMALL_SHARE) || i == 0;
                return pose.isUpright();
            }
            if (i == 0) {
                first = step;
            } else {
                corrections += step;
                if (!(corrections <= LARGEST_CORRECTION * first)) {
                    return false;
                }
            }
            renew = i > 0 && share > SMALL_SHARE;
            last = step;
        }
        return false;
    }

    private boolean decompose() {
        linearise();
        fresh = true;
        usable = true;
        return linear.decompose(jacobian, SCALE_MM) / designDeterminant > LOCKED;
    }

    private void residuals() {
        int row = 0;
        for (Constraint constraint : loops.constraints) {
            constraint.residual(pose, geometry, residual, row);
            row += constraint.rows();
        }
    }

    private static double size(double[] step) {
        double square = 0;
        for (int i = 0; i < 3; i++) {
            square += step[i] * step[i] + SCALE_MM * SCALE_MM * step[3 + i] * step[3 + i];
        }
        return Math.sqrt(square);
    }

    private void linearise() {
        int row = 0;
        for (Constraint constraint : loops.constraints) {
            constraint.linearise(pose, geometry, residual, jacobian, row);
            row += constraint.rows();
        }
    }

    /**
     * How the guided body moves for a change of the geometry, by implicit differentiation of the loops: velocity of the
     * reference point (mm) and rotation vector (rad) per unit of the change. Valid after a successful move.
     */
    public double[] motion(Geometry change) {
        if (!fresh) {
            decompose();
        }
        double[] partial = new double[Loops.UNKNOWNS];
        int row = 0;
        for (Constraint constraint : loops.constraints) {
            constraint.partial(pose, geometry, change, partial, row);
            row += constraint.rows();
        }
        for (int i = 0; i < partial.length; i++) {
            partial[i] = -partial[i];
        }
        linear.solve(partial, SCALE_MM);
        return partial;
    }

    /** {@link Loops#rackChange}. */
    public Geometry rackChange() {
        return loops.rackChange();
    }

    /** {@link Loops#heightChange}. */
    public Geometry heightChange(double... share) {
        return loops.heightChange(share);
    }

    /** Where the guided body is. */
    public Pose pose() {
        return pose;
    }

    /** The figures with rack and heights as they are now. */
    public Geometry geometry() {
        return geometry;
    }

    /** Rack travel it stands at, mm. */
    public double rackMm() {
        return drive[drive.length - 1];
    }

    /** Heights of the driven points it stands at, above the design position, mm. */
    public double[] heightsMm() {
        return Arrays.copyOf(drive, drive.length - 1);
    }

    /** Newton iterations so far. */
    public long iterations() {
        return iterations;
    }
}
