package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quoin.adjustment.LoadChange;
import quoin.adjustment.SettledReading;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.Masses;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;

/** What of a day's readings may teach how the car answers: only what was read while nothing unknown moved the loads. */
class RoundHistoryTest {

    private static final List<AdjusterId> PERCHES = List.of(perch(Corner.LF), perch(Corner.RF), perch(Corner.LR), perch(Corner.RR));
    /** Standard gravity, CGPM 1901. */
    private static final double G = 9.80665;

    private DayBook book;

    private static AdjusterId perch(Corner corner) {
        return new AdjusterId(AdjusterKind.PERCH, corner);
    }

    @BeforeEach
    void begin() {
        book = new DayBook().prepared();
    }

    private List<List<SettledReading>> stretches() {
        return RoundHistory.of(book.day(), PERCHES);
    }

    private void weigh(double cross) {
        book.read("corner-weights", DayBook.loads(cross));
    }

    @Test
    void loadsAreForcesAndTurnsAreThoseSinceTheReadingBefore() {
        weigh(52);
        book.turn(AdjusterKind.PERCH, Corner.RR, -0.25).turn(AdjusterKind.PERCH, Corner.RR, -0.5).turn(AdjusterKind.PERCH, Corner.LF, 1);
        weigh(50);
        weigh(50.1);
        List<List<SettledReading>> found = stretches();
        assertEquals(1, found.size());
        List<SettledReading> one = found.get(0);
        assertEquals(3, one.size());
        assertEquals((300 - 156) * G, one.get(0).loadsN().get(0).orElseThrow(), 1e-9);
        assertEquals(156 * G, one.get(0).loadsN().get(1).orElseThrow(), 1e-9);
        assertEquals(List.of(1.0, 0.0, 0.0, -0.75), one.get(1).turns());
        assertFalse(one.get(0).turned(), "what was turned before the first reading is not known from it");
        assertFalse(one.get(2).turned(), "weighed again, nothing turned");
    }

    @Test
    void heightsAndLoadsOfOneSettlingBelongTogether() {
        book.read("ride-height", DayBook.heights(61, 62, 70.5, 71));
        weigh(51);
        SettledReading one = stretches().get(0).get(0);
        assertEquals(List.of(61.0, 62.0, 70.5, 71.0), one.heightsMm().stream().map(OptionalDouble::orElseThrow).toList());
        assertEquals(153 * G, one.loadsN().get(2).orElseThrow(), 1e-9);
        book.settle();
        weigh(51);
        List<SettledReading> two = stretches().get(0);
        assertEquals(2, two.size());
        assertTrue(two.get(1).heightsMm().stream().allMatch(OptionalDouble::isEmpty), "settled anew, the heights were not read again");
    }

    @Test
    void aFigureReadTwiceIsTwoReadings() {
        book.read("corner-weights", Map.of(DayBook.load(Corner.LF), 150.0)).read("corner-weights", Map.of(DayBook.load(Corner.LF), 151.0));
        List<SettledReading> one = stretches().get(0);
        assertEquals(2, one.size());
        assertEquals(151 * G, one.get(1).loadsN().get(0).orElseThrow(), 1e-9);
    }

    @Test
    void anglesAndOtherReadingsAreNoneOfIt() {
        book.read("wheel-angles", DayBook.goodAngles());
        assertTrue(stretches().isEmpty());
    }

    @Test
    void turnsAfterTheLastReadingAreToldWithoutFigures() {
        weigh(52);
        book.turn(AdjusterKind.PERCH, Corner.LF, 0.5);
        List<SettledReading> one = stretches().get(0);
        assertEquals(2, one.size());
        assertEquals(List.of(0.5, 0.0, 0.0, 0.0), one.get(1).turns());
        assertTrue(one.get(1).loadsN().stream().allMatch(OptionalDouble::isEmpty));
    }

    @Test
    void turnsAloneTeachNothing() {
        book.turn(AdjusterKind.PERCH, Corner.LF, 0.5);
        assertTrue(stretches().isEmpty());
    }

    private static Map<String, String> disturbing() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(Conditions.PADS, Conditions.MOVED);
        all.put(Conditions.TYRES, "another set");
        all.put(Conditions.FUEL, "12");
        all.put(Conditions.BALLAST, "5 kg");
        all.put(Conditions.SCALES, Conditions.ZEROED);
        return all;
    }

    /** Each of these makes the loads jump by what nobody knows. */
    @Test
    void whatMovesTheLoadsUnknownBeginsAnew() {
        disturbing().forEach((key, value) -> {
            begin();
            weigh(52);
            book.turn(AdjusterKind.PERCH, Corner.LF, 0.5).condition(key, value);
            weigh(50);
            List<List<SettledReading>> found = stretches();
            assertEquals(2, found.size(), key);
            assertEquals(1, found.get(1).size(), key);
            assertFalse(found.get(1).get(0).turned(), "the turns before are not part of the new stretch: " + key);
        });
    }

    @Test
    void aTestOfTheScalesAndCamberWorkBeginAnewToo() {
        weigh(52);
        book.add(new Entry.Check(Header.draft("preparation"), ScaleCorrection.SUBJECT, Map.of("factor.LF", 1.01),
                new Measurement("swap", Map.of(), "", Map.of())));
        weigh(51);
        book.turn(AdjusterKind.CAMBER_ROD, Corner.LF, 0);
        weigh(51);
        assertEquals(List.of(1, 2), stretches().stream().map(List::size).toList(), "nothing turned at the rod, nothing moved");
        book.turn(AdjusterKind.CAMBER_ROD, Corner.LF, 1);
        weigh(51);
        assertEquals(List.of(1, 2, 1), stretches().stream().map(List::size).toList());
        book.add(new Entry.Check(Header.draft("preparation"), "spring.LF", Map.of("rate", 60.0), new Measurement("press", Map.of(), "", Map.of())));
        weigh(51);
        assertEquals(List.of(1, 2, 2), stretches().stream().map(List::size).toList(), "a spring on the bench is no test of the scales");
    }

    @Test
    void withABarConnectedNothingIsLearnt() {
        weigh(52);
        book.condition("rear-bar", Conditions.CONNECTED);
        weigh(49);
        assertEquals(List.of(1), stretches().stream().map(List::size).toList());
        book.condition("rear-bar", Conditions.DISCONNECTED);
        weigh(52);
        assertEquals(List.of(1, 1), stretches().stream().map(List::size).toList());
        book.condition("front-bar", Conditions.CONNECTED);
        weigh(49);
        assertEquals(List.of(1, 1), stretches().stream().map(List::size).toList());
    }

    @Test
    void barsNobodySpokeOfAreTakenForConnected() {
        book = new DayBook();
        weigh(52);
        assertTrue(stretches().isEmpty());
    }

    @Test
    void theDriverGettingOutEndsTheSettling() {
        book.read("ride-height", Map.of(DayBook.height(Corner.LF), 61.0)).condition(Conditions.DRIVER, Conditions.OUT);
        book.read("ride-height", Map.of(new ReadingId(ReadingKind.HEIGHT, "RR rail"), 75.0));
        List<SettledReading> one = stretches().get(0);
        assertEquals(2, one.size());
        assertTrue(one.get(1).figure(4).isEmpty());
        assertEquals(75, one.get(1).figure(7).orElseThrow());
    }

    @Test
    void eachSettlingIsAReadingOfItsOwn() {
        book.read("ride-height", DayBook.goodHeights()).settle();
        weigh(51);
        List<SettledReading> one = stretches().get(0);
        assertEquals(2, one.size());
        assertTrue(one.get(1).heightsMm().stream().allMatch(OptionalDouble::isEmpty));
    }

    /** The driver's mass is known and taken out; the fuel stays in. */
    @Test
    void withoutTheDriverHisMassIsMissing() {
        KnownMass driver = new KnownMass("Anna", KnownMass.Role.DRIVER, 80, -1300, -50, 300);
        KnownMass fuel = new KnownMass("fuel", KnownMass.Role.FUEL, 20, -1800, 0, 300);
        book = new DayBook(DayBook.car().withMasses(new Masses(OptionalDouble.empty(), OptionalDouble.empty(), List.of(driver, fuel)))).prepared();
        weigh(51);
        book.condition(Conditions.DRIVER, Conditions.OUT);
        weigh(51);
        book.condition(Conditions.DRIVER, Conditions.IN);
        weigh(51);
        assertEquals(List.of(List.of(), List.of(new LoadChange(-80, -1300, -50)), List.of()),
                stretches().get(0).stream().map(SettledReading::loadChanges).toList());
    }
}
