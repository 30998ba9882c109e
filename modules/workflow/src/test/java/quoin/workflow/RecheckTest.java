package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.logbook.Conditions;
import quoin.mechanics.CarModel;
import quoin.mechanics.CornerModel;
import quoin.mechanics.SpacePoint;
import quoin.suspension.spi.SuspensionTypes;

/** The re-check: reasons why readings moved, bars joined without preload, what was loosened. */
class RecheckTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private DayBook signed() {
        return new DayBook().signedToAngles(order).turn(AdjusterKind.TOE_LINK, Corner.LF, 0.25).settle()
                .read("final-recheck", DayBook.everything()).sign(order, "final-recheck");
    }

    private static DayBook join(DayBook book) {
        return book.condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED);
    }

    /**
     * Four equal springs k on rigid tyres, bar half rate h, link 1 mm off: the body rolls until both axles' couples cancel, which
     * leaves k h / (2 (k + h)) on the left front wheel and takes as much from the right one; worked by hand from the statics of
     * a rigid body on four springs whose centre of gravity is at the pads, so that rolling moves no weight.
     */
    @Test
    void oneMillimetreOfLinkMovesWhatStaticsSays() {
        double k = 30;
        double rate = 24;
        PerCorner<CornerModel> corners = PerCorner.of(c -> new CornerModel(c.isFront() ? 0 : -2400, c.isLeft() ? 700 : -700, 0, k, 1, 0,
                160 * 9.80665 / k, 1, 1, OptionalDouble.empty(), 0));
        CarModel car = CarModel.plain(640, new SpacePoint(-1200, 0, 0), corners, Map.of("centre", new SpacePoint(-1200, 0, 100)));
        double half = rate / 2;
        double onLf = k * half / (2 * (k + half));
        double expected = -100 * 2 * onLf / (640 * 9.80665);
        assertEquals(expected, BarPreload.crossPerMm(car, Axle.FRONT, rate), 1e-6);
        assertEquals(-expected, BarPreload.crossPerMm(car, Axle.REAR, rate), 1e-6, "the rear bar the other way");
    }

    @Test
    void thePreloadIsTheDifferenceOfTheTwoWeighings() {
        DayBook book = join(signed());
        assertEquals(Optional.empty(), BarPreload.of(book.day()), "not weighed yet");
        BarPreload preload = BarPreload.of(book.read("final-recheck", DayBook.loads(50.2)).day()).orElseThrow();
        assertEquals(List.of(Axle.FRONT, Axle.REAR), preload.joined());
        assertEquals(0.2, preload.difference().amount(), 1e-9);
        assertEquals(0.6, preload.kgPerWheel(), 1e-9, "0.2 % of 600 kg on two wheels");
        assertFalse(preload.isFree());
        assertTrue(preload.linkMm().isEmpty(), "the rate of the bars is not known");
        BarPreload twice = BarPreload.of(book.read("final-recheck", DayBook.loads(50.0)).day()).orElseThrow();
        assertEquals(0.1, twice.difference().amount(), 1e-9, "the mean of both weighings with the bars");
        assertTrue(twice.isFree());
        assertTrue(BarPreload.of(book.turn(AdjusterKind.PERCH, Corner.LF, 0.5).settle().read("final-recheck", DayBook.loads(50)).day())
                .isEmpty(), "a perch was turned between the weighings");
    }

    @Test
    void aLinkTurnedAfterTheWeighingAsksForAnother() {
        DayBook book = join(signed()).read("final-recheck", DayBook.loads(50.2)).turn(AdjusterKind.BAR_LINK, Corner.LF, 0.5);
        assertTrue(BarPreload.of(book.day()).isEmpty());
        assertEquals(0.05, BarPreload.of(book.read("final-recheck", DayBook.loads(50.05)).day()).orElseThrow().difference().amount(), 1e-9);
    }

    @Test
    void theFinalVerdictsStandWhenTheDayIsClosed() {
        DayBook book = join(signed()).read("final-recheck", DayBook.loads(50.1)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES).read("final-recheck", DayBook.goodAngles())
                .condition(Conditions.STEERING, Conditions.FREE);
        ReadingState before = order.status(book.day()).reading(DayBook.CROSS);
        assertEquals(50, before.value().orElseThrow(), 1e-9, "the weighing with the bars is for the bars");
        book.add(order.close(book.day()).entry().orElseThrow());
        DayStatus closed = order.status(book.day());
        for (Corner corner : Corner.values()) {
            assertTrue(Stream.of(DayBook.load(corner), DayBook.height(corner), DayBook.toe(corner)).map(closed::reading)
                    .noneMatch(s -> s.freshness() == Freshness.OUT_OF_ORDER), "no reading is called out of order");
        }
        assertTrue(closed.reading(DayBook.CROSS).verdict().isPresent());
    }

    @Test
    void whatTheCloseUndoesLeavesTheSignedVerdictsAsTheyWere() {
        DayBook book = signed();
        DayStatus asSigned = order.status(book.day());
        join(book).read("final-recheck", DayBook.loads(50.1)).condition(Conditions.DAMPERS, Conditions.RUNNING)
                .condition(Conditions.LOCKNUTS, Conditions.YES).read("final-recheck", DayBook.goodAngles())
                .condition(Conditions.STEERING, Conditions.FREE);
        assertEquals(Freshness.DOUBTFUL, order.status(book.day()).reading(DayBook.height(Corner.LF)).freshness(), "still open: the steering was freed");
        book.add(order.close(book.day()).entry().orElseThrow());
        DayStatus closed = order.status(book.day());
        for (StageStatus stage : asSigned.stages()) {
            for (ReadingState reading : stage.readings()) {
                ReadingState now = closed.reading(reading.reading());
                assertEquals(reading.freshness(), now.freshness(), () -> reading.reading() + ": " + now.reasons());
                assertEquals(reading.verdict(), now.verdict(), () -> "verdict of " + reading.reading());
            }
        }
        assertEquals(Freshness.FRESH, closed.reading(DayBook.CROSS).freshness());
        book.condition(Conditions.FUEL, "5");
        assertEquals(Freshness.STALE, order.status(book.day()).reading(DayBook.CROSS).freshness(), "what is no longer valid is said of a closed day too");
    }

    @Test
    void whatIsLoosenedIsListedUntilItIsTicked() {
        DayBook book = signed();
        List<Loosened> list = Loosened.of(book.day());
        assertEquals(List.of("front bar link", "rear bar link", "LF toe link"), list.stream().map(Loosened::words).toList());
        String key = list.get(2).key();
        book.condition(key, "45").condition(Loosened.keyOfPart("seat bolts"), Loosened.LOOSE);
        list = Loosened.of(book.day());
        assertEquals(45, list.get(2).torqueNm().orElseThrow());
        assertEquals("seat bolts", Loosened.open(list).get(2).words());
        book.condition(Loosened.keyOfPart("seat bolts"), Loosened.TIGHT).turn(AdjusterKind.TOE_LINK, Corner.LF, -0.25);
        list = Loosened.of(book.day());
        assertFalse(list.get(2).isTicked(), "turned again, so its nut is loose again");
        assertTrue(list.get(3).isTicked());
        assertTrue(list.get(3).torqueNm().isEmpty());
        list = Loosened.of(book.condition(Conditions.LOCKNUTS, Conditions.YES).day());
        assertTrue(Loosened.open(list).isEmpty(), "all at once");
        assertEquals(List.of("front bar link", "rear bar link", "LF toe link", "seat bolts"), list.stream().map(l -> Loosened.subject(l.key())).toList());
        assertTrue(list.get(2).torqueNm().isEmpty(), "the torque of the first tick does not hold for the second");
    }

    /** A linear car: what the parts say adds up, and moves of the loads keep the total (statics). */
    @Test
    void everyTurnSinceTheSignOffHasItsPart() {
        DayBook book = new DayBook().signedToAngles(order);
        long angles = book.size();
        book.turn(AdjusterKind.CAMBER_ROD, Corner.LF, 0.5).turn(AdjusterKind.PERCH, Corner.RR, 0.25).turn(AdjusterKind.PERCH, Corner.LR, 0.25)
                .turn(AdjusterKind.PERCH, Corner.LR, -0.25).settle().read("final-recheck", DayBook.everything());
        ExpectedMoves moves = new ExpectedMoves(book.day(), new SuspensionTypes(List.of()));
        List<ExpectedMoves.Part> cross = moves.parts(DayBook.CROSS, angles, book.size());
        assertEquals(List.of(new AdjusterId(AdjusterKind.PERCH, Corner.RR)), cross.stream().map(ExpectedMoves.Part::adjuster).toList());
        assertTrue(cross.get(0).move().amount() < 0, "RR up takes cross weight RF+LR away");
        Map<quoin.car.ReadingId, ExpectedMove.Move> perch = moves.perUnit(new AdjusterId(AdjusterKind.PERCH, Corner.RR));
        double sum = Stream.of(Corner.values()).mapToDouble(c -> perch.get(DayBook.load(c)).amount()).sum();
        assertEquals(0, sum, 1e-6, "a perch leaves the total as it is");
        double rr = perch.get(DayBook.load(Corner.RR)).amount();
        double crossPerTurn = 100 * (perch.get(DayBook.load(Corner.RF)).amount() + perch.get(DayBook.load(Corner.LR)).amount()) / 600;
        assertTrue(rr > 0);
        assertEquals(crossPerTurn, perch.get(DayBook.CROSS).amount(), 1e-6);
        assertEquals(0.25 * crossPerTurn, cross.get(0).move().amount(), 1e-6);
        List<ExpectedMoves.Part> camber = moves.parts(DayBook.camber(Corner.LF), angles, book.size());
        assertTrue(camber.stream().anyMatch(p -> p.adjuster().kind() == AdjusterKind.CAMBER_ROD && p.move().amount() > 0));
    }

    /** What only has to be read again sends nobody back to a stage; what is outside does. */
    @Test
    void onlyWhatIsOutsideIsRedone() {
        DayBook book = signed().condition(Conditions.FUEL, "12");
        Recheck stale = order.recheck(book.day());
        assertEquals(Optional.empty(), stale.redo());
        assertTrue(stale.reasons().stream().anyMatch(r -> r.startsWith("Ride height: ") && r.endsWith("fuel changed from 20 to 12 kg after this")),
                stale.reasons().toString());
        Recheck outside = order.recheck(book.read("final-recheck", DayBook.goodHeights()).read("final-recheck", DayBook.loads(51)).day());
        assertEquals(Optional.of("corner-weights"), outside.redo());
        assertTrue(outside.reasons().stream().anyMatch(r -> r.startsWith("Corner weights: cross weight RF+LR: outside, 51.00 %")),
                outside.reasons().toString());
    }
}
