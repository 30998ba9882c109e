package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quoin.adjustment.QuietDay.assertSays;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import quoin.adjustment.OddCorner.Cause;
import quoin.adjustment.bench.FaultySession;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;
import quoin.car.Corner;

/** What is said of a corner that answers oddly on a day without friction: the fault built in, with its amount. */
@ExtendWith(English.class)
class OddCornerWordsTest {
    private static final double[][] ROUNDS = {{-1.5, 1, 1.5, -1}, {1, -1.5, -0.5, 1.5}, {0.5, 1, -1, -0.5}};
    private static final String SURE = " The readings are over # times likelier so than with a sound car.";

    private final QuietDay day = new QuietDay();
    private final SimulatedCar car = day.car;
    private OddCorner odd(Cause cause, Corner corner, BiFunction<Integer, double[], double[]> effect) {
        OddCorner odd = OddCorner.of(day.prior, day.rounds(ROUNDS, effect)).orElseThrow();
        assertEquals(cause, odd.cause(), odd.words());
        assertEquals(corner, odd.corner(), odd.words());
        assertTrue(odd.odds() > Math.exp(OddCorner.NAMED), odd.words());
        return odd;
    }

    @Test
    void aSoundCarIsNotAccused() {
        assertEquals(Optional.empty(), OddCorner.of(day.prior, day.rounds(ROUNDS, (r, t) -> FaultySession.plain(car, t))));
    }

    @Test
    void aRingThatTurnsWithItsSpring() {
        OddCorner odd = odd(Cause.SEIZED_RING, Corner.LF, (r, t) -> FaultySession.plain(car, new double[] {0, t[1], t[2], t[3]}));
        assertEquals(0, odd.amount(), 0.05);
        assertEquals(Optional.empty(), odd.rival());
        assertSays("LF perch does # % (±#) of the lift it should, in every round: is the ring seized and turning with the spring, or its pitch another"
                + " than given?" + SURE, odd.words(), 0, 200 * odd.sd(), 1000);
        assertTrue(!odd.words().contains("-0"), odd.words());
        OddCorner half = odd(Cause.SEIZED_RING, Corner.RR, (r, t) -> FaultySession.plain(car, new double[] {t[0], t[1], t[2], 0.4 * t[3]}));
        assertEquals(0.4, half.amount(), 0.05);
        assertSays("RR perch does # % (±#) of the lift it should, in every round: is the ring seized and turning with the spring, or its pitch another"
                + " than given?" + SURE, half.words(), 40, 200 * half.sd(), 1000);
    }

    @Test
    void turnsMiscountedInOneRound() {
        OddCorner odd = odd(Cause.MISCOUNT, Corner.RR, (r, t) -> FaultySession.plain(car, r == 2 ? new double[] {t[0], t[1], t[2], t[3] - 2} : t));
        assertEquals(-0.5, odd.amount(), 0.05);
        assertSays("RR perch answers oddly in round #: # turns up recorded, # turns down fit (±#). Count again or measure the thread." + SURE,
                odd.words(), 2, 1.5, 0.5, 2 * odd.sd(), 1000);
        OddCorner first = odd(Cause.MISCOUNT, Corner.LF, (r, t) -> FaultySession.plain(car, r == 1 ? new double[] {t[0] - 1, t[1], t[2], t[3]} : t));
        assertSays("LF perch answers oddly in round #: # turns down recorded, # turns down fit (±#). Count again or measure the thread." + SURE,
                first.words(), 1, 1.5, 2.5, 2 * first.sd(), 1000);
    }

    @Test
    void aBumpStopFromSomeRoundOn() {
        SimulatedCar stiff = FaultySession.stiffer(car, Conditions.WELL_SETTLED, 1, 4);
        OddCorner odd = odd(Cause.BUMP_STOP, Corner.RF, (r, t) -> FaultySession.plain(r < 2 ? car : stiff, t));
        assertEquals(4, odd.amount(), 0.4);
        assertTrue(odd.words().startsWith("RF acts 3.9 times as stiff from round 2 on: look for a bump stop touched")
                || odd.words().startsWith("RF acts 4.0 times as stiff from round 2 on: look for a bump stop touched"), odd.words());
        assertEquals(Optional.of(Cause.MISCOUNT), odd.rival(), "two rounds may as well be one miscounted");
        assertTrue(odd.words().endsWith(" Nearly as good: RF turns miscounted."), odd.words());
    }

    @Test
    void aBarStillConnected() {
        for (int axle = 0; axle < 2; axle++) {
            double[] bars = new double[2];
            bars[axle] = 0.8 * car.wheelRate[2 * axle];
            OddCorner odd = odd(Cause.BAR_CONNECTED, axle == 0 ? Corner.LF : Corner.LR, (r, t) -> FaultySession.withBars(car, t, bars));
            assertEquals(0.8, odd.amount(), 0.08);
            assertEquals(0.2, odd.sd() / odd.amount(), 0.05, "its uncertainty is that of the logarithm times the amount");
            assertSays("The " + (axle == 0 ? "front" : "rear") + " axle answers as if its anti-roll bar were connected (bar # % of a wheel rate):"
                    + " look at its links." + SURE, odd.words(), 80, 1000);
        }
    }

    @Test
    void anotherSpringThanBelieved() {
        SimulatedCar soft = FaultySession.stiffer(car, Conditions.WELL_SETTLED, 2, 0.5);
        OddCorner odd = odd(Cause.WRONG_SPRING, Corner.LR, (r, t) -> FaultySession.plain(soft, t));
        assertEquals(0.5, odd.amount(), 0.05);
        assertSays("LR answers like a wheel rate of # N/mm (±#) where # was believed: another spring or motion ratio than given?" + SURE, odd.words(),
                0.5 * car.wheelRate[2], 2 * odd.sd() * car.wheelRate[2], car.wheelRate[2], 1000);
    }

    /** Small faults are said with their odds in figures, and a day without turns says nothing. */
    @Test
    void smallOddsAreSaidInFigures() {
        List<SettledReading> history = day.rounds(ROUNDS, (r, t) -> FaultySession.plain(car, r == 2 ? new double[] {t[0], t[1], t[2], t[3] - 0.32} : t));
        OddCorner odd = OddCorner.of(day.prior, history).orElseThrow();
        assertTrue(odd.odds() < 1000, odd.words());
        assertTrue(odd.words().contains("The readings are " + Math.round(odd.odds()) + " times likelier so than with a sound car."), odd.words());
        List<SettledReading> still = List.of(history.get(0), QuietDay.shown(day.asFound(), 0, 0, 0, 0));
        assertEquals(Optional.empty(), OddCorner.of(day.prior, still));
    }
}
