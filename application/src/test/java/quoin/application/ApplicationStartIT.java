package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The assembled application starts, shows its window, stays off the network, and ends, with a clean log every time. */
@WindowTest
class ApplicationStartIT {

    private static final Duration START = Duration.ofSeconds(90);
    private static final Duration END = Duration.ofSeconds(30);
    /** Long enough for what the platform does after its window is up. */
    private static final Duration SETTLE = Duration.ofSeconds(6);

    private static final int LOOKS = 30;

    @TempDir
    Path home;

    @Test
    void startsAndEndsWithCleanLog(Screen screen) {
        startLookAndExit(screen, "start-first");
        startLookAndExit(screen, "start-again");
    }

    /** Nobody has to reach for a mouse: the keyboard is on the first thing to do from the start. */
    @Test
    void enterRehearsesAtTheFirstStart(Screen screen) {
        try (AppRunner app = AppRunner.start(screen, home)) {
            screen.waitForWindow("^Quoin", START);
            Await.pause(SETTLE);
            screen.keys().press("Return");
            Await.until("a day of the practice car", END, this::hasDay);
            screen.shot("start-rehearsal");
            screen.keys().press("alt+f").press("x");
            assertEquals(0, app.waitForExit(END));
            assertEquals(List.of(), app.log().problems());
        }
    }

    private boolean hasDay() {
        try (Stream<Path> files = Files.walk(home)) {
            return files.anyMatch(f -> f.getFileName().toString().equals("day.jsonl"));
        } catch (IOException | UncheckedIOException e) {
            // a file of the running application went away meanwhile
            return false;
        }
    }

    /**
     * No connection is tried, whether it would succeed or not: every call of the system by which one could be is watched, where
     * there is strace and it may watch; elsewhere the sockets the application holds are looked at again and again.
     */
    @Test
    void triesNoConnection(Screen screen) {
        Path calls = home.resolve("network-calls.txt");
        List<String> strace = List.of("strace", "-f", "--seccomp-bpf", "-qq", "-e", "trace=connect,sendto,sendmsg,sendmmsg", "-e",
                "signal=none", "-o", calls.toString());
        boolean watched = Tool.installed("strace")
                && Tool.run(screen.display(), Stream.concat(strace.stream(), Stream.of("true")).toList()).exitCode() == 0;
        List<String> watcher = watched ? strace : List.of();
        Set<String> seen = new TreeSet<>();
        try (AppRunner app = AppRunner.startUnder(watcher, AppRunner.ASSEMBLED, Optional.of(screen.display()), home, List.of("--demo"))) {
            Await.until("the window", START, () -> {
                seen.addAll(Connections.offMachine(app.java().pid()));
                return screen.shows("^Quoin");
            });
            for (int look = 0; look < LOOKS; look++) {
                Await.pause(SETTLE.dividedBy(LOOKS));
                seen.addAll(Connections.offMachine(app.java().pid()));
            }
        }
        assertEquals(Set.of(), seen);
        if (watched) {
            List<String> lines = lines(calls);
            assertTrue(lines.stream().anyMatch(line -> line.contains("AF_UNIX")), "the watcher saw nothing, not even the display");
            assertEquals(List.of(), lines.stream().filter(line -> line.contains("AF_INET")).toList());
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new AssertionError("No list of calls in " + file, e);
        }
    }

    private void startLookAndExit(Screen screen, String picture) {
        try (AppRunner app = AppRunner.start(screen, home)) {
            screen.waitForWindow("^Quoin", START);
            Await.pause(SETTLE);
            assertTrue(coloursOf(screen.shot(picture)) > 8, "The window shows nothing");
            assertEquals("Quoin", screen.activeTitle().split(" ")[0]);
            screen.keys().press("alt+f").press("x");
            assertEquals(0, app.waitForExit(END));
            assertEquals(List.of(), app.log().problems());
            assertEquals("", app.standardError());
            assertEquals("", app.standardOutput());
        }
    }

    private static int coloursOf(Path picture) {
        try {
            BufferedImage image = ImageIO.read(picture.toFile());
            List<Integer> pixels = new ArrayList<>();
            for (int y = 0; y < image.getHeight(); y += 3) {
                for (int x = 0; x < image.getWidth(); x += 3) {
                    pixels.add(image.getRGB(x, y));
                }
            }
            return Set.copyOf(pixels).size();
        } catch (IOException e) {
            throw new AssertionError("No readable picture " + picture, e);
        }
    }
}
