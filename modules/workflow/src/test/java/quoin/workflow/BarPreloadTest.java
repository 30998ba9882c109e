package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.adjustment.Verdict;
import quoin.car.AdjusterKind;
import quoin.car.AntiRollBar;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;

/** What joining the bars did, from the weighings around it. */
class BarPreloadTest {

    /** The test car with bars whose rate in roll is known, N/mm at the wheels. */
    private static DayBook book(double front, double rear) {
        Car car = DayBook.car();
        PerAxle<AxleSetup> axles = new PerAxle<>(bar(car, Axle.FRONT, front), bar(car, Axle.REAR, rear));
        return new DayBook(new Car(car.id(), car.name(), car.wheelbaseMm(), axles, car.corners(), car.masses(), car.heightPoints(),
                car.targets(), car.loadCase(), car.instruments(), car.walkingOrder())).prepared();
    }

    private static AxleSetup bar(Car car, Axle axle, double rate) {
        return new AxleSetup(car.trackMm(axle), Optional.of(new AntiRollBar(OptionalDouble.of(rate))), car.axles().get(axle).suspension());
    }

    private static DayBook weigh(DayBook book, double cross) {
        return book.read("corner-weights", DayBook.loads(cross));
    }

    private static Optional<BarPreload> preload(DayBook book) {
        return BarPreload.of(book.day());
    }

    private static DayBook join(DayBook book, String bar) {
        return book.condition(bar, Conditions.CONNECTED);
    }

    @Test
    void theLinkIsOffTheOtherWayWhereTheOtherWheelIsLoaded() {
        BarPreload left = preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 49.6)).orElseThrow();
        BarPreload right = preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 50.4)).orElseThrow();
        assertEquals(List.of(Axle.FRONT), left.joined());
        assertTrue(left.linkMm().get(Axle.FRONT) > 0, "LF took weight: plus loads the left wheel");
        assertEquals(-left.linkMm().get(Axle.FRONT), right.linkMm().get(Axle.FRONT), 0.01 * left.linkMm().get(Axle.FRONT));
        BarPreload rear = preload(weigh(join(weigh(book(20, 10), 50), "rear-bar"), 49.6)).orElseThrow();
        assertEquals(List.of(Axle.REAR), rear.joined());
        assertTrue(rear.linkMm().get(Axle.REAR) < 0, "less RF+LR with the rear bar is weight on RR");
        assertTrue(Math.abs(rear.linkMm().get(Axle.REAR)) > left.linkMm().get(Axle.FRONT), "a softer bar is further off for the same weight");
    }

    @Test
    void bothBarsAreComparedWithTheWeighingBeforeTheFirst() {
        DayBook book = weigh(join(weigh(book(20, 10), 50), "front-bar"), 50.05);
        BarPreload both = preload(weigh(join(book, "rear-bar"), 50.3)).orElseThrow();
        assertEquals(List.of(Axle.FRONT, Axle.REAR), both.joined());
        assertEquals(50, both.off().value(), 1e-9);
        assertEquals(0.3, both.difference().amount(), 1e-9);
        assertEquals(2, both.linkMm().size());
    }

    @Test
    void takenOffAndJoinedAnewTheLastTimeCounts() {
        DayBook book = weigh(join(weigh(book(20, 10), 50), "front-bar"), 50.5);
        weigh(book.condition("front-bar", Conditions.DISCONNECTED), 50.1);
        BarPreload again = preload(weigh(join(book, "front-bar"), 50.2)).orElseThrow();
        assertEquals(0.1, again.difference().amount(), 0.06, "against a weighing with the bar off");
        assertTrue(again.isFree());
    }

    @Test
    void withoutBothWeighingsThereIsNothingToSay() {
        assertEquals(Optional.empty(), preload(weigh(book(20, 10), 50)), "the bars were not joined");
        assertEquals(Optional.empty(), preload(weigh(join(book(20, 10), "front-bar"), 50)), "not weighed without them");
        DayBook three = join(weigh(book(20, 10), 50), "front-bar");
        Map<ReadingId, Double> loads = new HashMap<>(DayBook.loads(50.2));
        loads.remove(DayBook.load(Corner.RR));
        assertEquals(Optional.empty(), preload(three.read("corner-weights", loads)), "one corner was not weighed again");
        assertEquals(Optional.empty(), preload(weigh(join(weigh(book(20, 10), 50), "front-bar").condition(Conditions.FUEL, "12"), 50.2)),
                "fuel went out between");
        assertTrue(preload(weigh(join(weigh(book(20, 10), 50), "front-bar").condition(Conditions.DAMPERS, Conditions.RUNNING), 50.2)).isPresent(),
                "dampers move no weight");
        assertTrue(preload(weigh(join(weigh(book(20, 10).turn(AdjusterKind.PERCH, Corner.LF, 1).settle(), 50), "front-bar"), 50.2)).isPresent(),
                "what was turned before both is in both");
    }

    /** 0.9 % of 600 kg are 5.4 kg, half of it on each of RF and LR. */
    @Test
    void theVerdictTakesTheNoiseIntoAccount() {
        BarPreload far = preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 50.9)).orElseThrow();
        assertEquals(2.7, far.kgPerWheel(), 1e-9);
        assertEquals(Verdict.Answer.OUTSIDE, far.verdict().answer());
        BarPreload near = preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 50.16)).orElseThrow();
        assertEquals(Verdict.Answer.TOO_CLOSE, near.verdict().answer());
        assertTrue(preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 50.15)).orElseThrow().isFree(), "the limit itself is inside");
        assertTrue(preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 49.85)).orElseThrow().isFree());
        assertFalse(preload(weigh(join(weigh(book(20, 10), 50), "front-bar"), 49.8)).orElseThrow().isFree());
    }
}
