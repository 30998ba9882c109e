package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;

/** The question after a break: once for each break, in any stage. */
class AfterBreakTest {

    private static final Instant EVENING = Instant.parse("2026-03-07T20:00:00Z");
    private final List<Entry> entries = new ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, EVENING, ""), Ouzel23.car())));

    private void pads(double hours, String value) {
        entries.add(new Entry.Condition(header(hours), Conditions.PADS, value, ""));
    }

    private void note(double hours) {
        entries.add(new Entry.Note(header(hours), "on with it"));
    }

    private Header header(double hours) {
        return new Header(entries.size() + 1, at(hours), "corner-weights");
    }

    private static Instant at(double hours) {
        return EVENING.plus(Duration.ofMinutes(Math.round(60 * hours)));
    }

    private Optional<Instant> since(double hours) {
        return AfterBreak.since(Day.of(entries), at(hours));
    }

    @Test
    void aLongDayWithoutABreakIsNotAsked() {
        pads(0, Conditions.LEVELLED);
        note(2.5);
        note(5);
        assertEquals(Optional.empty(), since(7));
    }

    @Test
    void theNextEveningIsAskedOnce() {
        pads(0, Conditions.LEVELLED);
        note(1);
        assertEquals(Optional.of(at(1)), since(22));
        note(22.1);
        assertEquals(Optional.of(at(1)), since(22.2), "going on without an answer does not settle it");
        pads(22.3, Conditions.LEVELLED);
        assertEquals(Optional.empty(), since(24));
        note(24);
        assertEquals(Optional.of(at(24)), since(46), "the next break is another");
    }

    @Test
    void padsThatMovedAreSurveyedAnyway() {
        assertEquals(Optional.empty(), since(22), "not levelled yet");
        pads(0, Conditions.LEVELLED);
        pads(22, Conditions.MOVED);
        assertEquals(Optional.empty(), since(46));
        pads(46, Conditions.LEVELLED);
        entries.add(new Entry.DayClosed(header(47), Optional.empty()));
        assertEquals(Optional.empty(), since(90));
    }
}
