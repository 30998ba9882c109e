package quoin.garage.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workbench.ReadDay;

class DeskTest {

    @TempDir
    Path folder;
    private final Hand clock = new Hand();
    private Path remembered;
    private final CurrentDay current = new CurrentDay(List.of());

    /** A clock that is turned by hand. */
    private static final class Hand extends Clock {

        private Instant now = Instant.parse("2026-03-07T09:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }

        @Override
        public Instant instant() {
            return now;
        }

        void forward(Duration time) {
            now = now.plus(time);
        }
    }

    private Desk desk() {
        return desk(current);
    }

    private Desk desk(CurrentDay day) {
        return new Desk(day, folder, new LastDay() {
            @Override
            public Optional<Path> get() {
                return Optional.ofNullable(remembered);
            }

            @Override
            public void set(Optional<Path> dayFolder) {
                remembered = dayFolder.orElse(null);
            }
        }, clock);
    }

    @AfterEach
    void close() {
        current.close();
    }

    private Car day() {
        return current.snapshot().orElseThrow().car();
    }

    private String opened() {
        return current.journal().orElseThrow().folder().getFileName().toString();
    }

    @Test
    void newCarGetsAnIdOfItsNameAndADay() {
        Desk desk = desk();
        Car first = desk.save(Ouzel23.car().withId("new-car", "Ouzel 23 «bleu»"), true);
        Car second = desk.save(Ouzel23.car().withId("new-car", "Ouzel 23 «bleu»"), true);
        assertEquals("ouzel-23-bleu", first.id());
        assertNotEquals(first.id(), second.id());
        desk.newDay(first.id(), "  Hill climb ");
        assertEquals(first, day());
        assertEquals("2026-03-07-1", opened());
        assertEquals("Hill climb", current.journal().orElseThrow().info().title());
        assertFalse(current.isRehearsal());
    }

    @Test
    void rehearsalsOfOneLibraryReadDifferentlyAndReopenTheSame() {
        Desk desk = desk();
        List<ReadingId> loads = Stream.of(Corner.values()).map(c -> ReadingId.of(ReadingKind.LOAD, c)).toList();
        desk.rehearse("One");
        Map<ReadingId, Double> first = current.practiceReadings(loads).orElseThrow();
        Path day = current.journal().orElseThrow().folder();
        desk.rehearse("Two");
        Map<ReadingId, Double> second = current.practiceReadings(loads).orElseThrow();
        assertNotEquals(first, second);
        desk.open(day);
        assertTrue(current.isRehearsal());
        assertEquals(first, current.practiceReadings(loads).orElseThrow());
        assertEquals(List.of("ouzel-23"), desk.library().cars().stream().map(c -> c.id()).toList());
    }

    @Test
    void demoGoesOnWithTodaysUnfinishedRehearsal() {
        Desk desk = desk();
        desk.demo("Rehearsal");
        assertEquals("2026-03-07-1", opened());
        current.record("", h -> new Entry.Note(h, "half done"));
        desk.demo("Rehearsal");
        assertEquals("2026-03-07-1", opened());
        desk.closeFile();
        desk.demo("Rehearsal");
        assertEquals("2026-03-07-1", opened());
        assertEquals(3, current.snapshot().orElseThrow().day().revision());
        current.record("", h -> new Entry.DayClosed(h, Optional.empty()));
        desk.demo("Rehearsal");
        assertEquals("2026-03-07-2", opened());
        desk.closeFile();
        clock.forward(Duration.ofDays(1));
        desk.demo("Rehearsal");
        assertEquals("2026-03-08-1", opened());
    }

    @Test
    void demoLeavesADayAloneThatAnotherHasOpen() {
        CurrentDay other = new CurrentDay(List.of());
        desk(other).rehearse("Mine");
        desk().demo("Yours");
        assertEquals("2026-03-07-2", opened());
        other.close();
    }

    @Test
    void leftDayIsReopenedAndAPutAwayDayIsNot() {
        desk().rehearse("Evening one");
        current.record("", h -> new Entry.Note(h, "LF done, LR not yet"));
        current.close();
        assertEquals(List.of(), desk().open(desk().left().orElseThrow()));
        assertEquals(3, current.snapshot().orElseThrow().day().revision());
        assertEquals(Optional.empty(), desk().left(), "it is open already");
        desk().closeFile();
        assertEquals(Optional.empty(), desk().left());
    }

    @Test
    void whatIsWrongWithALeftDayIsSaid() throws IOException {
        desk().rehearse("Evening one");
        Path file = current.journal().orElseThrow().folder().resolve(Journal.FILE);
        current.close();
        Files.writeString(file, "{\"no\":3,\"ki", StandardOpenOption.APPEND);
        assertEquals(1, desk().open(desk().left().orElseThrow()).size());
        assertEquals(2, current.snapshot().orElseThrow().day().revision());
        current.close();
        Files.delete(file);
        JournalException said = assertThrows(JournalException.class, () -> desk().read(desk().left().orElseThrow()));
        assertTrue(said.getMessage().contains(file.toString()), said.getMessage());
        assertTrue(current.journal().isEmpty());
        assertTrue(desk().left().isPresent(), "it stays remembered");
    }

    @Test
    void dayThatWasReadIsOpenOnlyWhenItIsTakenAndCanBeLeft() {
        Desk desk = desk();
        desk.rehearse("One");
        Path one = current.journal().orElseThrow().folder();
        desk.rehearse("Two");
        ReadDay read = desk.read(one);
        assertEquals("2026-03-07-2", opened());
        assertEquals(2, read.day().revision());
        read.journal().close();
        desk.open(one);
        assertEquals("2026-03-07-1", opened(), "nobody holds it any more");
        assertEquals(read.day().written(), current.snapshot().orElseThrow().day().written());
    }

    @Test
    void openDayStaysOpenWhereAnotherCannotBeOpened() {
        Desk desk = desk();
        desk.rehearse("Mine");
        assertThrows(JournalException.class, () -> desk.open(folder.resolve("nothing")));
        assertEquals("2026-03-07-1", opened());
        current.record("", h -> new Entry.Note(h, "still writing"));
        assertEquals(3, current.snapshot().orElseThrow().day().revision());
    }

    @Test
    void dayOpenInAnotherQuoinCanBeLookedAtOnly() throws IOException {
        Path elsewhere = folder.resolve("stick").resolve("day");
        try (Journal other = Journal.create(elsewhere, Ouzel23.car(), "Open there")) {
            Desk desk = desk();
            JournalException e = assertThrows(JournalException.class, () -> desk.open(elsewhere));
            assertTrue(e.isReadable() && e.getMessage().contains("open in another Quoin"), e.getMessage());
            byte[] before = Files.readAllBytes(elsewhere.resolve(Journal.FILE));
            assertEquals(List.of(), desk.take(desk.readToLookAt(elsewhere)));
            assertFalse(current.record("", h -> new Entry.Note(h, "not here")), "nothing can be recorded");
            assertArrayEquals(before, Files.readAllBytes(elsewhere.resolve(Journal.FILE)));
            assertEquals(1, other.entries().size());
        }
    }

    @Test
    void dayOutsideTheLibraryIsOpenedToo() {
        Path elsewhere = folder.resolve("stick").resolve("day");
        Journal.create(elsewhere, Ouzel23.car(), "From a friend").close();
        desk().open(elsewhere);
        assertEquals(Ouzel23.car(), day());
        assertEquals(Optional.of(elsewhere), Optional.ofNullable(remembered));
    }

    @Test
    void editedCarOfTheOpenDayBecomesAnEntry() {
        Desk desk = desk();
        Car car = desk.save(Ouzel23.car(), true);
        desk.newDay(car.id(), "");
        ReadingId front = ReadingId.of(ReadingKind.CAMBER, Corner.LF);
        current.record("", h -> new Entry.TargetSet(h, front, new Target(-2.5, 0.1)));
        assertEquals(new Target(-2.5, 0.1), desk.car(car.id()).targets().of(front).orElseThrow());
        Car changed = desk.car(car.id()).withId(car.id(), "Ouzel 23, new springs");
        desk.save(changed, false);
        assertEquals("Ouzel 23, new springs", day().name());
        assertEquals(new Target(-2.5, 0.1), current.snapshot().orElseThrow().day().targets().of(front).orElseThrow());
        assertEquals(changed, desk.library().car(car.id()));
        long revision = current.snapshot().orElseThrow().day().revision();
        desk.save(changed, false);
        assertEquals(revision, current.snapshot().orElseThrow().day().revision());
    }

    @Test
    void latestDaysOfAllCarsTellHowFarTheyAre() throws IOException {
        Desk desk = desk();
        Car car = desk.save(Ouzel23.car().withId("x", "Wren"), true);
        desk.newDay(car.id(), "Weigh only");
        clock.forward(Duration.ofHours(1));
        desk.rehearse("Rehearsal");
        clock.forward(Duration.ofDays(2));
        desk.newDay(car.id(), "Hill climb");
        current.record("", h -> new Entry.DayClosed(h, Optional.empty()));
        clock.forward(Duration.ofHours(1));
        desk.newDay(car.id(), "Broken");
        Path broken = current.journal().orElseThrow().folder();
        current.close();
        Files.writeString(broken.resolve(Journal.FILE), "no day");
        List<RecentDay> days = DayList.latest(desk.library(), 10);
        assertEquals(List.of("Wren CLOSED Hill climb", "Ouzel 23 REHEARSAL Rehearsal", "Wren IN_WORK Weigh only"),
                days.stream().filter(d -> d.state() != RecentDay.State.UNREADABLE)
                        .map(d -> d.car() + " " + d.state() + " " + d.day().title()).toList());
        assertEquals(4, days.size());
        assertEquals(2, DayList.latest(desk.library(), 2).size());
    }
}
