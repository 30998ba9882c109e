package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.adjustment.CarModels;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Assumptions;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.LoadCase;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.SuspensionChoice;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.StateFit;
import quoin.mechanics.Turns;

/**
 * The plan of a round on a light car of 469 kg with its driver, LF 90, RF 101, LR 146, RR 132 kg (common practice, no
 * source). What the plan promises is checked against the exact corner-load mechanics, solved anew after the turns.
 */
class RoundPlannerTest {

    private static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);
    private static final PerCorner<Double> LOADS = new PerCorner<>(90.0, 101.0, 146.0, 132.0);
    private static final PerCorner<Double> HEIGHTS = new PerCorner<>(63.5, 60.0, 71.5, 69.5);

    private final List<Entry> entries = new ArrayList<>();

    private Header next() {
        return new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(entries.size()), "corner-weights");
    }

    @Test
    void bringsCrossAndHeightsInsideTogether() {
        Car car = car(false, Map.of());
        Day day = read(car);
        RoundPlan plan = RoundPlanner.plan(day).orElseThrow();
        assertEquals(52.7, Derived.value(car, CROSS, id -> OptionalDouble.of(day.latest(id).orElseThrow().value())).orElseThrow(), 0.05);
        Equilibrium after = solve(car, plan);
        assertEquals(50, after.shares().crossPercent(), 0.35, "cross after the turns, by exact mechanics");
        for (Corner corner : Corner.values()) {
            double target = corner.isFront() ? 62 : 70;
            assertEquals(target, after.rideHeightsMm().get(corner + " point"), 1.2, corner + " height");
        }
        assertEquals(40.7, after.shares().frontPercent(), 0.1, "perches do not move the front share");
        for (CornerMove move : plan.moves()) {
            assertEquals(Math.rint(move.turns() * 8), move.turns() * 8, 1e-9, "whole notches");
            assertTrue(move.words().endsWith(move.turns() > 0 ? " up" : " down"), move.words());
        }
        assertTrue(plan.probabilityInside().getAsDouble() > plan.probabilityNow().getAsDouble());
    }

    @Test
    void predictionsAgreeWithExactMechanics() {
        Car car = car(false, Map.of());
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        Equilibrium before = solve(car, new RoundPlan(0, List.of(), Map.of(), OptionalDouble.empty(), OptionalDouble.empty(), "",
                List.of(), List.of()));
        Equilibrium after = solve(car, plan);
        Predicted cross = plan.predicted().get(CROSS);
        double promised = cross.predicted() - cross.now();
        // One reading is no proof of the state: learning may move the starting point by a fraction of the reading noise.
        assertEquals(after.shares().crossPercent() - before.shares().crossPercent(), promised, 0.25);
        assertEquals(before.shares().crossPercent(), cross.now(), 1e-6);
        for (Corner corner : Corner.values()) {
            Predicted load = plan.predicted().get(ReadingId.of(ReadingKind.LOAD, corner));
            assertEquals(after.loadsKgf().get(corner), load.predicted(), 1.5, corner + " load");
        }
    }

    @Test
    void tellsTheNewThreadLength() {
        Car car = car(true, Map.of());
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        assertFalse(plan.moves().isEmpty());
        for (CornerMove move : plan.moves()) {
            assertEquals(60 + 1.5 * move.turns(), move.newLengthMm().orElseThrow(), 1e-9);
        }
    }

    @Test
    void staysOnTheThread() {
        Car car = car(true, Map.of());
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        for (CornerMove move : plan.moves()) {
            double length = move.newLengthMm().orElseThrow();
            assertTrue(length >= 57 - 1e-9 && length <= 63 + 1e-9, move + " leaves the thread of 57 to 63 mm");
        }
    }

    /** One spanner a corner: perch and pushrod of a corner do the same to loads and heights. */
    @Test
    void onlyOneAdjusterOfACornerIsTurnedWhereThatIsEnough() {
        Car car = withPushrods(car(false, Map.of()), OptionalDouble.empty());
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        assertEquals(plan.moves().size(), plan.moves().stream().map(m -> m.adjuster().corner()).distinct().count(), plan.moves().toString());
        assertTrue(plan.moves().stream().allMatch(m -> m.adjuster().kind() == AdjusterKind.PERCH), plan.moves().toString());
        assertFalse(plan.moves().isEmpty());
        RoundPlan perchesAlone = new RoundPlannerTest().planOf(car(false, Map.of()));
        assertEquals(perchesAlone.moves(), plan.moves(), "as if there were no pushrods");
    }

    /** Perches with half a turn left: what they cannot do is left to the pushrods. */
    @Test
    void thePushrodHelpsWhereThePerchRunsOutOfThread() {
        Car car = withPushrods(car(true, Map.of()), OptionalDouble.of(0.75));
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        assertTrue(plan.moves().stream().anyMatch(m -> m.adjuster().kind() == AdjusterKind.PUSHROD), plan.moves().toString());
        assertTrue(plan.moves().stream().filter(m -> m.adjuster().kind() == AdjusterKind.PERCH).allMatch(m -> Math.abs(m.turns()) <= 0.5));
        assertEquals(50, solve(car, plan).shares().crossPercent(), 0.4, "by exact mechanics");
    }

    private RoundPlan planOf(Car car) {
        return RoundPlanner.plan(read(car)).orElseThrow();
    }

    @Test
    void saysThatPerchesCannotMoveTheLeftShare() {
        Car car = car(false, Map.of(ReadingId.ofCar(ReadingKind.LEFT_SHARE), new Target(49, 0.3)));
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        assertTrue(plan.notReachable().stream().anyMatch(s -> s.startsWith("Perches cannot change the left share; move 5 kg")
                && s.contains("to the right")), plan.notReachable().toString());
    }

    @Test
    void saysWhatItAssumed() {
        Car car = car(false, Map.of());
        RoundPlan plan = RoundPlanner.plan(read(car)).orElseThrow();
        assertTrue(plan.assumed().stream().anyMatch(s -> s.startsWith("LF tyre rate assumed 200 N/mm")), plan.assumed().toString());
    }

    @Test
    void nothingReadNoPlan() {
        entries.add(new Entry.CarDescribed(next(), car(false, Map.of())));
        assertEquals(Optional.empty(), RoundPlanner.plan(Day.of(entries)));
    }

    @Test
    void learnsFromARoundThatDidLess() {
        Car car = springsUnknown(car(false, Map.of()));
        Day day = read(car);
        AdjusterId perch = new AdjusterId(AdjusterKind.PERCH, Corner.RF);
        double before = cross(day);
        RoundPlan first = RoundPlanner.plan(day).orElseThrow();
        entries.add(new Entry.Adjustment(next(), List.of(new Entry.Turn(perch, -6, OptionalDouble.empty())), ""));
        entries.add(new Entry.Condition(next(), Conditions.SETTLED, Conditions.YES, ""));
        double perTurn = sensitivity(car, perch);
        // The springs answer with six tenths of what was expected.
        double moved = 0.6 * perTurn * -6 * 469 / 100;
        PerCorner<Double> after = PerCorner.of(c -> LOADS.get(c) + (c == Corner.RF || c == Corner.LR ? 0.5 : -0.5) * moved);
        entries.add(new Entry.Reading(next(), loads(after), Map.of(), Entry.Source.RACER));
        Day learnt = Day.of(entries);
        assertEquals(before + 0.6 * perTurn * -6, cross(learnt), 1e-9);
        LegBelief belief = LegBelief.of(learnt).orElseThrow();
        int column = belief.adjusters().stream().map(Adjuster::id).toList().indexOf(perch);
        double learntPerTurn = (belief.belief().responsePerTurn().get(1).get(column)
                + belief.belief().responsePerTurn().get(2).get(column)) / (469 * 9.80665) * 100;
        assertTrue(learntPerTurn < 0.85 * perTurn && learntPerTurn > 0.55 * perTurn, "learnt " + learntPerTurn + " against " + perTurn);
        assertFalse(first.moves().isEmpty());
    }

    static Car springsUnknown(Car car) {
        OptionalDouble none = OptionalDouble.empty();
        PerCorner<CornerSetup> corners = car.corners().map(c -> new CornerSetup(none, c.motionRatio(), none, none, none, none, c.adjusters()));
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), corners, car.masses(), car.heightPoints(), car.targets(),
                car.loadCase(), car.instruments(), car.walkingOrder());
    }

    private double cross(Day day) {
        return Derived.value(day.car(), CROSS, id -> OptionalDouble.of(day.latest(id).orElseThrow().value())).orElseThrow();
    }

    private double sensitivity(Car car, AdjusterId perch) {
        return LegBelief.sensitivities(List.of(car.adjuster(perch).orElseThrow()), standing(car).car()).get(0).crossPercent();
    }

    private Day read(Car car) {
        entries.add(new Entry.CarDescribed(next(), car));
        entries.add(new Entry.Reading(next(), readings(LOADS, HEIGHTS), Map.of(), Entry.Source.RACER));
        return Day.of(entries);
    }

    static Map<ReadingId, Double> readings(PerCorner<Double> loads, PerCorner<Double> heights) {
        Map<ReadingId, Double> values = new HashMap<>();
        for (Corner corner : Corner.values()) {
            values.put(ReadingId.of(ReadingKind.LOAD, corner), loads.get(corner));
            values.put(new ReadingId(ReadingKind.HEIGHT, corner + " point"), heights.get(corner));
        }
        return values;
    }

    private static Map<ReadingId, Double> loads(PerCorner<Double> loads) {
        Map<ReadingId, Double> values = new HashMap<>();
        for (Corner corner : Corner.values()) {
            values.put(ReadingId.of(ReadingKind.LOAD, corner), loads.get(corner));
        }
        return values;
    }

    private static StateFit.FittedCar standing(Car car) {
        Map<String, Double> heights = new HashMap<>();
        for (Corner corner : Corner.values()) {
            heights.put(corner + " point", HEIGHTS.get(corner));
        }
        return CarModels.standing(Assumptions.complete(car, OptionalDouble.of(469)), LOADS, heights);
    }

    private static Equilibrium solve(Car car, RoundPlan plan) {
        return CornerLoads.solve(standing(car).car(), new Turns(turns(plan, AdjusterKind.PERCH), turns(plan, AdjusterKind.PUSHROD)));
    }

    private static PerCorner<Double> turns(RoundPlan plan, AdjusterKind kind) {
        return PerCorner.of(c -> plan.moves().stream().filter(m -> m.adjuster().corner() == c && m.adjuster().kind() == kind)
                .mapToDouble(CornerMove::turns).sum());
    }

    /**
     * The same car with a pushrod at each corner.
     *
     * @param perchMm what the thread of each perch leaves either way; empty = as it was
     */
    private static Car withPushrods(Car car, OptionalDouble perchMm) {
        OptionalDouble none = OptionalDouble.empty();
        PerCorner<CornerSetup> corners = PerCorner.of(corner -> {
            CornerSetup c = car.corners().get(corner);
            Adjuster perch = c.adjusters().get(0);
            Adjuster left = perchMm.isEmpty() ? perch : new Adjuster(perch.id(), perch.setting(), perch.startMm(),
                    OptionalDouble.of(perch.startMm().getAsDouble() - perchMm.getAsDouble()),
                    OptionalDouble.of(perch.startMm().getAsDouble() + perchMm.getAsDouble()), false);
            Adjuster pushrod = new Adjuster(new AdjusterId(AdjusterKind.PUSHROD, corner), new Setting.Thread(2.117, false, 6, "flat"), none, none,
                    none, false);
            return new CornerSetup(c.springRateNPerMm(), c.motionRatio(), none, none, c.unsprungMassKg(), none, List.of(left, pushrod));
        });
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), corners, car.masses(), car.heightPoints(), car.targets(),
                car.loadCase(), car.instruments(), car.walkingOrder());
    }

    static Car car(boolean measuredThreads, Map<ReadingId, Target> more) {
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble start = measuredThreads ? OptionalDouble.of(60) : none;
        OptionalDouble min = measuredThreads ? OptionalDouble.of(57) : none;
        OptionalDouble max = measuredThreads ? OptionalDouble.of(63) : none;
        Setting perch = new Setting.Thread(1.5, false, 8, "notch");
        PerCorner<CornerSetup> corners = PerCorner.of(c -> new CornerSetup(OptionalDouble.of(c.isFront() ? 45 : 40),
                OptionalDouble.of(c.isFront() ? 0.72 : 0.8), none, none, OptionalDouble.of(20), none,
                List.of(new Adjuster(new AdjusterId(AdjusterKind.PERCH, c), perch, start, min, max, false))));
        List<HeightPoint> points = List.of(Corner.values()).stream().map(c -> new HeightPoint(c + " point", Optional.of(c),
                OptionalDouble.of(c.isFront() ? -200 : -2000), OptionalDouble.of(c.isLeft() ? 300 : -300))).toList();
        Map<ReadingId, Target> targets = new LinkedHashMap<>(more);
        targets.put(CROSS, new Target(50, 0.3));
        points.forEach(p -> targets.put(p.reading(), new Target(p.corner().orElseThrow().isFront() ? 62 : 70, 1)));
        SuspensionChoice measured = new SuspensionChoice("measured", Map.of());
        return new Car("light", "Light car", 2300, new PerAxle<>(new AxleSetup(1380, Optional.empty(), measured),
                new AxleSetup(1360, Optional.empty(), measured)), corners, new Masses(none, none, List.of()), points,
                new Targets(targets, CrossGoal.EQUAL_DIAGONALS), LoadCase.unknown(), Instruments.usual(), List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF));
    }
}
