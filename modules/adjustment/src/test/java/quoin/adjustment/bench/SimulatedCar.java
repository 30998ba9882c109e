package quoin.adjustment.bench;

import java.util.List;
import java.util.SplittableRandom;
import quoin.adjustment.CornerSpring;
import quoin.adjustment.LearningPrior;
import quoin.adjustment.LiftAdjuster;
import quoin.adjustment.NoisePrior;
import quoin.car.Corner;

/**
 * A random car on scales, by the closed form of four-corner statics (derived, verified by energy minimisation): an
 * internal couple lambda = n.e / sum(n^2 c) along n = (1/tf, -1/tf, -1/tr, 1/tr), heights move by e - c F. Written apart
 * from the estimator on purpose.
 */
public final class SimulatedCar {

    public static final double G = 9.80665;

    /** Reading conditions. */
    public record Conditions(double frictionFactor, int settlings, boolean fineHeights) {
        public static final Conditions FULL_NOISE = new Conditions(1, 1, false);
        public static final Conditions WELL_SETTLED = new Conditions(0.25, 2, true);
        public static final Conditions THREE_WEIGHINGS = new Conditions(1, 3, false);
    }

    public final long seed;
    public final double[] x = new double[4];
    public final double[] y = new double[4];
    public final double[] wheelRate = new double[4];
    public final double[] tyreRate = new double[4];
    public final double[] assumedRate = new double[4];
    public final double[] lift = new double[4];
    public final double[] assumedLift = new double[4];
    public final double massKg;
    public final double[] asFoundLoad = new double[4];
    public final double[] asFoundHeight = new double[4];
    public final double frictionKg;
    public final double heightErrorMm;
    public final double resolutionKg;
    public final double driverKg;
    public final double driverX;
    public final double driverY;
    private final double[] n = new double[4];

    public SimulatedCar(long seed, Conditions conditions) {
        this.seed = seed;
        SplittableRandom r = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 17);
        massKg = r.nextDouble(460, 1500);
        double base = r.nextDouble(2200, 2900);
        double front = r.nextDouble(1300, 1650);
        double rear = r.nextDouble(1300, 1650);
        double frontShare = r.nextDouble(0.42, 0.58);
        double leftShare = r.nextDouble(0.48, 0.52);
        for (int i = 0; i < 4; i++) {
            double track = i < 2 ? front : rear;
            x[i] = i < 2 ? 0 : -base;
            y[i] = i % 2 == 0 ? track / 2 : -track / 2;
            n[i] = (i == 0 || i == 3 ? 1 : -1) / track;
        }
        for (int axle = 0; axle < 2; axle++) {
            axle(r, axle, massKg * (axle == 0 ? frontShare : 1 - frontShare) / 2);
        }
        for (int i = 0; i < 4; i++) {
            assumedRate[i] = wheelRate[i] * (1 + r.nextDouble(-0.2, 0.2));
        }
        loads(frontShare, leftShare, r.nextDouble(44, 56));
        heights(r, base, front, rear);
        frictionKg = r.nextDouble(1, 4) * conditions.frictionFactor();
        double a = r.nextDouble(0.5, 1);
        heightErrorMm = conditions.fineHeights() ? 0.5 : a;
        resolutionKg = new double[] {0.1, 0.2, 0.5}[r.nextInt(3)];
        driverKg = r.nextDouble(60, 95);
        driverX = -base * r.nextDouble(0.45, 0.65);
        driverY = r.nextDouble(-350, 350);
    }

    private void axle(SplittableRandom r, int axle, double cornerKg) {
        double ratio;
        double rate;
        double spring;
        do {
            ratio = r.nextDouble(0.5, 1);
            double hertz = r.nextDouble(1.6, 4);
            rate = cornerKg * Math.pow(2 * Math.PI * hertz, 2) / 1000;
            spring = rate / (ratio * ratio);
        } while (spring < 20 || spring > 200);
        double tyre = r.nextDouble(170, 350);
        double trueLift = 1.5 / ratio;
        double believed = trueLift * (1 + r.nextDouble(-0.05, 0.05));
        for (int i = axle * 2; i < axle * 2 + 2; i++) {
            wheelRate[i] = rate;
            tyreRate[i] = tyre;
            lift[i] = trueLift;
            assumedLift[i] = believed;
        }
    }

    private void loads(double frontShare, double leftShare, double crossPercent) {
        double w = massKg * G;
        double lateral = w * (leftShare - 0.5) * 2;
        double[] f = new double[4];
        for (int i = 0; i < 4; i++) {
            double axle = w * (i < 2 ? frontShare : 1 - frontShare);
            f[i] = axle / 2 + (i % 2 == 0 ? 1 : -1) * lateral * axle / w / 2;
        }
        double lambda = (w * crossPercent / 100 - f[1] - f[2]) / (n[1] + n[2]);
        for (int i = 0; i < 4; i++) {
            asFoundLoad[i] = f[i] + lambda * n[i];
        }
    }

    private void heights(SplittableRandom r, double base, double front, double rear) {
        double worst;
        do {
            double heave = r.nextDouble(-15, 15);
            double pitch = r.nextDouble(-15, 15);
            double roll = r.nextDouble(-15, 15);
            worst = 0;
            for (int i = 0; i < 4; i++) {
                asFoundHeight[i] = heave + pitch * (x[i] / base + 0.5) * 2 + roll * y[i] * 4 / (front + rear);
                worst = Math.max(worst, Math.abs(asFoundHeight[i]));
            }
        } while (worst > 15);
    }

    /** Changes of loads (N) and heights (mm) for corner offsets e, mm. */
    public double[] move(double[] e) {
        double c = 0;
        double drive = 0;
        for (int i = 0; i < 4; i++) {
            c += n[i] * n[i] * (1 / wheelRate[i] + 1 / tyreRate[i]);
            drive += n[i] * e[i];
        }
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            out[i] = drive / c * n[i];
            out[4 + i] = e[i] - out[i] * (1 / wheelRate[i] + 1 / tyreRate[i]);
        }
        return out;
    }

    /** Changes of loads and heights when the driver gets out. */
    public double[] driverOut() {
        double[][] a = new double[3][3];
        double w = -driverKg * G;
        double[] right = {w, w * driverX, w * driverY};
        double[] k = new double[4];
        for (int i = 0; i < 4; i++) {
            k[i] = 1 / (1 / wheelRate[i] + 1 / tyreRate[i]);
            double[] b = {1, x[i], y[i]};
            for (int m = 0; m < 3; m++) {
                for (int l = 0; l < 3; l++) {
                    a[m][l] += k[i] * b[m] * b[l];
                }
            }
        }
        double[] q = new org.hipparchus.linear.LUDecomposition(new org.hipparchus.linear.Array2DRowRealMatrix(a))
                .getSolver().solve(new org.hipparchus.linear.ArrayRealVector(right)).toArray();
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            double down = q[0] + q[1] * x[i] + q[2] * y[i];
            out[i] = k[i] * down;
            out[4 + i] = -down;
        }
        return out;
    }

    /** What the strategy is told of the car. */
    public LearningPrior prior(NoisePrior noise) {
        return prior(noise, assumedRate, assumedLift, 0.2 / Math.sqrt(3), 0.05 / Math.sqrt(3));
    }

    /** A prior that knows rates and lifts. */
    public LearningPrior knowing(NoisePrior noise) {
        return prior(noise, wheelRate, lift, 1e-4, 1e-4);
    }

    private LearningPrior prior(NoisePrior noise, double[] rate, double[] lifts, double rateSd, double liftSd) {
        CornerSpring[] corners = new CornerSpring[4];
        LiftAdjuster[] adjusters = new LiftAdjuster[4];
        for (int i = 0; i < 4; i++) {
            corners[i] = new CornerSpring(x[i], y[i], x[i], y[i], rate[i], tyreRate[i], rateSd);
            adjusters[i] = new LiftAdjuster(Corner.values()[i] + " perch", Corner.values()[i], lifts[i],
                    i < 2 ? "front" : "rear", liftSd);
        }
        return LearningPrior.of(List.of(corners), List.of(adjusters)).withNoise(noise);
    }
}
