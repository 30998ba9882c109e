package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
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
}
