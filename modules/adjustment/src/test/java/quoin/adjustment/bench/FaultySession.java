package quoin.adjustment.bench;

import java.util.function.BiFunction;

/** A simulated car at work whose turns do something else than they should. */
public final class FaultySession extends Session {

    private final BiFunction<Integer, double[], double[]> effect;
    private int round;

    /**
     * @param effect changes of the eight readings for the round (from 1) and the turns recorded
     */
    public FaultySession(SimulatedCar car, SimulatedCar.Conditions conditions, BiFunction<Integer, double[], double[]> effect) {
        super(car, conditions);
        this.effect = effect;
    }

    @Override
    protected double[] effect(double[] turns) {
        round++;
        return effect.apply(round, turns);
    }

    /** The plain effect of the offsets that turns make at each corner. */
    public static double[] plain(SimulatedCar car, double[] turns) {
        double[] e = new double[4];
        for (int i = 0; i < 4; i++) {
            e[i] = turns[i] * car.lift[i];
        }
        return car.move(e);
    }

    /** The same car with one wheel rate multiplied. */
    public static SimulatedCar stiffer(SimulatedCar car, SimulatedCar.Conditions conditions, int corner, double factor) {
        SimulatedCar other = new SimulatedCar(car.seed, conditions);
        other.wheelRate[corner] *= factor;
        return other;
    }

    /**
     * The effect of offsets with a bar connected at one axle (derived): the axle loads stay, so each axle rises by the mean
     * of its offsets; roll stiffness of an axle 1 / (1 / ((kw / 2 + kb) t^2) + 2 / (kt t^2)), its drive
     * (e_left - e_right) / t * kw / (kw + 2 kb), and one roll angle of the body.
     *
     * @param barNPerMm bar rates front and rear, N per mm of left-right difference at the wheel
     */
    public static double[] withBars(SimulatedCar car, double[] turns, double[] barNPerMm) {
        double[] drive = new double[2];
        double[] stiffness = new double[2];
        double[] track = new double[2];
        double[] mean = new double[2];
        for (int axle = 0; axle < 2; axle++) {
            int left = 2 * axle;
            track[axle] = car.y[left] - car.y[left + 1];
            double t2 = track[axle] * track[axle];
            double kw = car.wheelRate[left];
            double left2 = turns[left] * car.lift[left];
            double right2 = turns[left + 1] * car.lift[left + 1];
            stiffness[axle] = 1 / (1 / ((kw / 2 + barNPerMm[axle]) * t2) + 2 / (car.tyreRate[left] * t2));
            drive[axle] = (left2 - right2) / track[axle] * kw / (kw + 2 * barNPerMm[axle]);
            mean[axle] = (left2 + right2) / 2;
        }
        double roll = (stiffness[0] * drive[0] + stiffness[1] * drive[1]) / (stiffness[0] + stiffness[1]);
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            int axle = i / 2;
            double side = i % 2 == 0 ? 1 : -1;
            out[i] = side * stiffness[axle] * (drive[axle] - roll) / track[axle];
            out[4 + i] = mean[axle] + side * roll * track[axle] / 2;
        }
        return out;
    }
}
