package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** Uncertainty of shares, of results in general (JCGM 100:2008 annex H), and of repeat readings. */
class UncertaintyTest {
    private static final PerCorner<Double> LOADS_N = new PerCorner<>(1480.0, 1420.0, 1320.0, 1175.0);

    /** Contract example, worked out by an independent program. */
    @Test
    void contractExample() {
        ContractExample example = ContractExample.read("share-uncertainty");
        JsonNode in = example.input();
        ShareUncertainty result = ShareUncertainty.of(ContractExample.perCorner(in.get("cornerLoads_kgf")),
                new ScaleErrors(in.get("scaleResolution_kg").asDouble(), in.get("repeatabilitySd_kg").asDouble(),
                        in.get("calibrationRelativeSd").asDouble(), in.get("readingsAveraged").asInt()));
        check(example.expected().get("front"), result.front());
        check(example.expected().get("left"), result.left());
        check(example.expected().get("cross"), result.cross());
    }

    private static void check(JsonNode expected, ShareUncertainty.Share share) {
        assertEquals(expected.get("share_percent").asDouble(), share.sharePercent(), 1e-9);
        assertEquals(expected.get("standardUncertainty_percent").asDouble(), share.standardPercent(), 1e-10);
        assertEquals(expected.get("expandedUncertainty_k2_percent").asDouble(), share.expandedPercent(), 1e-10);
    }

    /** Example 2A with 5 N on every scale: derived, checked by Monte Carlo there. */
    @Test
    void fiveNewtonsOnEveryScale() {
        ShareUncertainty result = ShareUncertainty.of(LOADS_N, PerCorner.all(5.0));
        assertEquals(0.0926899, result.cross().standardPercent(), 6e-8);
        assertEquals(0.0929392, result.front().standardPercent(), 6e-8);
        MeasurementModel.Result general = new MeasurementModel(f -> 100 * (f[1] + f[2]) / (f[0] + f[1] + f[2] + f[3]))
                .evaluate(List.of(MeasurementModel.Input.of(1480, 5), MeasurementModel.Input.of(1420, 5),
                        MeasurementModel.Input.of(1320, 5), MeasurementModel.Input.of(1175, 5)));
        assertEquals(result.cross().standardPercent(), general.standardUncertainty(), 1e-9);
        assertEquals(1.959964, general.coverageFactor(0.95), 1e-6);
    }

    /** Example 2A: a gain error common to all scales cancels; a zero error of 2 N at RF moves cross by 0.0182369 %. */
    @Test
    void gainCancelsAndZeroDoesNot() {
        Shares read = Shares.of(LOADS_N);
        assertEquals(read.crossPercent(), Shares.of(LOADS_N.map(n -> 1.03 * n)).crossPercent(), 1e-12);
        double shifted = Shares.of(LOADS_N.with(Corner.RF, LOADS_N.rf() + 2)).crossPercent();
        assertEquals(0.0182369, shifted - read.crossPercent(), 6e-8);
    }

    @Test
    void displayStepIsRectangular() {
        assertEquals(0.144338, new ScaleErrors(0.5, 0, 0, 1).standardUncertaintyKgf(100), 6e-7);
    }

    /** JCGM 100:2008 F.2.2.1 and 4.2.3: step / sqrt(12), scatter / sqrt(n) and gain times load, in squares. */
    @Test
    void displayScatterAndGainAddInSquares() {
        double wanted = Math.sqrt(0.2 * 0.2 / 12 + 0.3 * 0.3 / 4 + 0.25 * 0.25);
        assertEquals(wanted, new ScaleErrors(0.2, 0.3, 0.001, 4).standardUncertaintyKgf(250), 1e-12);
    }

    /** JCGM 100:2008 H.1, end-gauge calibration; lengths in nm. */
    @Test
    void gumH1EndGauge() {
        OptionalDouble exact = OptionalDouble.empty();
        MeasurementModel.Result r = new MeasurementModel(
                v -> v[0] + v[1] - v[0] * (v[4] * v[3] + v[2] * v[5])).evaluate(List.of(
                        new MeasurementModel.Input(50000623, 25, OptionalDouble.of(18)),
                        new MeasurementModel.Input(215, 9.7, OptionalDouble.of(25.6)),
                        new MeasurementModel.Input(11.5e-6, 1.2e-6, exact),
                        new MeasurementModel.Input(-0.1, 0.41, exact),
                        new MeasurementModel.Input(0, 0.58e-6, OptionalDouble.of(50)),
                        new MeasurementModel.Input(0, 0.029, OptionalDouble.of(2))));
        assertEquals(50000838, r.value(), 0.5);
        assertEquals(31.7106, r.standardUncertainty(), 6e-4);
        assertEquals(25, r.contributions().get(0), 1e-4);
        assertEquals(2.90004, Math.abs(r.contributions().get(4)), 6e-5);
        assertEquals(16.6752, Math.abs(r.contributions().get(5)), 6e-4);
        assertEquals(16.6561, r.degreesOfFreedom().orElseThrow(), 2e-3);
        assertEquals(2.92078, r.coverageFactor(0.99), 6e-6);
        assertEquals(9.7, r.contributions().get(1), 1e-4);
        assertEquals(0, r.contributions().get(2), 1e-3);
        assertEquals(0, r.contributions().get(3), 1e-3);
        assertEquals(93, r.expandedUncertainty(0.99), 0.5);
    }

    /** JCGM 100:2008 H.2, resistance and reactance from five correlated sets; the data are quoted from memory. */
    @Test
    void gumH2CorrelatedReadings() {
        double[] volt = {5.007, 4.994, 5.005, 4.990, 4.999};
        double[] ampere = {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3};
        double[] phase = {1.0456, 1.0438, 1.0468, 1.0428, 1.0433};
        double[][] sets = {volt, ampere, phase};
        double[][] correlation = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                correlation[i][j] = i == j ? 1 : new PearsonsCorrelation().correlation(sets[i], sets[j]);
            }
        }
        List<MeasurementModel.Input> inputs = List.of(mean(volt), mean(ampere), mean(phase));
        MeasurementModel.Result r = new MeasurementModel(v -> v[0] / v[1] * Math.cos(v[2])).evaluate(inputs, correlation);
        MeasurementModel.Result x = new MeasurementModel(v -> v[0] / v[1] * Math.sin(v[2])).evaluate(inputs, correlation);
        MeasurementModel.Result z = new MeasurementModel(v -> v[0] / v[1]).evaluate(inputs, correlation);
        assertEquals(127.732, r.value(), 6e-4);
        assertEquals(0.0711, r.standardUncertainty(), 6e-5);
        assertEquals(219.847, x.value(), 6e-4);
        assertEquals(0.2956, x.standardUncertainty(), 6e-5);
        assertEquals(254.260, z.value(), 6e-4);
        assertEquals(0.2363, z.standardUncertainty(), 6e-5);
        assertEquals(-0.588, correlation(r, x, correlation), 6e-4);
        assertEquals(-0.485, correlation(r, z, correlation), 6e-4);
        assertEquals(0.993, correlation(x, z, correlation), 6e-4);
    }

    /** Correlation of two results that share their inputs (JCGM 100:2008, H.2.3, equation H.9). */
    private static double correlation(MeasurementModel.Result a, MeasurementModel.Result b, double[][] inputs) {
        double covariance = 0;
        for (int i = 0; i < inputs.length; i++) {
            for (int j = 0; j < inputs.length; j++) {
                covariance += a.contributions().get(i) * b.contributions().get(j) * inputs[i][j];
            }
        }
        return covariance / (a.standardUncertainty() * b.standardUncertainty());
    }

    private static MeasurementModel.Input mean(double[] values) {
        DescriptiveStatistics all = new DescriptiveStatistics(values);
        return MeasurementModel.Input.of(all.getMean(), all.getStandardDeviation() / Math.sqrt(values.length));
    }

    /** Seven readings with one wrong: values recomputed independently; rule of Iglewicz and Hoaglin, and Grubbs. */
    @Test
    void oneBadReadingIsNamed() {
        RepeatReadings readings = new RepeatReadings(List.of(145.2, 145.0, 145.1, 145.3, 145.1, 149.8, 145.2));
        assertEquals(145.2, readings.median(), 0);
        assertEquals(0.1, readings.medianAbsoluteDeviation(), 1e-12);
        assertEquals(0.14826, readings.robustSd(), 6e-6);
        assertEquals(31.027, readings.modifiedZ(5), 6e-4);
        assertEquals(List.of(5), readings.suspects());
        assertEquals(2.264429, readings.grubbsStatistic(), 6e-7);
        assertEquals(2.019969, readings.grubbsCritical(0.05), 6e-7);
    }

    @Test
    void agreeingReadingsDoNotDivideByZero() {
        assertTrue(new RepeatReadings(List.of(5.0, 5.0, 5.0)).suspects().isEmpty());
        assertEquals(List.of(5), new RepeatReadings(List.of(5.0, 5.0, 5.0, 5.0, 5.0, 9.0)).suspects());
        assertThrows(InvalidInputException.class, () -> new RepeatReadings(List.of(1.0, 2.0)));
    }

    @Test
    void refusesByName() {
        assertEquals("readingsAveraged", assertThrows(InvalidInputException.class,
                () -> new ScaleErrors(0.1, 0.1, 0, 0)).field());
        assertEquals("repeatabilitySd_kg", assertThrows(InvalidInputException.class,
                () -> new ScaleErrors(0.1, -0.1, 0, 1)).field());
        assertEquals("cornerLoads_kgf.LF", assertThrows(InvalidInputException.class,
                () -> ShareUncertainty.of(new PerCorner<>(-1.0, 1.0, 1.0, 1.0), new ScaleErrors(0.1, 0, 0, 1))).field());
    }
}
