package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;

/** How the order of work says figures, lists and what was wrong. */
class WordsTest {

    private final Locale before = Locale.getDefault();

    @BeforeEach
    void english() {
        Locale.setDefault(Locale.ENGLISH);
    }

    @AfterEach
    void asItWas() {
        Locale.setDefault(before);
    }

    @Test
    void figuresHaveTheDecimalsTheirInstrumentsHave() {
        assertEquals("62.0 mm", Words.figure(62, ReadingKind.HEIGHT));
        assertEquals("108.3 kg", Words.figure(108.26, ReadingKind.LOAD));
        assertEquals("50.13 %", Words.figure(50.126, ReadingKind.CROSS));
        assertEquals("-2.05\u00b0", Words.figure(-2.05, ReadingKind.CAMBER));
        assertEquals("1.25 bar", Words.figure(1.25, ReadingKind.PRESSURE));
        assertEquals("+0.10\u00b0", Words.signed(0.1, ReadingKind.TOE));
        assertEquals("-0.30 %", Words.signed(-0.3, ReadingKind.CROSS));
        assertEquals("62.0 mm \u00b1 1.0", Words.target(new Target(62, 1), ReadingKind.HEIGHT));
    }

    /** Nothing is neither plus nor minus. */
    @Test
    void aRoundedNothingHasNoSign() {
        assertEquals("0.00 %", Words.signed(-0.001, ReadingKind.CROSS));
        assertEquals("0.0 mm", Words.figure(-0.04, ReadingKind.HEIGHT));
        assertEquals("-0.1 mm", Words.figure(-0.06, ReadingKind.HEIGHT));
        assertEquals("0.00\u00b0", Words.signed(0.004, ReadingKind.CAMBER));
    }

    @Test
    void listsReadLikeAPersonSaysThem() {
        assertEquals("", Words.joined(List.of()));
        assertEquals("a", Words.joined(List.of("a")));
        assertEquals("a and b", Words.joined(List.of("a", "b")));
        assertEquals("a, b and c", Words.joined(List.of("a", "b", "c")));
        String list = Words.list(List.of(DayBook.camber(Corner.LF), DayBook.CROSS, DayBook.camber(Corner.RF)));
        assertEquals(ReadingKind.CAMBER.words() + " LF and RF and " + ReadingKind.CROSS.words(), list);
        assertEquals("wheel angles", Words.inSentence("Wheel angles"));
        assertEquals("LF", Words.place("LF"));
        assertEquals("nose", Words.place("nose"));
    }

    @Test
    void whatWasWrongIsNamed() {
        Requirement rear = Requirements.barOff(Axle.REAR);
        assertEquals("taken with the rear bar connected", Words.takenWithout(rear, Optional.of(Conditions.CONNECTED)));
        assertEquals("taken with the rear bar half", Words.takenWithout(rear, Optional.of("half")));
        assertEquals("taken before the front bar was taken off", Words.takenWithout(Requirements.barOff(Axle.FRONT), Optional.empty()));
        assertEquals("taken with the driver out", Words.takenWithout(Requirements.driverIn(), Optional.empty()));
        assertEquals("taken before the dampers were set soft", Words.takenWithout(Requirements.dampersSoft(), Optional.empty()));
        assertEquals("taken with the steering free", Words.takenWithout(Requirements.steeringLocked(), Optional.empty()));
        assertEquals("taken with the brakes on", Words.takenWithout(Requirements.brakesFree(), Optional.empty()));
        assertEquals("taken after the pads were moved", Words.takenWithout(Requirements.padsLevelled(), Optional.of(Conditions.MOVED)));
        assertEquals("taken before the pads were levelled", Words.takenWithout(Requirements.padsLevelled(), Optional.empty()));
        assertEquals("taken before the scales were zeroed", Words.takenWithout(Requirements.scalesZeroed(), Optional.empty()));
        assertEquals("taken before the tyre pressures were set", Words.takenWithout(Requirements.pressuresSet(), Optional.empty()));
        assertEquals("taken before the car was settled", Words.takenWithout(Requirements.settled(), Optional.empty()));
        Requirement own = new Requirement("own", "", "Close the bonnet", Optional.empty());
        assertEquals("taken before this was done: Close the bonnet", Words.takenWithout(own, Optional.empty()));
    }

    @Test
    void aRequirementMattersForItsKindsAndMayLast() {
        Requirement all = new Requirement("own", "x", "Do it", Optional.empty());
        assertTrue(all.appliesTo(ReadingKind.TOE));
        assertFalse(all.lasting());
        Requirement some = all.onlyFor(Set.of(ReadingKind.TOE)).asLasting();
        assertTrue(some.appliesTo(ReadingKind.TOE));
        assertFalse(some.appliesTo(ReadingKind.LOAD));
        assertTrue(some.lasting());
        assertTrue(Requirements.sound().lasting());
        assertTrue(Requirements.sound().caution().isPresent(), "where somebody can be hurt it is said");
        assertTrue(Requirements.fuelKnown().value().isEmpty(), "any amount, as long as it is known");
        assertThrows(IllegalArgumentException.class, () -> new Requirement(" ", "", "Do it", Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new Requirement("own", "", " ", Optional.empty()));
    }

    @Test
    void barsAreAskedForWhereThereAreAny() {
        List<String> keys = Requirements.forReading(DayBook.car()).stream().map(Requirement::key).toList();
        assertEquals(List.of(Conditions.PADS, Conditions.PRESSURES, "front-bar", "rear-bar", Conditions.DAMPERS, Conditions.BRAKES,
                Conditions.DRIVER, Conditions.SETTLED), keys);
    }

    @Test
    void findingsSayHowSeriousTheyAre() {
        assertEquals(Finding.Level.INFO, Finding.info("a").level());
        assertEquals(Finding.Level.WARNING, Finding.warning("a").level());
        Finding about = Finding.warning("a", DayBook.CROSS).suggesting(50);
        assertEquals(Optional.of(DayBook.CROSS), about.about());
        assertEquals(50, about.suggested().orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> Finding.info(" "));
        assertThrows(IllegalArgumentException.class, () -> new Gate<Entry.SignOff>(Optional.empty(), List.of()));
        assertFalse(new Gate<Entry.SignOff>(Optional.empty(), List.of("why")).allowed());
    }

    @Test
    void itemsOfTheCheckAreNamed() {
        DayBook book = new DayBook();
        book.condition(CarCheck.key("wheel-nuts"), CarCheck.GOOD).condition(CarCheck.ownKey(" rear damper "), CarCheck.OPEN);
        book.condition(CarCheck.ownKey("mirror"), CarCheck.OPEN).condition(CarCheck.ownKey("mirror"), CarCheck.GONE);
        assertEquals(List.of("wheel nuts", "rear damper"), CarCheck.recorded(book.day()).stream().map(CarCheck.Item::name).toList());
        List<CarCheck.Item> open = CarCheck.leftOpen(book.day());
        assertEquals(1, open.size());
        assertEquals("left open in the check of the car: rear damper", open.get(0).words());
        assertEquals("left open in the check of the car: rear damper (new one ordered)",
                new CarCheck.Item(open.get(0).key(), "rear damper", CarCheck.OPEN, "new one ordered").words());
        assertTrue(CarCheck.isItem(open.get(0).key()));
        assertFalse(CarCheck.isItem(Conditions.FUEL));
        assertEquals(Optional.of("rear damper"), CarCheck.ownName(open.get(0).key()));
        assertTrue(CarCheck.ownName(CarCheck.key("wheel-nuts")).isEmpty());
    }
}
