package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.PerCorner;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Entry.ResponseTakenOver.Effect;
import quoin.logbook.Header;
import quoin.suspension.spi.SuspensionTypes;

/** What one day teaches is where the next one begins, widened by its age, as long as it is the same car. */
class TakenOverTest {

    private static final SuspensionTypes NONE = new SuspensionTypes(List.of());
    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private static Car sprung(double rateNPerMm) {
        Car car = DayBook.car();
        PerCorner<CornerSetup> corners = car.corners().map(c -> new CornerSetup(OptionalDouble.of(rateNPerMm), c.motionRatio(), c.pushrodRatio(),
                c.tyreRateNPerMm(), c.unsprungMassKg(), c.rimChordMm(), c.adjusters()));
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), corners, car.masses(), car.heightPoints(), car.targets(),
                car.loadCase(), car.instruments(), car.walkingOrder());
    }

    /** A day with rounds: LF up a turn moves the cross less than described; a camber rod does 0.3 deg a turn. */
    private Day taught(Car car) {
        DayBook book = new DayBook(car).prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50));
        for (int i = 0; i < 3; i++) {
            book.turn(AdjusterKind.PERCH, Corner.LF, 1).settle().read("ride-height", DayBook.heights(63.2, 61.6, 70.4, 69.6))
                    .read("corner-weights", DayBook.loads(48.6)).turn(AdjusterKind.PERCH, Corner.LF, -1).settle()
                    .read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50));
        }
        book.read("wheel-angles", Map.of(DayBook.camber(Corner.LF), -2.0));
        for (int i = 0; i < 4; i++) {
            book.turn(AdjusterKind.CAMBER_ROD, Corner.LF, 1).settle().read("wheel-angles", Map.of(DayBook.camber(Corner.LF), -1.7))
                    .turn(AdjusterKind.CAMBER_ROD, Corner.LF, -1).settle().read("wheel-angles", Map.of(DayBook.camber(Corner.LF), -2.0));
        }
        return book.day();
    }

    private Day next(Car car, Entry.ResponseTakenOver learnt) {
        DayBook book = new DayBook(car);
        book.add(learnt);
        return book.prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50)).day();
    }

    /** The same, with a wheel rate that a long season has taught well. */
    private static Entry.ResponseTakenOver sure(Entry.ResponseTakenOver learnt) {
        return new Entry.ResponseTakenOver(learnt.header(), learnt.fromDay(), learnt.learntOn(), learnt.loadKg(),
                List.of(new Effect("wheel-rate.LF", 60 * 0.75 * 0.75, 35, 0.5)));
    }

    private static Effect effect(Entry.ResponseTakenOver learnt, String key) {
        return learnt.effects().stream().filter(e -> e.key().equals(key)).findFirst().orElseThrow();
    }

    /** One per cent for taking apart, three per cent a year, in squares: by hand for a value of 30 learnt to 0.6. */
    @Test
    void theUncertaintyGrowsWithAge() {
        assertEquals(Math.sqrt(0.36 + 0.3 * 0.3), TakenOver.aged(30, 0.6, 0), 1e-12);
        assertEquals(Math.sqrt(0.36 + 0.3 * 0.3 + 0.9 * 0.9), TakenOver.aged(30, 0.6, 365.25), 1e-12);
        assertEquals(31, TakenOver.ageDays(Instant.parse("2026-05-01T10:00:00Z"), Instant.parse("2026-06-01T10:00:00Z")), 1e-9);
        assertEquals(0, TakenOver.ageDays(Instant.parse("2026-06-01T10:00:00Z"), Instant.parse("2026-05-01T10:00:00Z")));
    }

    @Test
    void theNextDayBeginsWhereTheLastOneEnded() {
        Car car = sprung(60);
        Entry.ResponseTakenOver learnt = Learnt.of(taught(car), "day-1", NONE).orElseThrow();
        double described = Assumptions.complete(car).corners().get(Corner.LF).wheelRateNPerMm();
        assertEquals(60 * 0.75 * 0.75, described, 1e-9);
        assertEquals(described, effect(learnt, "wheel-rate.LF").described(), 1e-9);
        assertTrue(effect(learnt, "wheel-rate.LF").uncertainty() < 0.12 * effect(learnt, "wheel-rate.LF").value(), "never less than was known before");
        Effect rate = new Effect("wheel-rate.LF", described, 35, 0.5);
        Entry.ResponseTakenOver older = new Entry.ResponseTakenOver(learnt.header(), "day-1", Instant.EPOCH.minusSeconds(86400L * 100),
                learnt.loadKg(), List.of(rate));
        LegBelief begun = LegBelief.of(next(car, older)).orElseThrow();
        assertEquals(rate.value(), begun.belief().prior().corners().get(0).wheelRateNPerMm(), 1e-9);
        double aged = TakenOver.aged(rate.value(), rate.uncertainty(), 100);
        assertEquals(aged / rate.value(), begun.belief().prior().corners().get(0).rateRelativeSd(), 1e-4);
        Effect camber = effect(learnt, "camber.FRONT.camber-rod");
        AngleBelief angles = new AngleBelief(next(car, learnt), AnglePlanner.described(car, NONE), new ReadingUncertainty(car));
        assertEquals(camber.value(), angles.effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD), 1e-9);
        assertEquals(0.3, camber.value(), 0.02);
    }

    @Test
    void aChangedSpringMakesItsOwnRateVoid() {
        Entry.ResponseTakenOver learnt = Learnt.of(taught(sprung(60)), "day-1", NONE).orElseThrow();
        Car stiffer = sprung(80);
        LegBelief begun = LegBelief.of(next(stiffer, sure(learnt))).orElseThrow();
        assertEquals(80 * 0.75 * 0.75, begun.belief().prior().corners().get(0).wheelRateNPerMm(), 1e-9);
        AngleBelief angles = new AngleBelief(next(stiffer, learnt), AnglePlanner.described(stiffer, NONE), new ReadingUncertainty(stiffer));
        assertEquals(effect(learnt, "camber.FRONT.camber-rod").value(),
                angles.effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD), 1e-9, "the spring has no part in the camber rod");
    }

    @Test
    void anotherLoadCaseMakesTheRatesVoid() {
        Car car = sprung(60);
        Entry.ResponseTakenOver learnt = Learnt.of(taught(car), "day-1", NONE).orElseThrow();
        assertEquals(35, LegBelief.of(next(car, sure(learnt))).orElseThrow().belief().prior().corners().get(0).wheelRateNPerMm(), 1e-9);
        DayBook book = new DayBook(car);
        book.add(sure(learnt));
        book.prepared().condition(Conditions.FUEL, "45").read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50));
        assertEquals(60 * 0.75 * 0.75, LegBelief.of(book.day()).orElseThrow().belief().prior().corners().get(0).wheelRateNPerMm(), 1e-9,
                "25 kg more fuel than when it was learnt");
    }

    @Test
    void whatIsDeclinedPlaysNoPart() {
        Car car = sprung(60);
        DayBook book = new DayBook(car);
        book.add(sure(Learnt.of(taught(car), "day-1", NONE).orElseThrow()));
        book.withdraw(2).prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50));
        assertEquals(Optional.empty(), book.day().takenOver());
        assertEquals(60 * 0.75 * 0.75, LegBelief.of(book.day()).orElseThrow().belief().prior().corners().get(0).wheelRateNPerMm(), 1e-9);
    }

    @Test
    void aDayWithoutTurnsPassesOnWhatItHad() {
        Car car = sprung(60);
        Entry.ResponseTakenOver learnt = Learnt.of(taught(car), "day-1", NONE).orElseThrow();
        Entry.ResponseTakenOver passed = Learnt.of(next(car, learnt), "day-2", NONE).orElseThrow();
        assertEquals(learnt.effects(), passed.effects());
        assertEquals("day-1", passed.fromDay());
        assertEquals(Optional.empty(), Learnt.of(new DayBook(car).prepared().day(), "day-3", NONE));
    }

    @Test
    void whatIsLessCertainThanTheDescriptionIsLeftOut() {
        Car car = sprung(60);
        double described = 60 * 0.75 * 0.75;
        Entry.ResponseTakenOver vague = new Entry.ResponseTakenOver(Header.draft(""), "day-1", Instant.EPOCH, 20,
                List.of(new Effect("wheel-rate.LF", described, 1.2 * described, 0.5 * described)));
        assertEquals(described, LegBelief.of(next(car, vague)).orElseThrow().belief().prior().corners().get(0).wheelRateNPerMm(), 1e-9);
    }
}
