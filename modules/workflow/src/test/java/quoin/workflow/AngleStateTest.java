package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;
import quoin.suspension.spi.SuspensionTypes;

/** Where an angle stands by all its readings, against means worked by hand. */
class AngleStateTest {

    private static final ReadingId CAMBER = DayBook.camber(Corner.LF);
    private static final ReadingUncertainty UNCERTAINTY = new ReadingUncertainty(DayBook.car());
    private static final double ONE = UNCERTAINTY.of(CAMBER, new double[0], List.of());

    private static Optional<AngleState> state(DayBook book) {
        return AngleState.of(book.day(), CAMBER, belief(book), UNCERTAINTY);
    }

    private static AngleBelief belief(DayBook book) {
        return new AngleBelief(book.day(), AnglePlanner.described(book.day().car(), new SuspensionTypes(List.of())), UNCERTAINTY);
    }

    private static DayBook read(double... cambers) {
        DayBook book = new DayBook();
        for (double camber : cambers) {
            book.read("wheel-angles", Map.of(CAMBER, camber));
        }
        return book;
    }

    private static void read(DayBook book, double camber, double u) {
        book.add(new Entry.Reading(new Header(0, Instant.EPOCH, "wheel-angles"), Map.of(CAMBER, camber), Map.of(), Entry.Source.RACER,
                Optional.of(new Measurement("gauge", Map.of(), "", Map.of(CAMBER, u)))));
    }

    @Test
    void equalReadingsCountAlike() {
        assertEquals(Optional.empty(), state(new DayBook()));
        assertEquals(Optional.of(new AngleState(-2, ONE)), state(read(-2)));
        AngleState three = state(read(-2.0, -2.2, -1.8)).orElseThrow();
        assertEquals(-2, three.mean(), 1e-12);
        assertEquals(ONE / Math.sqrt(3), three.sd(), 1e-12, "the mean of three");
    }

    /** Weighted by one over the squared uncertainty: 3 of 4 parts for the reading that is surer by the root of three. */
    @Test
    void theSurerReadingCountsMore() {
        DayBook book = read();
        double repeat2 = 0.04 * 0.04;
        read(book, -2.0, Math.sqrt(0.09 - repeat2));
        read(book, -1.6, Math.sqrt(0.03 - repeat2));
        AngleState state = state(book).orElseThrow();
        assertEquals(-1.7, state.mean(), 1e-9);
        assertEquals(Math.sqrt(1 / (1 / 0.09 + 1 / 0.03)), state.sd(), 1e-9);
    }

    @Test
    void itsOwnLinkCarriesItOnLessSurely() {
        DayBook book = read(-2).turn(AdjusterKind.CAMBER_ROD, Corner.LF, 2).turn(AdjusterKind.CAMBER_ROD, Corner.RF, 5);
        AngleState state = state(book).orElseThrow();
        double perTurn = belief(book).effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD);
        assertEquals(-2 + 2 * perTurn, state.mean(), 1e-12, "the other wheel's rod moves the other wheel");
        double sd = belief(book).sd(Axle.FRONT, ReadingKind.CAMBER, Map.of(AdjusterKind.CAMBER_ROD, 2.0));
        assertEquals(Math.hypot(ONE, sd), state.sd(), 1e-12);
    }

    @Test
    void whatDisturbsEveryAngleMakesItUnknown() {
        assertEquals(Optional.empty(), state(read(-2).turn(AdjusterKind.PERCH, Corner.RR, 0.125)));
        assertEquals(Optional.empty(), state(read(-2).turn(AdjusterKind.PUSHROD, Corner.LF, 0.5)));
        assertEquals(Optional.empty(), state(read(-2).condition(Conditions.PADS, Conditions.MOVED)));
        assertEquals(Optional.empty(), state(read(-2).condition(Conditions.TYRES, "wets")));
        assertEquals(-2, state(read(-2).condition(Conditions.FUEL, "12")).orElseThrow().mean());
        AngleState again = state(read(-2).turn(AdjusterKind.PERCH, Corner.RR, 0.125).read("wheel-angles", Map.of(CAMBER, -1.9))).orElseThrow();
        assertEquals(new AngleState(-1.9, ONE), again, "only what was read since counts");
    }

    /** A rod that does more than was guessed: the wheel across the axle, read before and after, teaches both. */
    @Test
    void oneWheelTeachesTheOtherOfItsAxle() {
        DayBook book = new DayBook().read("wheel-angles", Map.of(DayBook.camber(Corner.RF), -2.0));
        double guess = belief(book).effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD);
        book.turn(AdjusterKind.CAMBER_ROD, Corner.RF, 2).read("wheel-angles", Map.of(DayBook.camber(Corner.RF), -0.8));
        double learnt = belief(book).effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD);
        assertEquals(0.6, learnt, 0.03, "1.2 deg of two turns; guessed was " + guess);
        assertEquals(guess, belief(book).effect(Axle.REAR, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD), "the rear axle has other links");
        DayBook disturbed = new DayBook().read("wheel-angles", Map.of(DayBook.camber(Corner.RF), -2.0))
                .turn(AdjusterKind.CAMBER_ROD, Corner.RF, 2).turn(AdjusterKind.PERCH, Corner.LR, 1)
                .read("wheel-angles", Map.of(DayBook.camber(Corner.RF), -0.8));
        assertEquals(guess, belief(disturbed).effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD), 1e-9,
                "a perch was turned between the readings");
    }
}
