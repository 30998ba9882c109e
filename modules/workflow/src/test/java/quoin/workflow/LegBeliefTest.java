package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.adjustment.CornerSpring;
import quoin.adjustment.LearningPrior;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.Instruments;
import quoin.car.HeightPoint;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.Turns;

/** Where learning starts: the car as described, its instruments, and how it was last read. */
class LegBeliefTest {

    private static Car with(List<HeightPoint> points, Instruments instruments) {
        Car car = DayBook.car();
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), car.corners(), car.masses(), points, car.targets(), car.loadCase(),
                instruments, car.walkingOrder());
    }

    private static LearningPrior prior(Car car) {
        return LegBelief.unread(new DayBook(car).day());
    }

    private static void assertAt(double wheelXMm, double wheelYMm, double pointXMm, double pointYMm, CornerSpring at) {
        assertEquals(List.of(wheelXMm, wheelYMm, pointXMm, pointYMm), List.of(at.xMm(), at.yMm(), at.heightXMm(), at.heightYMm()));
    }

    /**
     * ISO 8855, from the front axle: x forward, y left; tracks of 1400 mm, wheelbase 2300 mm. A point that is not placed lies at a
     * fifth of the track (common practice, no source); a corner without a point is taken at its wheel.
     */
    @Test
    void everyCornerStandsWhereTheCarHasIt() {
        List<CornerSpring> corners = prior(with(DayBook.car().heightPoints().subList(0, 3), Instruments.usual())).corners();
        assertAt(0, 700, 0, 280, corners.get(0));
        assertAt(0, -700, 0, -280, corners.get(1));
        assertAt(-2300, 700, -2300, 280, corners.get(2));
        assertAt(-2300, -700, -2300, -700, corners.get(3));
        List<HeightPoint> rear = DayBook.car().heightPoints().subList(2, 4);
        List<CornerSpring> fronts = prior(with(rear, Instruments.usual())).corners();
        assertAt(0, 700, 0, 700, fronts.get(0));
        assertAt(0, -700, 0, -700, fronts.get(1));
    }

    /** Scales: 0.15 kg of setting on again and a rectangle of 0.2 kg, in squares, in N. Heights: 0.73 steps either way, at least 0.2 mm. */
    @Test
    void theInstrumentsMakeTheNoise() {
        List<HeightPoint> points = DayBook.car().heightPoints();
        LearningPrior usual = prior(with(points, new Instruments(0.2, 0.5, 0.1, 0.25)));
        assertEquals(9.80665 * Math.sqrt(0.15 * 0.15 + 0.2 * 0.2 / 12), usual.noise().scaleSdN(), 1e-9);
        assertEquals(0.5 * 0.73 / Math.sqrt(3), usual.noise().heightSdMm(), 1e-9);
        LearningPrior coarse = prior(with(points, new Instruments(1, 1, 0.1, 0.25)));
        assertEquals(9.80665 * Math.sqrt(0.15 * 0.15 + 1 / 12.0), coarse.noise().scaleSdN(), 1e-9);
        assertEquals(0.73 / Math.sqrt(3), coarse.noise().heightSdMm(), 1e-9);
        assertEquals(0.2, prior(with(points, new Instruments(0.2, 0.1, 0.1, 0.25))).noise().heightSdMm(), "nobody reads a rule better");
    }

    /** The car the plan starts from stands as it was read: solved anew it shows the same weights and heights. */
    @Test
    void theCarStandsAsItWasRead() {
        DayBook book = new DayBook().prepared().read("ride-height", DayBook.heights(63, 61, 72, 69)).read("corner-weights", DayBook.loads(51));
        Equilibrium standing = CornerLoads.solve(LegBelief.of(book.day()).orElseThrow().standing().car(), Turns.NONE);
        DayBook.heights(63, 61, 72, 69).forEach((id, mm) -> assertEquals(mm, standing.rideHeightsMm().get(id.place()), 1e-6, id.words()));
        DayBook.loads(51).forEach((id, kg) -> assertEquals(kg, standing.loadsKgf().get(Corner.valueOf(id.place())), 1e-6, id.words()));
    }
}
