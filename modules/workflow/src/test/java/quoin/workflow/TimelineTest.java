package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** How things stood at every reading. */
class TimelineTest {

    private static boolean settledAfter(String key, String value) {
        return Timeline.of(new DayBook().prepared().condition(key, value).day()).settledNow();
    }

    /** Whoever changes a wheel or moves a pad has the car in the air; a pressure is set where it stands. */
    @Test
    void aCarThatWasLiftedIsSettledAgain() {
        assertFalse(settledAfter(Conditions.TYRES, "wets"));
        assertFalse(settledAfter(Conditions.PADS, Conditions.MOVED));
        assertFalse(settledAfter(Conditions.SETTLED, Conditions.NO));
        assertTrue(settledAfter(Conditions.pressure(Corner.RR), "1.6"));
        assertTrue(settledAfter(Conditions.PRESSURES, "unknown"));
        assertTrue(settledAfter(Conditions.PADS, Conditions.LEVELLED), "as they were already");
    }

    /** A file that another program has written in another order: entries 4, 9, 6, 5 after each other. */
    @Test
    void readingsWhoseNumbersDoNotRiseAreFound() {
        List<Entry> entries = new ArrayList<>(List.of(new Entry.CarDescribed(header(1), DayBook.car()), settled(2, Conditions.YES)));
        entries.addAll(List.of(reading(4), reading(9), settled(6, Conditions.NO), reading(5)));
        Timeline timeline = Timeline.of(Day.of(entries));
        assertTrue(timeline.at(4).settled());
        assertTrue(timeline.at(9).settled());
        assertFalse(timeline.at(5).settled());
        assertNull(timeline.at(2), "no reading");
        OrderOfWork order = new OrderOfWork(PlainStage.day());
        assertEquals(62, order.status(Day.of(entries)).reading(DayBook.height(Corner.LF)).value().orElseThrow());
    }

    private static Header header(long number) {
        return new Header(number, Instant.EPOCH, "ride-height");
    }

    private static Entry settled(long number, String value) {
        return new Entry.Condition(header(number), Conditions.SETTLED, value, "");
    }

    private static Entry reading(long number) {
        return new Entry.Reading(header(number), Map.of(DayBook.height(Corner.LF), 62.0), Map.of(), Entry.Source.RACER);
    }
}
