package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** No nut that was loosened today is forgotten. */
class LoosenedTest {

    private static final String LF_TOE = "tightened." + new AdjusterId(AdjusterKind.TOE_LINK, Corner.LF);

    private static Loosened only(DayBook book) {
        List<Loosened> list = Loosened.of(book.day());
        assertEquals(1, list.size(), list.toString());
        return list.get(0);
    }

    @Test
    void aTurnOfNothingLoosensNothing() {
        assertEquals(List.of(), Loosened.of(new DayBook().turn(AdjusterKind.TOE_LINK, Corner.LF, 0).day()));
        Loosened nut = only(new DayBook().turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5));
        assertEquals(LF_TOE, nut.key());
        assertEquals("LF toe link", nut.words());
        assertEquals(2, nut.loosened());
        assertEquals(Optional.of(new AdjusterId(AdjusterKind.TOE_LINK, Corner.LF)), nut.adjuster());
    }

    @Test
    void aTickKeepsItsTorqueOrWhatWasSaidInstead() {
        DayBook book = new DayBook().turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5);
        book.add(new Entry.Condition(new Header(0, Instant.EPOCH, ""), LF_TOE, Loosened.TIGHT, "hand-tight, no torque known"));
        assertTrue(only(book).isTicked());
        assertEquals(Optional.of(3L), only(book).tick());
        assertEquals(OptionalDouble.empty(), only(book).torqueNm());
        assertEquals("hand-tight, no torque known", only(book).instead());
        assertEquals(OptionalDouble.of(22.5), only(book.condition(LF_TOE, "22.5")).torqueNm());
        assertEquals(OptionalDouble.empty(), Loosened.torque("a bit"));
    }

    @Test
    void aTickThatIsTakenBackLeavesItOpen() {
        DayBook book = new DayBook().turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5).condition(LF_TOE, "22");
        Loosened open = only(book.condition(LF_TOE, Conditions.NO));
        assertFalse(open.isTicked());
        assertEquals(2, open.loosened(), "it was not loosened again");
        assertEquals(List.of(open), Loosened.open(Loosened.of(book.day())));
    }

    @Test
    void turnedAgainItIsOpenAgain() {
        DayBook book = new DayBook().turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5).condition(LF_TOE, "22")
                .turn(AdjusterKind.TOE_LINK, Corner.LF, -0.25);
        assertFalse(only(book).isTicked());
        assertEquals(4, only(book).loosened());
    }

    @Test
    void tighteningAllKeepsTheTicksThatWereThere() {
        DayBook book = new DayBook().turn(AdjusterKind.TOE_LINK, Corner.LF, 0.5).turn(AdjusterKind.TOE_LINK, Corner.RF, 0.5)
                .condition(LF_TOE, "22").condition(Conditions.LOCKNUTS, Conditions.NO);
        assertEquals(1, Loosened.open(Loosened.of(book.day())).size());
        List<Loosened> all = Loosened.of(book.condition(Conditions.LOCKNUTS, Conditions.YES).day());
        assertEquals(List.of(Optional.of(4L), Optional.of(6L)), all.stream().map(Loosened::tick).toList());
        assertEquals(22, all.get(0).torqueNm().orElseThrow());
    }

    @Test
    void aBarThatIsOnlyJoinedWasNotLoosened() {
        assertEquals(List.of(), Loosened.of(new DayBook().condition("front-bar", Conditions.CONNECTED).day()));
        assertEquals("rear bar link", only(new DayBook().condition("rear-bar", Conditions.DISCONNECTED)).words());
    }

    @Test
    void aTickOfWhatIsNotOnTheListAddsNothing() {
        assertEquals(List.of(), Loosened.of(new DayBook().condition(LF_TOE, "22").condition(Loosened.keyOfPart("seat"), Loosened.TIGHT).day()));
        Loosened seat = only(new DayBook().condition(Loosened.keyOfPart(" seat "), Loosened.LOOSE));
        assertEquals("seat", seat.words());
        assertEquals(Optional.empty(), seat.adjuster());
    }

    @Test
    void aKeyTellsWhatItIsAbout() {
        assertEquals("LF toe link", Loosened.subject(LF_TOE));
        assertEquals("front bar link", Loosened.subject("tightened.front-bar"));
        assertEquals("rear bar link", Loosened.subject("tightened.rear-bar"));
        assertEquals("seat", Loosened.subject(Loosened.keyOfPart("seat")));
        assertEquals("something else", Loosened.subject("tightened.something else"));
        assertTrue(Loosened.isTick(LF_TOE));
        assertFalse(Loosened.isTick(Conditions.LOCKNUTS));
    }
}
