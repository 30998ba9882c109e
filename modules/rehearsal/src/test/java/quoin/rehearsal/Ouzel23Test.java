package quoin.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Assumptions;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.Target;
import quoin.logbook.CarFile;

class Ouzel23Test {

    private final Car car = Ouzel23.car();

    @Test
    void nothingHasToBeAssumed() {
        assertEquals(List.of(), Assumptions.complete(car).assumptions());
        assertEquals(car, CarFile.fromText(CarFile.toText(car)));
    }

    @Test
    void threadsAreThoseOfTheCar() {
        assertEquals(1.5, thread("perch.LF").mmPerTurn());
        assertEquals(2.0, thread("perch.RR").mmPerTurn());
        assertEquals(8, thread("perch.RR").stepsPerTurn());
        assertEquals(2.117, thread("pushrod.LR").mmPerTurn(), 5e-4);
        assertTrue(car.adjuster(AdjusterId.parse("pushrod.LF")).isEmpty());
        for (Adjuster adjuster : car.adjusters()) {
            double start = adjuster.startMm().orElseThrow();
            assertTrue(start - adjuster.minMm().orElseThrow() >= 8 && adjuster.maxMm().orElseThrow() - start >= 8, adjuster.id().words());
        }
    }

    private Setting.Thread thread(String id) {
        return (Setting.Thread) car.adjuster(AdjusterId.parse(id)).orElseThrow().setting();
    }

    @Test
    void targetsHaveTheirSigns() {
        assertEquals(new Target(50, 0.3), target(ReadingId.ofCar(ReadingKind.CROSS)));
        assertEquals(-0.0616, target(ReadingId.of(ReadingKind.TOE, Corner.LF)).value(), 1e-4);
        assertEquals(0.1232, target(ReadingId.of(ReadingKind.TOE, Corner.RR)).value(), 1e-4);
        assertEquals(new Target(-1.6, 0.1), target(ReadingId.of(ReadingKind.CAMBER, Corner.LR)));
        assertEquals(List.of(62.0, 70.0, 70.0, 62.0), car.heightReadings().stream().map(id -> target(id).value()).toList());
        assertTrue(car.targets().of(ReadingId.of(ReadingKind.CASTER, Corner.LR)).isEmpty());
    }

    private Target target(ReadingId id) {
        return car.targets().of(id).orElseThrow();
    }

    /** The smallest step of every adjuster moves its reading less than the tolerance is wide, so targets can be met. */
    @Test
    void stepsAreFinerThanTheTolerances() {
        HiddenTruth truth = Ouzel23.truth();
        for (Adjuster adjuster : car.adjusters()) {
            Corner corner = adjuster.id().corner();
            AdjusterKind kind = adjuster.id().kind();
            if (kind.isSpringLeg()) {
                continue;
            }
            double step = thread(adjuster.id().toString()).turnsPerStep();
            HiddenTruth.Effect effect = truth.perUnit().get(kind);
            ReadingKind moved = kind == AdjusterKind.TOE_LINK ? ReadingKind.TOE : kind == AdjusterKind.CAMBER_ROD ? ReadingKind.CAMBER : ReadingKind.CASTER;
            double own = moved == ReadingKind.TOE ? effect.toeDeg() : moved == ReadingKind.CAMBER ? effect.camberDeg() : effect.casterDeg();
            assertTrue(step * own < 2 * target(ReadingId.of(moved, corner)).tolerance(), adjuster.id().words());
        }
    }

    @Test
    void driverSitsOnTheRight() {
        assertEquals(86, car.masses().massOf(KnownMass.Role.DRIVER));
        assertTrue(car.masses().known().stream().filter(m -> m.role() == KnownMass.Role.DRIVER).allMatch(m -> m.yMm() < 0));
    }
}
