package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.suspension.AdjusterEffect;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;

/** What links do to weights and heights, and what wheel travel does to the angles, by hand. */
class LegEffectsTest {

    /** Two turns of a rod that makes the leg 0.3 mm longer a turn. */
    private static final List<CornerMove> LONGER = List.of(new CornerMove(new AdjusterId(AdjusterKind.CAMBER_ROD, Corner.LF), 2,
            OptionalDouble.empty(), ""));
    private static final double LONGER_MM = 0.6;
    /** Four wheels of 600 kg at 2.2 Hz, less 4.2 % of unsprung mass each, on tyres of 200 N/mm (the usual assumptions), N/mm. */
    private static final double WHEEL_RATE = (150 - 0.042 * 600) * Math.pow(2 * Math.PI * 2.2, 2) / 1000;
    private static final double RATE = WHEEL_RATE * 200 / (WHEEL_RATE + 200);

    private static Map<Axle, AngleResponse> described() {
        AngleResponse response = new AngleResponse(new AngleChange(-0.03, 0.004, 0.01), new AngleChange(0.012, -0.002, 0.005),
                Map.of(AdjusterKind.CAMBER_ROD, new AdjusterEffect(AngleChange.NONE, 0.3)));
        return Map.of(Axle.FRONT, response, Axle.REAR, response);
    }

    /**
     * A rigid body on four equal springs k takes a leg that is h longer as a quarter each of heave, pitch, roll and warp: it rises h / 4
     * and puts k h / 4 more on LF and RR each, as much less on the others; what the tilt does to the weights leaves the diagonals.
     */
    @Test
    void aLongerLegLoadsItsDiagonal() {
        Day day = new DayBook().prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50)).day();
        Map<ReadingId, Predicted> effects = LegEffects.ofAngles(day, described(), LONGER);
        double quarterKg = RATE * LONGER_MM / 4 / 9.80665;
        double up = effects.get(DayBook.load(Corner.LF)).change() + effects.get(DayBook.load(Corner.RR)).change();
        double down = effects.get(DayBook.load(Corner.RF)).change() + effects.get(DayBook.load(Corner.LR)).change();
        assertEquals(2 * quarterKg, up, 0.01 * quarterKg);
        assertEquals(-2 * quarterKg, down, 0.01 * quarterKg);
        assertTrue(effects.get(DayBook.load(Corner.LF)).change() > 0.5 * quarterKg, "on the corner itself");
        Predicted cross = effects.get(DayBook.CROSS);
        assertEquals(50, cross.now(), 1e-9);
        assertEquals(-100 * 2 * quarterKg / 600, cross.change(), 0.01 * 100 * quarterKg / 600);
        double rise = Stream.of(Corner.values()).mapToDouble(c -> effects.get(DayBook.height(c)).change()).sum() / 4;
        assertEquals(LONGER_MM / 4, rise, 0.01 * LONGER_MM);
        assertEquals(62, effects.get(DayBook.height(Corner.RF)).now(), 1e-9);
    }

    /** A car that is not on the scales has heights only; what was not read has nothing to move from. */
    @Test
    void onlyWhatWasReadMoves() {
        DayBook book = new DayBook().prepared().read("ride-height", Map.of(DayBook.height(Corner.LF), 62.0, DayBook.height(Corner.RR), 70.0));
        assertEquals(Set.of(DayBook.height(Corner.LF), DayBook.height(Corner.RR)), LegEffects.ofAngles(book.day(), described(), LONGER).keySet());
        assertEquals(Map.of(), LegEffects.ofAngles(new DayBook().day(), described(), LONGER));
        assertEquals(Map.of(), LegEffects.ofAngles(book.day(), described(), List.of()), "nothing turned");
    }

    /** Fronts of 150 kg each are equal; the left rear carries 160 and the right one 140, so the rule wants 51.67 %. */
    @Test
    void theCrossIsJudgedByTheRuleOfTheDay() {
        Map<ReadingId, Double> loads = Map.of(DayBook.load(Corner.LF), 150.0, DayBook.load(Corner.RF), 150.0, DayBook.load(Corner.LR), 160.0,
                DayBook.load(Corner.RR), 140.0);
        DayBook book = new DayBook(DayBook.car().withTargets(DayBook.car().targets().with(CrossGoal.EQUAL_FRONTS)));
        book.prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", loads);
        Map<ReadingId, Predicted> effects = LegEffects.ofAngles(book.day(), described(), LONGER);
        assertEquals(100 * 310.0 / 600, effects.get(DayBook.CROSS).target().orElseThrow().value(), 1e-9);
        assertEquals(Optional.of(new Target(62, 1)), effects.get(DayBook.height(Corner.LF)).target());
        assertEquals(Optional.empty(), effects.get(DayBook.load(Corner.LF)).target());
    }

    /** LF goes 5 mm up into the body and RF 2 mm down: each angle takes its own travel and, on a live axle, the other wheel's. */
    @Test
    void anglesFollowTheTravelOfBothWheels() {
        Day day = new DayBook().read("wheel-angles", Map.of(DayBook.camber(Corner.LF), -2.0, DayBook.toe(Corner.LF), 0.1,
                DayBook.caster(Corner.LF), 5.8, DayBook.camber(Corner.RR), -1.5)).day();
        Map<ReadingId, Predicted> effects = LegEffects.ofTravel(day, described(), new PerCorner<>(5.0, -2.0, 3.0, 1.0));
        assertEquals(Set.of(DayBook.camber(Corner.LF), DayBook.toe(Corner.LF), DayBook.caster(Corner.LF), DayBook.camber(Corner.RR)), effects.keySet());
        assertEquals(-2 - 0.03 * 5 - 0.012 * 2, effects.get(DayBook.camber(Corner.LF)).predicted(), 1e-12);
        assertEquals(0.1 + 0.004 * 5 + 0.002 * 2, effects.get(DayBook.toe(Corner.LF)).predicted(), 1e-12);
        assertEquals(5.8 + 0.01 * 5 - 0.005 * 2, effects.get(DayBook.caster(Corner.LF)).predicted(), 1e-12);
        assertEquals(-1.5 - 0.03 * 1 + 0.012 * 3, effects.get(DayBook.camber(Corner.RR)).predicted(), 1e-12);
        assertEquals(Optional.of(new Target(0.1, 0.04)), effects.get(DayBook.toe(Corner.LF)).target());
    }
}
