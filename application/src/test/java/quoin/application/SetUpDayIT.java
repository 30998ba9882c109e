package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.NextStep;

/** A whole set-up day of the practice car, walked in the assembled application by the keyboard alone. */
@WindowTest
class SetUpDayIT {

    private static final Duration START = Duration.ofSeconds(90);
    private static final Duration END = Duration.ofSeconds(30);
    private static final Duration SETTLE = Duration.ofSeconds(4);
    private static final int MOST_STEPS = 160;
    private static final List<String> TABS = List.of("garage", "stage-preparation", "stage-ride-height", "stage-corner-weights",
            "stage-wheel-angles", "stage-final-recheck");

    @TempDir
    Path home;

    @Test
    void aWholeDayToItsCloseAndOpenAgain(Screen screen) throws IOException {
        String language = System.getProperty("quoin.day.language", "en");
        choose(language);
        DayWalker walker = new DayWalker(screen, home.resolve("library"), language.equals("en") ? "day-" : "day-" + language + "-");
        try (AppRunner app = start(screen, "--demo")) {
            walker.dayFolder();
            Await.pause(SETTLE);
            walker.walkUntil("final-recheck", NextStep.Kind.READ, MOST_STEPS);
            turnOneNotchTooMany(screen, walker, language.equals("de") ? "2u runter" : "2t down");
            walker.walkUntil("", NextStep.Kind.DONE, MOST_STEPS);
            walker.shot("closed");
            assertWholeDay(walker);
            leave(screen, app, language);
        }
        List<Entry> written = walker.day().orElseThrow().written();
        try (AppRunner app = start(screen)) {
            Await.pause(SETTLE);
            walker.shot("opened-again");
            assertEquals(NextStep.Kind.DONE, walker.next().kind());
            walker.assertNothingMissing(written);
            assertEquals(List.of(), app.log().problems());
            leave(screen, app, language);
        }
        assertEquals(written, walker.day().orElseThrow().written(), "looking at a day writes nothing");
    }

    /** In German, to walk a part of the day in a language that was chosen. */
    @Test
    void aKillInTheMiddleLosesNothing(Screen screen) throws IOException {
        choose("de");
        DayWalker walker = new DayWalker(screen, home.resolve("library"), "day-de-");
        List<Entry> written;
        NextStep due;
        try (AppRunner app = start(screen, "--demo")) {
            walker.dayFolder();
            Await.pause(SETTLE);
            walker.walkUntil("ride-height", NextStep.Kind.TURN, MOST_STEPS);
            written = walker.day().orElseThrow().written();
            due = walker.next();
            app.kill();
        }
        walker.assertNothingMissing(written);
        try (AppRunner app = start(screen)) {
            Await.pause(SETTLE);
            screen.shot("day-after-kill");
            assertEquals(due, walker.next(), "the same thing is due after the kill");
            walker.step(due);
            walker.assertNothingMissing(written);
            assertEquals(written.size() + 1, walker.day().orElseThrow().written().size());
            leave(screen, app, "de");
            // the platform may write windows that are not open among them
            assertEquals(TABS, app.tabs().stream().filter(TABS::contains).toList(), "the order of work, although another stage than the first came to the front at start");
        }
    }

    /** As Tools, Units and Language keeps it; nothing on the command line says so. */
    private void choose(String language) throws IOException {
        Path choice = home.resolve("settings/etc/language.properties");
        Files.createDirectories(choice.getParent());
        Files.writeString(choice, "language=" + language + "\n");
    }

    /** In the re-check somebody turns a perch by two turns: the day must send him back to the weights, and then on. */
    private static void turnOneNotchTooMany(Screen screen, DayWalker walker, String twoTurnsDown) {
        long before = walker.day().orElseThrow().revision();
        screen.keys().press("alt+3");
        Await.pause(Duration.ofSeconds(1));
        screen.keys().press("F4");
        Await.pause(Duration.ofSeconds(1));
        screen.keys().type(twoTurnsDown).press("ctrl+Return");
        Await.until("the turn to be recorded", END, () -> walker.day().orElseThrow().revision() > before);
    }

    private static void assertWholeDay(DayWalker walker) {
        Day day = walker.day().orElseThrow();
        assertTrue(day.closed().isPresent(), "the day is closed");
        assertTrue(day.closed().orElseThrow().outOfOrder().isEmpty(), "in order");
        List<String> signed = walker.entries(Entry.SignOff.class).stream().map(s -> s.header().stage()).distinct().toList();
        assertEquals(List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck"), signed);
        long angles = walker.entries(Entry.SignOff.class).stream().filter(s -> s.header().stage().equals("wheel-angles"))
                .findFirst().orElseThrow().number();
        assertFalse(walker.entries(Entry.Adjustment.class).stream().noneMatch(a -> a.number() > angles),
                "no loop back from the re-check");
        assertTrue(day.targets().of(ReadingId.ofCar(ReadingKind.CROSS)).isPresent());
    }

    private AppRunner start(Screen screen, String... options) {
        String[] all = new String[options.length + 1];
        all[0] = "-J-Dquoin.library=" + home.resolve("library");
        System.arraycopy(options, 0, all, 1, options.length);
        AppRunner app = AppRunner.start(screen, home, all);
        screen.waitForWindow("^Quoin", START);
        return app;
    }

    /** File, Exit: the menus of the platform speak the language too. */
    private static void leave(Screen screen, AppRunner app, String language) {
        if (language.equals("de")) {
            screen.keys().press("alt+d").press("e");
        } else {
            screen.keys().press("alt+f").press("x");
        }
        assertEquals(0, app.waitForExit(END));
        assertEquals(List.of(), app.log().problems());
    }
}
