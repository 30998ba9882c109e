package quoin.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What starting Quoin costs beside a bare application of the same platform modules: time from process start until the menu
 * bar is drawn in a visible window, and peak resident memory some seconds later. The two take turns, in one run, each with
 * a warm settings folder; medians are given. Not a test: run it with {@code application/src/bench/start}.
 */
public final class StartBenchmark {

    private static final int ROUNDS = 5;
    private static final Duration LIMIT = Duration.ofSeconds(60);
    private static final Duration SETTLE = Duration.ofSeconds(5);
    private static final Path BARE = Path.of("target", "bare");

    /** One start: milliseconds to the drawn menu bar, and peak resident memory in MB. */
    private record Cost(double startMs, double peakMb) {
    }

    private StartBenchmark() {
    }

    /** Measures and prints; arguments are start options for Quoin, such as {@code --demo}. */
    public static void main(String[] options) throws IOException {
        Screen.missing().ifPresent(reason -> {
            throw new IllegalStateException("Nothing can be measured: " + reason);
        });
        assembleBare();
        Path homes = Files.createTempDirectory(Path.of("target"), "bench").toAbsolutePath();
        try (Screen screen = Screen.open()) {
            List<String> own = List.of(options);
            measure(screen, BARE, homes.resolve("bare"), List.of());
            measure(screen, AppRunner.ASSEMBLED, homes.resolve("quoin"), own);
            List<Cost[]> rounds = IntStream.range(0, ROUNDS).mapToObj(round -> new Cost[] {
                    measure(screen, BARE, homes.resolve("bare"), List.of()),
                    measure(screen, AppRunner.ASSEMBLED, homes.resolve("quoin"), own)}).toList();
            print("bare platform", rounds.stream().map(pair -> pair[0]).toList());
            print("quoin " + String.join(" ", own), rounds.stream().map(pair -> pair[1]).toList());
        } finally {
            delete(homes);
        }
    }

    private static void print(String name, List<Cost> costs) {
        double[] times = costs.stream().mapToDouble(Cost::startMs).sorted().toArray();
        double[] peaks = costs.stream().mapToDouble(Cost::peakMb).sorted().toArray();
        System.out.printf("%-16s start to drawn window: median %.2f s (%.2f to %.2f), peak memory: median %.0f MB (n = %d)%n",
                name, times[ROUNDS / 2] / 1000, times[0] / 1000, times[ROUNDS - 1] / 1000, peaks[ROUNDS / 2], ROUNDS);
    }

    private static Cost measure(Screen screen, Path assembled, Path home, List<String> options) {
        createFolder(home);
        long start = System.nanoTime();
        try (AppRunner app = AppRunner.start(assembled, Optional.of(screen.display()), home, options)) {
            Await.until("a drawn window", LIMIT, () -> menuIsDrawn(screen));
            double startMs = (System.nanoTime() - start) / 1e6;
            Await.pause(SETTLE);
            double peakMb = peakKilobytes(app.java().pid()).orElseThrow() / 1024.0;
            screen.keys().press("alt+f").press("x");
            app.waitForExit(LIMIT);
            return new Cost(startMs, peakMb);
        }
    }

    /** A visible main window with more than two colours in the strip its menus are drawn in. */
    private static boolean menuIsDrawn(Screen screen) {
        Tool.Answer window = Tool.run(screen.display(), List.of("xdotool", "search", "--onlyvisible", "--name", "^Quoin"));
        if (window.exitCode() != 0) {
            return false;
        }
        String id = window.text().lines().findFirst().orElse("").strip();
        Tool.Answer colours = Tool.run(screen.display(),
                List.of("import", "-window", id, "-crop", "200x24+0+0", "-format", "%k", "info:"));
        return colours.text().strip().matches("\\d+") && Integer.parseInt(colours.text().strip()) > 4;
    }

    private static OptionalLong peakKilobytes(long pid) {
        try (Stream<String> lines = Files.lines(Path.of("/proc", String.valueOf(pid), "status"))) {
            return lines.filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", ""))).findFirst();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The assembled application without Quoin's modules: platform, launcher, branding and nothing else. */
    private static void assembleBare() throws IOException {
        delete(BARE);
        try (Stream<Path> all = Files.walk(AppRunner.ASSEMBLED)) {
            for (Path file : all.filter(StartBenchmark::belongsToBare).toList()) {
                Path copy = BARE.resolve(AppRunner.ASSEMBLED.relativize(file));
                createFolder(copy.getParent());
                if (Files.isRegularFile(file)) {
                    Files.copy(file, copy);
                    copy.toFile().setExecutable(file.toFile().canExecute());
                }
            }
        }
    }

    private static boolean belongsToBare(Path file) {
        String path = AppRunner.ASSEMBLED.relativize(file).toString();
        return !path.startsWith("quoin/") || path.contains("branding") || path.contains("locale")
                || path.startsWith("quoin/.");
    }

    private static void createFolder(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
            }
        }
    }
}
