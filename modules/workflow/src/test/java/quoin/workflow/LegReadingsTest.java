package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.adjustment.PlanCancellation;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.Turns;

/** Loads, shares and heights of the light car as the plan of a round sees them, against shares by hand and the exact corner loads. */
class LegReadingsTest {

    private static final PerCorner<Double> LOADS = new PerCorner<>(90.0, 101.0, 146.0, 132.0);
    private static final PerCorner<Double> HEIGHTS = new PerCorner<>(63.5, 60.0, 71.5, 69.5);
    private static final double TOTAL = 469;

    /** The car with a target for everything that a round may be about. */
    private static Day read() {
        Map<ReadingId, Target> more = new LinkedHashMap<>();
        more.put(ReadingId.ofCar(ReadingKind.FRONT_SHARE), new Target(40, 0.2));
        more.put(ReadingId.ofCar(ReadingKind.LEFT_SHARE), new Target(49, 0.4));
        for (Corner corner : Corner.values()) {
            more.put(ReadingId.of(ReadingKind.LOAD, corner), new Target(LOADS.get(corner) - 2, 3));
        }
        Car car = RoundPlannerTest.car(false, more);
        return read(car);
    }

    private static Day read(Car car) {
        return Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), car), new Entry.Reading(
                new Header(2, Instant.EPOCH, "corner-weights"), RoundPlannerTest.readings(LOADS, HEIGHTS), Map.of(), Entry.Source.RACER)));
    }

    private static LegReadings of(Day day) {
        return LegReadings.of(day, LegBelief.of(day).orElseThrow());
    }

    private static List<ReadingId> loads(Day day) {
        return day.car().walkingOrder().stream().map(c -> ReadingId.of(ReadingKind.LOAD, c)).toList();
    }

    @Test
    void everyGoalIsOneInItsOwnUnit() {
        Day day = read();
        LegReadings readings = of(day);
        List<ReadingId> heights = day.car().walkingOrder().stream().map(c -> new ReadingId(ReadingKind.HEIGHT, c + " point")).toList();
        List<ReadingId> goals = new ArrayList<>(loads(day));
        goals.addAll(List.of(ReadingId.ofCar(ReadingKind.CROSS), ReadingId.ofCar(ReadingKind.FRONT_SHARE), ReadingId.ofCar(ReadingKind.LEFT_SHARE)));
        goals.addAll(heights);
        assertEquals(goals, readings.goals());
        double cross = 100 * (101 + 146) / TOTAL - 50;
        double front = 100 * (90 + 101) / TOTAL - 40;
        double left = 100 * (90 + 146) / TOTAL - 49;
        double[] errors = readings.errors();
        // a settled reading is noisy: what is believed may lie a little beside it
        assertArrayEquals(new double[] {2, 2, 2, 2}, Stream.of(0, 1, 2, 3).mapToDouble(i -> errors[i]).toArray(), 0.8);
        assertArrayEquals(new double[] {cross, front, left}, Stream.of(4, 5, 6).mapToDouble(i -> errors[i]).toArray(), 0.25);
        assertArrayEquals(new double[] {1.5, 1.5, -0.5, -2}, Stream.of(7, 8, 9, 10).mapToDouble(i -> errors[i]).toArray(), 0.6);
        assertArrayEquals(new double[] {3, 3, 3, 3, 0.3, 0.2, 0.4, 1, 1, 1, 1}, readings.tolerances());
    }

    /** A quarter of a turn of each perch in turn, solved anew. */
    @Test
    void aTurnDoesWhatTheExactMechanicsSay() {
        Day day = read();
        LegBelief legs = LegBelief.of(day).orElseThrow();
        LegReadings readings = LegReadings.of(day, legs);
        double[][] perTurn = readings.sensitivityPerTurn();
        Equilibrium before = CornerLoads.solve(legs.standing().car(), Turns.NONE);
        for (int column = 0; column < legs.adjusters().size(); column++) {
            Corner turned = legs.adjusters().get(column).id().corner();
            Equilibrium after = CornerLoads.solve(legs.standing().car(), new Turns(PerCorner.of(c -> c == turned ? 0.25 : 0.0), PerCorner.all(0.0)));
            for (int row = 0; row < 4; row++) {
                Corner corner = day.car().walkingOrder().get(row);
                assertEquals(after.loadsKgf().get(corner) - before.loadsKgf().get(corner), perTurn[row][column] / 4, 0.02, turned + " " + corner);
                double height = after.rideHeightsMm().get(corner + " point") - before.rideHeightsMm().get(corner + " point");
                assertEquals(height, perTurn[7 + row][column] / 4, 0.01, turned + " " + corner);
            }
            assertEquals(after.shares().crossPercent() - before.shares().crossPercent(), perTurn[4][column] / 4, 0.01);
            double[] turns = new double[legs.adjusters().size()];
            turns[column] = 0.25;
            for (Corner corner : Corner.values()) {
                assertEquals(after.wheelTravelMm().get(corner) - before.wheelTravelMm().get(corner), readings.travelMm(turns).get(corner), 0.01);
            }
        }
    }

    /** Pooled in squares: loads by themselves are as uncertain after no turn as they are believed, and less sure after many. */
    @Test
    void whatIsTurnedIsLessSure() {
        Day day = read();
        LegReadings readings = of(day);
        double[][] now = readings.covarianceAfter(new double[4]);
        double[][] then = readings.covarianceAfter(new double[] {4, -4, 4, -4});
        for (int i = 0; i < now.length; i++) {
            assertTrue(now[i][i] > 0 && then[i][i] >= now[i][i] - 1e-12, readings.goals().get(i).words());
            for (int j = 0; j < now.length; j++) {
                assertEquals(now[i][j], now[j][i], 1e-9);
                assertTrue(Math.abs(now[i][j]) <= Math.sqrt(now[i][i] * now[j][j]) + 1e-9);
            }
        }
        assertTrue(then[4][4] > 1.05 * now[4][4], "four turns of every perch are not known exactly");
    }

    /** The likeliest turns stay on the thread, in whole notches, and are as likely as they say. */
    @Test
    void theLikeliestTurnsAreWholeSteps() {
        Day day = read(RoundPlannerTest.car(true, Map.of()));
        LegBelief legs = LegBelief.of(day).orElseThrow();
        LegReadings readings = LegReadings.of(day, legs);
        LikeliestTurns likeliest = LikeliestTurns.of(day, legs, readings.beliefGoals());
        double[] turns = likeliest.turns();
        boolean any = false;
        for (double turn : turns) {
            assertEquals(Math.rint(8 * turn), 8 * turn, 1e-9);
            assertTrue(Math.abs(turn) <= 2 + 1e-9, "57 to 63 mm are two turns of 1.5 mm either way");
            any |= turn != 0;
        }
        assertTrue(any);
        assertEquals(likeliest.advice().probabilityAfter(), likeliest.probabilityAfter(turns), 0.02);
        assertTrue(likeliest.probabilityAfter(turns) > likeliest.probabilityAfter(new double[turns.length]));
    }

    /** Perch and pushrod of one corner do the same: only the first is turned. */
    @Test
    void oneAdjusterOfACornerIsEnough() {
        Day day = new DayBook().prepared().read("ride-height", DayBook.heights(64, 62, 71, 70)).read("corner-weights", DayBook.loads(51)).day();
        LegBelief legs = LegBelief.of(day).orElseThrow();
        assertEquals(8, legs.adjusters().size());
        double[] turns = LikeliestTurns.of(day, legs, LegReadings.of(day, legs).beliefGoals()).turns();
        for (Corner corner : Corner.values()) {
            long turned = Stream.iterate(0, i -> i < turns.length, i -> i + 1)
                    .filter(i -> legs.adjusters().get(i).id().corner() == corner && turns[i] != 0).count();
            assertTrue(turned <= 1, corner + " is turned at " + turned + " adjusters");
        }
    }

    @Test
    void withoutAWeighingOnlyHeightsAreGoals() {
        Day day = new DayBook().prepared().read("ride-height", Map.of(DayBook.height(Corner.LF), 63.0, DayBook.height(Corner.RF), 62.0)).day();
        LegReadings readings = of(day);
        assertEquals(List.of(DayBook.height(Corner.LF), DayBook.height(Corner.RF)), readings.goals());
        Map<ReadingId, Predicted> predicted = RoundPlanner.forecast(day, Map.of(LegBelief.of(day).orElseThrow().adjusters().get(0).id(), 1.0));
        assertTrue(predicted.keySet().stream().noneMatch(id -> id.kind() == ReadingKind.LOAD || id.kind() == ReadingKind.CROSS), predicted.toString());
        assertEquals(63, predicted.get(DayBook.height(Corner.LF)).now());
        assertTrue(predicted.get(DayBook.height(Corner.LF)).change() > 1);
    }

    /** A point at the nose, 400 mm ahead of the front axle, goes with the body: solved anew after a turn, and judged by its target. */
    @Test
    void aFurtherHeightPointIsForetold() {
        Car car = RoundPlannerTest.car(false, Map.of());
        List<HeightPoint> points = new ArrayList<>(car.heightPoints());
        HeightPoint nose = new HeightPoint("splitter", Optional.empty(), OptionalDouble.of(400), OptionalDouble.of(0));
        points.add(nose);
        Map<ReadingId, Double> values = RoundPlannerTest.readings(LOADS, HEIGHTS);
        values.put(nose.reading(), 48.0);
        Target wanted = new Target(50, 2);
        Day day = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(),
                car.corners(), car.masses(), points, car.targets().with(nose.reading(), wanted), car.loadCase(), car.instruments(), car.walkingOrder())),
                new Entry.Reading(new Header(2, Instant.EPOCH, "corner-weights"), values, Map.of(), Entry.Source.RACER)));
        LegBelief legs = LegBelief.of(day).orElseThrow();
        Turns quarters = new Turns(new PerCorner<>(0.25, 0.5, 0.0, 0.0), PerCorner.all(0.0));
        double before = CornerLoads.solve(legs.standing().car(), Turns.NONE).rideHeightsMm().get("splitter");
        double after = CornerLoads.solve(legs.standing().car(), quarters).rideHeightsMm().get("splitter");
        double[] turns = legs.adjusters().stream().mapToDouble(a -> a.id().corner() == Corner.LF ? 0.25 : a.id().corner() == Corner.RF ? 0.5 : 0).toArray();
        Predicted splitter = LegReadings.of(day, legs).predicted(turns).get(nose.reading());
        assertEquals(48, splitter.now());
        assertEquals(after - before, splitter.change(), 0.02);
        assertTrue(splitter.change() > 0.3, "both front corners went up");
        assertEquals(Optional.of(wanted), splitter.target());
    }

    /** The chance a plan is offered with is that of its own turns, and "now" that of none. */
    @Test
    void aPlanHasTheChanceOfItsTurns() {
        Day day = read(RoundPlannerTest.car(false, Map.of()));
        LegBelief legs = LegBelief.of(day).orElseThrow();
        LegReadings readings = LegReadings.of(day, legs);
        List<RoundPlan> plans = RoundPlanner.options(day, PlanCancellation.NEVER);
        double best = 0;
        for (RoundPlan plan : plans) {
            double[] turns = legs.adjusters().stream().mapToDouble(a -> plan.moves().stream().filter(m -> m.adjuster().equals(a.id()))
                    .mapToDouble(CornerMove::turns).sum()).toArray();
            assertEquals(plan.probabilityInside().orElseThrow(), readings.probabilityInside(turns), 1e-3, plan.why());
            assertEquals(plan.probabilityNow().orElseThrow(), readings.probabilityInside(new double[turns.length]), 1e-12);
            best = Math.max(best, plan.probabilityInside().orElseThrow());
        }
        assertTrue(best > 0.3, "turning helps: " + best);
    }
}
