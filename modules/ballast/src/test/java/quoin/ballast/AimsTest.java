package quoin.ballast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import quoin.adjustment.PlanCancellation;
import quoin.ballast.Aims.Aim;
import quoin.ballast.Aims.Cost;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;

class AimsTest {

    private final Car car = Ouzel23.car();

    private static Aim of(List<Aim> aims, CrossGoal goal) {
        return aims.stream().filter(a -> a.goal() == goal).findFirst().orElseThrow();
    }

    /** Each rule by its own definition; a wanted wedge keeps front share and total. */
    @Test
    void eachAimKeepsItsRule() {
        PerCorner<Double> loads = new PerCorner<>(160.0, 172.0, 150.0, 156.0);
        List<Aim> aims = Aims.all(car, loads, OptionalDouble.of(51.5));
        PerCorner<Double> diagonals = of(aims, CrossGoal.EQUAL_DIAGONALS).loadsKg();
        assertEquals(diagonals.rf() + diagonals.lr(), diagonals.lf() + diagonals.rr(), 1e-9);
        PerCorner<Double> fronts = of(aims, CrossGoal.EQUAL_FRONTS).loadsKg();
        assertEquals(fronts.lf(), fronts.rf(), 1e-9);
        PerCorner<Double> share = of(aims, CrossGoal.SAME_FRONT_SHARE).loadsKg();
        assertEquals(share.lf() / share.lr(), share.rf() / share.rr(), 1e-9);
        for (Aim aim : aims) {
            PerCorner<Double> then = aim.loadsKg();
            assertEquals(332, then.lf() + then.rf(), 1e-9);
            assertEquals(638, then.lf() + then.rf() + then.lr() + then.rr(), 1e-9);
            assertEquals(aim.crossPercent(), 100 * (then.rf() + then.lr()) / 638, 1e-9);
        }
        assertEquals(51.5, of(aims, CrossGoal.WANTED).crossPercent(), 1e-12);
    }

    /** A spring maker's printed example of one front share on both sides: 694/585/606/670 lb, diagonals 1279 and 1276. */
    @Test
    void printedExampleOfOneFrontShare() {
        PerCorner<Double> loads = new PerCorner<>(720.0, 580.0, 644.0, 611.0);
        PerCorner<Double> same = of(Aims.all(car, loads, OptionalDouble.empty()), CrossGoal.SAME_FRONT_SHARE).loadsKg();
        double front = 1300.0 / 2555;
        assertEquals(front, same.lf() / (same.lf() + same.lr()), 1e-4);
    }

    /** The chance that a band holds: an interval of 2 u must fit in it; the mean of n readings has u / sqrt(n). */
    @Test
    void tolerancesFinerThanTheReadings() {
        assertFalse(Aims.finerThanReadings(0.5, 0.25));
        assertTrue(Aims.finerThanReadings(0.4, 0.25));
        assertEquals(2, Aims.readingsFor(0.4, 0.25));
        assertEquals(4, Aims.readingsFor(0.25, 0.25));
        int n = Aims.readingsFor(0.1, 0.25);
        assertTrue(2 * 0.25 / Math.sqrt(n) <= 0.1 + 1e-12 && 2 * 0.25 / Math.sqrt(n - 1.0) > 0.1);
    }

    @Test
    void rakeOfTheHeightTargets() {
        assertEquals(8, Aims.rakeOfHeights(car, car.targets()).orElseThrow(), 1e-9);
    }

    /** The cost is that of the planner's first plan: nothing where the car is there, turns where it is not. */
    @Test
    void costFollowsTheDistance() {
        Map<ReadingId, Double> read = new TreeMap<>();
        double[] loads = {160, 172, 147, 159};
        for (Corner corner : Corner.values()) {
            read.put(ReadingId.of(ReadingKind.LOAD, corner), loads[corner.ordinal()]);
            ReadingId height = car.heightPoint(corner).orElseThrow().reading();
            read.put(height, car.targets().of(height).orElseThrow().value());
        }
        Day day = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), car),
                new Entry.Condition(new Header(2, Instant.EPOCH, ""), Conditions.bar(Axle.FRONT), Conditions.DISCONNECTED, ""),
                new Entry.Reading(new Header(3, Instant.EPOCH, ""), read, Map.of(), Entry.Source.RACER)));
        PerCorner<Double> now = PerCorner.of(c -> loads[c.ordinal()]);
        double cross = 100 * (172 + 147) / 638.0;
        Cost here = Aims.cost(day, of(Aims.all(car, now, OptionalDouble.of(cross)), CrossGoal.WANTED), 0.5, PlanCancellation.NEVER).orElseThrow();
        Cost far = Aims.cost(day, of(Aims.all(car, now, OptionalDouble.of(cross + 3)), CrossGoal.WANTED), 0.3, PlanCancellation.NEVER).orElseThrow();
        assertEquals(0, here.corners());
        assertTrue(far.corners() > 0 && far.turns() > 1, far.toString());
    }
}
