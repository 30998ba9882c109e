package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.adjustment.Verdict;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;

/**
 * Readings of one and the same state of the car: their mean, its uncertainty, and what is no repeat. Figures are worked out
 * here by JCGM 100:2008, 4.2.3: the rule of the step is half a millimetre over the root of twelve, the usual spread 0.3 mm
 * counts like three degrees of freedom.
 */
class RepeatsTest {

    private static final ReadingId LF = DayBook.height(Corner.LF);
    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private static DayBook read(DayBook book, double mm) {
        return book.read("ride-height", Map.of(LF, mm));
    }

    private DayBook prepared() {
        return new DayBook().prepared().sign(order, "preparation");
    }

    private ReadingState state(DayBook book) {
        return order.status(book.day()).reading(LF);
    }

    @Test
    void theVerdictIsOnTheMeanWithItsOwnUncertainty() {
        DayBook book = read(read(read(prepared(), 62.0), 62.4).settle(), 62.2);
        ReadingState state = state(book);
        assertEquals(62.2, state.value().orElseThrow(), 1e-12);
        assertEquals(3, state.count());
        double squares = 0.2 * 0.2 + 0.2 * 0.2;
        double spread2 = (3 * 0.3 * 0.3 + squares) / 5;
        double u = Math.sqrt(0.25 / 12 + spread2 / 3);
        assertEquals(u, state.uncertainty(), 1e-12);
        Verdict expected = Verdict.of(62.2, 62, 1, u);
        assertEquals(expected, state.verdict().orElseThrow());
        assertEquals(new Measured(62.2, u, 3, book.size()).uncertainty(), new ReadingsAt(book.day()).at(LF, book.size()).orElseThrow()
                .uncertainty(), 1e-12, "the same by the other way");
    }

    @Test
    void oneReadingStandsForItself() {
        ReadingState state = state(read(prepared(), 62.4));
        assertEquals(1, state.count());
        assertEquals(Math.sqrt(0.25 / 12 + 0.09), state.uncertainty(), 1e-12);
    }

    @Test
    void aTurnBetweenThemMakesThemTwoStates() {
        DayBook book = read(read(prepared(), 61.0).turn(AdjusterKind.PERCH, Corner.LF, 0.5).settle(), 62.0);
        assertEquals(62.0, state(book).value().orElseThrow());
        assertEquals(1, state(book).count());
    }

    @Test
    void aReadingFarOffIsASlipAndNoRepeat() {
        assertEquals(62.0, state(read(read(prepared(), 26.0), 62.0)).value().orElseThrow());
    }

    @Test
    void otherConditionsAreAnotherState() {
        DayBook book = read(read(prepared(), 62.0).condition(Conditions.BRAKES, Conditions.ON), 62.4);
        ReadingsAt at = new ReadingsAt(book.day());
        assertEquals(62.4, at.at(LF, book.size()).orElseThrow().value());
        assertNotEquals(2, at.at(LF, book.size()).orElseThrow().count());
    }

    /** The share is that of the mean loads; its spread is that of the weighings taken together. */
    @Test
    void crossIsTheMeanOfWholeWeighings() {
        DayBook book = prepared().read("ride-height", DayBook.goodHeights()).sign(order, "ride-height")
                .read("corner-weights", DayBook.loads(50.2)).settle().read("corner-weights", DayBook.loads(49.9));
        ReadingState cross = order.status(book.day()).reading(DayBook.CROSS);
        assertEquals(50.05, cross.value().orElseThrow(), 1e-9);
        assertEquals(2, cross.count());
        double scale = 0.2 / Math.sqrt(12);
        double step = 100 * scale / 600;
        double spread2 = (3 * 0.1 * 0.1 + 2 * 0.15 * 0.15) / 4;
        assertEquals(Math.sqrt(step * step + spread2 / 2), cross.uncertainty(), 1e-5);
    }

    /** JCGM 100:2008, 5.1.2 and 6.3.3: uncertainties add in squares, the band is twice their sum. */
    @Test
    void aDifferenceCarriesBothUncertainties() {
        Difference difference = Difference.of(new Measured(50, 0.03, 1, 1), new Measured(50.1, 0.04, 2, 9));
        assertEquals(0.05, difference.uncertainty(), 1e-12);
        assertEquals(0.1, difference.band(), 1e-12);
        assertEquals(Difference.Word.TOO_CLOSE, new Difference(0.09, 0.05).word());
        assertEquals(Difference.Word.MOVED, new Difference(-0.11, 0.05).word());
        assertEquals(Difference.Word.SAME, new Difference(-0.05, 0.05).word());
        assertEquals(0, Difference.of(new Measured(1, 0.2, 1, 3), new Measured(1, 0.1, 1, 4)).amount());
    }

    /** Ticks of nuts and of the check of the car, and the name of the place, move nothing: the readings around them repeat each other. */
    @Test
    void whatMovesNothingLeavesRepeats() {
        DayBook book = read(prepared(), 62.0).condition(Conditions.LOCKNUTS, Conditions.YES).condition(CarCheck.key("damper-shafts"), CarCheck.GOOD)
                .condition(Conditions.PLACE, "our garage").condition(Loosened.keyOfPart("seat bolts"), Loosened.TIGHT);
        assertEquals(2, state(read(book, 62.4)).count());
        assertEquals(3, state(read(book.settle(), 62.4)).count());
    }

    /** Two corners read twice tell of a third: 0.4 mm and 0.2 mm apart are squares of 0.08 and 0.02 with a degree of freedom each. */
    @Test
    void theSpreadOfAllCornersCountsForEach() {
        Map<ReadingId, Double> once = Map.of(LF, 62.0, DayBook.height(Corner.RF), 62.0, DayBook.height(Corner.LR), 70.0);
        DayBook book = prepared().read("ride-height", once).read("ride-height", Map.of(LF, 62.4, DayBook.height(Corner.RF), 62.2));
        double spread2 = (3 * 0.3 * 0.3 + 0.08 + 0.02) / 5;
        assertEquals(Math.sqrt(0.25 / 12 + spread2 / 2), state(book).uncertainty(), 1e-9);
        assertEquals(Math.sqrt(0.25 / 12 + spread2), order.status(book.day()).reading(DayBook.height(Corner.LR)).uncertainty(), 1e-9);
        RepeatSpread early = RepeatSpread.of(book.day(), ReadingKind.HEIGHT);
        assertEquals(2, early.freedom());
        book.read("ride-height", Map.of(LF, 62.2));
        assertEquals(3, RepeatSpread.of(book.day(), ReadingKind.HEIGHT).freedom());
        assertEquals(0.1, RepeatSpread.of(book.day(), ReadingKind.HEIGHT).squares(), 1e-9, "62.2 is the mean of the other two");
    }

    /** A figure that no longer holds, or never counted, gets no verdict. */
    @Test
    void onlyWhatHoldsIsJudged() {
        DayBook book = read(prepared(), 62.0);
        assertEquals(Verdict.Answer.INSIDE, state(book).verdict().orElseThrow().answer());
        assertEquals(Freshness.DOUBTFUL, state(book.condition(Conditions.SETTLED, Conditions.NO)).freshness());
        assertEquals(Verdict.Answer.INSIDE, state(book).verdict().orElseThrow().answer(), "doubtful, and judged");
        assertEquals(Optional.empty(), state(book.turn(AdjusterKind.PERCH, Corner.LF, 0.5)).verdict());
        assertEquals(Optional.empty(), state(read(book, 62.0)).verdict(), "read before the car was settled");
    }
}
