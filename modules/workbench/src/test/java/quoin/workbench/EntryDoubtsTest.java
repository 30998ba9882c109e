package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.spi.Finding;

/** A typo is challenged once with the likely figure, and can be kept. */
class EntryDoubtsTest {

    private static final ReadingId LF = ReadingId.of(ReadingKind.LOAD, Corner.LF);
    private static final ReadingId RF = ReadingId.of(ReadingKind.LOAD, Corner.RF);

    private static Finding doubtAbout(ReadingId id, double likely) {
        return new Finding(Finding.Level.WARNING, "does not fit", Optional.of(id), OptionalDouble.of(likely));
    }

    private static Map<ReadingId, Double> loads(double lf, double rf, double lr, double rr) {
        Map<ReadingId, Double> loads = new HashMap<>();
        loads.put(LF, lf);
        loads.put(RF, rf);
        loads.put(ReadingId.of(ReadingKind.LOAD, Corner.LR), lr);
        loads.put(ReadingId.of(ReadingKind.LOAD, Corner.RR), rr);
        return loads;
    }

    /** The demo car ready to be weighed, driver in, bars off, settled; weighed once. */
    private static Day weighed() {
        TestCars day = TestCars.day();
        Map.of(Conditions.DRIVER, Conditions.IN, Conditions.bar(Axle.FRONT), Conditions.DISCONNECTED, Conditions.DAMPERS, Conditions.SOFT,
                Conditions.BRAKES, Conditions.FREE, Conditions.STEERING, Conditions.LOCKED, Conditions.PADS, Conditions.LEVELLED,
                Conditions.SCALES, Conditions.ZEROED, Conditions.PRESSURES, Conditions.SET, Conditions.SETTLED, Conditions.YES)
                .forEach((key, value) -> day.add("preparation", h -> new Entry.Condition(h, key, value, "")));
        return day.read(loads(162.4, 169.4, 148.4, 158.0)).build();
    }

    @Test
    void aFigureIsDoubtedOnceAndThenMeant() {
        Day day = TestCars.day().build();
        EntryDoubts doubts = new EntryDoubts((d, typed) -> List.of(doubtAbout(LF, 174)));
        assertEquals(OptionalDouble.of(174), doubts.next(day, Map.of(LF, 147.0)).orElseThrow().suggested());
        assertTrue(doubts.next(day, Map.of(LF, 147.0)).isEmpty());
        assertTrue(doubts.next(day, Map.of(LF, 117.0)).isPresent());
        doubts.forget();
        assertTrue(doubts.next(day, Map.of(LF, 117.0)).isPresent());
    }

    @Test
    void doubtsAboutFiguresNotTypedOrWithoutALikelyOneDoNotStopTheRacer() {
        Day day = TestCars.day().build();
        Finding vague = new Finding(Finding.Level.ERROR, "the total moved", Optional.of(LF), OptionalDouble.empty());
        assertTrue(new EntryDoubts((d, typed) -> List.of(vague, doubtAbout(RF, 150))).next(day, Map.of(LF, 147.0)).isEmpty());
    }

    @Test
    void figuresThatCannotBeJudgedAreRecorded() {
        EntryDoubts doubts = new EntryDoubts((d, typed) -> {
            throw new IllegalStateException("no model");
        });
        Logger log = Logger.getLogger(EntryDoubts.class.getName());
        log.setLevel(Level.OFF);
        try {
            assertTrue(doubts.next(TestCars.day().build(), Map.of(LF, 147.0)).isEmpty());
        } finally {
            log.setLevel(null);
        }
    }

    @Test
    void swappedDigitsAreFoundFromTheWeighingBefore() {
        Day day = weighed();
        Finding doubt = new EntryDoubts().next(day, loads(126.4, 169.2, 148.2, 158.2)).orElseThrow();
        assertEquals(Optional.of(LF), doubt.about());
        assertEquals(162.4, doubt.suggested().getAsDouble(), 1.0);
    }

    @Test
    void theSameWeighingAgainIsNotDoubted() {
        Day day = weighed();
        assertTrue(new EntryDoubts().next(day, loads(162.6, 169.2, 148.2, 158.2)).isEmpty());
    }
}
