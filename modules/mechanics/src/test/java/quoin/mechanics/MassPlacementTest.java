package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import quoin.car.MassZone;
import quoin.mechanics.MassMoves.Item;
import quoin.mechanics.MassMoves.Moved;
import quoin.mechanics.MassPlacement.Placed;
import quoin.mechanics.MassPlacement.Wish;

class MassPlacementTest {
    private final CarModel car = TestCars.formula(OptionalDouble.of(220), 310);
    private final Equilibrium now = CornerLoads.solve(car, Turns.NONE);

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    /** Least mass as a linear programme in the mass and its two moments, solved by a general-purpose simplex (Hipparchus). */
    private Optional<Double> byProgramme(MassZone zone, Wish wish) {
        double m = car.totalMassKg();
        double l = TestCars.WHEELBASE;
        double t = (1520 + 1470) / 2.0;
        List<LinearConstraint> all = new ArrayList<>();
        all.add(new LinearConstraint(new double[] {-zone.rearXMm() / l, 1, 0}, Relationship.GEQ, 0));
        all.add(new LinearConstraint(new double[] {-zone.frontXMm() / l, 1, 0}, Relationship.LEQ, 0));
        all.add(new LinearConstraint(new double[] {-zone.rightYMm() / t, 0, 1}, Relationship.GEQ, 0));
        all.add(new LinearConstraint(new double[] {-zone.leftYMm() / t, 0, 1}, Relationship.LEQ, 0));
        all.add(new LinearConstraint(new double[] {1, 0, 0}, Relationship.GEQ, 0));
        band(all, wish.frontPercent(), wish.tolerancePercent(), m, now.shares().frontPercent(), new double[] {1, 1, 0});
        band(all, wish.leftPercent(), wish.tolerancePercent(), m, now.shares().leftPercent(), new double[] {0.5, 0, 1});
        try {
            return Optional.of(new SimplexSolver().optimize(new LinearObjectiveFunction(new double[] {1, 0, 0}, 0),
                    new LinearConstraintSet(all), GoalType.MINIMIZE, new NonNegativeConstraint(false)).getValue());
        } catch (MathIllegalStateException e) {
            return Optional.empty();
        }
    }

    /** (M + m) s' = M s + (share of the mass itself), the share being linear in mass and moment. */
    private static void band(List<LinearConstraint> all, OptionalDouble wanted, double tolerance, double m, double now, double[] own) {
        if (wanted.isEmpty()) {
            return;
        }
        double low = (wanted.getAsDouble() - tolerance) / 100;
        double high = (wanted.getAsDouble() + tolerance) / 100;
        all.add(new LinearConstraint(new double[] {own[0] - low, own[1], own[2]}, Relationship.GEQ, m * (low - now / 100)));
        all.add(new LinearConstraint(new double[] {own[0] - high, own[1], own[2]}, Relationship.LEQ, m * (high - now / 100)));
    }

    @Test
    void leastMassIsThatOfALinearProgramme() {
        Random random = new Random(11);
        int possible = 0;
        for (int i = 0; i < 2000; i++) {
            double[] x = {-2700 + 2800 * random.nextDouble(), -2700 + 2800 * random.nextDouble()};
            double[] y = {-700 + 1400 * random.nextDouble(), -700 + 1400 * random.nextDouble()};
            Arrays.sort(x);
            Arrays.sort(y);
            MassZone zone = new MassZone("sill", x[0], x[1], y[0], y[1], 100);
            Wish wish = new Wish(random.nextInt(3) == 0 ? OptionalDouble.empty() : of(now.shares().frontPercent() + 2 * random.nextGaussian()),
                    random.nextInt(3) == 0 ? OptionalDouble.empty() : of(now.shares().leftPercent() + 2 * random.nextGaussian()),
                    0.05 + 0.3 * random.nextDouble());
            Optional<Double> programme = byProgramme(zone, wish);
            Optional<Placed> own = MassPlacement.byMoments(car, now, zone, wish, 0);
            assertEquals(programme.isPresent(), own.isPresent(), zone + " " + wish);
            if (own.isPresent()) {
                possible++;
                assertEquals(programme.get(), own.get().massKg(), 1e-6 * (1 + programme.get()));
            }
        }
        assertTrue(possible > 300, possible + " possible");
    }

    /** Lead for the left share, arm t/2 in the far sill: m = M (s' - s) / (p - s') with p = y/t + 1/2. */
    @Test
    void exactPlaceGivesTheWantedSharesWhenSolvedAgain() {
        MassZone sill = new MassZone("left sill", -1500, -900, 500, 650, 120);
        Wish wish = new Wish(OptionalDouble.empty(), of(now.shares().leftPercent() + 0.5), 0.02);
        Placed placed = MassPlacement.exact(car, sill, wish, 0).orElseThrow();
        Equilibrium then = CornerLoads.solve(car.with(placed.change()), Turns.NONE);
        assertEquals(now.shares().leftPercent() + 0.48, then.shares().leftPercent(), 1e-6);
        double wanted = (now.shares().leftPercent() + 0.48) / 100;
        double byHand = car.totalMassKg() * 0.0048 / (650 / 1495.0 + 0.5 - wanted);
        assertEquals(byHand, placed.massKg(), 0.05 * byHand);
    }

    @Test
    void wholePiecesAreRoundedUpAndStillInside() {
        MassZone nose = new MassZone("nose", -200, 300, -200, 200, 120);
        Wish wish = new Wish(of(now.shares().frontPercent() + 0.6), OptionalDouble.empty(), 0.1);
        Placed placed = MassPlacement.exact(car, nose, wish, 2.5).orElseThrow();
        assertEquals(0, Math.IEEEremainder(placed.massKg(), 2.5), 1e-9);
        Equilibrium then = CornerLoads.solve(car.with(placed.change()), Turns.NONE);
        assertEquals(0, wish.missPercent(then.shares().frontPercent(), then.shares().leftPercent()), 1e-6);
    }

    @Test
    void aZoneOnTheWrongSideIsRefused() {
        MassZone right = new MassZone("right sill", -1500, -900, -650, -500, 120);
        assertTrue(MassPlacement.exact(car, right, new Wish(OptionalDouble.empty(), of(now.shares().leftPercent() + 0.5), 0.1), 0).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> new MassZone("turned", 0, -100, 0, 100, 0));
    }

    /** A mass m moved by d across the car moves m d / t of load from side to side: 6 kg by 190 mm on 550 kg and 1495 mm. */
    @Test
    void movesMeetTheWishWithTheFewestMasses() {
        Item battery = new Item("battery", 14, new SpacePoint(-300, -190, 300));
        Item extinguisher = new Item("extinguisher", 4, new SpacePoint(-1400, -200, 200));
        List<MassZone> zones = List.of(new MassZone("left floor", -1600, -200, 0, 500, 120), new MassZone("tail", -2900, -2700, -300, 300, 300));
        double step = 100 * 14 * 380 / (car.totalMassKg() * 1495);
        Wish wish = new Wish(OptionalDouble.empty(), of(now.shares().leftPercent() + step), 0.02);
        Moved moved = MassMoves.best(car, List.of(battery, extinguisher), zones, wish);
        assertEquals(List.of("battery"), moved.moves().stream().map(m -> m.item().name()).toList());
        Equilibrium then = CornerLoads.solve(car.with(moved.change()), Turns.NONE);
        assertEquals(0, wish.missPercent(then.shares().frontPercent(), then.shares().leftPercent()), 1e-6);
        assertEquals(-190 + 380, moved.moves().get(0).to().yMm(), 25);
    }

    /** Random small cases against trying a fine grid of places: nothing on the grid comes nearer to the wish. */
    @Test
    void noGridOfPlacesIsNearer() {
        Random random = new Random(3);
        for (int n = 0; n < 60; n++) {
            Item one = new Item("one", 3 + 10 * random.nextDouble(), new SpacePoint(-2500 * random.nextDouble(), 0, 200));
            MassZone zone = new MassZone("zone", -2000, -2000 + 1500 * random.nextDouble(), -300, -300 + 500 * random.nextDouble(), 200);
            Wish wish = new Wish(of(now.shares().frontPercent() + random.nextGaussian()), of(now.shares().leftPercent() + random.nextGaussian()), 0.02);
            Moved moved = MassMoves.byMoments(car, now, List.of(one), List.of(zone), wish);
            double nearest = wish.missPercent(now.shares().frontPercent(), now.shares().leftPercent());
            for (int i = 0; i <= 40; i++) {
                for (int k = 0; k <= 40; k++) {
                    double x = zone.rearXMm() + (zone.frontXMm() - zone.rearXMm()) * i / 40;
                    double y = zone.rightYMm() + (zone.leftYMm() - zone.rightYMm()) * k / 40;
                    double front = now.shares().frontPercent() + 100 * one.massKg() * (x - one.place().xMm()) / TestCars.WHEELBASE / car.totalMassKg();
                    double left = now.shares().leftPercent() + 100 * one.massKg() * y / 1495 / car.totalMassKg();
                    nearest = Math.min(nearest, wish.missPercent(front, left));
                }
            }
            assertTrue(moved.missPercent() <= nearest + 1e-9, moved + " but the grid has " + nearest);
        }
    }
}
