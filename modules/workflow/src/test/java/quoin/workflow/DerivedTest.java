package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** What is made of the figures a racer types, by hand on a car of which no two figures are alike. */
class DerivedTest {

    private static final Car CAR = DayBook.car();
    private static final Map<ReadingId, Double> TYPED = typed();

    /** Loads 131, 149, 158, 162 kg; heights 60, 62, 70, 73 mm; toe 0.05, 0.20, 0.10, 0.40 deg. */
    private static Map<ReadingId, Double> typed() {
        Map<ReadingId, Double> values = new LinkedHashMap<>(DayBook.heights(60, 62, 70, 73));
        double[] loads = {131, 149, 158, 162};
        double[] toes = {0.05, 0.20, 0.10, 0.40};
        for (Corner corner : Corner.values()) {
            values.put(DayBook.load(corner), loads[corner.ordinal()]);
            values.put(DayBook.toe(corner), toes[corner.ordinal()]);
        }
        return values;
    }

    private static OptionalDouble value(ReadingId id, Map<ReadingId, Double> typed) {
        return Derived.value(CAR, id, r -> typed.containsKey(r) ? OptionalDouble.of(typed.get(r)) : OptionalDouble.empty());
    }

    private static void assertDerived(double expected, ReadingId id) {
        assertEquals(expected, value(id, TYPED).orElseThrow(), 1e-9, id.words());
    }

    @Test
    void sharesOfTheWeight() {
        assertDerived(600, ReadingId.ofCar(ReadingKind.TOTAL));
        assertDerived(100 * (149 + 158) / 600.0, DayBook.CROSS);
        assertDerived(100 * (131 + 149) / 600.0, ReadingId.ofCar(ReadingKind.FRONT_SHARE));
        assertDerived(100 * (131 + 158) / 600.0, ReadingId.ofCar(ReadingKind.LEFT_SHARE));
    }

    /** 71.5 mm behind and 61 in front: the nose is 10.5 mm lower. */
    @Test
    void rakeIsTheMeanRearLessTheMeanFront() {
        assertDerived(10.5, ReadingId.ofCar(ReadingKind.RAKE));
    }

    /** ISO 8855: with more toe-in on the right rear the rear axle steers the car to the left, (0.40 - 0.10) / 2. */
    @Test
    void toeOfAnAxleAndWhereItPoints() {
        assertDerived(0.25, new ReadingId(ReadingKind.TOTAL_TOE, Axle.FRONT.name()));
        assertDerived(0.5, new ReadingId(ReadingKind.TOTAL_TOE, Axle.REAR.name()));
        assertDerived(0.15, ReadingId.ofCar(ReadingKind.THRUST_ANGLE));
    }

    @Test
    void whatIsTypedIsItself() {
        assertDerived(0.2, DayBook.toe(Corner.RF));
        assertDerived(73, DayBook.height(Corner.RR));
    }

    @Test
    void aMissingPartLeavesTheWholeUnknown() {
        for (ReadingId id : Derived.all(CAR)) {
            for (ReadingId part : Derived.parts(CAR, id)) {
                Map<ReadingId, Double> without = new LinkedHashMap<>(TYPED);
                without.remove(part);
                assertEquals(OptionalDouble.empty(), value(id, without), id.words() + " without " + part.words());
            }
        }
        assertEquals(OptionalDouble.empty(), value(new ReadingId(ReadingKind.TOTAL_TOE, "MIDDLE"), TYPED), "no such axle");
    }

    /** An empty set of scales shows zeros: nothing to take a share of. */
    @Test
    void nothingHasNoShares() {
        Map<ReadingId, Double> empty = new LinkedHashMap<>();
        List.of(Corner.values()).forEach(c -> empty.put(DayBook.load(c), 0.0));
        assertEquals(OptionalDouble.of(0), value(ReadingId.ofCar(ReadingKind.TOTAL), empty));
        assertEquals(OptionalDouble.empty(), value(DayBook.CROSS, empty));
    }

    /** Rake needs a point at every corner. */
    @Test
    void aCarMeasuredAtThreePointsHasNoRake() {
        Car three = new Car(CAR.id(), CAR.name(), CAR.wheelbaseMm(), CAR.axles(), CAR.corners(), CAR.masses(), CAR.heightPoints().subList(0, 3),
                CAR.targets(), CAR.loadCase(), CAR.instruments(), CAR.walkingOrder());
        ReadingId rake = ReadingId.ofCar(ReadingKind.RAKE);
        assertTrue(Derived.all(CAR).contains(rake));
        assertFalse(Derived.all(three).contains(rake));
        assertEquals(List.of(), Derived.parts(three, rake));
        assertEquals(Derived.all(CAR).stream().filter(id -> !id.equals(rake)).toList(), Derived.all(three));
    }
}
