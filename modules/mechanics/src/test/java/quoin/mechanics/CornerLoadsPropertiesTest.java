package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/** What must hold for every car: balance, virtual work, symmetry, units. Laws of statics, not numbers of this code. */
class CornerLoadsPropertiesTest {

    /** Statics leaves four loads one freedom: with the centre of gravity in the road, all adjusters share one pattern. */
    @Property(tries = 200)
    void everyAdjusterMovesLoadsAlongOnePatternWhenTheCarIsFlat(@ForAll long seed) {
        CarModel car = new AnyCar(seed).flat();
        PerCorner<Double> pattern = TransferVector.of(car.contactPoints(), "corners");
        for (Sensitivity s : CornerLoads.sensitivities(car, Turns.NONE)) {
            assertTrue(Math.abs(s.loadsKgf().lf()) > 1e-3, "it does move them");
            for (Corner c : Corner.values()) {
                assertEquals(pattern.get(c) * s.loadsKgf().lf(), s.loadsKgf().get(c), 1e-7, s.input() + " " + s.corner());
            }
        }
    }

    /** Betti: a pad raised at i loads j as the same pad raised at j loads i. */
    @Property(tries = 200)
    void padStiffnessIsSymmetric(@ForAll long seed) {
        AnyCar any = new AnyCar(seed);
        List<Sensitivity> all = CornerLoads.sensitivities(any.withEverything(), any.turns(2), List.of(LoadInput.PAD_HEIGHT));
        for (Sensitivity s : all) {
            for (Sensitivity t : all) {
                assertEquals(s.loadsKgf().get(t.corner()), t.loadsKgf().get(s.corner()), 1e-9);
            }
        }
    }

    /** Maxwell: a kilogram put in at A lowers B as much as a kilogram put in at B lowers A; the body does not twist. */
    @Property(tries = 200)
    void complianceOfTheBodyIsSymmetric(@ForAll long seed) {
        AnyCar any = new AnyCar(seed);
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        points.put("A", any.somewhere());
        points.put("B", any.somewhere());
        CarModel car = any.withEverything().withTorsionalStiffnessNmPerDeg(OptionalDouble.empty())
                .withRideHeightPoints(points);
        Turns turns = any.turns(2);
        double lowersB = perKilogram(car, turns, points.get("A"), "B");
        double lowersA = perKilogram(car, turns, points.get("B"), "A");
        assertEquals(lowersB, lowersA, 1e-6);
        assertTrue(perKilogram(car, turns, points.get("A"), "A") < 0, "a kilogram lowers the place where it lies");
    }

    private static double perKilogram(CarModel car, Turns turns, SpacePoint place, String read) {
        double step = 0.01;
        double more = height(car.with(List.of(new PointMass(step, place))), turns, read);
        double less = height(car.with(List.of(new PointMass(-step, place))), turns, read);
        return (more - less) / (2 * step);
    }

    private static double height(CarModel car, Turns turns, String name) {
        return CornerLoads.solve(car, turns).rideHeightsMm().get(name);
    }

    @Property(tries = 200)
    void theMirroredCarReadsMirrored(@ForAll long seed) {
        AnyCar any = new AnyCar(seed);
        CarModel car = any.withEverything();
        Turns turns = any.turns(2);
        Equilibrium here = CornerLoads.solve(car, turns);
        Equilibrium there = CornerLoads.solve(mirrored(car), new Turns(across(turns.perch()), across(turns.rod())));
        for (Corner c : Corner.values()) {
            assertEquals(here.loadsKgf().get(c), there.loadsKgf().get(c.acrossAxle()), 1e-7);
            assertEquals(here.wheelTravelMm().get(c), there.wheelTravelMm().get(c.acrossAxle()), 1e-7);
        }
        assertEquals(here.rollDeg(), -there.rollDeg(), 1e-9);
        assertEquals(here.twistDeg(), -there.twistDeg(), 1e-9);
        assertEquals(here.pitchDeg(), there.pitchDeg(), 1e-9);
        assertEquals(100 - here.shares().crossPercent(), there.shares().crossPercent(), 1e-9);
        here.rideHeightsMm().forEach((name, height) -> assertEquals(height, there.rideHeightsMm().get(name), 1e-7, name));
    }

    private static <T> PerCorner<T> across(PerCorner<T> values) {
        return PerCorner.of(c -> values.get(c.acrossAxle()));
    }

    private static CarModel mirrored(CarModel car) {
        PerCorner<CornerModel> corners = across(car.corners()).map(m -> new CornerModel(m.xMm(), -m.yMm(),
                m.unsprungMassKg(), m.springRateNPerMm(), m.motionRatio(), m.motionRatioSlopePerMm(),
                m.springCompressionAtDesignMm(), m.perchPitchMmPerTurn(), m.rodLiftMmPerTurn(), m.tyreRateNPerMm(),
                m.padHeightMm()));
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        car.rideHeightPoints().forEach((name, p) -> points.put(name, mirrored(p)));
        PerAxle<BarModel> bars = car.bars();
        return new CarModel(car.sprungMassKg(), mirrored(car.sprungCg()), corners,
                new PerAxle<>(mirrored(bars.front()), mirrored(bars.rear())), car.rollCentreHeightMm(),
                car.torsionalStiffnessNmPerDeg(), car.torsionAxisHeightMm(), points);
    }

    private static SpacePoint mirrored(SpacePoint point) {
        return new SpacePoint(point.xMm(), -point.yMm(), point.zMm());
    }

    private static BarModel mirrored(BarModel bar) {
        return new BarModel(bar.wheelRateInRollNPerMm(), -bar.linkPreloadOffsetMm());
    }

    /** Another unit of force and another unit of length: figures of pure number stay, the rest goes with its unit. */
    @Property(tries = 200)
    void unitsDoNotMatter(@ForAll long seed, @ForAll @DoubleRange(min = 0.2, max = 5) double force,
            @ForAll @DoubleRange(min = 0.2, max = 5) double length) {
        AnyCar any = new AnyCar(seed);
        CarModel car = any.withEverything();
        Turns turns = any.turns(2);
        Equilibrium here = CornerLoads.solve(car, turns);
        Equilibrium there = CornerLoads.solve(scaled(car, force, length), turns);
        for (Corner c : Corner.values()) {
            assertEquals(here.loadsKgf().get(c) * force, there.loadsKgf().get(c), 1e-6);
            assertEquals(here.wheelTravelMm().get(c) * length, there.wheelTravelMm().get(c), 1e-6);
        }
        assertEquals(here.shares().crossPercent(), there.shares().crossPercent(), 1e-8);
        assertEquals(here.rollDeg(), there.rollDeg(), 1e-9);
        here.rideHeightsMm().forEach((name, height) -> assertEquals(height * length, there.rideHeightsMm().get(name), 1e-6));
    }

    private static CarModel scaled(CarModel car, double force, double length) {
        double rate = force / length;
        PerCorner<CornerModel> corners = car.corners().map(m -> new CornerModel(m.xMm() * length, m.yMm() * length,
                m.unsprungMassKg() * force, m.springRateNPerMm() * rate, m.motionRatio(),
                m.motionRatioSlopePerMm() / length, m.springCompressionAtDesignMm() * length,
                m.perchPitchMmPerTurn() * length, m.rodLiftMmPerTurn() * length,
                OptionalDouble.of(m.tyreRateNPerMm().orElseThrow() * rate), m.padHeightMm() * length));
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        car.rideHeightPoints().forEach((name, p) -> points.put(name, scaled(p, length)));
        PerAxle<BarModel> bars = car.bars();
        return new CarModel(car.sprungMassKg() * force, scaled(car.sprungCg(), length), corners,
                new PerAxle<>(scaled(bars.front(), rate, length), scaled(bars.rear(), rate, length)),
                new PerAxle<>(OptionalDouble.of(car.rollCentreHeightMm().front().orElseThrow() * length),
                        OptionalDouble.of(car.rollCentreHeightMm().rear().orElseThrow() * length)),
                OptionalDouble.of(car.torsionalStiffnessNmPerDeg().orElseThrow() * force * length),
                car.torsionAxisHeightMm() * length, points);
    }

    private static SpacePoint scaled(SpacePoint point, double length) {
        return new SpacePoint(point.xMm() * length, point.yMm() * length, point.zMm() * length);
    }

    private static BarModel scaled(BarModel bar, double rate, double length) {
        return new BarModel(bar.wheelRateInRollNPerMm() * rate, bar.linkPreloadOffsetMm() * length);
    }

    /** Whatever is turned, the scales carry the car and nothing else. */
    @Property(tries = 200)
    void theTotalIsTheWeightOfTheCar(@ForAll long seed) {
        AnyCar any = new AnyCar(seed);
        CarModel car = any.withEverything();
        assertEquals(car.totalMassKg(), CornerLoads.solve(car, any.turns(3)).shares().totalKgf(), 1e-8);
        for (Sensitivity s : CornerLoads.sensitivities(car, any.turns(3))) {
            assertEquals(0, s.loadsKgf().lf() + s.loadsKgf().rf() + s.loadsKgf().lr() + s.loadsKgf().rr(), 1e-9);
        }
    }

    /** A general-purpose solver (Hipparchus' Levenberg-Marquardt, slopes by differences) finds the same loads. */
    @Property(tries = 50)
    void aGeneralSolverFindsTheSameLoads(@ForAll long seed) {
        AnyCar any = new AnyCar(seed);
        CarModel car = any.withEverything();
        Turns turns = any.turns(3);
        PerCorner<Double> general = LoadsByGeneralSolver.loadsKgf(car, turns);
        PerCorner<Double> exact = CornerLoads.solve(car, turns).loadsKgf();
        for (Corner c : Corner.values()) {
            assertEquals(general.get(c), exact.get(c), 1e-4);
        }
    }

    /** However far the perches are turned: four carried loads, or the corner is named, or the car is refused. */
    @Property(tries = 300)
    void noLoadIsNegativeUnsaid(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 80) double most) {
        AnyCar any = new AnyCar(seed);
        CarModel car = any.withEverything();
        Equilibrium state;
        try {
            state = CornerLoads.solve(car, any.turns(most));
        } catch (NoEquilibriumException refused) {
            assertTrue(most > 3, "an ordinary move is not refused: " + refused.getMessage());
            return;
        }
        for (Corner c : Corner.values()) {
            assertEquals(state.loadsKgf().get(c) < 0, said(state, LoadFinding.Kind.WHEEL_LIFTED, c));
            assertEquals(state.springForceN().get(c) < 0, said(state, LoadFinding.Kind.SPRING_UNLOADED, c));
        }
    }

    private static boolean said(Equilibrium state, LoadFinding.Kind kind, Corner corner) {
        return state.findings().stream().anyMatch(f -> f.kind() == kind && f.corner() == corner);
    }
}
