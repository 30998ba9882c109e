package quoin.car;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WalkingOrderTest {

    private final Car car = TestCars.with(PerCorner.of(c -> TestCars.corner(60, 0.7, List.of(TestCars.perch(c)))),
            List.of(TestCars.point("nose", null), TestCars.point("a", Corner.RF), TestCars.point("b", Corner.RR),
                    TestCars.point("c", Corner.LF), TestCars.point("d", Corner.LR), TestCars.point("second at LF", Corner.LF)),
            TestCars.ROUND);

    @Test
    void readingsAndAdjustersFollowTheWalk() {
        assertEquals(List.of("load.LF", "load.LR", "load.RR", "load.RF"), car.cornerReadings(ReadingKind.LOAD).stream().map(ReadingId::toString).toList());
        assertEquals(List.of("perch.LF", "perch.LR", "perch.RR", "perch.RF"), car.adjusters().stream().map(a -> a.id().toString()).toList());
    }

    @Test
    void heightsFollowTheWalkAndExtraPointsComeLastEachOnce() {
        assertEquals(List.of("height.c", "height.d", "height.b", "height.a", "height.nose", "height.second at LF"),
                car.heightReadings().stream().map(ReadingId::toString).toList());
        assertEquals("c", car.heightPoint(Corner.LF).orElseThrow().name());
    }

    @Test
    void adjustersAreFoundByTheirId() {
        assertEquals(TestCars.perch(Corner.RR), car.adjuster(AdjusterId.parse("perch.RR")).orElseThrow());
        assertEquals(Optional.empty(), car.adjuster(AdjusterId.parse("pushrod.RR")));
        assertEquals(1440, car.trackMm(Axle.FRONT));
        assertEquals(1420, car.trackMm(Axle.REAR));
    }
}
