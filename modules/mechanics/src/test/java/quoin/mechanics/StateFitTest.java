package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** A fitted car, solved again by the exact equations, must read what was read. */
class StateFitTest {
    private final CarModel truth = CornerLoadsTest.featured();
    private final Turns turns = new Turns(new PerCorner<>(1.0, -2.0, 0.5, 3.0), new PerCorner<>(-1.0, 0.0, 2.0, 0.5));

    private static CarModel withoutPreload(CarModel car) {
        return car.withCorners(car.corners().map(c -> c.withSpringCompressionAtDesignMm(0)));
    }

    @Test
    void findsTheCarThatMadeTheReadings() {
        Equilibrium read = CornerLoads.solve(truth, turns);
        CarModel blank = withoutPreload(truth).withSprungMass(500, new SpacePoint(100, 50, truth.sprungCg().zMm()));
        StateFit.FittedCar fit = StateFit.toReadings(blank, turns, read.loadsKgf(), read.rideHeightsMm());
        for (Corner corner : Corner.values()) {
            assertEquals(truth.corners().get(corner).springCompressionAtDesignMm(),
                    fit.car().corners().get(corner).springCompressionAtDesignMm(), 1e-6);
        }
        assertEquals(truth.sprungMassKg(), fit.car().sprungMassKg(), 1e-9);
        assertEquals(truth.sprungCg().xMm(), fit.car().sprungCg().xMm(), 1e-6);
        assertEquals(truth.sprungCg().yMm(), fit.car().sprungCg().yMm(), 1e-6);
        fit.heightResidualsMm().values().forEach(residual -> assertEquals(0, residual, 1e-8));
    }

    @Test
    void reproducesReadingsOfAnotherCarExactlyInLoads() {
        PerCorner<Double> loads = new PerCorner<>(240.0, 251.3, 301.9, 297.4);
        Map<String, Double> heights = new LinkedHashMap<>();
        heights.put("LF", 61.0);
        heights.put("RF", 60.0);
        heights.put("LR", 66.5);
        heights.put("RR", 66.5);
        CarModel stiff = withoutPreload(truth).withTorsionalStiffnessNmPerDeg(OptionalDouble.empty());
        StateFit.FittedCar fit = StateFit.toReadings(stiff, turns, loads, heights);
        Equilibrium again = CornerLoads.solve(fit.car(), fit.turns());
        for (Corner corner : Corner.values()) {
            assertEquals(loads.get(corner), again.loadsKgf().get(corner), 1e-8, "load " + corner);
            assertEquals(heights.get(corner.name()),
                    again.rideHeightsMm().get(corner.name()) + fit.heightResidualsMm().get(corner.name()), 1e-8);
        }
        // One tilt is a millimetre, the other none: a stiff frame leaves a quarter of the difference on each point.
        assertEquals(0.25, Math.abs(fit.heightResidualsMm().get("LF")), 1e-3);
    }

    @Test
    void withoutHeightsTheCarStandsAtDesign() {
        PerCorner<Double> loads = new PerCorner<>(240.0, 251.3, 301.9, 297.4);
        CarModel car = StateFit.toReadings(withoutPreload(truth), Turns.NONE, loads, Map.of()).car();
        Equilibrium again = CornerLoads.solve(car, Turns.NONE);
        assertEquals(0, again.heaveMm(), 1e-9);
        assertEquals(0, again.rollDeg(), 1e-9);
        assertEquals(0, again.pitchDeg(), 1e-9);
        assertEquals(301.9, again.loadsKgf().lr(), 1e-8);
    }

    @Test
    void oneHeightIsEnoughForHeave() {
        Equilibrium read = CornerLoads.solve(truth, Turns.NONE);
        StateFit.FittedCar fit = StateFit.toReadings(withoutPreload(truth), Turns.NONE, read.loadsKgf(),
                Map.of("splitterTip", 40.0));
        assertEquals(40, CornerLoads.solve(fit.car(), Turns.NONE).rideHeightsMm().get("splitterTip"), 1e-8);
    }

    @Test
    void refusesByName() {
        PerCorner<Double> loads = new PerCorner<>(240.0, 251.3, 301.9, 297.4);
        Map<String, Double> heights = new HashMap<>(Map.of("sill", 40.0));
        assertEquals("rideHeights_mm.sill", assertThrows(InvalidInputException.class,
                () -> StateFit.toReadings(truth, turns, loads, heights)).field());
        assertEquals("cornerLoads_kgf.RR", assertThrows(InvalidInputException.class,
                () -> StateFit.toReadings(truth, turns, loads.with(Corner.RR, Double.NaN), Map.of())).field());
        assertEquals("cornerLoads_kgf", assertThrows(InvalidInputException.class,
                () -> StateFit.toReadings(truth, turns, PerCorner.all(10.0), Map.of())).field());
    }
}
