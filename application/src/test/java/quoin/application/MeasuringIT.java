package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/** Camber by plumb line and rule, typed in the measuring window by the keyboard alone, is in the journal with what was read. */
@WindowTest
class MeasuringIT {

    private static final Duration START = Duration.ofSeconds(90);
    private static final Duration SOON = Duration.ofSeconds(20);
    private static final Duration FOCUS = Duration.ofMillis(900);
    private static final ReadingId CAMBER = ReadingId.of(ReadingKind.CAMBER, Corner.LF);

    @TempDir
    Path home;

    @Test
    void aMeasuredAngleIsRecorded(Screen screen) {
        DayWalker walker = new DayWalker(screen, home.resolve("library"));
        try (AppRunner app = AppRunner.start(screen, home, "-J-Dquoin.library=" + home.resolve("library"), "--demo")) {
            screen.waitForWindow("^Quoin", START);
            walker.dayFolder();
            Await.pause(Duration.ofSeconds(4));
            screen.keys().press("ctrl+m");
            Await.pause(FOCUS);
            for (int i = 0; i < 4; i++) {
                screen.keys().press("alt+Down");
                Await.pause(FOCUS);
            }
            screen.keys().type("52,5").press("Return");
            Await.pause(FOCUS);
            screen.keys().type("38").press("Return");
            Await.pause(FOCUS);
            screen.shot("measuring-plumb-line");
            screen.keys().press("ctrl+Return");
            Await.until("the camber in the journal", SOON, () -> walker.day().flatMap(d -> d.latest(CAMBER)).isPresent());
            screen.shot("measuring-recorded");
            assertEquals(List.of(), app.log().problems());
        }
        Day day = walker.day().orElseThrow();
        assertEquals(Math.toDegrees(Math.asin(-14.5 / 372)), day.latest(CAMBER).orElseThrow().value(), 1e-12);
        Entry.Reading reading = walker.entries(Entry.Reading.class).get(0);
        assertEquals(Optional.of("52,5"), reading.measured().orElseThrow().raw("LF.top"));
    }
}
