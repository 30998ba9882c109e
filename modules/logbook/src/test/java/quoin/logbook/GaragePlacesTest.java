package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.PerCorner;
import quoin.car.Setting;

/** Pads, scales and springs of a day, and what is remembered of a garage. */
class GaragePlacesTest {

    @TempDir
    Path root;

    private GaragePlace lockUp() {
        return GaragePlace.named("lock-up", "Lock-up").withStock(List.of(new Setting.Shim(1, 4), new Setting.Shim(0.5, 0)))
                .with(new PerCorner<>(List.of(), List.of(1.0, 1.0), List.of(), List.of(1.0)), Optional.of(new GaragePlace.Survey(
                        Instant.parse("2026-03-07T12:00:00Z"), "water-level", new PerCorner<>(0.0, 0.4, 0.2, 0.5), true)));
    }

    @Test
    void whatIsSavedIsReadBack() {
        GaragePlaces places = new GaragePlaces(root);
        assertEquals(List.of(), places.all());
        places.save(lockUp());
        places.save(GaragePlace.named("barn", "barn"));
        assertEquals(List.of(GaragePlace.named("barn", "barn"), lockUp()), new GaragePlaces(root).all());
        assertEquals(lockUp(), places.called(" LOCK-UP "));
    }

    @Test
    void aNewNameGetsAnIdOfItsOwn() {
        GaragePlaces places = new GaragePlaces(root);
        places.save(lockUp());
        assertEquals("lock-up-2", places.called("Lock up!").id());
        assertEquals("place", places.called("???").id());
        assertThrows(IllegalArgumentException.class, () -> places.called("  "));
    }

    @Test
    void aDamagedFileIsNamed() throws IOException {
        Files.createDirectories(root.resolve("places"));
        Files.writeString(root.resolve("places/barn.json"), "{\"quoin\":\"place\",\"format\":1}");
        String said = assertThrows(JournalException.class, () -> new GaragePlaces(root).all()).getMessage();
        assertTrue(said.contains("barn.json") && said.contains("name"), said);
        Files.writeString(root.resolve("places/barn.json"), "{\"quoin\":\"place\",\"format\":2,\"name\":\"barn\"}");
        assertTrue(assertThrows(JournalException.class, () -> new GaragePlaces(root).all()).getMessage().contains("newer Quoin"));
    }

    @Test
    void placesLieBesideTheCarsOfADay() {
        Path day = root.resolve("cars/ouzel/days/2026-03-07-1");
        new GaragePlaces(root).save(lockUp());
        assertEquals(List.of(lockUp()), GaragePlaces.beside(day).orElseThrow().all());
        assertEquals(Optional.empty(), GaragePlaces.beside(root.resolve("stray-day")));
    }

    @Test
    void theLastCheckOfASubjectCounts() {
        Measurement person = new Measurement("known-person", Map.of("LF", "80,2"), "", Map.of());
        Entry.Check first = new Entry.Check(Samples.header(2), "scales", Map.of("factor.LF", 1.002), person);
        Entry.Check second = new Entry.Check(Samples.header(3), "scales", Map.of("factor.LF", 1.001), person);
        Day day = Day.of(List.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar()), first, second,
                new Entry.Check(Samples.header(4), "pads", Map.of("warp", 0.4), person)));
        assertEquals(Optional.of(second), day.check("scales"));
        assertEquals(1.001, day.check("scales").orElseThrow().result("factor.LF").getAsDouble());
        assertTrue(day.check("springs").isEmpty());
        Day undone = Day.of(List.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar()), first, second,
                new Entry.Correction(Samples.header(4), 3, Optional.empty(), "undo")));
        assertEquals(Optional.of(first), undone.check("scales"));
        assertThrows(IllegalArgumentException.class, () -> new Entry.Check(Samples.header(1), "scales", Map.of(), person));
        assertThrows(IllegalArgumentException.class, () -> new Entry.Check(Samples.header(1), "scales", Map.of("a", Double.NaN), person));
    }
}
