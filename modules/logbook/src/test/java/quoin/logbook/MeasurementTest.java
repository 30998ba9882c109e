package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** What was read for a figure stays with it; bump steer is a curve of its own. */
class MeasurementTest {

    private static final ReadingId TOE = ReadingId.of(ReadingKind.TOE, Corner.LF);

    @TempDir
    Path folder;

    @Test
    void rawFiguresStayInTheFileInTheOrderOfTheForm() throws Exception {
        Map<String, String> raw = new LinkedHashMap<>();
        raw.put("LF.rear", "139 1/2 in");
        raw.put("LF.front", "140,5");
        raw.put("cords", "independent");
        Path day = folder.resolve("d");
        try (Journal journal = Journal.create(day, Samples.fullCar(), "")) {
            journal.append(new Entry.Reading(Header.draft("wheel-angles"), Map.of(TOE, 0.15), Map.of(), Entry.Source.RACER,
                    Optional.of(new Measurement("string-toe", raw, "cord skew", Map.of(TOE, 0.03)))));
        }
        String line = Files.readAllLines(day.resolve(Journal.FILE)).get(2);
        assertTrue(line.contains("\"measured\":{\"method\":\"string-toe\",\"raw\":{\"LF.rear\":\"139 1/2 in\",\"LF.front\":\"140,5\","
                + "\"cords\":\"independent\"},\"words\":\"cord skew\",\"standardUncertainty\":{\"toe.LF\":0.03}}"), line);
        try (Journal journal = Journal.openReadOnly(day)) {
            Figure figure = journal.day().latest(TOE).orElseThrow();
            assertEquals(OptionalDouble.of(0.03), figure.instrumentUncertainty());
            assertEquals(OptionalDouble.empty(), journal.day().latest(TOE).map(f -> new Measurement("x", raw, "", Map.of())
                    .uncertaintyOf(f.reading())).orElseThrow());
        }
    }

    @Test
    void theLastBumpSteerOfAWheelCounts() {
        Measurement dials = new Measurement("bump-steer", Map.of("spacing", "250"), "", Map.of());
        Entry.BumpSteer first = new Entry.BumpSteer(Samples.header(2), Corner.LF,
                List.of(new Entry.BumpSteer.Point(20, -0.05), new Entry.BumpSteer.Point(-20, 0.06), new Entry.BumpSteer.Point(0, 0)), dials);
        Entry.BumpSteer again = new Entry.BumpSteer(Samples.header(3), Corner.LF,
                List.of(new Entry.BumpSteer.Point(20, -0.01), new Entry.BumpSteer.Point(-20, 0.01)), dials);
        assertEquals(List.of(-20.0, 0.0, 20.0), first.points().stream().map(Entry.BumpSteer.Point::travelMm).toList());
        Day day = Day.of(List.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar()), first, again));
        assertEquals(Optional.of(again), day.bumpSteer(Corner.LF));
        assertEquals(Optional.empty(), day.bumpSteer(Corner.RF));
        Entry undone = new Entry.Correction(Samples.header(4), 3, Optional.empty(), "undo");
        assertEquals(Optional.of(first), Day.of(List.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar()), first, again, undone))
                .bumpSteer(Corner.LF));
    }

    @Test
    void whatCannotBeAMeasurementIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Measurement(" ", Map.of(), "", Map.of()));
        assertThrows(IllegalArgumentException.class, () -> new Measurement("x", Map.of(), "", Map.of(TOE, 0.0)));
        Measurement dials = new Measurement("bump-steer", Map.of(), "", Map.of());
        assertThrows(IllegalArgumentException.class, () -> new Entry.BumpSteer(Samples.header(1), Corner.LF,
                List.of(new Entry.BumpSteer.Point(5, 0), new Entry.BumpSteer.Point(5, 0.1)), dials));
    }
}
