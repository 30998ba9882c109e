package quoin.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;
import quoin.rehearsal.PracticeCar;
import quoin.workflow.NextStep;

/**
 * Works the assembled application by the keyboard with {@link EventThreadWatch} inside it, and says what held its event thread up
 * and how long an Enter took until it was drawn: a whole rehearsal day, then every window twice, then a day of 500 entries with more
 * turns and weighings. Times are of a wall clock and of a processor: on a machine that is busy with other things only the second counts.
 * Not a test: run it with {@code application/src/bench/watch}.
 */
public final class WatchedDay {

    private static final Duration START = Duration.ofSeconds(120);
    private static final Duration SETTLE = Duration.ofSeconds(12);
    private static final Duration WINDOW = Duration.ofSeconds(3);
    private static final Duration BETWEEN = Duration.ofMillis(900);
    private static final int MOST_STEPS = 200;
    private static final int ENTRIES = 500;
    private static final int WEIGHINGS = 60;
    private static final long SEED = 20260411;
    /** Every window by its keys; Escape closes those that are dialogs. */
    static final List<String> WINDOWS = List.of("alt+1", "F6", "F6", "F6", "alt+2", "alt+3", "alt+4", "alt+5", "alt+6", "alt+7", "alt+8",
            "alt+i", "alt+m", "alt+g", "alt+9", "ctrl+t", "ctrl+b", "ctrl+h", "ctrl+g", "F7", "Escape", "ctrl+j", "Escape", "ctrl+p", "Escape",
            "ctrl+l", "Escape", "ctrl+m", "Escape", "ctrl+e", "Escape", "ctrl+n", "Escape", "F11", "Escape", "F1", "Escape", "alt+3", "ctrl+z", "ctrl+y");

    private final Path home;
    private final String agent;

    private WatchedDay(Path home, String agent) {
        this.home = home;
        this.agent = agent;
    }

    /** Measures and prints; the arguments are the agent's jar and, for the day of 500 entries alone, the word entries. */
    public static void main(String[] arguments) throws IOException {
        Screen.missing().ifPresent(reason -> {
            throw new IllegalStateException("Nothing can be measured: " + reason);
        });
        WatchedDay bench = new WatchedDay(Files.createTempDirectory(Path.of("target"), "watched").toAbsolutePath(), arguments[0]);
        try (Screen screen = Screen.open()) {
            if (arguments.length == 1) {
                bench.rehearsal(screen);
            }
            bench.manyEntries(screen);
        }
        System.exit(0);
    }

    private AppRunner start(Screen screen, Path report, String... options) {
        String[] all = Arrays.copyOf(options, options.length + 2);
        all[options.length] = "-J-javaagent:" + agent + "=" + report;
        all[options.length + 1] = "-J-Dquoin.library=" + home.resolve("library");
        AppRunner app = AppRunner.start(screen, home, all);
        screen.waitForWindow("^Quoin", START);
        Await.pause(SETTLE);
        return app;
    }

    private void rehearsal(Screen screen) throws IOException {
        WatchReport report = new WatchReport(home.resolve("rehearsal.txt"));
        DayWalker walker = new DayWalker(screen, home.resolve("library"));
        try (AppRunner app = start(screen, report.file(), "--demo")) {
            walker.dayFolder();
            long begun = report.lines();
            walker.walkUntil("", NextStep.Kind.DONE, MOST_STEPS);
            report.print("a whole rehearsal day", begun);
            for (String time : List.of("cold", "warm")) {
                long before = report.lines();
                WINDOWS.forEach(key -> {
                    screen.keys().press(key);
                    Await.pause(WINDOW);
                });
                report.print("every window, " + time, before);
            }
        }
    }

    private void manyEntries(Screen screen) throws IOException {
        WatchReport report = new WatchReport(home.resolve("entries.txt"));
        Path day = home.resolve("long-day");
        writeDay(day);
        try (AppRunner app = start(screen, report.file(), "--open", day.toString())) {
            screen.keys().press("alt+3");
            Await.pause(SETTLE);
            screen.keys().press("F3");
            Await.pause(WINDOW);
            long before = report.lines();
            Random random = new Random(SEED);
            for (int i = 0; i < WEIGHINGS; i++) {
                record(screen.keys().press("F4", "ctrl+a").type(i % 2 == 0 ? "1n up" : "1n down"));
                screen.keys().press("F3").type("%.1f %.1f %.1f %.1f".formatted(161 + random.nextDouble(), 148 + random.nextDouble(),
                        157 + random.nextDouble(), 170 + random.nextDouble()));
                Await.pause(BETWEEN);
                screen.keys().press("Return");
                Await.pause(BETWEEN);
                record(screen.keys());
                // where a figure was doubted it is kept
                record(screen.keys());
            }
            report.print("a day of " + ENTRIES + " entries", before);
        }
    }

    private static void record(Keys keys) {
        Await.pause(BETWEEN);
        keys.press("ctrl+Return");
        Await.pause(BETWEEN);
    }

    private static void writeDay(Path folder) {
        Car car = Ouzel23.car();
        PracticeCar practice = PracticeCar.ouzel23(SEED);
        List<ReadingId> readings = Stream.concat(car.cornerReadings(ReadingKind.LOAD).stream(), car.heightReadings().stream()).toList();
        List<AdjusterId> perches = car.adjusters().stream().filter(a -> !a.locked()).map(Adjuster::id).filter(id -> id.kind().isSpringLeg()).toList();
        Random random = new Random(SEED);
        Header header = Header.draft("corner-weights");
        try (Journal journal = Journal.create(folder, car, "Entries")) {
            journal.append(new Entry.Condition(Header.draft(""), Conditions.REHEARSAL, Long.toString(SEED), ""));
            for (int number = 3; number <= ENTRIES; number++) {
                journal.append(switch (number % 3) {
                    case 0 -> new Entry.Adjustment(header, List.of(new Entry.Turn(perches.get(random.nextInt(perches.size())),
                            random.nextBoolean() ? 0.125 : -0.125, OptionalDouble.empty())), "");
                    case 1 -> new Entry.Condition(header, Conditions.SETTLED, Conditions.YES, "");
                    default -> new Entry.Reading(header, practice.read(journal.day(), readings), Map.of(), Entry.Source.PRACTICE_CAR);
                });
            }
        }
    }
}
