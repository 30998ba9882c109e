package quoin.garage.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.KnownDay;
import quoin.logbook.Library;
import quoin.logbook.LibraryIndex;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;

class DayTemplateTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-02T08:00:00Z"), ZoneOffset.UTC);
    private static final AdjusterId PERCH = AdjusterId.parse("perch.RF");
    private static final AdjusterId LINK = AdjusterId.parse("toe-link.LF");

    @TempDir
    private Path root;

    private final CurrentDay current = new CurrentDay(List.of());

    private Desk desk() {
        return new Desk(current, root, new LastDay() {
            private Optional<Path> last = Optional.empty();

            @Override
            public Optional<Path> get() {
                return last;
            }

            @Override
            public void set(Optional<Path> day) {
                last = day;
            }
        }, CLOCK);
    }

    private Path spring(Library library) {
        Header header = Header.draft("corner-weights");
        try (Journal day = library.createDay(Ouzel23.car(), "Spring")) {
            day.append(new Entry.Reading(header, Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), 160.0), Map.of(), Entry.Source.RACER));
            day.append(new Entry.TargetSet(header, ReadingId.ofCar(ReadingKind.CROSS), new Target(50.4, 0.2)));
            day.append(new Entry.Adjustment(header, List.of(new Entry.Turn(PERCH, 2, OptionalDouble.empty()),
                    new Entry.Turn(LINK, 1, OptionalDouble.of(17.3))), ""));
            day.append(new Entry.Adjustment(header, List.of(new Entry.Turn(PERCH, -0.5, OptionalDouble.empty())), ""));
            return day.folder();
        }
    }

    @Test
    void theNextDayHasTheCarAsItWasLeftAndNoReadings() {
        Desk desk = desk();
        desk.newDayLike(spring(desk.library()), " Summer ");
        Day day = current.snapshot().orElseThrow().day();
        Car before = Ouzel23.car();
        assertEquals(1, day.written().size());
        assertEquals(new Target(50.4, 0.2), day.targets().of(ReadingId.ofCar(ReadingKind.CROSS)).orElseThrow());
        assertEquals(before.loadCase(), day.car().loadCase());
        // two turns up and half a turn down, and a link measured after it was turned
        double pitch = ((Setting.Thread) before.adjuster(PERCH).orElseThrow().setting()).mmPerTurn();
        assertEquals(before.adjuster(PERCH).orElseThrow().startMm().orElseThrow() + 1.5 * pitch,
                day.car().adjuster(PERCH).orElseThrow().startMm().orElseThrow(), 1e-9);
        assertEquals(17.3, day.car().adjuster(LINK).orElseThrow().startMm().orElseThrow(), 1e-9);
        assertEquals("Summer", current.journal().orElseThrow().info().title());
    }

    @Test
    void theDayItWasMadeFromMayBeOpen() {
        Desk desk = desk();
        Path spring = spring(desk.library());
        desk.open(spring);
        desk.newDayLike(spring, "Summer");
        assertTrue(current.snapshot().orElseThrow().last(ReadingId.of(ReadingKind.LOAD, Corner.LF)).isEmpty());
    }

    @Test
    void theNextDayBeginsWhereTheLastOneLeftTheAdjusters() {
        Desk desk = desk();
        desk.library().save(Ouzel23.car());
        spring(desk.library());
        double pitch = ((Setting.Thread) Ouzel23.car().adjuster(PERCH).orElseThrow().setting()).mmPerTurn();
        double left = Ouzel23.car().adjuster(PERCH).orElseThrow().startMm().orElseThrow() + 1.5 * pitch;
        for (String title : List.of("Summer", "Autumn")) {
            desk.newDay(Ouzel23.car().id(), title);
            assertEquals(left, start(current.snapshot().orElseThrow().car(), PERCH), 1e-9, title);
            assertEquals(17.3, start(current.snapshot().orElseThrow().car(), LINK), 1e-9, title);
            assertEquals(left, start(desk.library().car(Ouzel23.car().id()), PERCH), 1e-9, title);
        }
        assertEquals(Ouzel23.car().targets(), current.snapshot().orElseThrow().day().targets(), "targets of a day stay with that day");
    }

    @Test
    void whatWasMeasuredInTheCarsFileSinceThenIsNewer() {
        Desk desk = desk();
        desk.library().save(Ouzel23.car());
        spring(desk.library());
        Car measured = Ouzel23.car();
        Adjuster perch = measured.adjuster(PERCH).orElseThrow();
        Adjuster again = new Adjuster(PERCH, perch.setting(), OptionalDouble.of(70.4), perch.minMm(), perch.maxMm(), perch.locked());
        desk.library().save(DayTemplate.withAdjusters(measured, a -> a.id().equals(PERCH) ? again : a));
        desk.newDay(measured.id(), "Summer");
        assertEquals(70.4, start(current.snapshot().orElseThrow().car(), PERCH), 1e-9);
        assertEquals(17.3, start(current.snapshot().orElseThrow().car(), LINK), 1e-9);
    }

    private static double start(Car car, AdjusterId id) {
        return car.adjuster(id).orElseThrow().startMm().orElseThrow();
    }

    @Test
    void aDayInTheArchiveIsNotAmongTheLatest() {
        Desk desk = desk();
        desk.library().save(Ouzel23.car());
        spring(desk.library());
        KnownDay day = LibraryIndex.of(desk.library()).days().get(0);
        desk.archive(day, true);
        assertEquals(List.of(), DayList.latest(desk.library(), 10));
        desk.archive(day, false);
        assertEquals(List.of("Spring"), DayList.latest(desk.library(), 10).stream().map(d -> d.day().title()).toList());
    }
}
