package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;

/** A day written by the first format must always be readable; its file is never written anew. */
class StoredFormatTest {

    @TempDir
    Path folder;

    @Test
    void dayOfFormatOneIsRead() throws IOException {
        try (InputStream stored = StoredFormatTest.class.getResourceAsStream("format-1.jsonl")) {
            Files.copy(stored, folder.resolve("day.jsonl"));
        }
        try (Journal journal = Journal.open(folder)) {
            assertEquals(List.of(), journal.findings());
            assertEquals(16, journal.entries().size());
            assertEquals("Format 1, every kind", journal.info().title());
            checkDay(journal.day());
            checkCar(journal.day().car());
            assertEquals(17, journal.append(Samples.note("goes on")).number());
        }
    }

    private static void checkDay(Day day) {
        Figure first = day.history(Samples.LF_LOAD).get(0);
        assertEquals(107.9, first.value());
        assertEquals(Entry.Source.PRACTICE_CAR, first.source());
        assertEquals(-1.0 / 3, day.latest(ReadingId.of(ReadingKind.CAMBER, Corner.RR)).orElseThrow().value());
        Entry.Adjustment turned = assertInstanceOf(Entry.Adjustment.class, day.written().get(3));
        assertEquals("half done", turned.words());
        assertEquals(60.6, turned.turns().get(0).lengthMm().getAsDouble());
        assertEquals(-0.375, day.turned(Samples.RR_PERCH));
        assertEquals(Optional.of("in"), day.condition(Conditions.DRIVER));
        assertEquals(Optional.of(new Target(61.5, 0.5)), day.targets().of(Samples.SILL));
        assertEquals(CrossGoal.WANTED, day.targets().crossGoal());
        assertEquals("tyre tape:\n1812 \u2028 1810", assertInstanceOf(Entry.Note.class, day.written().get(8)).words());
        assertEquals(Optional.of("scrutineer waits"), assertInstanceOf(Entry.SignOff.class, day.written().get(10)).waived());
        assertEquals(Optional.empty(), day.signOff("corner-weights"), "it was opened again");
        Figure corrected = day.history(Samples.LF_LOAD).get(1);
        assertEquals(3, corrected.entry());
        assertEquals(107.9, corrected.value(), "entry 3 said 0.1 and was corrected");
        assertEquals(Optional.of("dark"), day.closed().orElseThrow().outOfOrder());
    }

    private static void checkCar(Car car) {
        assertEquals("Full \u2013 no. 1", car.name());
        assertEquals(2380.5, car.wheelbaseMm());
        assertEquals(Map.of("a", "\n\t\"\\", "b", "", "pillar angle", "6\u00b030'"), car.axles().get(Axle.REAR).suspension().parameters());
        assertEquals(8.25, car.axles().get(Axle.FRONT).bar().orElseThrow().rollRateNPerMm().getAsDouble());
        assertEquals(61.3, car.corners().rf().springRateNPerMm().getAsDouble());
        assertEquals(2, car.corners().rr().adjusters().size());
        assertEquals(List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF), car.walkingOrder());
        assertEquals(4, car.masses().known().size());
        assertEquals(new Target(50, 0.3), car.targets().of(ReadingId.ofCar(ReadingKind.CROSS)).orElseThrow());
    }
}
