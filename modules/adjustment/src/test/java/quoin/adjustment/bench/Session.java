package quoin.adjustment.bench;

import java.util.List;
import java.util.SplittableRandom;
import quoin.adjustment.LoadChange;
import quoin.adjustment.SettledReading;

/** One simulated car at work: turned, settled, read. The k-th settling has the same noise for every strategy. */
public class Session {

    public static final double CROSS_TOLERANCE = 0.2;
    public static final double HEIGHT_TOLERANCE = 1.0;
    public static final double STEP = 0.25;

    private final SimulatedCar car;
    private final SimulatedCar.Conditions conditions;
    private final double[] moved = new double[8];
    private double[] since = new double[4];
    private int settlings;

    public Session(SimulatedCar car, SimulatedCar.Conditions conditions) {
        this.car = car;
        this.conditions = conditions;
    }

    public SimulatedCar car() {
        return car;
    }

    SimulatedCar.Conditions conditions() {
        return conditions;
    }

    /** Turns the perches by whole quarter turns. */
    public void turn(int[] quarters) {
        double[] turns = new double[4];
        for (int i = 0; i < 4; i++) {
            turns[i] = quarters[i] * STEP;
            since[i] += turns[i];
        }
        double[] effect = effect(turns);
        for (int i = 0; i < 8; i++) {
            moved[i] += effect[i];
        }
    }

    /** What turns really do to the eight readings. */
    protected double[] effect(double[] turns) {
        double[] e = new double[4];
        for (int i = 0; i < 4; i++) {
            e[i] = turns[i] * car.lift[i];
        }
        return car.move(e);
    }

    /** Settles the car and reads everything, the mean of as many settlings as the conditions say. */
    public SettledReading read(boolean driverIn) {
        double[] sum = new double[8];
        for (int s = 0; s < conditions.settlings(); s++) {
            double[] one = settle(driverIn);
            for (int i = 0; i < 8; i++) {
                sum[i] += one[i] / conditions.settlings();
            }
        }
        double[] loads = java.util.Arrays.copyOf(sum, 4);
        double[] heights = java.util.Arrays.copyOfRange(sum, 4, 8);
        SettledReading reading = SettledReading.of(since, loads, heights).meanOf(conditions.settlings());
        since = new double[4];
        return driverIn ? reading
                : reading.with(List.of(new LoadChange(-car.driverKg, car.driverX, car.driverY)));
    }

    private double[] settle(boolean driverIn) {
        SplittableRandom r = new SplittableRandom(car.seed * 1_000_003L + 7919L * settlings++ + 5);
        double[] e = new double[4];
        for (int i = 0; i < 4; i++) {
            e[i] = r.nextDouble(-1, 1) * car.frictionKg * SimulatedCar.G / car.wheelRate[i];
        }
        double[] out = state(e);
        if (!driverIn) {
            double[] lighter = car.driverOut();
            for (int i = 0; i < 8; i++) {
                out[i] += lighter[i];
            }
        }
        double unit = car.resolutionKg * SimulatedCar.G;
        for (int i = 0; i < 4; i++) {
            out[i] = Math.round(out[i] / unit) * unit;
            out[4 + i] += r.nextDouble(-1, 1) * car.heightErrorMm;
        }
        return out;
    }

    /** The readings with friction as if each corner were offset by e, mm. */
    private double[] state(double[] e) {
        double[] out = car.move(e);
        for (int i = 0; i < 4; i++) {
            out[i] += car.asFoundLoad[i] + moved[i];
            out[4 + i] += car.asFoundHeight[i] + moved[4 + i];
        }
        return out;
    }

    /** The friction-free car: four loads, four heights. */
    public double[] truth() {
        return state(new double[4]);
    }

    /** Whether the friction-free car is inside every tolerance. */
    public boolean trulyInside() {
        return inside(truth());
    }

    public static boolean inside(double[] readings) {
        boolean in = Math.abs(cross(readings) - 50) <= CROSS_TOLERANCE;
        for (int i = 4; i < 8; i++) {
            in &= Math.abs(readings[i]) <= HEIGHT_TOLERANCE;
        }
        return in;
    }

    public static double cross(double[] r) {
        return 100 * (r[1] + r[2]) / (r[0] + r[1] + r[2] + r[3]);
    }
}
