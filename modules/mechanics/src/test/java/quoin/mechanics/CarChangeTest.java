package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * Changes against closed forms of the linear four-spring body that use nothing of the solver: load transfer lambda * n
 * with n = (1/tf, -1/tf, -1/tr, +1/tr), lambda = (n . e) / C (antagonistic roll couples, derived by energy minimisation).
 */
class CarChangeTest {
    private static final double TYRE = 220;
    /** The linear forms leave the body's own tilt out; CG on the road makes that nothing. */
    private static final double CG_ON_THE_ROAD = 0;
    private static final PerAxle<Double> RATES = new PerAxle<>(40.0, 30.0);

    private final CarModel car = TestCars.formula(OptionalDouble.of(TYRE), CG_ON_THE_ROAD);
    private final Equilibrium now = CornerLoads.solve(car, Turns.NONE);

    private PerCorner<Double> changeN(CarChange change) {
        Equilibrium then = CornerLoads.solve(change.on(car, RATES), Turns.NONE);
        return then.loadsKgf().zip(now.loadsKgf(), (a, b) -> KilogramForce.toNewtons(a - b));
    }

    private static PerCorner<Double> rounded(PerCorner<Double> newtons) {
        return newtons.map(n -> Math.round(n * 1e6) / 1e6 + 0.0);
    }

    @Test
    void nothingDoneChangesNothing() {
        assertEquals(PerCorner.all(0.0), rounded(changeN(CarChange.NONE)));
    }

    @Test
    void barJoinedFreeCarriesNothing() {
        assertEquals(PerCorner.all(0.0), rounded(changeN(CarChange.NONE.withBar(Axle.FRONT, 0).withBar(Axle.REAR, 0))));
    }

    /** Front bar of 20 N per mm of wheel difference, link 2 mm out: 9.50496 N on the front wheels, 9.82826 N on the rear ones. */
    @Test
    void barLinkErrorAsTheClosedFormSays() {
        PerCorner<Double> change = changeN(CarChange.NONE.withBar(Axle.FRONT, 2));
        double bar = 20;
        double frontRoll = (90 / 2.0 + bar) * 1520 * 1520;
        double tyreRoll = TYRE * 1520 * 1520 / 2;
        double rearRoll = 1 / (1 / (70 / 2.0 * 1470 * 1470) + 1 / (TYRE * 1470 * 1470 / 2));
        double compliance = 1 / frontRoll + 1 / tyreRoll + 1 / rearRoll;
        double couple = 2 * bar / ((90 / 2.0 + bar) * 1520) / compliance;
        assertEquals(9.50496, couple / 1520, 1e-4);
        double[] wanted = {couple / 1520, -couple / 1520, -couple / 1470, couple / 1470};
        for (Corner corner : Corner.values()) {
            assertEquals(wanted[corner.ordinal()], change.get(corner), 0.01);
        }
    }

    @Test
    void aBiggerTyreIsAPadRaisedByItsRadius() {
        double circumference = 10;
        double rise = circumference / (2 * Math.PI);
        assertEquals(1.59, rise, 0.005);
        double compliance = 2 / (1520.0 * 1520) * (1 / 90.0 + 1 / TYRE) + 2 / (1470.0 * 1470) * (1 / 70.0 + 1 / TYRE);
        double couple = rise / 1520 / compliance;
        PerCorner<Double> change = changeN(CarChange.NONE.withCircumference(Corner.RF, circumference));
        assertEquals(couple / 1520, change.rf(), 0.02);
        assertEquals(couple / 1470, change.lr(), 0.02);
        assertEquals(28.4155 * rise, change.rf() + change.lr(), 0.05);
    }

    @Test
    void aSofterTyreLowersItsCornerByWhatItGives() {
        double factor = 0.85;
        double compliance = 2 / (1520.0 * 1520) * (1 / 90.0 + 1 / TYRE) + 2 / (1470.0 * 1470) * (1 / 70.0 + 1 / TYRE);
        // The load of the corner while it sinks is the one it ends with: solved for, not taken from the car.
        double more = 1 / TYRE / factor - 1 / TYRE;
        double transfer = 1 / 1520.0 / compliance / 1520;
        double load = TestCars.LOADS_N.rf() / (1 + more * transfer);
        PerCorner<Double> change = changeN(CarChange.NONE.withTyreRate(Corner.RF, factor));
        assertEquals(-more * load * transfer, change.rf(), 0.05);
        assertTrue(change.lf() > 0 && change.rr() > 0 && change.lr() < 0);
    }

    @Test
    void aMassPutInGoesToTheWheelsByItsMoments() {
        PointMass fuel = new PointMass(-10, new SpacePoint(-2050, 0, 0));
        PerCorner<Double> change = changeN(CarChange.NONE.withMasses(List.of(fuel)));
        double weight = KilogramForce.toNewtons(-10);
        assertEquals(weight, change.lf() + change.rf() + change.lr() + change.rr(), 1e-6);
        assertEquals(weight * (1 - 2050 / 2675.0), change.lf() + change.rf(), 0.05);
    }

    @Test
    void refusesATyreWithoutRate() {
        InvalidInputException e = assertThrows(InvalidInputException.class, () -> CarChange.NONE.withTyreRate(Corner.LF, 0));
        assertTrue(e.field().contains("tyreRateFactor.LF"), e.field());
    }
}
