package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.adjustment.Verdict;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.car.Targets;

/** The cross weight the day aims at: by the rule the racer chose, and where the rule is about loads, by the loads as read. */
class CrossAimTest {

    /** LF equals RF and the car leans on its left rear: 160 and 140 kg behind 150 and 150. */
    private static final PerCorner<Double> LEVEL_FRONTS = new PerCorner<>(150.0, 150.0, 160.0, 140.0);

    private static Car car(Car car, CrossGoal goal, Optional<Target> typed) {
        Map<ReadingId, Target> readings = new LinkedHashMap<>(car.targets().readings());
        readings.remove(DayBook.CROSS);
        typed.ifPresent(t -> readings.put(DayBook.CROSS, t));
        return car.withTargets(new Targets(readings, goal));
    }

    private static Map<ReadingId, Double> loads(PerCorner<Double> kg) {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            values.put(DayBook.load(corner), kg.get(corner));
        }
        return values;
    }

    private static Optional<Target> aim(Car car, PerCorner<Double> kg) {
        return CrossAim.of(new DayBook(car).read("corner-weights", loads(kg)).day());
    }

    /**
     * A spring maker's printed example: left side 1364 lb, right side 1191 lb, both to carry 50.9 % in front, which puts 1276 lb
     * of 2555 on RF and LR. The car is read at 51 %; what it stands at now has no part in the aim.
     */
    @Test
    void sameFrontShareIsThePrintedExample() {
        double front = 0.509 * 2555;
        double lf = (front + 1364 - 0.51 * 2555) / 2;
        PerCorner<Double> pounds = new PerCorner<>(lf, front - lf, 1364 - lf, 1191 - front + lf);
        Car car = car(DayBook.car(), CrossGoal.SAME_FRONT_SHARE, Optional.of(new Target(47, 0.2)));
        Target aim = aim(car, pounds.map(p -> p * 0.45359237)).orElseThrow();
        assertEquals(100 * 1276.0 / 2555, aim.value(), 100 * 0.5 / 2555, "printed to the pound");
        double left = 1364.0 / 2555;
        assertEquals(100 * (0.509 + left - 2 * 0.509 * left), aim.value(), 1e-9, "f + l - 2 f l");
        assertEquals(0.2, aim.tolerance(), "the tolerance is the typed one, the value is not");
    }

    /**
     * By hand on tracks of 1380 and 1360 mm: 90 and 101 kg in front become 95.5 each; the 5.5 kg that change sides there do so
     * behind the other way, times 1380 / 1360.
     */
    @Test
    void equalFrontsCountWithBothTracks() {
        Car car = car(RoundPlannerTest.car(false, Map.of()), CrossGoal.EQUAL_FRONTS, Optional.empty());
        Target aim = aim(car, new PerCorner<>(90.0, 101.0, 146.0, 132.0)).orElseThrow();
        assertEquals(100 * (95.5 + 146 - 5.5 * 1380 / 1360) / 469, aim.value(), 1e-9);
        assertEquals(0.5, aim.tolerance(), "the usual one where none was typed (common practice, no source)");
    }

    @Test
    void aRuleOfLoadsWaitsForTheScales() {
        Car car = car(DayBook.car(), CrossGoal.EQUAL_FRONTS, Optional.of(new Target(49, 0.3)));
        assertEquals(Optional.empty(), CrossAim.of(new DayBook(car).day()));
        Map<ReadingId, Double> three = loads(LEVEL_FRONTS);
        three.remove(DayBook.load(Corner.RR));
        assertEquals(Optional.empty(), CrossAim.of(new DayBook(car).read("corner-weights", three).day()), "one scale not read");
        assertEquals(Optional.empty(), aim(car, PerCorner.all(0.0)), "scales with nothing on them");
    }

    @Test
    void equalDiagonalsAndATypedValueNeedNoScales() {
        Optional<Target> typed = Optional.of(new Target(49.2, 0.3));
        assertEquals(typed, CrossAim.of(new DayBook(car(DayBook.car(), CrossGoal.WANTED, typed)).day()));
        assertEquals(Optional.empty(), CrossAim.of(new DayBook(car(DayBook.car(), CrossGoal.WANTED, Optional.empty())).day()));
        assertEquals(Optional.of(new Target(50, 0.3)), CrossAim.of(new DayBook(car(DayBook.car(), CrossGoal.EQUAL_DIAGONALS, typed)).day()));
    }

    /** On equal tracks equal fronts mean a cross weight like the left share: (150 + 160) of 600 kg is 51.67 % and right. */
    @Test
    void theWeightsAreJudgedByTheRule() {
        OrderOfWork order = new OrderOfWork(PlainStage.day());
        Optional<Target> typed = Optional.of(new Target(50, 0.3));
        DayBook fronts = weighed(order, car(DayBook.car(), CrossGoal.EQUAL_FRONTS, typed));
        ReadingState cross = order.status(fronts.day()).reading(DayBook.CROSS);
        assertEquals(100 * 310.0 / 600, cross.target().orElseThrow().value(), 1e-9);
        assertEquals(Verdict.Answer.INSIDE, cross.verdict().orElseThrow().answer());
        assertTrue(order.signOff(fronts.day(), "corner-weights").allowed());
        assertEquals(cross.target().orElseThrow(), CarState.targets(fronts.day()).targets().get(DayBook.CROSS), "and so in every comparison");
        DayBook diagonals = weighed(order, car(DayBook.car(), CrossGoal.EQUAL_DIAGONALS, typed));
        assertEquals(Verdict.Answer.OUTSIDE, order.status(diagonals.day()).reading(DayBook.CROSS).verdict().orElseThrow().answer());
        assertFalse(order.signOff(diagonals.day(), "corner-weights").allowed());
    }

    private static DayBook weighed(OrderOfWork order, Car car) {
        return new DayBook(car).prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", loads(LEVEL_FRONTS));
    }
}
