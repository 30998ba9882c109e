package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.adjustment.LiftAdjuster;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.KnownMass;
import quoin.car.Masses;
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
    /** 60 N/mm on a ratio of 0.75. */
    private static final double RATE = 60 * 0.75 * 0.75;
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
                List.of(new Effect("wheel-rate.LF", RATE, 35, 0.5)));
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
        assertEquals(RATE, described, 1e-9);
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
        assertEquals(35, rate(next(car, sure(learnt))), 1e-9);
        DayBook book = new DayBook(car);
        book.add(sure(learnt));
        book.prepared().condition(Conditions.FUEL, "45").read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50));
        assertEquals(RATE, rate(book.day()), 1e-9,
                "25 kg more fuel than when it was learnt");
    }

    @Test
    void whatIsDeclinedPlaysNoPart() {
        Car car = sprung(60);
        DayBook book = new DayBook(car);
        book.add(sure(Learnt.of(taught(car), "day-1", NONE).orElseThrow()));
        book.withdraw(2).prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", DayBook.loads(50));
        assertEquals(Optional.empty(), book.day().takenOver());
        assertEquals(RATE, rate(book.day()), 1e-9);
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
        assertEquals(RATE, rate(next(car, learnt("wheel-rate.LF", RATE, 1.2 * RATE, 0.5 * RATE))), 1e-9);
    }

    /** One figure from a day with 20 kg on board, taken over at once. */
    private static Entry.ResponseTakenOver learnt(String key, double described, double value, double uncertainty) {
        return new Entry.ResponseTakenOver(Header.draft(""), "day-1", Instant.EPOCH, 20, List.of(new Effect(key, described, value, uncertainty)));
    }

    private static double rate(Day day) {
        return LegBelief.of(day).orElseThrow().belief().prior().corners().get(0).wheelRateNPerMm();
    }

    /** A description within 2 % is the same spring or thread: a ratio measured once more is no other car. */
    @Test
    void theSameSpringMeasuredOnceMoreKeepsItsRate() {
        Car car = sprung(60);
        assertEquals(35, rate(next(car, learnt("wheel-rate.LF", 1.01 * RATE, 35, 0.5))), 1e-9);
        assertEquals(RATE, rate(next(car, learnt("wheel-rate.LF", 1.03 * RATE, 35, 0.5))), 1e-9);
        AssumedCar assumed = LegBelief.of(next(car, learnt("wheel-rate.LF", RATE, 35, 0.5))).orElseThrow().assumed();
        assertEquals(35, assumed.corners().get(Corner.LF).wheelRateNPerMm(), 1e-9, "the plan is made with what was learnt");
        assertEquals(RATE, assumed.corners().get(Corner.RF).wheelRateNPerMm(), 1e-9, "another corner's spring as described");
    }

    /** 1.5 mm of thread over 0.75 are 2 mm of lift; the last day saw 1.8 mm at the front axle. */
    @Test
    void theLiftOfATurnIsTakenOverByAxle() {
        List<LiftAdjuster> adjusters = adjusters(learnt("lift.FRONT.perch", 2, 1.8, 0.01));
        for (LiftAdjuster adjuster : adjusters) {
            boolean perch = adjuster.id().endsWith("perch");
            boolean taught = perch && adjuster.corner().isFront();
            assertEquals(taught ? 1.8 : (perch ? 1.5 : 1.25) / 0.75, adjuster.liftMmPerTurn(), 1e-9, adjuster.id());
            double aged = Math.hypot(0.01, TakenOver.PER_DAY_BREAK * 1.8) / 1.8;
            assertEquals(taught ? aged : LiftAdjuster.USUAL_LIFT_SD, adjuster.liftRelativeSd(), 1e-9, adjuster.id());
        }
        assertEquals(8, adjusters.size());
        assertEquals(1.8, adjusters(learnt("lift.FRONT.perch", 2.02, 1.8, 0.01)).get(0).liftMmPerTurn(), 1e-9);
        assertEquals(2, adjusters(learnt("lift.FRONT.perch", 2.06, 1.8, 0.01)).get(0).liftMmPerTurn(), 1e-9, "another thread or ratio");
        assertEquals(2, adjusters(learnt("lift.FRONT.perch", 2, 1.8, 0.07)).get(0).liftMmPerTurn(), 1e-9, "less sure than pitch and ratio are");
    }

    private List<LiftAdjuster> adjusters(Entry.ResponseTakenOver learnt) {
        return LegBelief.of(next(sprung(60), learnt)).orElseThrow().belief().prior().adjusters();
    }

    /** An unknown suspension is taken to do 0.35 deg a turn; 0.38 were of another one. */
    @Test
    void aRodOfAnotherSuspensionIsVoid() {
        assertEquals(0.3, camberRod(0.353), 1e-9);
        assertEquals(0.35, camberRod(0.38), 1e-9);
    }

    private double camberRod(double described) {
        Car car = sprung(60);
        Day day = next(car, learnt("camber.FRONT.camber-rod", described, 0.3, 0.01));
        return new AngleBelief(day, AnglePlanner.described(car, NONE), new ReadingUncertainty(car))
                .effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD);
    }

    /** What sits in the car counts for the springs wherever it comes from; a gauge that was not read leaves the fuel as described. */
    @Test
    void theLoadIsDriverBallastAndFuel() {
        KnownMass.Role[] roles = {KnownMass.Role.DRIVER, KnownMass.Role.BALLAST, KnownMass.Role.FUEL, KnownMass.Role.PART};
        double[] kg = {80, 5, 15, 11};
        List<KnownMass> known = Stream.of(0, 1, 2, 3).map(i -> new KnownMass(roles[i].name(), roles[i], kg[i], -1500, 0, 300)).toList();
        Car car = sprung(60).withMasses(new Masses(OptionalDouble.empty(), OptionalDouble.empty(), known));
        assertEquals(100, TakenOver.loadKg(new DayBook(car).day()), 1e-9, "a part of the car is in every load case");
        assertEquals(85, TakenOver.loadKg(new DayBook(car).condition(Conditions.FUEL, "0").day()), 1e-9, "drained");
        assertEquals(112.5, TakenOver.loadKg(new DayBook(car).condition(Conditions.FUEL, "27.5").day()), 1e-9);
        assertEquals(100, TakenOver.loadKg(new DayBook(car).condition(Conditions.FUEL, "half full").day()), 1e-9);
        assertEquals(100, TakenOver.loadKg(new DayBook(car).condition(Conditions.FUEL, "-3").day()), 1e-9);
    }

    @Test
    void tenKilogramsMoreAreTheSameLoadCase() {
        for (String fuel : List.of("10", "30")) {
            assertEquals(35, rate(fuelled(fuel)), 1e-9, fuel);
        }
        for (String fuel : List.of("9.5", "30.5")) {
            assertEquals(RATE, rate(fuelled(fuel)), 1e-9, fuel);
        }
    }

    private static Day fuelled(String kg) {
        DayBook book = new DayBook(sprung(60));
        book.add(learnt("wheel-rate.LF", RATE, 35, 0.5));
        return book.prepared().condition(Conditions.FUEL, kg).read("ride-height", DayBook.goodHeights()).day();
    }
}
