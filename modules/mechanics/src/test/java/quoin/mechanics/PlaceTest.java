package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.hipparchus.special.Erf;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import quoin.car.PerCorner;

/** What is measured of the place and the instruments: level loops, scales, spring presses. */
class PlaceTest {

    /** Closed by hand: heights 0, 3, -2, 5 with the loop 0.8 mm out. */
    @Test
    void levelLoopSharesItsClosingError() {
        LevelLoop exact = new LevelLoop(3, 2, 7, -2);
        assertEquals(0, exact.closingErrorMm(), 1e-12);
        assertEquals(new PerCorner<>(0.0, 3.0, -2.0, 5.0), exact.heightsMm());
        LevelLoop out = new LevelLoop(3.8, 2, 7, -2);
        assertEquals(0.8, out.closingErrorMm(), 1e-12);
        // The same by least squares in a library: rows are the four differences, columns RF, LR, RR.
        SimpleMatrix a = new SimpleMatrix(new double[][] {{1, 0, 0}, {-1, 0, 1}, {0, -1, 1}, {0, 1, 0}});
        SimpleMatrix x = a.solve(new SimpleMatrix(new double[][] {{3.8}, {2}, {7}, {-2}}));
        assertEquals(x.get(0), out.heightsMm().rf(), 1e-12);
        assertEquals(x.get(1), out.heightsMm().lr(), 1e-12);
        assertEquals(x.get(2), out.heightsMm().rr(), 1e-12);
        assertEquals("rear_mm", assertThrows(InvalidInputException.class, () -> new LevelLoop(1, 1, Double.NaN, 1)).field());
    }

    /** OIML R 76-1:2006, table 6 with e = 0.2 kg: limits belong to the finer step. */
    @Test
    void classLimits() {
        double[][] initial = {{100, 0.1}, {100.2, 0.2}, {400, 0.2}, {400.2, 0.3}, {0, 0.1}};
        for (double[] line : initial) {
            assertEquals(line[1], ScaleClass.III.initialLimitKg(line[0], 0.2), 1e-12, "at " + line[0] + " kg");
            assertEquals(2 * line[1], ScaleClass.III.inServiceLimitKg(line[0], 0.2), 1e-12);
        }
        assertEquals(0.25, ScaleClass.IIII.initialLimitKg(25, 0.5), 1e-12);
        assertEquals(0.5, ScaleClass.IIII.initialLimitKg(100, 0.5), 1e-12);
        assertEquals(0.75, ScaleClass.IIII.initialLimitKg(100.5, 0.5), 1e-12);
    }

    /** NIST Handbook 44, scales code, table 6, maintenance tolerance: 1, 2, 3, 5 d for class III to 500, 2000, 4000 d and beyond. */
    @Test
    void handbookLimits() {
        double[][] third = {{0, 0.2}, {100, 0.2}, {100.2, 0.4}, {400, 0.4}, {400.2, 0.6}, {800, 0.6}, {800.2, 1}};
        for (double[] line : third) {
            assertEquals(line[1], ScaleClass.III.handbookLimitKg(line[0], 0.2), 1e-12, "at " + line[0] + " kg");
        }
        double[][] fourth = {{50, 1}, {51, 2}, {200, 2}, {201, 3}, {400, 3}, {401, 5}};
        for (double[] line : fourth) {
            assertEquals(line[1], ScaleClass.IIII.handbookLimitKg(line[0], 1), 1e-12, "at " + line[0] + " kg");
        }
    }

    /** Standard error of a least-squares fit with one observation to spare, by EJML: root of the sum of squares left over. */
    @Test
    void closingErrorTellsTheUncertainty() {
        SimpleMatrix a = new SimpleMatrix(new double[][] {{1, 0, 0}, {-1, 0, 1}, {0, -1, 1}, {0, 1, 0}});
        for (double front : new double[] {3.8, 1.4}) {
            SimpleMatrix read = new SimpleMatrix(new double[][] {{front}, {2}, {7}, {-2}});
            double left = a.mult(a.solve(read)).minus(read).normF();
            assertEquals(left, new LevelLoop(front, 2, 7, -2).standardUncertaintyMm(), 1e-12);
        }
    }

    private static List<ScaleFactors.Reading> weighing(int[] scales, double[] factors, double[] loads, double[] noise) {
        List<ScaleFactors.Reading> readings = new ArrayList<>();
        for (int i = 0; i < loads.length; i++) {
            readings.add(new ScaleFactors.Reading(scales[i], "wheel " + i, factors[scales[i]] * loads[i] + noise[i], 0.2));
        }
        return readings;
    }

    private static final double[] FACTORS = {1.004, 0.997, 1.0, 1.002};
    private static final double[] LOADS = {107.9, 93.2, 122.8, 146.2};

    /** One person of known weight on every scale: shown over true. */
    @Test
    void knownPersonOnEachScale() {
        List<ScaleFactors.Reading> readings = new ArrayList<>();
        for (int s = 0; s < 4; s++) {
            readings.add(new ScaleFactors.Reading(s, "person", FACTORS[s] * 80, 0.1));
        }
        ScaleFactors found = ScaleFactors.solve(Collections.nCopies(4, 1.0), readings, List.of(new ScaleFactors.Known("person", 80, 0.05)));
        for (int s = 0; s < 4; s++) {
            assertEquals(FACTORS[s], found.factors().get(s), 1e-6);
            assertEquals(Math.hypot(0.1, 0.05) / 80, found.standard().get(s), 2e-6, "both uncertainties in squares");
        }
        assertEquals(Math.pow(0.05 / 80, 2), found.covariance().get(0).get(1), 2e-8, "the person is common to all four");
    }

    /** Two scales exchanged under the car: the ratio is the root of the two ratios; the common gain stays unknown. */
    @Test
    void swapTestTellsTheRatio() {
        List<ScaleFactors.Reading> readings = new ArrayList<>(weighing(new int[] {0, 1, 2, 3}, FACTORS, LOADS, new double[4]));
        readings.addAll(weighing(new int[] {1, 0, 2, 3}, FACTORS, LOADS, new double[4]));
        ScaleFactors found = ScaleFactors.solve(Collections.nCopies(4, 0.02), readings, List.of());
        double byHand = Math.sqrt(readings.get(0).shownKg() / readings.get(4).shownKg() * readings.get(5).shownKg() / readings.get(1).shownKg());
        assertEquals(byHand, FACTORS[0] / FACTORS[1], 1e-12);
        assertEquals(byHand, found.factors().get(0) / found.factors().get(1), 1e-4, "drawn a little towards what is known beforehand");
        assertEquals(1, found.factors().get(2), 1e-9, "a scale that stayed where it was tells nothing");
        assertEquals(0.02, found.standard().get(2), 1e-3);
        assertEquals(4, found.degreesOfFreedom());
    }

    /** Turned by 180 degrees on its pads: each wheel stands on the scale of the opposite corner. Covariance by Monte Carlo. */
    @Test
    void halfTurnAndItsUncertainty() {
        Random random = new Random(11);
        DescriptiveStatistics ratio = new DescriptiveStatistics();
        DescriptiveStatistics other = new DescriptiveStatistics();
        double predicted = 0;
        for (int draw = 0; draw < 4000; draw++) {
            double[][] noise = new double[2][4];
            for (double[] line : noise) {
                for (int i = 0; i < 4; i++) {
                    line[i] = 0.2 * random.nextGaussian();
                }
            }
            List<ScaleFactors.Reading> readings = new ArrayList<>(weighing(new int[] {0, 1, 2, 3}, FACTORS, LOADS, noise[0]));
            readings.addAll(weighing(new int[] {3, 2, 1, 0}, FACTORS, LOADS, noise[1]));
            ScaleFactors found = ScaleFactors.solve(Collections.nCopies(4, 1.0), readings, List.of());
            ratio.addValue(Math.log(found.factors().get(0) / found.factors().get(3)));
            other.addValue(Math.log(found.factors().get(1) / found.factors().get(2)));
            if (draw == 0) {
                double f0 = found.factors().get(0);
                double f3 = found.factors().get(3);
                predicted = Math.sqrt(found.covariance().get(0).get(0) / f0 / f0 + found.covariance().get(3).get(3) / f3 / f3
                        - 2 * found.covariance().get(0).get(3) / f0 / f3);
            }
        }
        assertEquals(Math.log(1.004 / 1.002), ratio.getMean(), 1e-4);
        assertEquals(Math.log(0.997 / 1.0), other.getMean(), 1e-4);
        assertEquals(1, predicted / ratio.getStandardDeviation(), 0.05);
    }

    @Test
    void carThatStoodOtherwiseIsSaid() {
        List<ScaleFactors.Reading> readings = new ArrayList<>(weighing(new int[] {0, 1, 2, 3}, FACTORS, LOADS, new double[4]));
        readings.addAll(weighing(new int[] {0, 1, 2, 3}, FACTORS, LOADS, new double[] {3, -3, -3, 3}));
        assertTrue(ScaleFactors.solve(Collections.nCopies(4, 0.003), readings, List.of()).agreement() < 1e-6);
    }

    /** Two figures of one load on one scale differ by 0.4 kg with 0.2 kg each: chi-squared 2 of one degree of freedom, by Hipparchus. */
    @Test
    void agreementIsTheChanceOfSuchReadings() {
        List<ScaleFactors.Reading> readings = List.of(new ScaleFactors.Reading(0, "tin", 1000, 0.2), new ScaleFactors.Reading(0, "tin", 1000.4, 0.2));
        ScaleFactors found = ScaleFactors.solve(List.of(0.01), readings, List.of());
        assertEquals(1, found.degreesOfFreedom());
        assertEquals(2, found.chiSquare(), 1e-3);
        assertEquals(Erf.erfc(1), found.agreement(), 1e-3, "two-sided normal tail beyond sqrt 2");
        ScaleFactors single = ScaleFactors.solve(List.of(0.01), readings.subList(0, 1), List.of());
        assertEquals(0, single.degreesOfFreedom());
        assertEquals(1, single.agreement(), "one figure agrees with itself");
    }

    /** Whatever the common weight is off by, both scales are: correlation u_w^2 / (u_w^2 + u_r^2). */
    @Test
    void scalesComparedByOnePersonAreCorrelated() {
        List<ScaleFactors.Reading> readings = List.of(new ScaleFactors.Reading(0, "person", 80, 0.1), new ScaleFactors.Reading(1, "person", 80, 0.1));
        List<ScaleFactors.Known> known = List.of(new ScaleFactors.Known("person", 80, 0.2), new ScaleFactors.Known("nobody", 50, 0.2));
        ScaleFactors found = ScaleFactors.solve(List.of(1.0, 1.0), readings, known);
        assertEquals(0.04 / 0.05, found.correlation(0, 1), 1e-3);
        assertEquals(1, found.correlation(1, 1), 1e-12);
        assertEquals(2, found.degreesOfFreedom(), "a load that stood on no scale does not count");
    }

    @Test
    void scalesRefuseByName() {
        assertEquals("readings", assertThrows(InvalidInputException.class,
                () -> ScaleFactors.solve(List.of(0.01), List.of(), List.of())).field());
        assertEquals("readings.x", assertThrows(InvalidInputException.class, () -> new ScaleFactors.Reading(0, "x", 0, 1)).field());
    }

    /** NIST StRD "Norris" (linear, certified to 15 digits). */
    @Test
    void norris() {
        double[] y = {0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
            10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2};
        double[] x = {0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
            11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5};
        List<LineFit.Point> points = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            points.add(new LineFit.Point(x[i], y[i]));
        }
        LineFit fit = LineFit.through(points);
        assertEquals(1.00211681802045, fit.slope(), 1e-12);
        assertEquals(-0.262323073774029, fit.intercept(), 1e-9);
        assertEquals(0.429796848199937e-3, fit.slopeStandard().getAsDouble(), 1e-12);
        assertEquals(0.884796396144373, fit.residualSd().getAsDouble(), 1e-9);
    }

    @Test
    void twoPointsSayNothingOfTheirSpread() {
        LineFit fit = LineFit.through(List.of(new LineFit.Point(0, 0), new LineFit.Point(10, 600)));
        assertEquals(60, fit.slope(), 1e-12);
        assertTrue(fit.slopeStandard().isEmpty());
        assertEquals("points", assertThrows(InvalidInputException.class,
                () -> LineFit.through(List.of(new LineFit.Point(1, 0), new LineFit.Point(1, 5)))).field());
    }
}
