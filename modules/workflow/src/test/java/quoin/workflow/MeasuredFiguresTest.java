package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;

/** The uncertainty a way of measuring gives stands in for that of the car's instruments; repeatability is added in squares. */
class MeasuredFiguresTest {

    private static final ReadingId LF = DayBook.height(Corner.LF);

    @Test
    void theUncertaintyOfTheWayOfMeasuringCounts() {
        OrderOfWork order = new OrderOfWork(PlainStage.day());
        List<Entry> entries = new ArrayList<>(new DayBook().prepared().sign(order, "preparation").day().written());
        Header next = new Header(entries.get(entries.size() - 1).number() + 1, Instant.EPOCH, "ride-height");
        entries.add(new Entry.Reading(next, Map.of(LF, 62.4), Map.of(), Entry.Source.RACER,
                Optional.of(new Measurement("by-hose", Map.of("read", "62.4"), "", Map.of(LF, 0.7)))));
        ReadingState state = order.status(Day.of(entries)).reading(LF);
        assertEquals(62.4, state.value().orElseThrow(), 1e-12);
        assertEquals(Math.sqrt(0.7 * 0.7 + 0.3 * 0.3), state.uncertainty(), 1e-12);
    }
}
