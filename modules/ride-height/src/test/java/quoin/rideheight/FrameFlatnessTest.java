package quoin.rideheight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workflow.spi.Finding;

/** Heights of points on one plane are flat however the plane leans; the geometry is computed here from the marked places. */
class FrameFlatnessTest {

    private final Car car = Ouzel23.car();

    /** Heights at the car's points on the plane z = 66 + pitch x + roll y, pitch and roll in mm per metre. */
    private Map<Corner, Double> plane(double pitch, double roll) {
        Map<Corner, Double> heights = new EnumMap<>(Corner.class);
        for (Corner corner : Corner.values()) {
            HeightPoint point = car.heightPoint(corner).orElseThrow();
            heights.put(corner, 66 + pitch * point.xMm().getAsDouble() / 1000 + roll * point.yMm().getAsDouble() / 1000);
        }
        return heights;
    }

    private ReadingId id(Corner corner) {
        return car.heightPoint(corner).orElseThrow().reading();
    }

    private Entry readAt(Map<Corner, Double> heights) {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        heights.forEach((corner, value) -> values.put(id(corner), value));
        return read(values);
    }

    private static Day day(Entry... entries) {
        List<Entry> all = new ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car())));
        for (Entry entry : entries) {
            all.add(entry.withHeader(new Header(all.size() + 1, Instant.EPOCH, "")));
        }
        return Day.of(all);
    }

    private static Entry read(Map<ReadingId, Double> values) {
        return new Entry.Reading(new Header(0, Instant.EPOCH, ""), values, Map.of(), Entry.Source.RACER);
    }

    @Test
    void aPlaneIsFlatHoweverItLeans() {
        for (double roll : new double[] {-12, -3, 0, 5, 20}) {
            assertEquals(List.of(), FrameFlatness.of(day(readAt(plane(-3, roll)))), "roll " + roll);
        }
    }

    /** A height misread by 5 mm after a good round is found, with the value it may have been. */
    @Test
    void theMisreadHeightIsNamedWithWhatItMayHaveBeen() {
        for (Corner corner : Corner.values()) {
            for (double error : new double[] {-5, 5}) {
                Map<Corner, Double> flat = plane(-2.5, 4);
                Map<Corner, Double> misread = new EnumMap<>(flat);
                misread.put(corner, flat.get(corner) + error);
                List<Finding> findings = FrameFlatness.of(day(readAt(plane(-3, 3)), readAt(misread)));
                assertEquals(1, findings.size());
                assertEquals(Optional.of(id(corner)), findings.get(0).about());
                assertEquals(flat.get(corner), findings.get(0).suggested().getAsDouble(), 1e-9);
            }
        }
    }

    @Test
    void lessThanTheLimitIsLeftAlone() {
        Map<Corner, Double> heights = plane(-3, 0);
        heights.merge(Corner.RF, 1.4, Double::sum);
        assertEquals(List.of(), FrameFlatness.of(day(readAt(heights))));
        heights.merge(Corner.RF, 0.2, Double::sum);
        assertTrue(FrameFlatness.of(day(readAt(heights))).get(0).words().contains("1.6 mm"));
    }

    @Test
    void heightsOfDifferentRoundsAreNotCompared() {
        Map<Corner, Double> heights = plane(-3, 0);
        heights.merge(Corner.RF, 5.0, Double::sum);
        assertEquals(List.of(), FrameFlatness.of(day(readAt(plane(-3, 0)), read(Map.of(id(Corner.RF), heights.get(Corner.RF))))));
    }

    @Test
    void rakeIsJudgedOnlyWhereItHasATarget() {
        assertEquals(car.heightReadings(), new RideHeightStage().judged(car));
    }
}
