package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Entry.ResponseTakenOver.Effect;
import quoin.logbook.Header;
import quoin.suspension.spi.SuspensionTypes;

/** What a day hands on: the rates of a car that was weighed, the lift of every thread, the effect of every link turned. */
class LearntTest {

    private static final SuspensionTypes NONE = new SuspensionTypes(List.of());
    private static final List<String> RATES = List.of("wheel-rate.LF", "wheel-rate.RF", "wheel-rate.LR", "wheel-rate.RR");
    private static final List<String> LIFTS = List.of("lift.FRONT.perch", "lift.FRONT.pushrod", "lift.REAR.perch", "lift.REAR.pushrod");

    private static List<Effect> effects(Day day) {
        return Learnt.of(day, "day-1", NONE).orElseThrow().effects();
    }

    private static List<String> keys(List<Effect> effects) {
        return effects.stream().map(Effect::key).sorted().toList();
    }

    private static List<String> sorted(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).sorted().toList();
    }

    /** A car of 660 kg that was weighed and raised at one corner. */
    private static DayBook weighed(DayBook book) {
        Map<ReadingId, Double> loads = new LinkedHashMap<>();
        List.of(Corner.values()).forEach(c -> loads.put(DayBook.load(c), 165.0));
        return book.prepared().read("ride-height", DayBook.goodHeights()).read("corner-weights", loads).turn(AdjusterKind.PERCH, Corner.LF, 0.5);
    }

    /**
     * An unknown spring is taken from the weight: a quarter of 660 kg less 4.2 % of it for the wheel, at a ride frequency of
     * 2.2 Hz, is (2 pi 2.2)^2 times 137.28 kg, 26.2 N/mm (common practice, no source). Each lift is told once for its axle.
     */
    @Test
    void aWeighedCarHandsOnRatesAndLifts() {
        Day day = weighed(new DayBook()).day();
        List<Effect> effects = effects(day);
        assertEquals(sorted(RATES, LIFTS), keys(effects));
        LegBelief belief = LegBelief.of(day).orElseThrow();
        for (Effect effect : effects) {
            if (effect.key().startsWith("lift")) {
                double lift = (effect.key().endsWith("perch") ? 1.5 : 1.25) / 0.75;
                assertEquals(lift, effect.described(), 1e-9, "mm of thread over a ratio of 0.75");
                assertEquals(lift, effect.value(), 0.05 * lift);
                assertTrue(effect.uncertainty() > 0 && effect.uncertainty() <= 0.03 * effect.value() + 1e-9, effect.toString());
            } else {
                int corner = RATES.indexOf(effect.key());
                assertEquals(Math.pow(2 * Math.PI * 2.2, 2) * 137.28 / 1000, effect.described(), 1e-9);
                assertEquals(belief.belief().wheelRatesNPerMm().get(corner), effect.value(), 1e-9);
                assertEquals(belief.belief().wheelRateRelativeSds().get(corner) * effect.value(), effect.uncertainty(), 1e-9);
            }
        }
        assertEquals(Instant.EPOCH.plusSeconds(day.revision() - 1), Learnt.of(day, "day-1", NONE).orElseThrow().learntOn());
    }

    @Test
    void withoutAWeighingThereAreNoRates() {
        DayBook book = new DayBook().prepared().read("ride-height", DayBook.goodHeights()).turn(AdjusterKind.PERCH, Corner.LF, 0.5);
        assertEquals(LIFTS, keys(effects(book.day())));
    }

    /** A turn of nothing in the log is no turn: the day has taught nothing. */
    @Test
    void onlyATurnTeaches() {
        DayBook book = new DayBook().prepared().read("ride-height", DayBook.goodHeights()).turn(AdjusterKind.PERCH, Corner.LF, 0);
        assertEquals(Optional.empty(), Learnt.of(book.day(), "day-1", NONE));
        DayBook unread = new DayBook().prepared().turn(AdjusterKind.PERCH, Corner.LF, 1);
        assertEquals(Optional.empty(), Learnt.of(unread.day(), "day-1", NONE), "turned, and never read");
    }

    @Test
    void aLinkTellsOfItsOwnAxle() {
        List<String> front = List.of("camber.FRONT.camber-rod", "caster.FRONT.camber-rod", "toe.FRONT.camber-rod");
        DayBook book = new DayBook().prepared().read("ride-height", DayBook.goodHeights()).turn(AdjusterKind.CAMBER_ROD, Corner.RF, 0.5);
        assertEquals(sorted(LIFTS, front), keys(effects(book.day())));
    }

    /** What an earlier day knew of a link is handed on though nobody touched it today, and nothing is made up beside it. */
    @Test
    void whatWasTakenOverIsHandedOn() {
        DayBook book = new DayBook();
        book.add(new Entry.ResponseTakenOver(Header.draft(""), "day-0", Instant.EPOCH, 20,
                List.of(new Effect("toe.REAR.toe-link", 0.35, 0.42, 0.01))));
        List<Effect> effects = effects(weighed(book).day());
        List<String> rear = List.of("camber.REAR.toe-link", "caster.REAR.toe-link", "toe.REAR.toe-link");
        assertEquals(sorted(sorted(RATES, LIFTS), rear), keys(effects));
        Effect toe = effects.stream().filter(e -> e.key().equals("toe.REAR.toe-link")).findFirst().orElseThrow();
        assertEquals(0.35, toe.described(), 1e-9);
        assertEquals(0.42, toe.value(), 1e-9);
        assertEquals(Math.hypot(0.01, TakenOver.PER_DAY_BREAK * 0.42), toe.uncertainty(), 1e-5, "and a day older");
    }
}
