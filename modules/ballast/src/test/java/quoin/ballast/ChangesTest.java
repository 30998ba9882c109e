package quoin.ballast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.LiftSeries;
import quoin.mechanics.MassPlacement.Wish;
import quoin.rehearsal.Ouzel23;

/** Questions about the demo car, against balances of moments worked by hand from its dimensions. */
class ChangesTest {

    private static final PerCorner<Double> LOADS = new PerCorner<>(160.0, 172.0, 150.0, 156.0);
    private final Car car = Ouzel23.car();
    private final Standing standing = Standing.of(car, LOADS, Map.of(), List.of());

    private static WhatIf masses(double driverKg, double leanMm, double fuelKg) {
        return new WhatIf(driverKg, leanMm, fuelKg, PerAxle.both(OptionalDouble.empty()), PerCorner.all(0.0), PerCorner.all(0.0));
    }

    @Test
    void standsAsItWasRead() {
        for (Corner corner : Corner.values()) {
            assertEquals(LOADS.get(corner), standing.now().loadsKgf().get(corner), 1e-9);
        }
        assertEquals(standing.now().loadsKgf(), standing.after(WhatIf.NOTHING.on(car)).loadsKgf());
    }

    /** The fuel lies 2050 mm behind the front axle of a wheelbase of 2380 mm: its front share is 13.9 %; the tail rises a little besides. */
    @Test
    void tenKilosLessFuel() {
        Equilibrium then = standing.after(masses(0, 0, -10).on(car));
        assertEquals(628, then.shares().totalKgf(), 1e-9);
        double front = LOADS.lf() + LOADS.rf() - 10 * (1 - 2050 / 2380.0);
        assertEquals(front, then.loadsKgf().lf() + then.loadsKgf().rf(), 0.1);
    }

    /** 86 kg leaning 60 mm over tracks of 1440 and 1420 mm move 86 * 60 / 1430 = 3.6 kg from side to side; the car rolls a little further. */
    @Test
    void driverLeaning() {
        Equilibrium then = standing.after(masses(0, 60, 0).on(car));
        double moved = then.loadsKgf().lf() + then.loadsKgf().lr() - LOADS.lf() - LOADS.lr();
        assertEquals(86 * 60 / 1430.0, moved, 0.2);
    }

    @Test
    void driverHeavierSitsOnTheRight() {
        Equilibrium then = standing.after(masses(14, 0, 0).on(car));
        assertEquals(652, then.shares().totalKgf(), 1e-9);
        assertTrue(then.shares().leftPercent() < standing.now().shares().leftPercent());
    }

    @Test
    void theAnswerNeedsTheDriversPlace() {
        Car bare = car.withMasses(car.masses().with(List.of(), List.of()));
        assertTrue(masses(5, 0, 0).lacksDriver(bare));
        assertTrue(masses(0, 0, 5).lacksFuel(bare));
        assertFalse(masses(5, 0, 5).lacksDriver(car));
    }

    /** Cross weight moves by the pad rule: circumference / 2 pi at a front corner is a pad raised as much. */
    @Test
    void tyreCircumference() {
        PerCorner<Double> longer = PerCorner.all(0.0).with(Corner.RF, 10.0);
        Equilibrium then = standing.after(new WhatIf(0, 0, 0, PerAxle.both(OptionalDouble.empty()), longer, PerCorner.all(0.0)).on(car));
        double front = 1 / (61.3 * 0.72 * 0.72) + 1 / 190.0;
        double rear = 1 / (52.5 * 0.8 * 0.8) + 1 / 200.0;
        double couple = 10 / (2 * Math.PI) / 1440 / (2 * front / 1440 / 1440 + 2 * rear / 1420 / 1420);
        double crossKg = couple * (1 / 1440.0 + 1 / 1420.0) / 9.80665;
        assertEquals(100 * crossKg / 638, then.shares().crossPercent() - standing.now().shares().crossPercent(), 0.01);
    }

    /** m = M (s' - s) / (p - s'): lead in the far sill of the demo car, arm 620 mm on a mean track of 1430 mm. */
    @Test
    void leastLeadForTheLeftShare() {
        Wish wish = new Wish(OptionalDouble.empty(), OptionalDouble.of(standing.now().shares().leftPercent() + 0.5), 0);
        var placed = quoin.mechanics.MassPlacement.exact(standing.model(), car.masses().zones().get(0), wish, 0).orElseThrow();
        double share = standing.now().shares().leftPercent() / 100 + 0.005;
        double byHand = 638 * 0.005 / (620 / 1430.0 + 0.5 - share);
        assertEquals(byHand, placed.massKg(), 0.06 * byHand);
        Equilibrium then = standing.after(placed.change());
        assertEquals(100 * share, then.shares().leftPercent(), 1e-6);
    }

    @Test
    void raisingAMassRaisesTheCentreOfGravity() {
        KnownMass battery = MoveChoices.movable(car).get(0);
        var up = List.of(Standing.mass(battery).removed(),
                new quoin.mechanics.PointMass(battery.massKg(), new quoin.mechanics.SpacePoint(battery.xMm(), battery.yMm(), battery.zMm() + 100)));
        assertEquals(100 * battery.massKg() / 638, standing.cgRiseMm(up), 1e-9);
    }

    /** The driver put in at his place: the common centre of two masses. */
    @Test
    void driverPutIntoTheLiftedCar() {
        LiftSeries series = new LiftSeries(10000, 2500, 300, 300, List.of(new LiftSeries.Lift(0, 5000), new LiftSeries.Lift(600, 5148.335416)));
        Lifting alone = Lifting.of(car, series, false);
        assertEquals(450, alone.cgHeightMm(), 1e-3);
        Lifting together = Lifting.of(car, series, true);
        assertEquals((450 * 10000 + 76 * 330 + 10 * 250) / 10086.0, together.cgHeightMm(), 1e-3);
        assertEquals(ReadingId.ofCar(ReadingKind.CG_HEIGHT), together.values().keySet().iterator().next());
        assertTrue(together.doubts().stream().anyMatch(d -> d.startsWith("Fewer than three lifts")));
    }

    @Test
    void barsAreKnown() {
        for (Axle axle : Axle.values()) {
            assertEquals(car.axles().get(axle).bar().isPresent(), standing.barRate(axle) > 0);
        }
    }
}
