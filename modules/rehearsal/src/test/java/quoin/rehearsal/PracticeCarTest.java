package quoin.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.Shares;

/** Loads and heights of the practice car behave as the statics of a car on four springs demands. */
class PracticeCarTest {

    private static PracticeDay ready() {
        return PracticeDay.ready(PracticeCar.ouzel23(1));
    }

    @Test
    void standsAsFoundBeforeAnythingIsTurned() {
        PracticeDay day = ready();
        assertEquals(638, day.shares().totalKgf(), 1e-6);
        assertEquals(46, day.shares().crossPercent(), 1e-6);
        assertEquals(52, day.shares().frontPercent(), 1e-6);
        assertEquals(48.6, day.shares().leftPercent(), 1e-6);
        for (Corner corner : Corner.values()) {
            assertEquals(corner.isFront() ? 62 : 70, day.heights().get(corner), 3, "a stiff frame hides four per cent of cross");
        }
    }

    @Test
    void dayAndSeedDecideEveryReading() {
        List<ReadingId> wanted = ready().car.car().cornerReadings(ReadingKind.LOAD);
        assertEquals(ready().car.read(ready().day(), wanted), ready().car.read(ready().day(), wanted));
        PracticeCar other = PracticeCar.ouzel23(2);
        assertNotEquals(ready().car.read(ready().day(), wanted), other.read(ready().day(), wanted));
        assertEquals(ready().car.exact(ready().day(), wanted), other.exact(ready().day(), wanted), "the car itself is the same");
    }

    @Test
    void aDayBegunInGermanIsReadAtTheSamePoints() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ENGLISH);
            assertEquals(Ouzel23.car(), Ouzel23.carInWords(), "the names of the practice car are English");
            Locale.setDefault(Locale.GERMANY);
            Car german = Ouzel23.carInWords();
            assertEquals("Rahmen VL", german.heightPoints().get(0).name());
            PracticeCar car = PracticeCar.ouzel23(1);
            Day day = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), german)));
            Day english = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), car.car())));
            for (Corner corner : Corner.values()) {
                ReadingId here = german.heightPoints().get(corner.ordinal()).reading();
                ReadingId there = car.car().heightPoints().get(corner.ordinal()).reading();
                assertEquals(car.read(english, List.of(there)).get(there), car.read(day, List.of(here)).get(here), corner.name());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void perchesMoveLoadBetweenTheDiagonalsOnly() {
        Random random = new Random(5);
        for (int n = 0; n < 30; n++) {
            PracticeDay day = ready();
            for (Corner corner : Corner.values()) {
                day.turn("perch." + corner, (random.nextInt(25) - 12) / 8.0);
            }
            assertEquals(638, day.shares().totalKgf(), 1e-6);
            assertEquals(52, day.shares().frontPercent(), 0.05, "only the tilt of a raised centre of gravity is left");
            assertEquals(48.6, day.shares().leftPercent(), 0.12, "only the lean of a raised centre of gravity is left");
            day.settle();
            Shares read = Shares.of(day.read(ReadingKind.LOAD));
            assertEquals(638, read.totalKgf(), 4 * Math.sqrt(4 * (0.15 * 0.15 + 0.2 * 0.2 / 12)));
            assertEquals(day.shares().frontPercent(), read.frontPercent(), 0.2);
        }
    }

    @Test
    void raisingACornerLoadsItAndItsDiagonal() {
        for (Corner corner : Corner.values()) {
            for (String adjuster : corner.isFront() ? List.of("perch.") : List.of("perch.", "pushrod.")) {
                PracticeDay before = ready();
                PracticeDay after = ready().turn(adjuster + corner, 1);
                PerCorner<Double> gain = after.exact(ReadingKind.LOAD).zip(before.exact(ReadingKind.LOAD), (a, b) -> a - b);
                assertTrue(gain.get(corner) > 0.8 && gain.get(corner.diagonal()) > 0.8, corner + ": " + gain);
                assertTrue(gain.get(corner.acrossAxle()) < -0.8 && gain.get(corner.sameSide()) < -0.8, corner + ": " + gain);
                double lift = after.heights().get(corner) - before.heights().get(corner);
                assertTrue(lift > 0.8 && lift < 2.5, corner + " rises " + lift);
            }
        }
    }

    /** The couple between the axles in closed form: lifted angle over warp compliance (derived, small angles). */
    @Test
    void oneTurnOfAPerchAgreesWithTheClosedForm() {
        double front = 61.3 * 0.70 * 0.70;
        double rear = 52.5 * 0.815 * 0.815;
        double[] rate = {front * 1.02, front * 0.98, rear * 1.01, rear * 0.94};
        double[] tyre = {190, 190, 200, 200};
        double[] lever = {1.0 / 1440, -1.0 / 1440, -1.0 / 1420, 1.0 / 1420};
        double compliance = Math.PI / 180 / 4200e3;
        for (int i = 0; i < 4; i++) {
            compliance += lever[i] * lever[i] * (1 / rate[i] + 1 / tyre[i]);
        }
        double couple = lever[1] * (1.5 / 0.70) / compliance;
        PerCorner<Double> gain = ready().turn("perch.RF", 1).exact(ReadingKind.LOAD)
                .zip(ready().exact(ReadingKind.LOAD), (a, b) -> (a - b) * 9.80665);
        for (Corner corner : Corner.values()) {
            double expected = lever[corner.ordinal()] * couple;
            assertEquals(expected, gain.get(corner), 0.1 * Math.abs(expected), "the lean of the centre of gravity adds some per cent");
        }
        double cross = gain.rf() + gain.lr();
        assertEquals((lever[1] + lever[2]) * couple, cross, 0.01 * Math.abs(cross));
    }

    @Test
    void turningBackOrWithdrawingATurnIsAsIfNothingHadBeenTurned() {
        Map<String, Double> before = ready().everything();
        ready().turn("perch.RF", 2).turn("camber-rod.LR", 1).turn("camber-rod.LR", -1).turn("perch.RF", -2).everything()
                .forEach((name, value) -> assertEquals(before.get(name), value, 1e-7, name));
        assertEquals(before, ready().turn("perch.LF", 2).undo().everything());
    }

    @Test
    void bareFloorJoinedBarAndALyingScaleFlatterTheCar() {
        PracticeDay day = new PracticeDay(PracticeCar.ouzel23(1)).set(Conditions.DRIVER, Conditions.IN);
        double floor = day.shares().crossPercent();
        double levelled = day.set(Conditions.PADS, Conditions.LEVELLED).shares().crossPercent();
        double freed = day.set("front-bar", Conditions.DISCONNECTED).shares().crossPercent();
        PerCorner<Double> lying = day.exact(ReadingKind.LOAD);
        PerCorner<Double> zeroed = day.set(Conditions.SCALES, Conditions.ZEROED).exact(ReadingKind.LOAD);
        assertEquals(1.7, floor - levelled, 0.5);
        assertEquals(1.0, levelled - freed, 0.5);
        assertEquals(1.009 * zeroed.lr() - 0.2, lying.lr(), 1e-9);
        assertEquals(zeroed.rf(), lying.rf(), 1e-9);
    }

    @Test
    void kickedPadShiftsTheCrossAndLevellingBringsItBack() {
        PracticeDay day = ready();
        double before = day.shares().crossPercent();
        assertTrue(Math.abs(day.set(Conditions.PADS, Conditions.MOVED).shares().crossPercent() - before) > 0.3);
        assertEquals(before, day.set(Conditions.PADS, Conditions.LEVELLED).shares().crossPercent(), 1e-9);
    }

    @Test
    void driverAndFuelWeighWhatTheyWeigh() {
        PracticeDay day = ready();
        PerCorner<Double> in = day.heights();
        day.set(Conditions.DRIVER, Conditions.OUT);
        assertEquals(638 - 86, day.shares().totalKgf(), 1e-6);
        assertTrue(day.shares().leftPercent() > 51, "he sits on the right");
        for (Corner corner : Corner.values()) {
            double rise = day.heights().get(corner) - in.get(corner);
            assertTrue(rise > 4 && rise < 14, corner + " rises " + rise);
        }
        assertEquals(638 - 86 - 15, day.set(Conditions.FUEL, "5").shares().totalKgf(), 1e-6);
        assertEquals(638 - 86, day.set(Conditions.FUEL, "half a tank").shares().totalKgf(), 1e-6);
    }

    @Test
    void barJoinedAfreshIsFreeUntilSomethingMoves() {
        PracticeDay off = ready();
        PracticeDay joined = ready().set("front-bar", Conditions.CONNECTED);
        assertEquals(off.shares().crossPercent(), joined.shares().crossPercent(), 1e-6);
        double freeGain = off.turn("perch.RF", 2).shares().crossPercent() - 46;
        double barGain = joined.turn("perch.RF", 2).shares().crossPercent() - 46;
        assertTrue(barGain > 0 && Math.abs(barGain - freeGain) > 0.02 * freeGain, freeGain + " " + barGain);
    }

    /** A bar adds rate / 2 * offset to the left wheel: a turn of its link loads LF and RR, the way back takes it off again. */
    @Test
    void aTurnOfTheLinkOfAJoinedBarMovesTheCrossWeight() {
        PracticeDay day = ready().set("front-bar", Conditions.CONNECTED);
        PerCorner<Double> free = day.exact(ReadingKind.LOAD);
        PerCorner<Double> turned = day.turn("bar-link.LF", 2).exact(ReadingKind.LOAD);
        assertTrue(turned.lf() > free.lf() + 0.5 && turned.rf() < free.rf() - 0.5 && turned.rr() > free.rr() && turned.lr() < free.lr(),
                free + " " + turned);
        PerCorner<Double> back = day.turn("bar-link.LF", -2).exact(ReadingKind.LOAD);
        for (Corner corner : Corner.values()) {
            assertEquals(free.get(corner), back.get(corner), 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void readingAgainShowsTheScalesNoiseAndFrictionStays(long seed) {
        PracticeDay day = PracticeDay.ready(PracticeCar.ouzel23(seed));
        PerCorner<Double> exact = day.exact(ReadingKind.LOAD);
        int reads = 200;
        double[] mean = new double[4];
        double square = 0;
        for (int n = 0; n < reads; n++) {
            PerCorner<Double> error = day.note().read(ReadingKind.LOAD).zip(exact, (a, b) -> a - b);
            for (Corner corner : Corner.values()) {
                mean[corner.ordinal()] += error.get(corner) / reads;
            }
            square += Math.pow(error.lf(), 2) / reads;
        }
        double scatter = Math.sqrt(square - mean[0] * mean[0]);
        assertEquals(Math.sqrt(0.15 * 0.15 + 0.2 * 0.2 / 12), scatter, 0.03);
        assertEquals(mean[0], -mean[1], 0.06, "friction holds a diagonal");
        assertEquals(mean[0] * 1440 / 1420, mean[3], 0.06);
    }

    @Test
    void settlingDrawsFrictionAnew() {
        PracticeDay day = ready();
        PerCorner<Double> exact = day.exact(ReadingKind.LOAD);
        List<Double> held = new ArrayList<>();
        for (int n = 0; n < 300; n++) {
            PerCorner<Double> error = day.settle().read(ReadingKind.LOAD).zip(exact, (a, b) -> a - b);
            held.add((error.lf() + error.rr() - error.rf() - error.lr()) / 4);
        }
        double mean = held.stream().mapToDouble(d -> d).average().orElseThrow();
        double sd = Math.sqrt(held.stream().mapToDouble(d -> (d - mean) * (d - mean)).average().orElseThrow());
        assertEquals(0, mean, 0.1);
        assertEquals(Math.sqrt(0.4 * 0.4 + (0.15 * 0.15 + 0.2 * 0.2 / 12) / 4), sd, 0.06);
    }

    @Test
    void carThatIsNotSettledHoldsMoreFriction() {
        double[] spread = new double[2];
        for (long seed = 0; seed < 300; seed++) {
            PracticeDay day = PracticeDay.ready(PracticeCar.ouzel23(seed)).turn("perch.LF", 1);
            double exact = day.exact(ReadingKind.LOAD).lf();
            spread[0] += Math.abs(day.read(ReadingKind.LOAD).lf() - exact);
            spread[1] += Math.abs(day.settle().read(ReadingKind.LOAD).lf() - exact);
        }
        assertTrue(spread[0] > 1.6 * spread[1], spread[0] + " " + spread[1]);
    }

    @ParameterizedTest
    @EnumSource(names = {"LOAD", "HEIGHT", "CAMBER", "CASTER", "PAD_HEIGHT", "SCALE_ZERO"})
    void readingsAreWholeStepsOfTheInstrument(ReadingKind kind) {
        double step = kind == ReadingKind.LOAD || kind == ReadingKind.SCALE_ZERO ? 0.2
                : kind == ReadingKind.HEIGHT || kind == ReadingKind.PAD_HEIGHT ? 0.5 : 0.1;
        PracticeDay day = ready();
        List<ReadingId> wanted = kind == ReadingKind.HEIGHT ? day.car.car().heightReadings() : day.car.car().cornerReadings(kind);
        Map<ReadingId, Double> read = day.car.read(day.day(), wanted);
        assertEquals(kind == ReadingKind.CASTER ? 2 : 4, read.size());
        read.forEach((id, value) -> assertEquals(Math.round(value / step), value / step, 1e-6, id + " " + value));
        read.forEach((id, value) -> assertTrue(String.valueOf(value).length() <= 6, id + " " + value));
    }

    @Test
    void whatTheCarDoesNotHaveIsLeftOut() {
        PracticeDay day = ready();
        assertEquals(Map.of(), day.car.read(day.day(), List.of(ReadingId.ofCar(ReadingKind.CROSS), new ReadingId(ReadingKind.HEIGHT, "splitter"),
                ReadingId.of(ReadingKind.CASTER, Corner.LR), new ReadingId(ReadingKind.LOAD, "spare wheel"))));
    }

    @Test
    void padsScalesAndPressuresReadWhatTheDaySays() {
        PracticeDay day = new PracticeDay(PracticeCar.ouzel23(1));
        assertEquals(new PerCorner<>(0.0, 4.5, 3.0, 0.5), day.read(ReadingKind.PAD_HEIGHT));
        assertEquals(-0.2, day.read(ReadingKind.SCALE_ZERO).lr());
        assertNotEquals(1.5, day.read(ReadingKind.PRESSURE).rr());
        day.set(Conditions.PADS, Conditions.LEVELLED).set(Conditions.SCALES, Conditions.ZEROED).set(Conditions.PRESSURES, Conditions.SET);
        for (Corner corner : Corner.values()) {
            assertTrue(day.read(ReadingKind.PAD_HEIGHT).get(corner) <= 0.6);
            assertEquals(0, day.read(ReadingKind.SCALE_ZERO).get(corner));
            assertEquals(corner.isFront() ? 1.4 : 1.5, day.read(ReadingKind.PRESSURE).get(corner), 1e-9);
        }
    }
}
