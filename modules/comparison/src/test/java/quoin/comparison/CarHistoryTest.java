package quoin.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.DayInfo;
import quoin.logbook.DayShelf;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workflow.ObservedTurns;

/** All days of a car: found beside each other, searched, read as trends, and what their turns did. */
class CarHistoryTest {

    private static CarHistory.Past past(String id, String title, String begun, Book book) {
        return CarHistory.Past.of(id, title, Instant.parse(begun), book.day());
    }

    private static CarHistory history() {
        return new CarHistory(List.of(
                past("2026-05-02-1", "Hill climb", "2026-05-02T08:00:00Z", new Book().condition("tyres", "soft 210").read(Book.loads(49)).note("windy")),
                past("2026-04-01-1", "Garage", "2026-04-01T08:00:00Z", new Book().read(Book.loads(50)).turn(AdjusterKind.PERCH, Corner.RR, 0.5))));
    }

    @Test
    void aSearchLooksIntoPlaceTyreAndNote() {
        assertEquals(List.of("2026-04-01-1", "2026-05-02-1"), history().days().stream().map(CarHistory.Past::id).toList(), "oldest first");
        for (String sought : List.of("hill", "SOFT", "windy", "2026-05", "soft windy")) {
            assertEquals(List.of("2026-05-02-1"), history().search(sought).days().stream().map(CarHistory.Past::id).toList(), sought);
        }
        assertTrue(history().search("hard").days().isEmpty());
        assertEquals(2, history().search("  ").days().size());
    }

    @Test
    void aTrendHasEveryDayWithItsTarget() {
        List<CarHistory.Point> cross = history().trend(Book.CROSS);
        assertEquals(List.of(50.0, 49.0), cross.stream().map(p -> Math.rint(1e6 * p.value().value()) / 1e6).toList());
        assertEquals(50, cross.get(0).target().orElseThrow().value());
        assertTrue(history().trend(ReadingId.of(ReadingKind.CAMBER, Corner.LF)).isEmpty());
    }

    @Test
    void positionsAreThreadLengthsAtTheEndOfEachDay() {
        List<OptionalDouble> rr = history().positions(new AdjusterId(AdjusterKind.PERCH, Corner.RR));
        assertEquals(1.0, rr.get(0).orElseThrow() - rr.get(1).orElseThrow(), 1e-9, "half a turn of a 2 mm thread");
    }

    /** Two rounds with a camber rod: 0.30 and 0.34 deg a turn, read alike, make 0.32; the noise of the mean is that of one over the root of 2. */
    @Test
    void whatATurnDidIsTheMeanOfItsRounds() {
        ReadingId camber = ReadingId.of(ReadingKind.CAMBER, Corner.LF);
        Book book = new Book().read(Book.angles(-2.0, 0.1)).turn(AdjusterKind.CAMBER_ROD, Corner.LF, 1).read(Book.angles(-1.7, 0.1))
                .turn(AdjusterKind.CAMBER_ROD, Corner.LF, -1).read(Book.angles(-2.04, 0.1));
        ObservedTurns observed = ObservedTurns.of(book.day(), new SuspensionTypes(List.of())).stream()
                .filter(o -> o.reading().equals(camber)).findFirst().orElseThrow();
        assertEquals(2, observed.rounds());
        assertEquals(0.32, observed.observed().amount(), 1e-9);
        double one = Math.hypot(0.1 / Math.sqrt(12), 0.04);
        assertEquals(Math.sqrt(2) * one / Math.sqrt(2), observed.observed().uncertainty(), 1e-9);
        assertTrue(observed.expected().isPresent());
    }

    @Test
    void theDaysOfACarAreFoundBesideTheOpenOne(@TempDir Path root) {
        Library early = new Library(root, Clock.fixed(Instant.parse("2026-04-01T08:00:00Z"), ZoneOffset.UTC));
        Library late = new Library(root, Clock.fixed(Instant.parse("2026-05-02T08:00:00Z"), ZoneOffset.UTC));
        early.save(Ouzel23.car());
        early.createDay(Ouzel23.car(), "first").close();
        try (Journal open = late.createDay(Ouzel23.car(), "second")) {
            DayShelf shelf = new DayShelf(open.folder());
            assertEquals(List.of("second", "first"), shelf.days().stream().map(DayInfo::title).toList());
            assertEquals(Optional.of("first"), shelf.before(open.info().id()).map(DayInfo::title));
            assertTrue(shelf.day(shelf.days().get(1)).isPresent());
            assertTrue(shelf.before(shelf.days().get(1).id()).isEmpty());
        }
        assertTrue(new DayShelf(root.resolve("alone")).days().isEmpty(), "a day outside a library has no others");
    }
}
