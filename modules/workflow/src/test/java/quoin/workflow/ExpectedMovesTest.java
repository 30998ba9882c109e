package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.Turns;
import quoin.suspension.spi.SuspensionTypes;

/** How far a turn is expected to move every reading of the car. */
class ExpectedMovesTest {

    private static final AdjusterId LF = new AdjusterId(AdjusterKind.PERCH, Corner.LF);
    private static final AdjusterId RF = new AdjusterId(AdjusterKind.PERCH, Corner.RF);
    private static final AdjusterId LF_TOE = new AdjusterId(AdjusterKind.TOE_LINK, Corner.LF);
    private static final ReadingId TOTAL_TOE = new ReadingId(ReadingKind.TOTAL_TOE, Axle.FRONT.name());

    private static DayBook read() {
        return new DayBook().signedToAngles(new OrderOfWork(PlainStage.day()));
    }

    private static ExpectedMoves moves(DayBook book) {
        return new ExpectedMoves(book.day(), new SuspensionTypes(List.of()));
    }

    /** Moves add; their uncertainties, being independent, add in squares (JCGM 100:2008, 5.1.2). */
    @Test
    void turnsOfSeveralAdjustersAdd() {
        ExpectedMoves moves = moves(read());
        ExpectedMove.Move left = moves.perUnit(LF).get(DayBook.CROSS);
        ExpectedMove.Move right = moves.perUnit(RF).get(DayBook.CROSS);
        ExpectedMove.Move both = moves.of(Map.of(LF, 0.5, RF, -2.0), DayBook.CROSS).orElseThrow();
        assertEquals(0.5 * left.amount() - 2 * right.amount(), both.amount(), 1e-12);
        assertEquals(Math.hypot(0.5 * left.uncertainty(), 2 * right.uncertainty()), both.uncertainty(), 1e-12);
        assertTrue(left.amount() < 0 && right.amount() > 0, "LF up takes cross weight RF+LR away, RF up adds it");
    }

    @Test
    void whatNothingIsKnownOfHasNoMove() {
        assertEquals(Optional.empty(), moves(read()).of(Map.of(LF, 1.0), ReadingId.of(ReadingKind.PRESSURE, Corner.LF)));
        assertEquals(Optional.empty(), moves(read()).of(Map.of(), DayBook.CROSS));
        assertEquals(Map.of(), moves(new DayBook()).perUnit(LF), "nothing was read");
        ExpectedMoves heightsOnly = moves(new DayBook().prepared().read("ride-height", DayBook.goodHeights()));
        assertFalse(heightsOnly.perUnit(LF).containsKey(DayBook.load(Corner.LF)), "not weighed, so no weight to move");
        assertTrue(heightsOnly.perUnit(LF).get(DayBook.height(Corner.LF)).amount() > 0);
    }

    /** A perch lifts its corner and loads it and the corner across; total and front and left share stay (statics). */
    @Test
    void aPerchMovesNoMass() {
        Map<ReadingId, ExpectedMove.Move> perch = moves(read()).perUnit(LF);
        assertTrue(perch.get(DayBook.height(Corner.LF)).amount() > 0);
        assertTrue(perch.get(DayBook.load(Corner.LF)).amount() > 0 && perch.get(DayBook.load(Corner.RR)).amount() > 0);
        assertTrue(perch.get(DayBook.load(Corner.RF)).amount() < 0 && perch.get(DayBook.load(Corner.LR)).amount() < 0);
        assertEquals(0, perch.get(ReadingId.ofCar(ReadingKind.TOTAL)).amount(), 1e-6);
        assertEquals(0, perch.get(ReadingId.ofCar(ReadingKind.FRONT_SHARE)).amount(), 0.05);
        assertEquals(0, perch.get(ReadingId.ofCar(ReadingKind.LEFT_SHARE)).amount(), 0.05);
    }

    /** One toe in, and the axle's total toe is in by as much; the thrust angle is of the rear. */
    @Test
    void aLinkMovesItsOwnWheel() {
        Map<ReadingId, ExpectedMove.Move> link = moves(read()).perUnit(LF_TOE);
        double toe = link.get(DayBook.toe(Corner.LF)).amount();
        assertTrue(toe > 0);
        assertEquals(toe, link.get(TOTAL_TOE).amount(), 1e-9);
        assertEquals(link.get(DayBook.toe(Corner.LF)).uncertainty(), link.get(TOTAL_TOE).uncertainty(), 1e-9);
        assertFalse(link.containsKey(DayBook.toe(Corner.RF)));
        assertFalse(link.containsKey(new ReadingId(ReadingKind.TOTAL_TOE, Axle.REAR.name())));
    }

    @Test
    void turnsAreCountedBetweenTwoEntriesNet() {
        DayBook book = new DayBook().turn(AdjusterKind.PERCH, Corner.LF, 4);
        long after = book.size();
        book.turn(AdjusterKind.PERCH, Corner.LF, 1).turn(AdjusterKind.PERCH, Corner.LF, 0.5).turn(AdjusterKind.PERCH, Corner.RF, 2)
                .turn(AdjusterKind.PERCH, Corner.RF, -2);
        long upTo = book.size();
        book.turn(AdjusterKind.PERCH, Corner.LF, 8);
        assertEquals(Map.of(LF, 1.5), ExpectedMoves.turnedBetween(book.day(), after, upTo));
        assertEquals(Map.of(LF, 9.5), ExpectedMoves.turnedBetween(book.day(), after, book.size()));
    }

    @Test
    void theLargestPartIsNamedFirst() {
        DayBook book = read();
        long signed = book.size();
        book.turn(AdjusterKind.PERCH, Corner.RF, 0.25).turn(AdjusterKind.PERCH, Corner.LF, 1).turn(AdjusterKind.BAR_LINK, Corner.LF, 1);
        List<ExpectedMoves.Part> parts = moves(book).parts(DayBook.CROSS, signed, book.size());
        assertEquals(List.of(LF, RF), parts.stream().map(ExpectedMoves.Part::adjuster).toList());
        assertEquals(List.of(1.0, 0.25), parts.stream().map(ExpectedMoves.Part::turns).toList());
    }

    private static ExpectedMoves straight(DayBook book) {
        return new ExpectedMoves(book.day(), new SuspensionTypes(List.of(new StraightSuspension("measured"))));
    }

    /** A turn at LF, solved anew: the angle goes with the travel of the wheel, known to a quarter (common practice, no source). */
    @Test
    void aPerchMovesTheAnglesByTheTravelOfTheWheel() {
        LegBelief legs = LegBelief.of(read().day()).orElseThrow();
        Map<ReadingId, ExpectedMove.Move> perch = straight(read()).perUnit(LF);
        PerCorner<Double> before = CornerLoads.solve(legs.standing().car(), Turns.NONE).wheelTravelMm();
        PerCorner<Double> after = CornerLoads.solve(legs.standing().car(), new Turns(new PerCorner<>(1.0, 0.0, 0.0, 0.0), PerCorner.all(0.0))).wheelTravelMm();
        for (Corner corner : Corner.values()) {
            ExpectedMove.Move camber = perch.get(DayBook.camber(corner));
            assertEquals(StraightSuspension.CAMBER_PER_MM * (after.get(corner) - before.get(corner)), camber.amount(), 1e-3, corner.name());
            assertEquals(0.25 * Math.abs(camber.amount()), camber.uncertainty(), 1e-12);
        }
        assertTrue(perch.get(DayBook.camber(Corner.LF)).amount() > 0.02, "the wheel drops, its top leans out");
    }

    /**
     * By hand: a leg 0.3 mm longer on four equal springs k puts k h / 4 on LF and RR each, k 2.2 Hz at 600 kg in series with a tyre of
     * 200 N/mm, 21.3 N/mm. All of it is known to a quarter (common practice, no source).
     */
    @Test
    void aCamberRodMovesTheWeightsByTheLengthOfTheLeg() {
        Map<ReadingId, ExpectedMove.Move> rod = straight(read()).perUnit(new AdjusterId(AdjusterKind.CAMBER_ROD, Corner.LF));
        double quarterKg = 21.306 * StraightSuspension.CAMBER_TO_LEG_MM / 4 / 9.80665;
        ExpectedMove.Move cross = rod.get(DayBook.CROSS);
        assertEquals(-100 * 2 * quarterKg / 600, cross.amount(), 0.01 * 100 * quarterKg / 600);
        assertEquals(0.25 * Math.abs(cross.amount()), cross.uncertainty(), 1e-9);
        double rise = 0;
        for (Corner corner : Corner.values()) {
            ExpectedMove.Move height = rod.get(DayBook.height(corner));
            assertEquals(0.25 * Math.abs(height.amount()), height.uncertainty(), 1e-12);
            rise += height.amount() / 4;
        }
        assertEquals(StraightSuspension.CAMBER_TO_LEG_MM / 4, rise, 0.01 * StraightSuspension.CAMBER_TO_LEG_MM);
        assertEquals(StraightSuspension.CAMBER, rod.get(DayBook.camber(Corner.LF)).amount(), 1e-9);
    }

    /** A perch that did half as much again as described in every round is expected to do more next time, in everything it moves. */
    @Test
    void whatTheRoundsShowedIsExpectedOfTheNext() {
        DayBook book = read();
        Map<ReadingId, ExpectedMove.Move> before = straight(book).perUnit(LF);
        Map<ReadingId, Double> up = DayBook.everything();
        up.keySet().removeIf(id -> Staleness.isAngle(id));
        Map<ReadingId, Double> still = new LinkedHashMap<>(up);
        up.replaceAll((id, value) -> value + 1.5 * before.get(id).amount());
        for (int i = 0; i < 3; i++) {
            book.turn(AdjusterKind.PERCH, Corner.LF, 1).settle().read("final-recheck", up)
                    .turn(AdjusterKind.PERCH, Corner.LF, -1).settle().read("final-recheck", still);
        }
        Map<ReadingId, ExpectedMove.Move> after = straight(book).perUnit(LF);
        for (ReadingId id : List.of(DayBook.height(Corner.LF), DayBook.load(Corner.LF), DayBook.camber(Corner.LF))) {
            double more = after.get(id).amount() / before.get(id).amount();
            assertTrue(more > 1.01 && more < 1.5, id.words() + " " + more);
        }
    }

    /** A toe link leaves camber as it is: it has no part in what camber did. */
    @Test
    void whatMovesAReadingNothingHasNoPartInIt() {
        DayBook book = read();
        long signed = book.size();
        book.turn(AdjusterKind.TOE_LINK, Corner.LF, 2).turn(AdjusterKind.PERCH, Corner.LF, 1).turn(AdjusterKind.CAMBER_ROD, Corner.LF, 1);
        assertEquals(List.of(new AdjusterId(AdjusterKind.CAMBER_ROD, Corner.LF), LF),
                straight(book).parts(DayBook.camber(Corner.LF), signed, book.size()).stream().map(ExpectedMoves.Part::adjuster).toList());
    }
}
