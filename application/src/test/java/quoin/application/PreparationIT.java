package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.workflow.CarCheck;
import quoin.workflow.ScaleCorrection;

/** The pages of the preparation in the assembled application by the keyboard alone: pads, scales, two small scales, the car. */
@WindowTest
class PreparationIT {

    private static final Duration START = Duration.ofSeconds(90);
    private static final Duration SOON = Duration.ofSeconds(20);
    private static final Duration PAGE = Duration.ofMillis(900);

    @TempDir
    Path home;

    @Test
    void padsScalesAndTheCar(Screen screen) {
        DayWalker walker = new DayWalker(screen, home.resolve("library"));
        try (AppRunner app = AppRunner.start(screen, home, "-J-Dquoin.library=" + home.resolve("library"), "--demo")) {
            screen.waitForWindow("^Quoin", START);
            walker.dayFolder();
            Await.pause(Duration.ofSeconds(4));
            go(screen, "alt+1");
            go(screen, "F6");
            enter(screen, "100", "100.5", "100", "100");
            await(walker, "the pads levelled", d -> d.condition(Conditions.PADS).equals(Optional.of(Conditions.LEVELLED)));
            assertTrue(walker.day().orElseThrow().check("pads").orElseThrow().measured().words().contains("of cross on this car"));
            screen.shot("preparation-pads");
            go(screen, "F6");
            enter(screen, "80", "80.8", "", "80", "", "80", "", "80", "");
            await(walker, "the scales tested", d -> ScaleCorrection.of(d).isPresent());
            screen.shot("preparation-scales");
            fewerScales(screen, walker);
            go(screen, "F6");
            screen.keys().repeat("Return", 9);
            screen.keys().press("Insert").type("no witness hole").press("Return");
            await(walker, "every item seen to", d -> CarCheck.recorded(d).size() == 10);
            screen.shot("preparation-car");
            screen.keys().press("alt+r");
            await(walker, "the car sound", d -> d.condition(Conditions.SOUND).equals(Optional.of(Conditions.YES)));
            assertEquals(1, CarCheck.leftOpen(walker.day().orElseThrow()).size(), "the item left open with its reason");
            screen.keys().press("alt+f").press("x");
            assertEquals(0, app.waitForExit(Duration.ofSeconds(30)));
            assertEquals(List.of(), app.log().problems());
        }
    }

    /** The last way of the list: two scales under each wheel with a plank. */
    private static void fewerScales(Screen screen, DayWalker walker) {
        screen.keys().press("alt+v");
        Await.pause(PAGE);
        screen.keys().press("End");
        Await.pause(PAGE);
        screen.keys().press("F3");
        Await.pause(PAGE);
        enter(screen, "4", "85", "84", "88", "87", "74", "73", "77", "78");
        ReadingId load = ReadingId.of(ReadingKind.LOAD, Corner.LF);
        await(walker, "the weights", d -> d.latest(load).isPresent());
        assertEquals(165, walker.day().orElseThrow().latest(load).orElseThrow().value(), 1e-9, "85 + 84 less the plank");
        screen.shot("preparation-two-scales");
    }

    private static void go(Screen screen, String key) {
        screen.keys().press(key);
        Await.pause(PAGE);
    }

    /** Types figures, Enter after each: to the next field, and from the last one into the logbook. */
    private static void enter(Screen screen, String... figures) {
        for (String figure : figures) {
            if (!figure.isEmpty()) {
                screen.keys().type(figure);
            }
            screen.keys().press("Return");
        }
    }

    private static void await(DayWalker walker, String what, Predicate<Day> holds) {
        Await.until(what, SOON, () -> walker.day().filter(holds).isPresent());
    }
}
