package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.suspension.spi.SuspensionTypes;

/** What each turn of the day did, from the readings on both sides of it. */
class ObservedTurnsTest {

    private static final SuspensionTypes NONE = new SuspensionTypes(List.of());
    private static final AdjusterId LF_PERCH = new AdjusterId(AdjusterKind.PERCH, Corner.LF);
    private static final AdjusterId RF_PERCH = new AdjusterId(AdjusterKind.PERCH, Corner.RF);
    private static final AdjusterId LF_TOE = new AdjusterId(AdjusterKind.TOE_LINK, Corner.LF);

    private static DayBook weighed(double cross) {
        return new DayBook().prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(cross));
    }

    private static List<ObservedTurns> observed(DayBook book) {
        return ObservedTurns.of(book.day(), NONE);
    }

    private static ObservedTurns observed(DayBook book, AdjusterId adjuster, ReadingId reading) {
        return observed(book).stream().filter(o -> o.adjuster().equals(adjuster) && o.reading().equals(reading)).findFirst().orElseThrow();
    }

    /** The mean of two equally sure rounds, each with the difference of two weighings: half the variance of one (JCGM 100:2008, 4.2.3). */
    @Test
    void roundsAreTakenTogether() {
        DayBook book = weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1).settle().read("corner-weights", DayBook.loads(51))
                .turn(AdjusterKind.PERCH, Corner.LF, -1).settle().read("corner-weights", DayBook.loads(50.2));
        ObservedTurns cross = observed(book, LF_PERCH, DayBook.CROSS);
        assertEquals(2, cross.rounds());
        assertEquals(0.9, cross.observed().amount(), 1e-6, "+1.0 and -0.8 for a turn up and a turn down");
        double one = new ReadingsAt(book.day()).at(DayBook.CROSS, book.size()).orElseThrow().uncertainty();
        assertEquals(one, cross.observed().uncertainty(), 1e-3 * one);
    }

    @Test
    void theMoveIsThatOfOneTurn() {
        DayBook book = weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 0.25).turn(AdjusterKind.PERCH, Corner.LF, 0.25).settle()
                .read("corner-weights", DayBook.loads(51));
        ObservedTurns cross = observed(book, LF_PERCH, DayBook.CROSS);
        assertEquals(1, cross.rounds());
        assertEquals(2, cross.observed().amount(), 1e-9);
        double difference = Math.sqrt(2) * new ReadingsAt(book.day()).at(DayBook.CROSS, book.size()).orElseThrow().uncertainty();
        assertEquals(2 * difference, cross.observed().uncertainty(), 2e-3 * difference, "half a turn tells half as surely of a whole one");
    }

    @Test
    void aRingTellsOfItsOwnCornerAndALinkOfItsOwnWheel() {
        DayBook ring = weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1).settle().read("corner-weights", DayBook.loads(51))
                .read("corner-weights", DayBook.heights(64, 62, 70, 70));
        assertEquals(Set.of(DayBook.CROSS, DayBook.load(Corner.LF), DayBook.height(Corner.LF)),
                observed(ring).stream().map(ObservedTurns::reading).collect(Collectors.toSet()));
        assertEquals(2, observed(ring, LF_PERCH, DayBook.height(Corner.LF)).observed().amount(), 1e-9);
        DayBook link = new DayBook().signedToAngles(new OrderOfWork(PlainStage.day())).turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5).settle();
        Map<ReadingId, Double> after = DayBook.goodAngles();
        after.put(DayBook.toe(Corner.LF), 0.3);
        link.read("wheel-angles", after);
        assertEquals(Set.of(DayBook.camber(Corner.LF), DayBook.caster(Corner.LF), DayBook.toe(Corner.LF)),
                observed(link).stream().map(ObservedTurns::reading).collect(Collectors.toSet()));
        assertEquals(0.4, observed(link, LF_TOE, DayBook.toe(Corner.LF)).observed().amount(), 1e-9, "0.2 deg of half a turn");
    }

    @Test
    void whatTheOthersOfTheRoundDidIsTakenOff() {
        DayBook book = weighed(50).turn(Map.of(LF_PERCH, 1.0, RF_PERCH, 0.5)).settle().read("corner-weights", DayBook.loads(50.4));
        ExpectedMove.Move other = new ExpectedMoves(book.day(), NONE).perUnit(RF_PERCH).get(DayBook.CROSS);
        ObservedTurns cross = observed(book, LF_PERCH, DayBook.CROSS);
        assertEquals(0.4 - 0.5 * other.amount(), cross.observed().amount(), 1e-9);
        assertTrue(cross.observed().uncertainty() > 0.5 * other.uncertainty());
    }

    @Test
    void withoutAReadingOnBothSidesThereIsNothingToTell() {
        assertEquals(List.of(), observed(weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1)), "not read since");
        assertEquals(List.of(), observed(new DayBook().prepared().turn(AdjusterKind.PERCH, Corner.LF, 1).settle()
                .read("corner-weights", DayBook.loads(50))), "not read before");
        assertEquals(List.of(), observed(weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1).turn(AdjusterKind.PERCH, Corner.LF, -1).settle()
                .read("corner-weights", DayBook.loads(50.4))), "turned and turned back");
        assertEquals(List.of(DayBook.load(Corner.LF)), observed(weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1).settle()
                .read("corner-weights", Map.of(DayBook.load(Corner.LF), 151.0))).stream().map(ObservedTurns::reading)
                .filter(id -> id.kind() != quoin.car.ReadingKind.CROSS).toList(), "only what was read again");
    }

    @Test
    void theRatioIsOfWhatWasExpected() {
        assertEquals(OptionalDouble.of(1.5), ratio(Optional.of(new ExpectedMove.Move(0.5, 0.1))));
        assertEquals(OptionalDouble.empty(), ratio(Optional.of(new ExpectedMove.Move(0, 0.1))));
        assertEquals(OptionalDouble.empty(), ratio(Optional.empty()));
        ObservedTurns cross = observed(weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1).settle()
                .read("corner-weights", DayBook.loads(49)), LF_PERCH, DayBook.CROSS);
        assertTrue(cross.ratio().orElseThrow() > 0, "LF up takes cross weight RF+LR away");
    }

    private static OptionalDouble ratio(Optional<ExpectedMove.Move> expected) {
        return new ObservedTurns(LF_PERCH, DayBook.CROSS, 1, new ExpectedMove.Move(0.75, 0.1), expected).ratio();
    }

    /** LF before RF, weight before height: as the sheet lists them, whatever was turned first. */
    @Test
    void theyStandInTheOrderOfTheCar() {
        DayBook book = weighed(50).turn(AdjusterKind.PERCH, Corner.RF, 1).settle().read("corner-weights", DayBook.loads(51))
                .read("corner-weights", DayBook.heights(62, 64, 70, 70)).turn(AdjusterKind.PERCH, Corner.LF, 1).settle()
                .read("corner-weights", DayBook.loads(50)).read("corner-weights", DayBook.heights(64, 64, 70, 70));
        assertEquals(List.of(LF_PERCH, LF_PERCH, LF_PERCH, RF_PERCH, RF_PERCH, RF_PERCH), observed(book).stream().map(ObservedTurns::adjuster).toList());
        assertEquals(List.of(DayBook.CROSS, DayBook.load(Corner.LF), DayBook.height(Corner.LF)),
                observed(book).subList(0, 3).stream().map(ObservedTurns::reading).toList());
    }

    /** Readings taken right after the turn belong to it, settled or not: +1.0 and then -0.8, nothing between. */
    @Test
    void aRoundBeginsAndEndsAtItsReadings() {
        DayBook book = weighed(50).turn(AdjusterKind.PERCH, Corner.LF, 1).read("corner-weights", DayBook.loads(51))
                .turn(AdjusterKind.PERCH, Corner.LF, -1).read("corner-weights", DayBook.loads(50.2));
        ObservedTurns cross = observed(book, LF_PERCH, DayBook.CROSS);
        assertEquals(2, cross.rounds());
        assertEquals(0.9, cross.observed().amount(), 1e-3);
    }
}
