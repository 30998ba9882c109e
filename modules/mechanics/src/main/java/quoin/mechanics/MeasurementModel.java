package quoin.mechanics;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A result computed from uncertain inputs, by JCGM 100:2008 (GUM): law of propagation 5.1.2 and 5.2.2, effective
 * degrees of freedom by Welch-Satterthwaite G.2b. Slopes by central difference over each input's own uncertainty, as
 * the guide suggests in 5.1.3 note 2. First order only: where two inputs are near zero and their product counts, the
 * note to 5.1.2 asks for more (in the guide's own H.1 that raises 32 nm to 34 nm).
 */
public final class MeasurementModel {
    /** Step of the central difference as a fraction of the standard uncertainty. */
    private static final double STEP = 1e-2;

    private final ToDoubleFunction<double[]> model;

    /** @param model the result from the input values, in the order of the inputs */
    public MeasurementModel(ToDoubleFunction<double[]> model) {
        this.model = model;
    }

    /**
     * @param value estimate
     * @param standardUncertainty in the unit of the value
     * @param degreesOfFreedom of the uncertainty; empty = known exactly
     */
    public record Input(double value, double standardUncertainty, OptionalDouble degreesOfFreedom) {
        public Input {
            Require.finite("value", value);
            Require.notNegative("standardUncertainty", standardUncertainty);
            degreesOfFreedom.ifPresent(dof -> Require.positive("degreesOfFreedom", dof));
        }

        /** An input whose uncertainty is itself certain. */
        public static Input of(double value, double standardUncertainty) {
            return new Input(value, standardUncertainty, OptionalDouble.empty());
        }
    }

    /**
     * @param value the result
     * @param standardUncertainty combined
     * @param contributions slope times uncertainty of each input, with sign
     * @param degreesOfFreedom effective; empty = unlimited
     */
    public record Result(double value, double standardUncertainty, List<Double> contributions,
            OptionalDouble degreesOfFreedom) {

        /** Factor for a two-sided interval of the given probability; t with the degrees of freedom truncated (G.4.1). */
        public double coverageFactor(double probability) {
            double upper = (1 + probability) / 2;
            return degreesOfFreedom.isPresent()
                    ? new TDistribution(Math.max(1, Math.floor(degreesOfFreedom.getAsDouble())))
                            .inverseCumulativeProbability(upper)
                    : new NormalDistribution().inverseCumulativeProbability(upper);
        }

        public double expandedUncertainty(double probability) {
            return coverageFactor(probability) * standardUncertainty;
        }
    }

    /** Independent inputs. */
    public Result evaluate(List<Input> inputs) {
        double[][] independent = new double[inputs.size()][inputs.size()];
        for (int i = 0; i < inputs.size(); i++) {
            independent[i][i] = 1;
        }
        return evaluate(inputs, independent);
    }

    /** @param correlation of the inputs: symmetric, ones on the diagonal */
    public Result evaluate(List<Input> inputs, double[][] correlation) {
        int n = inputs.size();
        double[] values = inputs.stream().mapToDouble(Input::value).toArray();
        double[] contributions = new double[n];
        for (int i = 0; i < n; i++) {
            contributions[i] = contribution(values, i, inputs.get(i).standardUncertainty());
        }
        double variance = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                variance += contributions[i] * contributions[j] * correlation[i][j];
            }
        }
        double combined = Math.sqrt(Math.max(0, variance));
        double spread = 0;
        for (int i = 0; i < n; i++) {
            OptionalDouble dof = inputs.get(i).degreesOfFreedom();
            spread += dof.isPresent() ? Math.pow(contributions[i], 4) / dof.getAsDouble() : 0;
        }
        return new Result(model.applyAsDouble(values), combined,
                Arrays.stream(contributions).boxed().toList(),
                spread > 0 ? OptionalDouble.of(Math.pow(combined, 4) / spread) : OptionalDouble.empty());
    }

    private double contribution(double[] values, int i, double uncertainty) {
        if (uncertainty == 0) {
            return 0;
        }
        double[] shifted = values.clone();
        shifted[i] = values[i] + STEP * uncertainty;
        double above = model.applyAsDouble(shifted);
        shifted[i] = values[i] - STEP * uncertainty;
        return (above - model.applyAsDouble(shifted)) / (2 * STEP);
    }
}
