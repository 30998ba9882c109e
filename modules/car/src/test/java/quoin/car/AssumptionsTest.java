package quoin.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AssumptionsTest {

    private static Assumption named(AssumedCar car, String field) {
        return car.assumptions().stream().filter(a -> a.field().equals(field)).findFirst()
                .orElseThrow(() -> new AssertionError(field + " is not among " + car.assumptions()));
    }

    @Test
    void everythingUnknownIsFilledAndListed() {
        AssumedCar car = Assumptions.complete(TestCars.bare());
        assertEquals(600, named(car, "total mass").value());
        assertEquals(0.18 * 2380, named(car, "centre of gravity height").value(), 1e-9);
        for (Corner corner : Corner.values()) {
            AssumedCorner at = car.corners().get(corner);
            assertEquals(at.springRateNPerMm(), named(car, corner + " spring rate").value());
            assertEquals(0.75, named(car, corner + " motion ratio").value());
            assertEquals(200, at.tyreRateNPerMm());
            assertEquals(0.042 * 600, at.unsprungMassKg(), 1e-9);
            assertEquals(360, at.rimChordMm());
            assertEquals(1, at.springLeg().size());
            assertEquals("RR perch pitch", named(car, "RR perch pitch").field());
        }
        assertTrue(car.assumptions().stream().noneMatch(a -> a.rule().isBlank()));
    }

    /** A spring assumed from the ride frequency gives that frequency back: sqrt(k/m) / 2 pi (any handbook). */
    @Test
    void assumedSpringGivesTheRideFrequency() {
        AssumedCorner corner = Assumptions.complete(TestCars.bare()).corners().lf();
        double sprungKg = 600 / 4.0 - corner.unsprungMassKg();
        assertEquals(2.2, Math.sqrt(corner.wheelRateNPerMm() * 1000 / sprungKg) / (2 * Math.PI), 1e-9);
    }

    @Test
    void whatWasWeighedIsNotAssumed() {
        AssumedCar car = Assumptions.complete(TestCars.bare(), OptionalDouble.of(480));
        assertEquals(480, car.totalKg());
        assertTrue(car.assumptions().stream().noneMatch(a -> a.field().equals("total mass")));
        assertEquals(0.042 * 480, car.corners().rr().unsprungMassKg(), 1e-9);
    }

    @Test
    void knownValuesAreTakenAsTheyAre() {
        Car known = TestCars.with(PerCorner.of(c -> TestCars.corner(61.3, 0.72, List.of(TestCars.perch(c)))), List.of(), TestCars.ROUND);
        AssumedCar car = Assumptions.complete(known);
        assertEquals(61.3 * 0.72 * 0.72, car.corners().lf().wheelRateNPerMm(), 1e-12);
        assertEquals(List.of(TestCars.perch(Corner.LF)), car.corners().lf().springLeg());
        assertTrue(car.assumptions().stream().noneMatch(a -> a.field().contains("spring rate") || a.field().contains("perch")));
    }

    @Test
    void pushrodRatioIsAssumedOnlyWhereThereIsAPushrod() {
        Adjuster rod = Adjuster.unmeasured(new AdjusterId(AdjusterKind.PUSHROD, Corner.LR), new Setting.Thread(1, true, 6, "flat"));
        PerCorner<CornerSetup> corners = PerCorner.<CornerSetup>of(c -> TestCars.corner(60, 0.8, List.of(TestCars.perch(c))))
                .with(Corner.LR, TestCars.corner(60, 0.8, List.of(TestCars.perch(Corner.LR), rod)));
        AssumedCar car = Assumptions.complete(TestCars.with(corners, List.of(), TestCars.ROUND));
        assertEquals(0.8, named(car, "LR pushrod ratio").value());
        assertTrue(car.assumptions().stream().noneMatch(a -> a.field().equals("RR pushrod ratio")));
        assertEquals(1 / 0.8, car.corners().lr().liftPerThreadMm(AdjusterKind.PUSHROD), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> car.corners().lr().liftPerThreadMm(AdjusterKind.TOE_LINK));
    }

    @Test
    void heightPointsGetAPlace() {
        List<HeightPoint> points = List.of(TestCars.point("a", Corner.LF), TestCars.point("b", Corner.RR),
                new HeightPoint("nose", Optional.empty(), OptionalDouble.of(300), OptionalDouble.empty()));
        AssumedCar car = Assumptions.complete(TestCars.with(PerCorner.all(CornerSetup.unknown()), points, TestCars.ROUND));
        assertEquals(new AssumedCar.PlacedPoint("a", 0, 288), car.heightPoints().get(0));
        assertEquals(new AssumedCar.PlacedPoint("b", -2380, -284), car.heightPoints().get(1));
        assertEquals(300, car.heightPoints().get(2).xMm());
        assertTrue(car.assumptions().stream().noneMatch(a -> a.field().equals("nose x")));
    }
}
