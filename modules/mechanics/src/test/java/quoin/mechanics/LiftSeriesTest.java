package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import quoin.mechanics.LiftSeries.Fit;
import quoin.mechanics.LiftSeries.Lift;
import quoin.mechanics.LiftSeries.Uncertainties;

class LiftSeriesTest {
    private static final Uncertainties EXACT = new Uncertainties(0, 0, 0, 0);

    /** Front load of a rigid car turned about its front contact, by moments of its own drawing: no formula of the class. */
    private static double front(double w, double l, double a, double h, double rf, double rr, double lift) {
        double angle = Math.asin((rr + lift - rf) / Math.hypot(l, rr - rf)) - Math.atan2(rr - rf, l);
        // Body points from the front wheel centre, x rearward, z up, turned nose down by the angle.
        double cgX = a * Math.cos(angle) - (h - rf) * Math.sin(angle);
        double rearX = l * Math.cos(angle) - (rr - rf) * Math.sin(angle);
        return w * (1 - cgX / rearX);
    }

    /** The worked cases of three cars, heights known, one with unlike wheels. */
    @Test
    void findsTheHeightExactly() {
        double[][] cars = {{10000, 2500, 1250, 450, 300, 300}, {5395, 2675, 1498, 310, 272, 285}, {14000, 2794, 1400, 560, 330, 380}};
        for (double[] c : cars) {
            List<Lift> lifts = new ArrayList<>();
            for (double lift : new double[] {0, 200, 400, 600}) {
                lifts.add(new Lift(lift, front(c[0], c[1], c[2], c[3], c[4], c[5], lift)));
            }
            Fit fit = new LiftSeries(c[0], c[1], c[4], c[5], lifts).fit(EXACT);
            assertEquals(c[3], fit.cgHeightMm(), 1e-6);
            assertEquals(0, fit.residualSdKgf().orElseThrow(), 1e-6);
        }
    }

    /** Loads computed beforehand: W 5395, L 2675, h 310, radii 272/285, lift 500: 2373.80 becomes 2385.604992. */
    @Test
    void oneLiftIsTheAxleLift() {
        Fit fit = new LiftSeries(5395, 2675, 272, 285, List.of(new Lift(0, 5395 * (1 - 1498 / 2675.0)), new Lift(500, 2385.604992))).fit(EXACT);
        assertEquals(310, fit.cgHeightMm(), 1e-3);
    }

    /** Scatter alone: the standard error of the slope of a general-purpose regression (Hipparchus). */
    @Test
    void scatterGivesTheStandardErrorOfARegression() {
        double l = 2380;
        double w = 638;
        Random random = new Random(7);
        SimpleRegression line = new SimpleRegression();
        List<Lift> lifts = new ArrayList<>();
        for (double lift : new double[] {0, 150, 300, 450, 300, 150, 0}) {
            double read = front(w, l, 1142, 430, 285, 285, lift) + 0.3 * random.nextGaussian();
            lifts.add(new Lift(lift, read));
            line.addData(Math.tan(Math.asin(lift / l)), read * l / w);
        }
        Fit fit = new LiftSeries(w, l, 285, 285, lifts).fit(EXACT);
        assertEquals(285 + line.getSlope(), fit.cgHeightMm(), 1e-6);
        assertEquals(line.getSlopeStdErr(), fit.standardMm(), 1e-3 * fit.standardMm());
        assertEquals(5, fit.degreesOfFreedom().orElseThrow(), 1e-9);
        assertEquals(line.getSlopeConfidenceInterval(0.05), fit.expandedMm(), 1e-3 * fit.expandedMm());
        assertTrue(Math.abs(fit.cgHeightMm() - 430) < fit.expandedMm());
    }

    /** One lift of 600 mm: dh/dN = 1.01122 mm/N and dh/dlift = -0.265280 mm/mm. */
    @Test
    void instrumentsEnterByTheirSlopes() {
        List<Lift> lifts = List.of(new Lift(0, 5000), new Lift(600, 5148.335416));
        LiftSeries series = new LiftSeries(10000, 2500, 300, 300, lifts);
        assertEquals(0.265280, series.fit(new Uncertainties(0, 0, 0, 1)).standardMm(), 1e-5);
        assertEquals(1.01122 * Math.sqrt(2), series.fit(new Uncertainties(0, 1, 0, 0)).standardMm(), 1e-4);
    }

    /** Heights by the closed form of one lift, {@link AxleLift}, which handbook cases check; slopes by differences of it. */
    private static double height(double[] at, double level, double lifted, double lift) {
        return new AxleLift(at[0], level, lifted, at[1], at[2], at[3], lift).cgHeightMm();
    }

    @Test
    void weightAndLengthsEnterByTheirSlopes() {
        double[] car = {5395, 2675, 272, 285};
        double level = 5395 * (1 - 1498 / 2675.0);
        double[] slope = new double[4];
        for (int k = 0; k < 4; k++) {
            double[] more = car.clone();
            double[] less = car.clone();
            more[k] += 0.5;
            less[k] -= 0.5;
            slope[k] = height(more, level, 2385.604992, 500) - height(less, level, 2385.604992, 500);
        }
        LiftSeries series = new LiftSeries(5395, 2675, 272, 285, List.of(new Lift(0, level), new Lift(500, 2385.604992)));
        Fit weight = series.fit(new Uncertainties(2, 0, 0, 0));
        assertEquals(2 * Math.abs(slope[0]), weight.standardMm(), 1e-5);
        assertEquals(Math.hypot(slope[1], Math.hypot(slope[2], slope[3])), series.fit(new Uncertainties(0, 0, 1, 0)).standardMm(), 1e-5);
        assertTrue(weight.degreesOfFreedom().isEmpty() && weight.residualSdKgf().isEmpty(), "two lifts tell nothing of their scatter");
        assertEquals(1.959964 * weight.standardMm(), weight.expandedMm(), 1e-6 * weight.expandedMm());
        assertEquals(level, weight.frontLevelKgf(), 1e-9);
    }

    /** Seven lifts up and down of a car with equal wheels: a straight line of N L / W over tan theta. */
    private static LiftSeries scattered(SimpleRegression line) {
        Random random = new Random(7);
        List<Lift> lifts = new ArrayList<>();
        for (double lift : new double[] {0, 150, 300, 450, 300, 150, 0}) {
            double read = front(638, 2380, 1142, 430, 285, 285, lift) + 0.3 * random.nextGaussian();
            lifts.add(new Lift(lift, read));
            line.addData(Math.tan(Math.asin(lift / 2380)), read * 2380 / 638);
        }
        return new LiftSeries(638, 2380, 285, 285, lifts);
    }

    @Test
    void whatIsLeftOverIsThatOfARegression() {
        SimpleRegression line = new SimpleRegression();
        LiftSeries series = scattered(line);
        Fit fit = series.fit(EXACT);
        for (int i = 0; i < 7; i++) {
            Lift lift = series.lifts().get(i);
            double fitted = line.predict(Math.tan(Math.asin(lift.rearLiftMm() / 2380))) * 638 / 2380;
            assertEquals(lift.frontKgf() - fitted, fit.residualsKgf().get(i), 1e-9);
        }
        assertEquals(Math.sqrt(line.getMeanSquareError()) * 638 / 2380, fit.residualSdKgf().orElseThrow(), 1e-9);
        assertEquals(line.getIntercept() * 638 / 2380, fit.frontLevelKgf(), 1e-9);
    }

    /** Welch-Satterthwaite, JCGM 100:2008 G.4.1: only the scatter has degrees of freedom, five, and it has them once. */
    @Test
    void instrumentsBesideTheScatterRaiseTheDegreesOfFreedom() {
        LiftSeries series = scattered(new SimpleRegression());
        double scatter = series.fit(EXACT).standardMm();
        Fit both = series.fit(new Uncertainties(0, 0, 3, 0));
        assertTrue(both.standardMm() > 1.05 * scatter);
        assertEquals(5 * Math.pow(both.standardMm() / scatter, 4), both.degreesOfFreedom().orElseThrow(), 1e-6);
        Fit drowned = series.fit(new Uncertainties(0, 0, 2000, 0));
        assertTrue(drowned.degreesOfFreedom().isEmpty(), "beside such lengths the scatter no longer counts");
        assertEquals(1.959964 * drowned.standardMm(), drowned.expandedMm(), 1e-6 * drowned.expandedMm());
    }

    /** Scales that are less sure than the readings scatter rule: the standard error grows in proportion. */
    @Test
    void unsureScalesRuleOverASmallScatter() {
        LiftSeries series = scattered(new SimpleRegression());
        Fit own = series.fit(EXACT);
        Fit unsure = series.fit(new Uncertainties(0, 3, 0, 0));
        assertEquals(own.standardMm() * 3 / own.residualSdKgf().orElseThrow(), unsure.standardMm(), 1e-6 * unsure.standardMm());
        assertTrue(unsure.degreesOfFreedom().isEmpty());
    }

    @Test
    void refusesASeriesThatLeavesTheCarLevel() {
        List<Lift> level = List.of(new Lift(0, 300), new Lift(0, 301));
        InvalidInputException e = assertThrows(InvalidInputException.class, () -> new LiftSeries(638, 2380, 285, 285, level));
        assertTrue(e.field().contains("lifts"), e.field());
    }
}
