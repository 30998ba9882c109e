package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/** The exact solver against the closed forms, against case S8, and at the edges. */
class CornerLoadsTest {
    private static final OptionalDouble RIGID = OptionalDouble.empty();
    private static final OptionalDouble TYRE = OptionalDouble.of(220);
    private static final double SMALL_TURN = 1e-3;

    /** A small turn with the centre of gravity in the road plane is the flat case: cases S2, S4, S5. */
    @Test
    void smallTurnsAgreeWithTheClosedForms() {
        PerAxle<BarModel> off = PerAxle.both(BarModel.DISCONNECTED);
        PerAxle<BarModel> bars = new PerAxle<>(new BarModel(40, 0), new BarModel(30, 0));
        for (CarModel car : List.of(TestCars.formula(TYRE, 0), TestCars.formula(RIGID, 0),
                TestCars.formula(TYRE, 0, off, OptionalDouble.of(3000)),
                TestCars.formula(TYRE, 0, bars, OptionalDouble.empty()),
                TestCars.formula(TYRE, 0, bars, OptionalDouble.of(3000)))) {
            FlatFrame flat = FlatFrame.of(car);
            Equilibrium before = CornerLoads.solve(car, Turns.NONE);
            for (Corner corner : Corner.values()) {
                Equilibrium after = CornerLoads.solve(car, Turns.perch(corner, SMALL_TURN));
                PerCorner<Double> expected = flat.loadChangeN(flat.coupleNmm(TestCars.raised(corner, SMALL_TURN)));
                for (Corner c : Corner.values()) {
                    double change = KilogramForce.toNewtons(after.loadsKgf().get(c) - before.loadsKgf().get(c));
                    assertEquals(expected.get(c) / SMALL_TURN, change / SMALL_TURN, 0.02, corner + " on " + c);
                }
            }
        }
    }

    /** S5d: bar link, 2 mm at the front; contract bar rate is twice the rate per mm of difference. */
    @Test
    void barLinkLoadsTheLeftWheel() {
        PerAxle<BarModel> bars = new PerAxle<>(new BarModel(40, 0), BarModel.DISCONNECTED);
        CarModel car = TestCars.formula(TYRE, 0, bars, OptionalDouble.empty());
        CarModel preloaded = car.withBars(bars.with(Axle.FRONT, new BarModel(40, 2)));
        double change = CornerLoads.solve(preloaded, Turns.NONE).loadsKgf().lf()
                - CornerLoads.solve(car, Turns.NONE).loadsKgf().lf();
        assertEquals(9.50496, KilogramForce.toNewtons(change), 0.01);
    }

    /**
     * S8, derived and verified by energy minimisation: finite rotation at 10 mm, centre of gravity 300 mm up. Its
     * springs stay upright in space; here wheels are guided along the body's z, which differs in the third order. The
     * sharper values are a minimisation of the potential energy so guided, done outside this code.
     */
    @Test
    void s8SecondOrderOfALargeMove() {
        CarModel car = TestCars.formula(RIGID, 300);
        Shares before = CornerLoads.solve(car, Turns.NONE).shares();
        Shares after = CornerLoads.solve(car, Turns.perch(Corner.RF, 10)).shares();
        double cross = after.crossPercent() - before.crossPercent();
        double front = after.frontPercent() - before.frontPercent();
        double left = after.leftPercent() - before.leftPercent();
        assertEquals(7.13363, cross, 2e-5);
        assertEquals(-0.0210, front, 2e-4);
        assertEquals(0.196, left, 1.1e-3);
        assertEquals(7.1336170, cross, 5e-7);
        assertEquals(-0.0211735, front, 5e-7);
        assertEquals(0.1969673, left, 5e-7);
    }

    /**
     * S9: a plane slope of 5 mm over the wheelbase moves only W h s / L^2 from axle to axle; on springs the body leans
     * after it, which adds the factor 1 / (1 - W h / K) with K the pitch stiffness.
     */
    @Test
    void slopedPadsMoveLittle() {
        CarModel car = TestCars.formula(RIGID, 310);
        CarModel sloped = car.withCorners(PerCorner.of(c -> car.corners().get(c).withPadHeightMm(c.isFront() ? 0 : 5)));
        Equilibrium level = CornerLoads.solve(car, Turns.NONE);
        Equilibrium tilted = CornerLoads.solve(sloped, Turns.NONE);
        double change = tilted.loadsKgf().lf() + tilted.loadsKgf().rf() - level.loadsKgf().lf() - level.loadsKgf().rf();
        double pitchStiffness = 180.0 * 140 / (180 + 140) * TestCars.WHEELBASE * TestCars.WHEELBASE;
        double lean = 1 / (1 - TestCars.WEIGHT_N * 310 / pitchStiffness);
        assertEquals(1.16863 * lean, KilogramForce.toNewtons(change), 1e-4);
    }

    @Test
    void rigidTyreIsTheLimitOfAStiffOne() {
        Equilibrium rigid = CornerLoads.solve(TestCars.formula(RIGID, 300), Turns.perch(Corner.RF, 4));
        Equilibrium stiff = CornerLoads.solve(TestCars.formula(OptionalDouble.of(1e9), 300), Turns.perch(Corner.RF, 4));
        assertEquals(rigid.shares().crossPercent(), stiff.shares().crossPercent(), 1e-6);
    }

    @Test
    void stiffChassisIsTheLimitOfARigidOne() {
        PerAxle<BarModel> off = PerAxle.both(BarModel.DISCONNECTED);
        Turns turns = Turns.perch(Corner.RF, 4);
        Equilibrium rigid = CornerLoads.solve(TestCars.formula(TYRE, 300), turns);
        Equilibrium stiff = CornerLoads.solve(TestCars.formula(TYRE, 300, off, OptionalDouble.of(1e12)), turns);
        assertEquals(rigid.shares().crossPercent(), stiff.shares().crossPercent(), 1e-7);
        Equilibrium soft = CornerLoads.solve(TestCars.formula(TYRE, 300, off, OptionalDouble.of(3000)), turns);
        assertTrue(soft.shares().crossPercent() < rigid.shares().crossPercent() - 0.1);
        // Load moves to RF, so the front section is turned back: its right side goes up less than a rigid one's would.
        assertTrue(soft.twistDeg() < 0 && soft.twistDeg() > -0.1, "twist " + soft.twistDeg());
    }

    /** Derivatives are exact at any state: central differences of the solver agree, all inputs, all features on. */
    @Test
    void sensitivitiesAgreeWithDifferencesAwayFromDesign() {
        CarModel car = featured();
        Turns at = new Turns(new PerCorner<>(1.0, -2.0, 0.5, 3.0), new PerCorner<>(-1.0, 0.0, 2.0, 0.5));
        double step = 1e-3;
        for (Sensitivity s : CornerLoads.sensitivities(car, at, List.of(LoadInput.values()))) {
            Equilibrium more = moved(car, at, s.input(), s.corner(), step);
            Equilibrium less = moved(car, at, s.input(), s.corner(), -step);
            for (Corner c : Corner.values()) {
                double load = (more.loadsKgf().get(c) - less.loadsKgf().get(c)) / (2 * step);
                assertEquals(load, s.loadsKgf().get(c), 1e-6, s.input() + " " + s.corner() + " load " + c);
                double travel = (more.wheelTravelMm().get(c) - less.wheelTravelMm().get(c)) / (2 * step);
                assertEquals(travel, s.wheelTravelMm().get(c), 1e-6, s.input() + " " + s.corner() + " travel " + c);
            }
            s.rideHeightsMm().forEach((name, slope) -> assertEquals(
                    (more.rideHeightsMm().get(name) - less.rideHeightsMm().get(name)) / (2 * step), slope, 1e-6, name));
            assertEquals((more.shares().crossPercent() - less.shares().crossPercent()) / (2 * step), s.crossPercent(), 1e-6);
        }
    }

    private static Equilibrium moved(CarModel car, Turns at, LoadInput input, Corner corner, double step) {
        CornerModel old = car.corners().get(corner);
        return switch (input) {
            case PERCH -> CornerLoads.solve(car, at.plus(Turns.perch(corner, step)));
            case ROD -> CornerLoads.solve(car, at.plus(Turns.rod(corner, step)));
            case PAD_HEIGHT -> CornerLoads.solve(
                    car.withCorners(car.corners().with(corner, old.withPadHeightMm(old.padHeightMm() + step))), at);
            case SPRING_RATE -> CornerLoads.solve(car.withCorners(
                    car.corners().with(corner, old.withSpringRateNPerMm(old.springRateNPerMm() + step))), at);
            case SPRING_COMPRESSION -> CornerLoads.solve(car.withCorners(car.corners().with(corner,
                    old.withSpringCompressionAtDesignMm(old.springCompressionAtDesignMm() + step))), at);
        };
    }

    /** Every feature at once: rising rate, bars with preload, roll centres, soft chassis, pads, one rigid tyre. */
    static CarModel featured() {
        CarModel base = ContractExample.read("corner-loads").car();
        PerCorner<CornerModel> corners = PerCorner.of(c -> {
            CornerModel m = base.corners().get(c);
            return new CornerModel(m.xMm(), m.yMm(), m.unsprungMassKg(), m.springRateNPerMm(), m.motionRatio(), 0.002,
                    m.springCompressionAtDesignMm(), m.perchPitchMmPerTurn(), m.rodLiftMmPerTurn(),
                    c == Corner.LR ? OptionalDouble.empty() : m.tyreRateNPerMm(), c == Corner.RF ? 1.5 : 0);
        });
        return new CarModel(base.sprungMassKg(), base.sprungCg(), corners,
                new PerAxle<>(new BarModel(22, 1.5), new BarModel(9, -2)),
                new PerAxle<>(OptionalDouble.of(45), OptionalDouble.of(80)), OptionalDouble.of(4200), 300,
                base.rideHeightPoints());
    }

    @Test
    void totalIsTheWeightInEveryState() {
        CarModel car = featured();
        Equilibrium state = CornerLoads.solve(car, Turns.rod(Corner.LR, 3));
        assertEquals(car.totalMassKg(), state.shares().totalKgf(), 1e-9);
    }

    /** The loads balance about both axes where the whole car's centre of gravity is. */
    @Test
    void knownMassMovesTheCentreOfGravityByItsLever() {
        CarModel car = TestCars.formula(RIGID, 0);
        PointMass driver = new PointMass(80, new SpacePoint(-1300, -300, 0));
        PlanPoint before = CornerLoads.solve(car, Turns.NONE).centreOfGravity();
        PlanPoint after = CornerLoads.solve(car.with(List.of(driver)), Turns.NONE).centreOfGravity();
        double total = car.totalMassKg() + 80;
        assertEquals((before.xMm() * car.totalMassKg() - 1300 * 80) / total, after.xMm(), 0.05);
        assertEquals((before.yMm() * car.totalMassKg() - 300 * 80) / total, after.yMm(), 0.05);
        CarModel out = car.with(List.of(driver)).with(List.of(driver.removed()));
        assertEquals(car.sprungMassKg(), out.sprungMassKg(), 1e-9);
        assertEquals(car.sprungCg().yMm(), out.sprungCg().yMm(), 1e-9);
    }

    /** Wheels set back stand for their axle by their mean; the tracks are measured across the car. */
    @Test
    void theWheelbaseIsThatOfTheMiddlesOfTheAxles() {
        CarModel car = TestCars.formula(RIGID, 300);
        CornerModel rf = car.corners().rf();
        CarModel setBack = car.withCorners(car.corners().with(Corner.RF, new CornerModel(rf.xMm() - 12, rf.yMm() - 3, 11, 90, 0.8, 0, 0, 1, 1, TYRE, 0)));
        assertEquals(TestCars.WHEELBASE - 6, setBack.wheelbaseMm(), 1e-9);
        assertEquals(1523, setBack.trackMm(Axle.FRONT), 1e-9);
        assertEquals(1470, setBack.trackMm(Axle.REAR), 1e-9);
        assertEquals(new PlanPoint(-12, -763), setBack.contactPoints().rf());
        assertEquals(car.totalMassKg() + 11, setBack.totalMassKg(), 1e-9);
        assertEquals(1 / (90 * 0.64) + 1 / TYRE.getAsDouble(), setBack.corners().rf().complianceMmPerN(), 1e-12);
    }

    @Test
    void looseSpringAndLiftedWheelAreSaid() {
        Equilibrium state = CornerLoads.solve(TestCars.formula(RIGID, 300), Turns.perch(Corner.RF, -90));
        assertTrue(state.findings().stream().anyMatch(
                f -> f.kind() == LoadFinding.Kind.SPRING_UNLOADED && f.corner() == Corner.RF && f.value() < 0));
        assertTrue(state.findings().stream().anyMatch(
                f -> f.kind() == LoadFinding.Kind.WHEEL_LIFTED && f.corner() == Corner.RF));
    }

    /**
     * An upright body falls where weight times height exceeds the stiffness: in roll sum k y^2, in pitch sum k x^2 about the
     * centre of stiffness (Euler; here 90/70 N/mm, tracks 1520/1470, wheelbase 2675 mm).
     */
    @Test
    void aCarTooTallForItsSpringsFallsOver() {
        double roll = 180 * 760 * 760.0 + 140 * 735 * 735.0;
        double pitch = 180.0 * 140 / (180 + 140) * TestCars.WHEELBASE * TestCars.WHEELBASE;
        assertTrue(roll < pitch, "roll goes first");
        double height = roll / TestCars.WEIGHT_N;
        assertTrue(Math.abs(CornerLoads.solve(centred(0.97 * height), Turns.NONE).rollDeg()) < 1);
        for (double tall : new double[] {1.03, 1.5, 2 * pitch / roll}) {
            NoEquilibriumException e = assertThrows(NoEquilibriumException.class, () -> CornerLoads.solve(centred(tall * height), Turns.NONE), "x " + tall);
            assertEquals("the car would fall over: its springs are too soft for the height of its centre of gravity", e.getMessage());
            assertEquals(e.getMessage(), e.getLocalizedMessage());
        }
        assertThrows(NoEquilibriumException.class, () -> CornerLoads.solve(TestCars.formula(RIGID, 60000), Turns.NONE));
    }

    /** Loads alike left and right, so that it leans to neither side. */
    private static CarModel centred(double cgHeight) {
        CarModel car = TestCars.formula(RIGID, cgHeight);
        return StateFit.toReadings(car, Turns.NONE, new PerCorner<>(121.0, 121.0, 154.0, 154.0), Map.of()).car();
    }

    @Test
    void refusesByName() {
        CarModel car = TestCars.formula(TYRE, 300);
        CornerModel lf = car.corners().lf();
        refused("corners.LF.springRate_N_per_mm", car, lf.withSpringRateNPerMm(Double.NaN));
        refused("corners.LF.springRate_N_per_mm", car, lf.withSpringRateNPerMm(0));
        refused("corners.LF.padHeight_mm", car, lf.withPadHeightMm(Double.POSITIVE_INFINITY));
        refused("corners.LF.tyreVerticalRate_N_per_mm", car, lf.withTyreRateNPerMm(OptionalDouble.of(-1)));
        refused("corners.LF.motionRatio_springPerWheel", car,
                new CornerModel(lf.xMm(), lf.yMm(), 0, 90, 0, 0, 0, 1, 1, TYRE, 0));
        refused("corners.LF.y_mm", car, new CornerModel(lf.xMm(), -760, 0, 90, 1, 0, 0, 1, 1, TYRE, 0));
        refused("corners.LF.x_mm", car, new CornerModel(-3000, lf.yMm(), 0, 90, 1, 0, 0, 1, 1, TYRE, 0));
        InvalidInputException mass = assertThrows(InvalidInputException.class,
                () -> car.withSprungMass(-1, car.sprungCg()));
        assertEquals("sprungMass_kg", mass.field());
        InvalidInputException turns = assertThrows(InvalidInputException.class,
                () -> Turns.rod(Corner.RR, Double.NaN));
        assertEquals("turns.rod.RR", turns.field());
        InvalidInputException point = assertThrows(InvalidInputException.class,
                () -> car.withRideHeightPoints(Map.of("nose", new SpacePoint(0, 0, Double.NaN))));
        assertEquals("rideHeightPoints.nose.z_mm", point.field());
    }

    private static void refused(String field, CarModel car, CornerModel lf) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class,
                () -> car.withCorners(car.corners().with(Corner.LF, lf)));
        assertEquals(field, refusal.field());
    }
}
