package quoin.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quoin.logbook.Journal;
import quoin.workflow.NextStep;

/**
 * Uses one run of the assembled application for hours by the keyboard: one practice day after the other to its close, every window
 * opened, undone and done again, the day put away. After each day it prints what held the event thread up, what an Enter took, and
 * the heap after collection with no day open. A racer's day of eight hours is one of these. Not a test: run it with
 * {@code application/src/bench/watch use MINUTES}.
 */
public final class LongUse {

    private static final Duration START = Duration.ofSeconds(120);
    private static final Duration SETTLE = Duration.ofSeconds(12);
    private static final Duration BETWEEN = Duration.ofMillis(900);
    private static final int MOST_STEPS = 200;
    private static final int COLLECTIONS = 4;
    /** "def new generation   total 9792K, used 1234K", "garbage-first heap total ..., used ...". */
    private static final Pattern USED = Pattern.compile("(?:generation|heap)\\s+total \\d+K, used (\\d+)K");
    private static final double KB_PER_MB = 1024;

    private final Path home;
    private final Path library;
    private final Set<Path> known = new HashSet<>();

    private LongUse(Path home) {
        this.home = home;
        this.library = home.resolve("library");
    }

    /** Uses it and prints; the arguments are the agent's jar and the minutes. */
    public static void main(String[] arguments) throws IOException {
        Screen.missing().ifPresent(reason -> {
            throw new IllegalStateException("Nothing can be measured: " + reason);
        });
        LongUse use = new LongUse(Files.createTempDirectory(Path.of("target"), "used").toAbsolutePath());
        try (Screen screen = Screen.open()) {
            use.run(screen, arguments[0], Duration.ofMinutes(Long.parseLong(arguments[1])));
        }
        System.exit(0);
    }

    private void run(Screen screen, String agent, Duration time) throws IOException {
        WatchReport report = new WatchReport(home.resolve("use.txt"));
        Instant end = Instant.now().plus(time);
        try (AppRunner app = AppRunner.start(screen, home, "-J-javaagent:" + agent + "=" + report.file(), "-J-Dquoin.library=" + library)) {
            screen.waitForWindow("^Quoin", START);
            Await.pause(SETTLE);
            for (int number = 1; Instant.now().isBefore(end); number++) {
                long before = report.lines();
                DayWalker walker = begin(screen);
                walker.walkUntil("", NextStep.Kind.DONE, MOST_STEPS);
                int entries = walker.day().orElseThrow().written().size();
                for (String key : WatchedDay.WINDOWS) {
                    screen.keys().press(key);
                    Await.pause(BETWEEN);
                }
                screen.keys().press("alt+f").press("u");
                Await.pause(SETTLE);
                report.print("day %d, %d entries, heap after collection %.1f MB".formatted(number, entries, heapMb(app.java().pid())), before);
            }
            app.log().problems().forEach(System.out::println);
        }
    }

    /** A practice day more, by the menu. */
    private DayWalker begin(Screen screen) {
        screen.keys().press("alt+f").press("r");
        Await.until("a day more in the library", START, () -> !known.containsAll(days()));
        Path day = days().stream().filter(d -> !known.contains(d)).findFirst().orElseThrow();
        known.add(day);
        Await.pause(SETTLE);
        return new DayWalker(screen, day);
    }

    private Set<Path> days() {
        if (!Files.isDirectory(library)) {
            return Set.of();
        }
        try (Stream<Path> files = Files.walk(library)) {
            return files.filter(f -> f.endsWith(Journal.FILE)).map(Path::getParent).collect(Collectors.toSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What one collection frees only for the next (references queued, soft ones that grew old) is collected too. */
    private static double heapMb(long process) {
        String pid = Long.toString(process);
        for (int i = 0; i < COLLECTIONS; i++) {
            Tool.run("", List.of("jcmd", pid, "GC.run"));
            Await.pause(BETWEEN);
        }
        Matcher used = USED.matcher(Tool.run("", List.of("jcmd", pid, "GC.heap_info")).text());
        return used.results().mapToLong(r -> Long.parseLong(r.group(1))).sum() / KB_PER_MB;
    }
}
