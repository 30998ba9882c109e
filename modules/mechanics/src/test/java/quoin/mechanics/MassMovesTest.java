package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import quoin.car.MassZone;
import quoin.mechanics.MassMoves.Item;
import quoin.mechanics.MassMoves.Moved;
import quoin.mechanics.MassPlacement.Wish;

/** Which masses to move, by the law of moments: m moved by d across a track t moves 100 m d / (M t) percent. */
class MassMovesTest {
    private static final double MEAN_TRACK = (1520 + 1470) / 2.0;
    private static final OptionalDouble ANY = OptionalDouble.empty();

    private final CarModel car = TestCars.formula(OptionalDouble.of(220), 310);
    private final Equilibrium now = CornerLoads.solve(car, Turns.NONE);

    private Wish left(double kilogramMillimetres, double tolerance) {
        return new Wish(ANY, OptionalDouble.of(now.shares().leftPercent() + 100 * kilogramMillimetres / (car.totalMassKg() * MEAN_TRACK)), tolerance);
    }

    private Wish front(double kilogramMillimetres) {
        return new Wish(OptionalDouble.of(now.shares().frontPercent() + 100 * kilogramMillimetres / (car.totalMassKg() * TestCars.WHEELBASE)), ANY, 0);
    }

    private static Item item(String name, double kg, double x, double y) {
        return new Item(name, kg, new SpacePoint(x, y, 200));
    }

    private static double y(Moved moved, String name) {
        return moved.moves().stream().filter(m -> m.item().name().equals(name)).findFirst().orElseThrow().to().yMm();
    }

    /** Both are needed: the heavy one goes to the edge, the light one makes up the rest. */
    @Test
    void theHeaviestGoesFurthest() {
        List<Item> items = List.of(item("light", 4, -1000, 0), item("heavy", 10, -1000, 0));
        MassZone floor = new MassZone("floor", -2000, -500, -400, 400, 200);
        Moved toLeft = MassMoves.byMoments(car, now, items, List.of(floor), left(10 * 400 + 4 * 100, 0));
        assertEquals(2, toLeft.moves().size());
        assertEquals(400, y(toLeft, "heavy"), 1e-6);
        assertEquals(100, y(toLeft, "light"), 1e-6);
        assertEquals(0, toLeft.missPercent(), 1e-9);
        assertEquals(500, toLeft.distanceMm(), 1e-6);
        Moved toRight = MassMoves.byMoments(car, now, items, List.of(floor), left(-10 * 400 - 4 * 100, 0));
        assertEquals(-400, y(toRight, "heavy"), 1e-6);
        assertEquals(-100, y(toRight, "light"), 1e-6);
    }

    /** A tolerance is used up: the mass is moved to the near edge of the band, not to its middle. */
    @Test
    void noFurtherThanTheToleranceAsksFor() {
        MassZone floor = new MassZone("floor", -2000, -500, -400, 400, 200);
        double tolerance = 100 * 10 * 50 / (car.totalMassKg() * MEAN_TRACK);
        Moved moved = MassMoves.byMoments(car, now, List.of(item("tank", 10, -1000, 0)), List.of(floor), left(10 * 200, tolerance));
        assertEquals(150, y(moved, "tank"), 1e-6);
        assertTrue(MassMoves.byMoments(car, now, List.of(item("tank", 10, -1000, 0)), List.of(floor), left(10 * 49, tolerance)).moves().isEmpty(),
                "inside already");
    }

    /** Two alike would both do; the one that need not be carried along the car as well is moved, in whatever order they stand. */
    @Test
    void ofTwoThatWouldDoTheNearerIsMoved() {
        MassZone floor = new MassZone("floor", -1500, -500, -400, 400, 200);
        List<Item> items = new ArrayList<>(List.of(item("far", 8, -2500, 0), item("near", 8, -1000, 0)));
        for (int order = 0; order < 2; order++) {
            // The far one may not upset the front share, which is free here.
            Moved moved = MassMoves.byMoments(car, now, items, List.of(floor), left(8 * 120, 0));
            assertEquals(List.of("near"), moved.moves().stream().map(m -> m.item().name()).toList());
            assertEquals(120, moved.moves().get(0).distanceMm(), 1e-6);
            Collections.reverse(items);
        }
    }

    /** Of several zones the one that meets the wish is taken, and along the car as across it. */
    @Test
    void theZoneThatMeetsTheWishIsTaken() {
        List<MassZone> zones = List.of(new MassZone("tail", -2900, -2600, -300, 300, 250), new MassZone("nose", 0, 400, -300, 300, 150));
        Item battery = item("battery", 12, -1000, 50);
        Moved forward = MassMoves.byMoments(car, now, List.of(battery), zones, front(12 * 1200));
        assertEquals("nose", forward.moves().get(0).zone().name());
        assertEquals(new SpacePoint(200, 50, 150), rounded(forward.moves().get(0).to()));
        Moved rearward = MassMoves.byMoments(car, now, List.of(battery), zones, front(-12 * 1700));
        assertEquals("tail", rearward.moves().get(0).zone().name());
        assertEquals(new SpacePoint(-2700, 50, 250), rounded(rearward.moves().get(0).to()));
        List<PointMass> change = rearward.change();
        assertEquals(-12, change.get(0).massKg());
        assertEquals(battery.place(), change.get(0).place());
        assertEquals(12, change.get(1).massKg());
    }

    private static SpacePoint rounded(SpacePoint p) {
        return new SpacePoint(Math.rint(p.xMm() * 1e6) / 1e6, Math.rint(p.yMm() * 1e6) / 1e6, p.zMm());
    }

    private static List<Item> six() {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            items.add(item("mass " + i, 2 + i, -400 * i, 50 * i));
        }
        return items;
    }

    private static final List<MassZone> TWO = List.of(new MassZone("left", -1500, -500, 300, 500, 200), new MassZone("right", -1500, -500, -500, -300, 200));

    /** 3^6 choices: whoever watches hears from the start to near the end, never backwards, and can give up. */
    @Test
    void theWatchHearsHowFarItIs() {
        List<Double> heard = new ArrayList<>();
        MassMoves.best(car, six(), TWO, left(8000, 0.01), share -> heard.add(share));
        assertEquals(0, heard.get(0));
        assertEquals(256 / 729.0 / 2, heard.get(1), 1e-12);
        assertEquals(0.5, heard.get(3), 1e-12);
        for (int i = 1; i < heard.size(); i++) {
            assertTrue(heard.get(i) > heard.get(i - 1) && heard.get(i) < 1, heard.toString());
        }
        assertThrows(CancellationException.class, () -> MassMoves.best(car, six(), TWO, left(8000, 0.01), share -> share < 0.1));
        SearchWatch.NONE.orGiveUp(1);
    }

    @Test
    void tooManyChoicesAreRefusedBeforeTheWork() {
        List<Item> twelve = new ArrayList<>(six());
        twelve.addAll(six());
        InvalidInputException e = assertThrows(InvalidInputException.class, () -> MassMoves.best(car, twelve, TWO, left(8000, 0.01)));
        assertEquals("movable masses", e.field());
        assertTrue(e.getMessage().contains("12 masses in 2 zones"), e.getMessage());
        assertEquals("x mass", assertThrows(InvalidInputException.class, () -> item("x", 0, 0, 0)).field());
    }
}
