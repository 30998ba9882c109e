package quoin.wheelangles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;

/** Side against side and the thrust angle; limits are common practice. */
class AngleChecksTest {

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

    private static ReadingId id(ReadingKind kind, Corner corner) {
        return ReadingId.of(kind, corner);
    }

    private static Entry axle(ReadingKind kind, Axle axle, double left, double right) {
        return read(Map.of(id(kind, axle.left()), left, id(kind, axle.right()), right));
    }

    /** The track-side check that began with -3 on the left and -5 on the right of a car thought fine. */
    @Test
    void cambersOfTheSidesAreCompared() {
        List<Finding> findings = AngleChecks.of(day(axle(ReadingKind.CAMBER, Axle.FRONT, -3, -5)));
        assertEquals(1, findings.size());
        assertTrue(findings.get(0).words().startsWith("LF camber is -3.00\u00b0 and RF -5.00\u00b0: 2.00\u00b0 apart"), findings.get(0).words());
        assertEquals(List.of(), AngleChecks.of(day(axle(ReadingKind.CAMBER, Axle.FRONT, -2.0, -2.2))));
    }

    @Test
    void aDifferenceThatIsWantedIsNoFinding() {
        Entry wanted = new Entry.TargetSet(new Header(0, Instant.EPOCH, ""), id(ReadingKind.CAMBER, Corner.RF), new Target(-2.7, 0.1));
        assertEquals(List.of(), AngleChecks.of(day(wanted, axle(ReadingKind.CAMBER, Axle.FRONT, -2.2, -2.7))));
        assertEquals(1, AngleChecks.of(day(wanted, axle(ReadingKind.CAMBER, Axle.FRONT, -2.4, -2.4))).size());
    }

    @Test
    void casterOfTheSidesMakesTheCarPull() {
        assertEquals(List.of(), AngleChecks.of(day(axle(ReadingKind.CASTER, Axle.FRONT, 5.8, 6.1))));
        assertTrue(AngleChecks.of(day(axle(ReadingKind.CASTER, Axle.FRONT, 5.8, 6.2))).get(0).words().contains("pull to the side"));
    }

    /** More toe-in on the left rear wheel points the rear axle to the right: half the difference. */
    @Test
    void theThrustAnglePointsAwayFromTheWheelWithMoreToeIn() {
        List<Finding> right = AngleChecks.of(day(axle(ReadingKind.TOE, Axle.REAR, 0.30, 0.10)));
        assertEquals(Optional.of(ReadingId.ofCar(ReadingKind.THRUST_ANGLE)), right.get(0).about());
        assertTrue(right.get(0).words().startsWith("Thrust angle 0.10\u00b0 to the right"), right.get(0).words());
        assertTrue(AngleChecks.of(day(axle(ReadingKind.TOE, Axle.REAR, 0.00, 0.20))).get(0).words().contains("to the left"));
        assertEquals(List.of(), AngleChecks.of(day(axle(ReadingKind.TOE, Axle.REAR, 0.15, 0.08))));
        assertEquals(List.of(), AngleChecks.of(day(axle(ReadingKind.TOE, Axle.FRONT, 0.30, 0.10))), "the front wheels steer");
    }

    @Test
    void casterIsReadFirstAndNeedsTheLockOut() {
        WheelAnglesStage stage = new WheelAnglesStage();
        assertEquals(List.of(id(ReadingKind.CASTER, Corner.LF), id(ReadingKind.CASTER, Corner.RF)),
                stage.readings(Ouzel23.car()).subList(0, 2).stream().sorted().toList());
        Requirement lock = stage.requirements(Ouzel23.car()).stream().filter(r -> r.key().equals(Conditions.STEERING)).findFirst()
                .orElseThrow();
        assertEquals(Set.of(ReadingKind.CAMBER, ReadingKind.TOE), lock.kinds());
        assertFalse(lock.appliesTo(ReadingKind.CASTER));
    }
}
